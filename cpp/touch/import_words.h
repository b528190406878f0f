// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/wash_import.h"

#include <QString>

namespace halfcup::touch::importing {

/// A sentence about a table in the keeper's language.
[[nodiscard]] QString said(const exchange::TableSentence& sentence);
[[nodiscard]] QString title(exchange::WashField field);
/// What a column holds, for choosing: its name, or its place where it has none.
[[nodiscard]] QString columnName(const exchange::TextTable& table, std::size_t column);
/// "for example 18.05.2023", of the first row that has something there; empty where none has.
[[nodiscard]] QString example(const exchange::TextTable& table, std::size_t column);
/// "18 May 2023, 9 mites on about 300 bees, alcohol wash".
[[nodiscard]] QString washLine(const records::Sample& sample);
/// "Over your line: 3.2 per 100 (1.6 to 6.3)".
[[nodiscard]] QString loadLine(const records::Sample& judged);

} // namespace halfcup::touch::importing
