// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

#include <vector>

namespace halfcup::pictures {

/// Loads in mites per 100 bees, upright. Plain where all that is to be shown is near the line; logarithmic
/// above one mite per 100 bees, and plain below, where a few high loads would press the rest to the ground:
/// place = ln(1 + load), so that zero stays where it is.
class LoadAxis {
public:
    /// highest: the largest load that is to be seen, 0 or more; line: the treat line, 0 where there is none;
    /// bottom and top: where zero and the end of the axis lie, top above bottom (the smaller y).
    LoadAxis(double highest, double line, double bottom, double top);

    [[nodiscard]] bool isLogarithmic() const { return m_logarithmic; }
    [[nodiscard]] double end() const { return m_end; } // load at the top, a round figure over the highest
    /// What is below zero lies at zero, what is over the end at the top.
    [[nodiscard]] double y(double load) const;
    /// Round loads to write beside the axis, zero first, as many as may be told apart at that distance.
    [[nodiscard]] std::vector<double> ticks(double leastDistance) const;
    /// "0", "2.5", "40" in the language of the application.
    [[nodiscard]] static QString text(double load);

    /// A highest load of more than this many lines, or of more than this where there is none, is shown
    /// logarithmically. [convention] By then the line would lie in the lowest sixth.
    static constexpr double mostLines = 6;
    static constexpr double mostPlain = 20;

private:
    [[nodiscard]] double share(double load) const; // 0 to 1

    bool m_logarithmic = false;
    double m_end = 1;
    double m_bottom = 0;
    double m_top = 0;
};

} // namespace halfcup::pictures
