# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# The picture of a colony's loads on its page, touched and measured.
halfcup_test(screens_loads SOURCES loads_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_loads APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
