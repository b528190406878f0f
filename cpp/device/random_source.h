// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>

namespace halfcup::device {

/// Chance. Record ids are made from it, so two phones must never draw the same numbers: next() of the
/// system's source is fit for that (it is the operating system's own generator). Does not fail. One thread
/// only.
class RandomSource {
public:
    virtual ~RandomSource() = default;
    /// 64 bits, every value equally likely.
    [[nodiscard]] virtual std::uint64_t next() = 0;
};

} // namespace halfcup::device
