// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/random_source.h"

#include <random>

namespace halfcup::device {

/// The same numbers for the same seed on every machine: mt19937_64, whose values the C++ standard fixes.
class SeededRandom final : public RandomSource {
public:
    explicit SeededRandom(std::uint64_t seed = 1);
    [[nodiscard]] std::uint64_t next() override;

private:
    std::mt19937_64 m_engine;
};

} // namespace halfcup::device
