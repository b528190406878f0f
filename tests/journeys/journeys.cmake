# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
# The system's own Python: pyatspi comes with the distribution, and another Python on the path does not have it.
find_program(HALFCUP_SYSTEM_PYTHON python3 PATHS /usr/bin NO_DEFAULT_PATH REQUIRED)
foreach(journey demo_season first_wash first_yard killed_at_the_seventh no_position replayed_log tray)
    halfcup_script_test(journey_${journey}
        COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/${journey}.py $<TARGET_FILE:halfcup>
        TIMEOUT 120 LABELS journey)
endforeach()
halfcup_script_test(journey_recorded_log
    COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/recorded_log.py $<TARGET_FILE:halfcup>
            ${HALFCUP_SHARED}/nmea
    TIMEOUT 120 LABELS journey)
foreach(method soapy_wash sugar_roll sticky_board drone_brood)
    halfcup_script_test(journey_${method}
        COMMAND ${HALFCUP_SYSTEM_PYTHON} -B ${CMAKE_CURRENT_SOURCE_DIR}/methods.py $<TARGET_FILE:halfcup> ${method}
        TIMEOUT 120 LABELS journey)
endforeach()
