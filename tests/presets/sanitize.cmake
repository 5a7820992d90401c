# Address and undefined-behaviour sanitizers over core, without the window. -O0 compiles in half the time of -O1 here.
# cmake -C tests/presets/sanitize.cmake -S . -B build/sanitize -G Ninja
include(${CMAKE_CURRENT_LIST_DIR}/common.cmake)
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O0 -g1" CACHE STRING "")
set(FAYLINE_SANITIZE ON CACHE BOOL "")
set(FAYLINE_WERROR ON CACHE BOOL "")
set(FAYLINE_UI OFF CACHE BOOL "")
set(FAYLINE_TESTS ON CACHE BOOL "")
