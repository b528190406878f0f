# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Checks of the house. Label "house" needs nothing built: tests/run makes these before the build.
# None of them writes into the source tree (-B: no compiled Python beside the scripts).
find_program(HALFCUP_PYTHON python3 REQUIRED)
set(check ${CMAKE_CURRENT_SOURCE_DIR}/check.py)
foreach(what toplevel spdx machine_paths sizes layers forbidden plain_text sql_text format spelling scripts)
    halfcup_script_test(house_${what} COMMAND ${HALFCUP_PYTHON} -B ${check} ${what} ${CMAKE_SOURCE_DIR}
        LABELS house)
endforeach()
halfcup_script_test(house_checks_can_fail
    COMMAND ${HALFCUP_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/selfcheck.py --qmllint $<TARGET_FILE:Qt6::qmllint>
    LABELS house)
# Every text has words in every language, and its places for figures.
halfcup_script_test(house_languages COMMAND ${HALFCUP_PYTHON} -B ${CMAKE_SOURCE_DIR}/assets/languages/update --check
    LABELS house)
# qmllint looks at types that the build generates, so this one comes after the build. Its levels: .qmllint.ini
halfcup_script_test(qmllint COMMAND ${CMAKE_COMMAND} --build ${CMAKE_BINARY_DIR} --target all_qmllint
    LABELS lint TIMEOUT 600)
