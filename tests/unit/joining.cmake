# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# One thing made on two phones, and what a record was before.
halfcup_test(store_joining SOURCES store_joining.cpp store_kit.h LIBRARIES Halfcup::store LABELS unit)
halfcup_test(store_history SOURCES store_history.cpp store_kit.h LIBRARIES Halfcup::store LABELS unit)
halfcup_test(place_same SOURCES place_same.cpp LIBRARIES Halfcup::place LABELS unit)
