// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"

namespace halfcup::handbook {

/// The values of assets/handbook, compiled in. Throws HandbookError where a file is wrong: tests see to it.
[[nodiscard]] Handbook builtIn();

} // namespace halfcup::handbook
