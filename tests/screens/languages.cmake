# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Every screen in every language, a test for each; and in a made one with longer words, compiled in here alone.
add_executable(screens_languages languages_test.cpp)
target_link_libraries(screens_languages PRIVATE halfcup_stage)
set(pseudo ${CMAKE_CURRENT_BINARY_DIR}/halfcup_pseudo)
find_program(halfcup_system_python python3 PATHS /usr/bin NO_DEFAULT_PATH)
add_custom_command(OUTPUT ${pseudo}.qm
    COMMAND ${halfcup_system_python} -B ${CMAKE_CURRENT_SOURCE_DIR}/pseudo_language.py
        ${CMAKE_SOURCE_DIR}/assets/languages/halfcup_de.ts ${pseudo}.ts
    COMMAND Qt6::lrelease -silent ${pseudo}.ts -qm ${pseudo}.qm
    DEPENDS pseudo_language.py ${CMAKE_SOURCE_DIR}/assets/languages/halfcup_de.ts VERBATIM)
set_source_files_properties(${pseudo}.qm PROPERTIES QT_RESOURCE_ALIAS halfcup_pseudo.qm)
qt_add_resources(screens_languages halfcup_pseudo PREFIX /halfcup/languages FILES ${pseudo}.qm)
math(EXPR limit "900 * ${HALFCUP_TEST_PATIENCE}")
foreach(language de es fr pseudo) # English: screens_screens
    add_test(NAME screens_in_${language} COMMAND screens_languages)
    set_tests_properties(screens_in_${language} PROPERTIES TIMEOUT ${limit} COST ${limit} LABELS screens
        ENVIRONMENT "${HALFCUP_TEST_ENVIRONMENT};QT_QUICK_BACKEND=software;QTEST_FUNCTION_TIMEOUT=${limit}000;HALFCUP_LANGUAGE=${language}"
        FAIL_REGULAR_EXPRESSION "Totals: 0 passed")
endforeach()
