# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# The season's strip, the colonies compared, and before and after a treatment, on the real pages.
halfcup_test(screens_yard_pictures SOURCES yard_pictures_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_yard_pictures APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
