# What app/start builds, and what times are measured on.
# cmake -C tests/presets/release.cmake -S . -B build/release -G Ninja
include(${CMAKE_CURRENT_LIST_DIR}/common.cmake)
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(FAYLINE_WERROR OFF CACHE BOOL "")
set(FAYLINE_TESTS OFF CACHE BOOL "")
