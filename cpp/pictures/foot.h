// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace halfcup::pictures {

/// Exact, by the agreement of 1959 on the international yard and pound.
inline constexpr double metresPerFoot = 0.3048;

} // namespace halfcup::pictures
