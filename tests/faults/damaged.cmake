# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(faults_damaged_database SOURCES damaged_database.cpp LIBRARIES Halfcup::store Halfcup::exchange
    LABELS faults TIMEOUT 300)
target_include_directories(faults_damaged_database PRIVATE ${CMAKE_SOURCE_DIR}/tests/unit)
halfcup_test(faults_kill_rescue SOURCES kill_rescue.cpp LIBRARIES Halfcup::store LABELS faults TIMEOUT 300)
target_include_directories(faults_kill_rescue PRIVATE ${CMAKE_SOURCE_DIR}/tests/unit)
