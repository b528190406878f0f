# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# What the real pages ask of the database, counted; and what the start waits for.
halfcup_test(screens_cost SOURCES cost_test.cpp query_log.cpp LIBRARIES bench_many_records Halfcup::touch halfcup_qml TIMEOUT 300)
set_property(TEST screens_cost APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
if(CMAKE_SYSTEM_NAME STREQUAL "Linux")
    halfcup_test(screens_start SOURCES start_test.cpp LIBRARIES bench_many_records Halfcup::touch halfcup_qml)
    set_property(TEST screens_start APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
endif()
