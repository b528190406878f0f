# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(exchange_line SOURCES exchange_line.cpp exchange_kit.h store_kit.h LIBRARIES Halfcup::exchange
    Halfcup::store LABELS unit)
halfcup_test(exchange_damage SOURCES exchange_damage.cpp exchange_kit.h store_kit.h LIBRARIES Halfcup::exchange
    Halfcup::store LABELS unit TIMEOUT 600)
halfcup_test(exchange_hostile SOURCES exchange_hostile.cpp exchange_kit.h store_kit.h LIBRARIES Halfcup::exchange
    Halfcup::store LABELS unit TIMEOUT 300)
# The schema is what its maker prints.
halfcup_script_test(exchange_schema_maker LABELS unit COMMAND sh -c
    "python3 -B '${CMAKE_SOURCE_DIR}/assets/exchange/make_schema.py' | cmp - '${CMAKE_SOURCE_DIR}/assets/exchange/line.schema.json'")
