# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Fills in the AppStream metainfo. As part of the build through halfcup_metainfo(), or by itself:
#   cmake -DOUT=FILE [-DHALFCUP_WEBSITE=https://...] -P platform/linux/metainfo.cmake
# A software centre takes pictures from an https address only. Halfcup has none, so a plain build says nothing of
# pictures; whoever publishes it gives the address under which they serve assets/pictures as "pictures".
set(HALFCUP_METAINFO_ID alt.halfcup.app)
set(HALFCUP_METAINFO_FOLDER ${CMAKE_CURRENT_LIST_DIR})

function(halfcup_metainfo out website)
    set(HALFCUP_METAINFO_WEB "")
    if(website)
        if(NOT website MATCHES "^https://[^/]+")
            message(FATAL_ERROR "HALFCUP_WEBSITE is \"${website}\"; it has to begin with https://")
        endif()
        string(REGEX REPLACE "/+$" "" website ${website})
        string(APPEND HALFCUP_METAINFO_WEB "  <url type=\"homepage\">${website}/</url>\n  <screenshots>\n")
        set(kind " type=\"default\"")
        foreach(picture "01-here=The yard, its colonies by urgency" "06-shake-past-half=The shake, past half time"
                "10-count=The count: the whole page is the button" "13-answer=The answer, and how sure it is")
            string(REGEX MATCH "^([^=]+)=(.*)$" parts ${picture})
            string(APPEND HALFCUP_METAINFO_WEB
                "    <screenshot${kind}>\n      <caption>${CMAKE_MATCH_2}</caption>\n"
                "      <image type=\"source\" width=\"360\" height=\"740\">${website}/pictures/${CMAKE_MATCH_1}.png</image>\n"
                "    </screenshot>\n")
            set(kind "")
        endforeach()
        string(APPEND HALFCUP_METAINFO_WEB "  </screenshots>\n")
    endif()
    configure_file(${HALFCUP_METAINFO_FOLDER}/${HALFCUP_METAINFO_ID}.metainfo.xml.in ${out} @ONLY)
endfunction()

if(CMAKE_SCRIPT_MODE_FILE STREQUAL CMAKE_CURRENT_LIST_FILE)
    if(NOT OUT)
        message(FATAL_ERROR "usage: cmake -DOUT=FILE [-DHALFCUP_WEBSITE=https://...] -P metainfo.cmake")
    endif()
    halfcup_metainfo(${OUT} "${HALFCUP_WEBSITE}")
endif()
