# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# One static library per folder of cpp/, and arrows that point down only.
#
# A layer's headers are reached as "layer/header.h" and only by targets that link the layer: each layer exports
# a directory of its own that holds nothing but a link to its folder. So the link list is the only way in.
# tests/house/layers reads the same table and looks at every #include besides.

set(HALFCUP_LAYERS mites handbook records pictures store place season exchange device touch desk)
set(HALFCUP_MAY_LINK_mites "")
set(HALFCUP_MAY_LINK_handbook mites)
set(HALFCUP_MAY_LINK_records mites)
set(HALFCUP_MAY_LINK_pictures records mites)
set(HALFCUP_MAY_LINK_store records handbook mites)
set(HALFCUP_MAY_LINK_place records handbook mites)
set(HALFCUP_MAY_LINK_season records handbook mites)
set(HALFCUP_MAY_LINK_exchange pictures records handbook mites)
set(HALFCUP_MAY_LINK_device records handbook mites)
set(HALFCUP_MAY_LINK_touch exchange pictures season store place device records handbook mites)
set(HALFCUP_MAY_LINK_desk exchange pictures season store place device records handbook mites)

# halfcup_layer(NAME LAYERS layer... SOURCES file... [LIBRARIES target...])
function(halfcup_layer name)
    cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "LAYERS;SOURCES;LIBRARIES")
    foreach(below IN LISTS arg_LAYERS)
        if(NOT below IN_LIST HALFCUP_MAY_LINK_${name})
            message(FATAL_ERROR "Layer rule: cpp/${name} may not link cpp/${below} (see cpp/layers.cmake)")
        endif()
    endforeach()
    add_library(halfcup_${name} STATIC ${arg_SOURCES})
    add_library(Halfcup::${name} ALIAS halfcup_${name})
    set(door ${CMAKE_BINARY_DIR}/doors/${name})
    file(MAKE_DIRECTORY ${door})
    file(CREATE_LINK ${CMAKE_SOURCE_DIR}/cpp/${name} ${door}/${name} SYMBOLIC)
    target_include_directories(halfcup_${name} PUBLIC ${door})
    foreach(below IN LISTS arg_LAYERS)
        target_link_libraries(halfcup_${name} PUBLIC Halfcup::${below})
    endforeach()
    if(arg_LIBRARIES)
        target_link_libraries(halfcup_${name} PUBLIC ${arg_LIBRARIES})
    endif()
endfunction()
