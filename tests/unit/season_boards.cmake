# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(season_boards SOURCES season_boards.cpp handbook_files.h LIBRARIES Halfcup::season LABELS unit)
