# Address and undefined-behaviour sanitizers over core, without the window.
# cmake -C tests/presets/sanitize.cmake -S . -B build/sanitize -G Ninja
include(${CMAKE_CURRENT_LIST_DIR}/common.cmake)
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O1 -g1 -fno-omit-frame-pointer" CACHE STRING "")
set(FAYLINE_SANITIZE ON CACHE BOOL "")
set(FAYLINE_WERROR ON CACHE BOOL "")
set(FAYLINE_UI OFF CACHE BOOL "")
set(FAYLINE_TESTS ON CACHE BOOL "")
