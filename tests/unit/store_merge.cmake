# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(store_merge SOURCES store_merge.cpp store_kit.h LIBRARIES Halfcup::store LABELS unit)
halfcup_test(store_histories SOURCES store_histories.cpp store_kit.h LIBRARIES Halfcup::store Halfcup::exchange
    LABELS unit TIMEOUT 900)
halfcup_test(exchange_folder SOURCES exchange_folder.cpp store_kit.h LIBRARIES Halfcup::store Halfcup::exchange
    LABELS unit)
