# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
halfcup_test(desk_due SOURCES desk_due.cpp store_kit.h LIBRARIES Halfcup::desk LABELS unit)
