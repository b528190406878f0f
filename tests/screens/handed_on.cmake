# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Files on their way out and in by the phone's own ways, and a browser's words for them.
halfcup_test(screens_handed_on SOURCES handed_on_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_handed_on APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
