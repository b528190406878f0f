// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/drawing.h"
#include "pictures/type.h"

#include <QRectF>

#include <span>
#include <vector>

namespace halfcup::pictures {

/// Finds room for words so that none lies on another and none is cut. Ask for the words that matter most
/// first.
class LabelRoom {
public:
    /// area: where words may stand at all. gap: least distance between two, units.
    explicit LabelRoom(const QRectF& area, double gap = 2);

    /// Nothing may stand there any more.
    void block(const QRectF& box) { m_taken.push_back(box); }
    [[nodiscard]] bool isFree(const QRectF& box) const;
    /// The first of the places that is free, taken from now on; nothing where none is.
    [[nodiscard]] std::optional<QRectF> take(std::span<const QRectF> places);
    /// The same for one place.
    bool take(const QRectF& place);

private:
    QRectF m_area;
    double m_gap;
    std::vector<QRectF> m_taken;
};

} // namespace halfcup::pictures
