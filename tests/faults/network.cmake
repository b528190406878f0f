# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
find_package(Python3 REQUIRED COMPONENTS Interpreter)
halfcup_script_test(faults_opens_no_network
    COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/opens_no_network_test.py $<TARGET_FILE:halfcup>
            $<TARGET_FILE:halfcup-desk> $<TARGET_FILE:halfcup_sound>
    TIMEOUT 600 LABELS faults)
