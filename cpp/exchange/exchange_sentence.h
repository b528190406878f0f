// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/exchange_reader.h"

#include <string>
#include <vector>

/// What came out of reading an exchange file, in English, for the program without a screen. The app has its
/// own sentences, which can be translated.
namespace halfcup::exchange {

/// One sentence, or two: why the file is not taken, or what of it was read and what is wrong with the rest.
/// The lines are not named in it.
[[nodiscard]] std::string sentenceFor(const ExchangeReport& report);

/// "Line 12: ..." for each damaged line that the report names, and last how many more there are. None for a
/// file that is refused as a whole.
[[nodiscard]] std::vector<std::string> damagedLineSentences(const ExchangeReport& report);

} // namespace halfcup::exchange
