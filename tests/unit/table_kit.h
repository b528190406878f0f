// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What the tests of tables share: the tables beside them, and rows by line.
#pragma once

#include "exchange/wash_table.h"

#include <QString>
#include <QTest>

namespace halfcup::tabletest {

inline const records::Date today{2026, 6, 15};

inline exchange::TextTable tableNamed(const char* name) {
    return exchange::readTableFile(QStringLiteral(HALFCUP_SOURCE_DIR "/tests/unit/tables/") +
                                   QLatin1String(name));
}

/// The sentence a table is refused with; empty where it is not.
inline QString refusal(const std::string& bytes) {
    try {
        static_cast<void>(exchange::readTable(bytes));
    } catch (const exchange::TableError& error) {
        return QString::fromUtf8(error.what());
    }
    return {};
}

inline exchange::WashRules rulesFor(const exchange::TextTable& table, const std::string& yard = {}) {
    exchange::WashRules rules;
    rules.match = exchange::guessedMatch(table.names);
    rules.yardForAll = yard;
    rules.today = today;
    return rules;
}

inline std::string english(const exchange::TableSentence& sentence) {
    return exchange::inEnglish(sentence);
}

inline exchange::ReadRow atLine(const std::vector<exchange::ReadRow>& rows, std::size_t line) {
    for (const exchange::ReadRow& row : rows)
        if (row.line == line)
            return row;
    QTest::qFail(("There is no row of line " + std::to_string(line)).c_str(), __FILE__, __LINE__);
    return {};
}

/// The only row of a table with these names and cells, parted by commas.
inline exchange::ReadRow oneRow(const std::string& names, const std::string& cells) {
    const exchange::TextTable table = exchange::readTable(names + "\n" + cells + "\n");
    const auto rules = rulesFor(table, "Home");
    const auto missing = exchange::missingFor(table, rules);
    if (!missing.sentence.empty())
        return {exchange::RowState::Refused, 0, missing.sentence, {}};
    return exchange::readWashes(table, rules).at(0);
}

} // namespace halfcup::tabletest
