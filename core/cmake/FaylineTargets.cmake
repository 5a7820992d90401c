# One place for warnings, sanitizers and the shape of a core target.

add_library(fayline_flags INTERFACE)
add_library(fayline::flags ALIAS fayline_flags)
target_compile_options(fayline_flags INTERFACE
    -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion -Wold-style-cast
    -Wnon-virtual-dtor -Wdouble-promotion
    # The same sums on every machine: no fused multiply-add behind our back.
    -ffp-contract=off)
if(FAYLINE_WERROR)
    target_compile_options(fayline_flags INTERFACE -Werror)
endif()
if(FAYLINE_SANITIZE)
    target_compile_options(fayline_flags INTERFACE -fsanitize=address,undefined -fno-sanitize-recover=undefined -g1)
    target_link_options(fayline_flags INTERFACE -fsanitize=address,undefined)
endif()

# fayline_core(NAME quantity SOURCES a.cpp b.cpp USES quantity material [PRIVATE lib...] [LINKS lib...])
# Makes the static library fayline_NAME (alias fayline::NAME). It exposes core/NAME/include and nothing else, and
# sees only the folders it names in USES: an include from any other folder does not compile.
function(fayline_core)
    cmake_parse_arguments(ARG "" "NAME" "SOURCES;USES;LINKS;PRIVATE" ${ARGN})
    set(target fayline_${ARG_NAME})
    if(ARG_SOURCES)
        add_library(${target} STATIC ${ARG_SOURCES})
        set(scope PUBLIC)
        target_link_libraries(${target} PRIVATE fayline::flags ${ARG_PRIVATE})
    else()
        add_library(${target} INTERFACE)
        set(scope INTERFACE)
    endif()
    add_library(fayline::${ARG_NAME} ALIAS ${target})
    target_include_directories(${target} ${scope} ${CMAKE_CURRENT_SOURCE_DIR}/include)
    foreach(used ${ARG_USES})
        target_link_libraries(${target} ${scope} fayline::${used})
    endforeach()
    target_link_libraries(${target} ${scope} ${ARG_LINKS})
endfunction()
