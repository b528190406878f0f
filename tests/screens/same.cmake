# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# What two phones made twice, and what lost between them, through the real pages.
halfcup_test(screens_same SOURCES same_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_same APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
