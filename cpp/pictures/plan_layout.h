// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/label_room.h"

#include <optional>
#include <vector>

namespace halfcup::pictures {

/// A mark that is to be drawn at a point with a text beside it.
struct PlanMark {
    QPointF at;  // where it truly lies
    QSizeF text; // room of its text; empty: none
};

/// Where it came to lie.
struct PlacedMark {
    QPointF middle; // of the mark; another than where it truly lies where it had to make room
    QRectF text;    // empty where it has none
};

/// Room for all marks, squares of that side, and their texts: each where it truly lies as long as nothing
/// lies there, else as near to it as there is room. Takes what it uses out of the room. Nothing where the
/// room is too small for all.
[[nodiscard]] std::optional<std::vector<PlacedMark>>
placeMarks(const std::vector<PlanMark>& marks, double side, const QRectF& area, LabelRoom& room);

} // namespace halfcup::pictures
