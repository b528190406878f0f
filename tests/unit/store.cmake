# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(store_records SOURCES store_records.cpp store_kit.h LIBRARIES Halfcup::store LABELS unit)
halfcup_test(store_files SOURCES store_files.cpp store_kit.h LIBRARIES Halfcup::store LABELS unit)
halfcup_test(store_migration SOURCES store_migration.cpp store_kit.h LIBRARIES Halfcup::store LABELS unit)
halfcup_test(store_season SOURCES store_season.cpp store_kit.h LIBRARIES Halfcup::store LABELS unit)
