# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
find_package(Python3 REQUIRED COMPONENTS Interpreter)
halfcup_script_test(desk_backup
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/desk_backup.py $<TARGET_FILE:halfcup-desk>
    LABELS unit)
