# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Files for people, written from the real page, and the page measured with each kind chosen.
halfcup_test(screens_export SOURCES export_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_export APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
