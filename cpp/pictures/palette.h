// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/drawing.h"

#include <QColor>

#include <array>

namespace halfcup::pictures {

/// The colours of a picture. Ink, Quiet and Action stand at 7:1 or more on Page and Field (WCAG 2.2, 1.4.6);
/// a test measures it. Honey, Sky and Green are hues by Okabe and Ito, which keep apart for eyes that mix up
/// red and green.
class Palette {
public:
    [[nodiscard]] static const Palette& day();
    [[nodiscard]] static const Palette& dusk();
    [[nodiscard]] static const Palette& paper(); // fit for a printer without colours

    [[nodiscard]] QColor of(Tone tone) const { return m_colors[static_cast<std::size_t>(tone)]; }

private:
    using Colors = std::array<QColor, 10>; // in the order of Tone
    explicit Palette(const Colors& colors)
        : m_colors(colors) {}

    Colors m_colors;
};

} // namespace halfcup::pictures
