# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Each way of counting, and the tray, touched through on the real pages.
halfcup_test(screens_methods SOURCES methods_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_methods APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
halfcup_test(screens_tray SOURCES tray_test.cpp LIBRARIES halfcup_stage TIMEOUT 600)
set_property(TEST screens_tray APPEND PROPERTY ENVIRONMENT QT_QUICK_BACKEND=software)
