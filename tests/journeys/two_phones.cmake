# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_script_test(journey_two_phones
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/two_phones.py $<TARGET_FILE:halfcup>
    TIMEOUT 120 LABELS journey)
