# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(season_choices SOURCES season_choices.cpp handbook_files.h LIBRARIES Halfcup::season LABELS unit)
halfcup_test(season_records SOURCES season_records.cpp handbook_files.h LIBRARIES Halfcup::season LABELS unit)
halfcup_test(season_dates SOURCES season_dates.cpp LIBRARIES Halfcup::season LABELS unit)
