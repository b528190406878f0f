// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

namespace halfcup::exchange {

/// The check sum of a line: CRC-32 (the one of ISO 3309, Ethernet and zip files) as eight lower-case
/// hexadecimal digits. It finds every single flipped bit and every run of up to 32; against a forger it does
/// nothing, and need not.
[[nodiscard]] std::string lineSum(std::string_view text);

} // namespace halfcup::exchange
