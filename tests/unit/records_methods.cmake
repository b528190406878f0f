# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(records_methods SOURCES records_methods.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_tray SOURCES records_tray.cpp LIBRARIES Halfcup::records LABELS unit)
