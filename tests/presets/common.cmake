# What all presets share. A value given with -D on the command line wins over the preset.
set(CMAKE_EXPORT_COMPILE_COMMANDS ON CACHE BOOL "")
find_program(FAYLINE_CCACHE ccache)
if(FAYLINE_CCACHE)
    set(CMAKE_CXX_COMPILER_LAUNCHER ${FAYLINE_CCACHE} CACHE STRING "")
endif()
