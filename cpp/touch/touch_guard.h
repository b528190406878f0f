// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPointF>

#include <cstdint>
#include <deque>
#include <optional>

namespace halfcup::touch {

/// Tells a finger from what only looks like one to the glass, while mites are counted. Lengths in millimetres
/// of the glass, times in milliseconds of any clock that goes forward.
class TouchGuard {
public:
    /// A drop of water makes one touch two: within so short a time at one point it is one. Nobody taps faster
    /// than every 50 ms. [convention]
    static constexpr std::int64_t ghostMs = 40;
    static constexpr double samePointMm = 4;
    /// The ball of the thumb lies on the edge of the glass, or on much of it. A finger in a glove covers up
    /// to 20 mm. [convention]
    static constexpr double edgeMm = 3;
    static constexpr double palmMm = 30;

    struct Press {
        std::int64_t atMs = 0;
        QPointF atMm;                      // from the upper left corner of the glass
        std::optional<double> wideMm = {}; // of the contact, where the glass tells
    };

    /// Whether the press is a finger's. Ask once for each, in the order in which they come.
    [[nodiscard]] bool counts(const Press& press, double glassWidthMm);

private:
    std::deque<Press> m_lately; // presses of the last ghostMs, ghosts too: a drop may stutter on
};

} // namespace halfcup::touch
