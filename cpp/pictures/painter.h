// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/drawing.h"
#include "pictures/palette.h"
#include "pictures/type.h"

class QPainter;

namespace halfcup::pictures {

/// Paints a drawing with its upper left corner at the painter's origin, in the painter's units. The one
/// painter of all pictures, on glass and on paper; type must be the one that the drawing was made with.
/// Leaves the painter as it found it.
void paint(QPainter& painter, const Drawing& drawing, const Palette& palette, const Type& type);

} // namespace halfcup::pictures
