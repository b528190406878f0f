# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Files for people: tables, map, report.
halfcup_test(people_map SOURCES people_map.cpp people_keeper.h LIBRARIES Halfcup::exchange LABELS unit)
halfcup_test(people_report SOURCES people_report.cpp people_keeper.h LIBRARIES Halfcup::exchange Halfcup::touch
    halfcup_qml LABELS unit)
halfcup_test(people_report_pictures SOURCES people_report_pictures.cpp people_keeper.h LIBRARIES Halfcup::exchange LABELS unit)
# The readers are modules of the system's Python.
find_program(halfcup_system_python python3 PATHS /usr/bin NO_DEFAULT_PATH)
find_program(halfcup_system_python python3)
# The same files of the real program, read by programs that are not ours.
halfcup_script_test(people_outside TIMEOUT 300 LABELS unit COMMAND ${halfcup_system_python} -B
    ${CMAKE_CURRENT_SOURCE_DIR}/people_outside.py $<TARGET_FILE:halfcup-desk>)
halfcup_script_test(people_figures TIMEOUT 300 LABELS unit COMMAND ${halfcup_system_python} -B
    ${CMAKE_CURRENT_SOURCE_DIR}/people_figures.py $<TARGET_FILE:halfcup-desk>)
