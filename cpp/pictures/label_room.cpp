// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/label_room.h"

#include <algorithm>

namespace halfcup::pictures {

namespace {

constexpr double rounding = 1e-6; // what sums of places may be off by

} // namespace

LabelRoom::LabelRoom(const QRectF& area, double gap)
    : m_area(area.adjusted(-rounding, -rounding, rounding, rounding))
    , m_gap(gap) {}

bool LabelRoom::isFree(const QRectF& box) const {
    const QRectF wide =
        box.adjusted(-m_gap + rounding, -m_gap + rounding, m_gap - rounding, m_gap - rounding);
    return m_area.contains(box) &&
           std::ranges::none_of(m_taken, [&](const QRectF& taken) { return taken.intersects(wide); });
}

std::optional<QRectF> LabelRoom::take(std::span<const QRectF> places) {
    for (const QRectF& place : places)
        if (take(place))
            return place;
    return std::nullopt;
}

bool LabelRoom::take(const QRectF& place) {
    if (!isFree(place))
        return false;
    m_taken.push_back(place);
    return true;
}

} // namespace halfcup::pictures
