# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# What to treat with, the record, whether it worked and the season, touched through on the real pages.
halfcup_test(screens_season SOURCES season_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_season APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
