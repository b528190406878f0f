# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Files for another phone and from one, touched through on the real pages.
find_package(SQLite3 REQUIRED)
halfcup_test(screens_plan SOURCES plan_test.cpp LIBRARIES halfcup_stage SQLite::SQLite3 TIMEOUT 600)
set_property(TEST screens_plan APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
