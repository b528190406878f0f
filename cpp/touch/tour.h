// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

namespace halfcup::touch {

/// Plays a guided wash on the demo yard through the real pages with no hands: real touches on a real window,
/// a set clock, invented fixes. Leaves in the folder a picture of each page at three sizes, the database and
/// the CSV. language: of languages.h, "" the system's. Prints what it does. Returns the exit code: 0, or 1
/// with a sentence on stderr.
int playTour(const QString& folder, const QString& language);

} // namespace halfcup::touch
