# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# A yard round by touch, and its pages measured.
halfcup_test(screens_round SOURCES round_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_round APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
