// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/table_sentence.h"

#include <QString>

namespace halfcup::exchange {

std::string filledIn(std::string_view text, const std::vector<std::string>& arguments) {
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool mark = text[i] == '%' && i + 1 < text.size() && text[i + 1] >= '1' && text[i + 1] <= '9';
        const std::size_t which = mark ? static_cast<std::size_t>(text[i + 1] - '1') : arguments.size();
        if (which < arguments.size()) {
            result += arguments[which];
            ++i;
        } else {
            result += text[i];
        }
    }
    return result;
}

std::string inEnglish(const TableSentence& sentence) {
    return filledIn(sentence.text, sentence.arguments);
}

std::string shownCell(std::string_view text) {
    constexpr qsizetype most = 40;
    QString shown =
        QString::fromUtf8(text.data(), static_cast<qsizetype>(std::min<std::size_t>(text.size(), 400)));
    for (QChar& c : shown) {
        const auto category = c.category();
        if (category == QChar::Other_Control || category == QChar::Other_Format ||
            category == QChar::Separator_Line || category == QChar::Separator_Paragraph)
            c = u'?';
    }
    if (shown.size() > most) {
        shown.truncate(shown.at(most - 1).isHighSurrogate() ? most - 1 : most);
        shown += QStringLiteral("...");
    }
    return shown.toStdString();
}

} // namespace halfcup::exchange
