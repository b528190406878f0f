# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(place_stamp SOURCES place_stamp.cpp LIBRARIES Halfcup::place LABELS unit)
halfcup_test(place_yards SOURCES place_yards.cpp LIBRARIES Halfcup::place LABELS unit)
halfcup_test(place_stands SOURCES place_stands.cpp LIBRARIES Halfcup::place LABELS unit)
halfcup_test(place_nmea SOURCES place_nmea.cpp LIBRARIES Halfcup::place LABELS unit)
halfcup_test(place_source SOURCES place_source.cpp place_server.h LIBRARIES Halfcup::place LABELS unit)
halfcup_test(place_logs SOURCES place_logs.cpp place_server.h LIBRARIES Halfcup::place LABELS unit)
halfcup_test(place_lines SOURCES place_lines.cpp place_server.h LIBRARIES Halfcup::place LABELS unit)
