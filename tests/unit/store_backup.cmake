# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(store_backup SOURCES store_backup.cpp store_kit.h LIBRARIES Halfcup::store LABELS unit)
halfcup_test(store_restore SOURCES store_restore.cpp store_kit.h killed_at.h LIBRARIES Halfcup::store LABELS unit TIMEOUT 300)
