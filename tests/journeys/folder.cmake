# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_script_test(journey_synchronised_folder
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/synchronised_folder.py
            $<TARGET_FILE:halfcup-desk>
    TIMEOUT 300 LABELS journey)
