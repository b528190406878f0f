# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(season_what_if SOURCES season_what_if.cpp handbook_files.h LIBRARIES Halfcup::season LABELS unit)
halfcup_test(season_check SOURCES season_check.cpp handbook_files.h LIBRARIES Halfcup::season LABELS unit)
halfcup_test(season_growth SOURCES season_growth.cpp LIBRARIES Halfcup::season LABELS unit)
