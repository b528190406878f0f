# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
find_package(Python3 REQUIRED COMPONENTS Interpreter)
halfcup_test(desk_csv SOURCES desk_csv.cpp LIBRARIES Halfcup::desk LABELS unit)
# The real program on real files: what it answers, what it says to bad input, what it needs of memory.
halfcup_script_test(desk_program
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/desk_program.py $<TARGET_FILE:halfcup-desk> LABELS unit)
# The verbs that work on a keeper's database.
halfcup_script_test(desk_keeper
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/desk_keeper.py $<TARGET_FILE:halfcup-desk> LABELS unit)
