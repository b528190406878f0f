# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(season_round SOURCES season_round.cpp mites_tables.h LIBRARIES Halfcup::season LABELS unit)
