# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
find_package(Python3 REQUIRED COMPONENTS Interpreter)
halfcup_script_test(faults_keeps_records
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/keeps_records_test.py $<TARGET_FILE:halfcup>
    TIMEOUT 120 LABELS faults)
