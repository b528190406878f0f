// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/forecast_text.h"
#include "season/phrase.h"

#include <QString>

namespace halfcup::touch {

/// What a phrase is said with: the keeper's units, and the day from which a date needs its year.
struct PhraseStyle {
    season::TemperatureUnit temperature = season::TemperatureUnit::Celsius;
    records::Date today;
};

/// A phrase in the keeper's language (context "Phrase") and number format. Always plain text.
[[nodiscard]] QString said(const season::Phrase& phrase, const PhraseStyle& style);

} // namespace halfcup::touch
