// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"
#include "pictures/drawing.h"

#include <optional>

namespace halfcup::pictures {

/// The mark of a standing: a drop that hangs under a line, lies on it or stands over it; a question mark
/// where nobody can tell yet, a short dash where nothing is known. Told apart by shape; the fill only repeats
/// it. Laid over the drawing as large as fits into the middle of the room.
void addStanding(Drawing& drawing, std::optional<mites::Standing> standing, const QRectF& room);

} // namespace halfcup::pictures
