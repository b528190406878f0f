# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Counting the keeper's own scoops, touched through on the real pages.
halfcup_test(screens_scoops SOURCES scoops_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_scoops APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
