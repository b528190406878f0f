// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/standing_word.h"

namespace halfcup::touch {

StandingWord::Value StandingWord::from(mites::Standing standing) {
    switch (standing) {
    case mites::Standing::Under:
        return Under;
    case mites::Standing::Close:
        return Close;
    case mites::Standing::Over:
        return Over;
    case mites::Standing::CannotTell:
        return CannotTell;
    }
    return Unknown;
}

std::optional<mites::Standing> StandingWord::standingOf(int value) {
    switch (value) {
    case Under:
        return mites::Standing::Under;
    case Close:
        return mites::Standing::Close;
    case Over:
        return mites::Standing::Over;
    case CannotTell:
        return mites::Standing::CannotTell;
    default:
        return std::nullopt;
    }
}

} // namespace halfcup::touch
