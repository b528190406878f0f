// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>

#include <algorithm>

/// By how much a limit of time is to be multiplied, at least 1: as ctest's own limits are
/// (HALFCUP_TEST_PATIENCE), for a machine that is busy, or played by another one.
inline double patience() {
    return std::max(1.0, qgetenv("HALFCUP_TEST_PATIENCE").toDouble());
}
