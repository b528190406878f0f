# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(records_on_day SOURCES records_on_day.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_event_check SOURCES records_event_check.cpp LIBRARIES Halfcup::records LABELS unit)
