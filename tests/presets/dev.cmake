# Daily work: optimised, with symbols, warnings are errors, all tests.
# cmake -C tests/presets/dev.cmake -S . -B build/dev -G Ninja
include(${CMAKE_CURRENT_LIST_DIR}/common.cmake)
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELWITHDEBINFO "-O1 -g1" CACHE STRING "")
set(FAYLINE_WERROR ON CACHE BOOL "")
set(FAYLINE_TESTS ON CACHE BOOL "")
