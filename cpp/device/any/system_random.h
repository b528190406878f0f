// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/random_source.h"

namespace halfcup::device {

/// The operating system's own generator, through Qt (getrandom(2) on Linux).
class SystemRandom final : public RandomSource {
public:
    [[nodiscard]] std::uint64_t next() override;
};

} // namespace halfcup::device
