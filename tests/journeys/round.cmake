# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_script_test(journey_round
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/round.py $<TARGET_FILE:halfcup>
            $<TARGET_FILE:halfcup-desk>
    TIMEOUT 180 LABELS journey)
