# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(season_due SOURCES season_due.cpp LIBRARIES Halfcup::season LABELS unit)
halfcup_test(season_order SOURCES season_order.cpp LIBRARIES Halfcup::season LABELS unit)
