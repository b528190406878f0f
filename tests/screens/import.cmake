# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# A table of earlier washes, taken in by touch on the real pages, and the pages measured.
halfcup_test(screens_import SOURCES import_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_import APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
