# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(exchange_csv SOURCES exchange_csv.cpp exchange_python.h LIBRARIES Halfcup::exchange LABELS unit)
halfcup_test(exchange_file SOURCES exchange_file.cpp LIBRARIES Halfcup::exchange LABELS unit)
halfcup_test(exchange_samples SOURCES exchange_samples.cpp exchange_python.h LIBRARIES Halfcup::exchange LABELS unit)
halfcup_test(exchange_demo SOURCES exchange_demo.cpp LIBRARIES Halfcup::exchange Halfcup::season LABELS unit)
# The demo file is what its maker writes.
halfcup_script_test(exchange_demo_maker LABELS unit COMMAND sh -c
    "'${CMAKE_SOURCE_DIR}/demo-data/make.py' | cmp - '${CMAKE_SOURCE_DIR}/demo-data/season.json'")
halfcup_test(exchange_calendar SOURCES exchange_calendar.cpp LIBRARIES Halfcup::exchange LABELS unit)
