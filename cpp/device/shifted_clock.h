// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/clock.h"

#include <memory>

namespace halfcup::device {

/// A running clock whose wall time starts at a chosen moment and then goes on at the pace of the real one.
///
/// The demo and the tour use it: the demo yard's washes are then always "last month", whatever today is.
/// bootMs, monotonicMs and bootId are those of the clock beneath, so timing is real. Jumps of the real wall
/// clock are jumps here too.
class ShiftedClock final : public Clock {
public:
    /// real: the clock beneath, owned; must not be null. startUtcMs: what utcMs reads at this moment.
    ShiftedClock(std::unique_ptr<Clock> real, std::int64_t startUtcMs);
    [[nodiscard]] ClockReading now() const override;
    /// The offset in force at the moment asked about, not at today's date.
    [[nodiscard]] int utcOffsetMinutes(std::int64_t utcMs) const override;

private:
    std::unique_ptr<Clock> m_real;
    std::int64_t m_shiftMs;
};

} // namespace halfcup::device
