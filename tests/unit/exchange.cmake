# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(exchange_csv SOURCES exchange_csv.cpp exchange_python.h LIBRARIES Halfcup::exchange LABELS unit)
halfcup_test(exchange_file SOURCES exchange_file.cpp LIBRARIES Halfcup::exchange LABELS unit)
