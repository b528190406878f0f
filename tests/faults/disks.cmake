# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
# A program of its own, because it takes the place of the C library's functions that write.
halfcup_test(faults_disks SOURCES disks.cpp failing_disk.cpp season.cpp LIBRARIES Halfcup::store Halfcup::exchange
    LABELS faults TIMEOUT 3600)
target_include_directories(faults_disks PRIVATE ${CMAKE_SOURCE_DIR}/tests/unit)
