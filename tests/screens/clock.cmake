# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# The real pages under clocks that are wrong.
halfcup_test(screens_clock SOURCES clock_test.cpp LIBRARIES halfcup_stage LABELS faults TIMEOUT 600)
set_property(TEST screens_clock APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
