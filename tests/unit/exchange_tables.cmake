# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Taking in tables of earlier washes.
halfcup_test(exchange_table SOURCES exchange_table.cpp table_kit.h LIBRARIES Halfcup::exchange LABELS unit)
halfcup_test(exchange_values SOURCES exchange_values.cpp LIBRARIES Halfcup::exchange LABELS unit)
halfcup_test(exchange_washes SOURCES exchange_washes.cpp table_kit.h LIBRARIES Halfcup::exchange LABELS unit)
halfcup_test(exchange_import SOURCES exchange_import.cpp store_kit.h table_kit.h
    LIBRARIES Halfcup::exchange Halfcup::store LABELS unit)
# The verb on real files: own tables, those of other programs, and hostile ones.
halfcup_script_test(desk_import COMMAND ${Python3_EXECUTABLE} -B ${CMAKE_CURRENT_SOURCE_DIR}/desk_import.py
    $<TARGET_FILE:halfcup-desk> LABELS unit TIMEOUT 300)
