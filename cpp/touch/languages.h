// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

#include <vector>

namespace halfcup::touch {

/// A language of the app: its files are assets/languages/halfcup_CODE.ts and assets/pages/CODE/.
struct Language {
    QString code; // ISO 639-1: "de"
    QString name; // in itself: "Deutsch"
};

/// All there are, by name.
[[nodiscard]] const std::vector<Language>& languages();

/// The code to use for a wish: a code whose words there are stands for itself; anything else (as "", the
/// phone's own) is the first of the phone's languages that there is, else English.
[[nodiscard]] QString languageFor(const QString& wish);

/// From now on texts, numbers and dates are in that language, by the habits of the phone's country where they
/// are known for that language. Texts that pages already show stay: put the program together again.
void useLanguage(const QString& wish);

} // namespace halfcup::touch
