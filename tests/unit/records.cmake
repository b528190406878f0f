# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(records_ids SOURCES records_ids.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_moment SOURCES records_moment.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_shake SOURCES records_shake.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_count SOURCES records_count.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_typed SOURCES records_typed.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_fields SOURCES records_fields.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_named_values SOURCES records_named_values.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_judgement SOURCES records_judgement.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_season SOURCES records_season.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_scoops SOURCES records_scoops.cpp LIBRARIES Halfcup::records LABELS unit)
halfcup_test(records_clean SOURCES records_clean.cpp LIBRARIES Halfcup::records LABELS unit)
