# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# The plan of a yard, touched on the real pages.
halfcup_test(screens_yard_plan SOURCES yard_plan_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_yard_plan APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
