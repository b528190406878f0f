# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
find_program(HALFCUP_SYSTEM_PYTHON python3 PATHS /usr/bin NO_DEFAULT_PATH REQUIRED)
halfcup_script_test(journey_import_table
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/import_table.py $<TARGET_FILE:halfcup>
            $<TARGET_FILE:halfcup-desk>
    TIMEOUT 120 LABELS journey)
