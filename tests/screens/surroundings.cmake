# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(screens_surroundings SOURCES surroundings_test.cpp LIBRARIES halfcup_stage TIMEOUT 300)
set_property(TEST screens_surroundings APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
