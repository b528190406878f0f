// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"
#include "records/moment.h"

#include <QString>

/// Figures and days as pictures write them. Loads and standings read as they do on the pages: a test holds
/// them against touch/words.h.
namespace halfcup::pictures::words {

/// A load in mites per 100 bees, as sure as it is: "3.2", "16", "0".
[[nodiscard]] QString load(double per100);
/// "18 May"; empty for a day that does not exist.
[[nodiscard]] QString day(const records::Date& date);
/// "Over your line" and the three others.
[[nodiscard]] QString standing(mites::Standing standing);

} // namespace halfcup::pictures::words
