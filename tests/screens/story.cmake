# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# What happens to colonies, through the real pages.
halfcup_test(screens_story SOURCES story_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_story APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
