// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Rows of tables as washes, each with its sentence where it is refused or in question.
#include "table_kit.h"

#include "mites/scoop.h"

#include <cmath>

using namespace halfcup;
using namespace halfcup::exchange;
using namespace halfcup::tabletest;

namespace {

std::string dayOf(const ReadRow& row) {
    return records::toIso(records::localDate(row.wash.at));
}

QString said(const std::string& names, const std::string& cells) {
    return QString::fromStdString(english(oneRow(names, cells).sentence));
}

} // namespace

class ExchangeWashes : public QObject {
    Q_OBJECT

private slots:
    void aGermanOfficeTable() {
        const TextTable table = tableNamed("office-de.csv");
        QCOMPARE(table.code, TextCode::Windows1252);
        const WashRules rules = rulesFor(table);
        QVERIFY(missingFor(table, rules).sentence.empty());
        const auto rows = readWashes(table, rules);
        QCOMPARE(rows.size(), std::size_t{4});
        const ReadRow& first = rows[0];
        QCOMPARE(first.state, RowState::Good);
        QCOMPARE(records::toRfc3339(first.wash.at), std::string("2023-05-18T09:40:00Z"));
        QVERIFY(first.wash.timeGiven);
        QCOMPARE(first.wash.yard, std::string("Mühlgarten"));
        QCOMPARE(first.wash.mites, 9);
        QCOMPARE(first.wash.scoop.beesMean, 302.5);
        QCOMPARE(first.wash.scoop.beesCv, records::typedBeesCv);
        QCOMPARE(first.wash.note, std::string("Brut gesund; Königin gesehen"));
        QCOMPARE(rows[1].wash.method, std::string("sugar_roll"));
        QCOMPARE(records::toRfc3339(rows[2].wash.at), std::string("2023-06-03T12:00:00Z"));
        QVERIFY(!rows[2].wash.timeGiven);
        QCOMPARE(rows[3].wash.method, std::string("soapy_wash"));
        QCOMPARE(rows[3].wash.note, std::string("Größe – gut"));
    }

    void aFrenchTableOfRates() {
        const TextTable table = tableNamed("office-fr.csv");
        QCOMPARE(table.code, TextCode::Utf16);
        const auto rows = readWashes(table, rulesFor(table));
        QCOMPARE(rows.size(), std::size_t{3});
        QCOMPARE(dayOf(rows[0]), std::string("2023-06-03")); // 14/6 settles that the day comes first
        QCOMPARE(rows[0].wash.mites, 10);                    // 3,33 per 100 of 300
        QCOMPARE(rows[1].wash.mites, 2);                     // 0,71 of 280
        QCOMPARE(rows[1].wash.note, std::string("essaim de l'été"));
        QCOMPARE(rows[2].state, RowState::Refused);
        QVERIFY(QString::fromStdString(english(rows[2].sentence)).contains("which is no whole number"));
    }

    void everySlipOfAClubTableHasItsLineAndSentence() {
        const TextTable table = tableNamed("club.csv");
        QVERIFY(QString::fromStdString(english(missingFor(table, rulesFor(table)).sentence))
                    .startsWith("No column names the yard"));
        const auto rows = readWashes(table, rulesFor(table, "Club yard"));
        const auto is = [&](std::size_t line, RowState state, const char* begins) {
            const ReadRow row = atLine(rows, line);
            const QString sentence = QString::fromStdString(english(row.sentence));
            const bool fits = row.state == state && sentence.startsWith(QLatin1String(begins));
            if (!fits)
                qWarning("Line %zu: %s", line, qPrintable(sentence));
            return fits;
        };
        QVERIFY(is(2, RowState::Good, ""));
        QVERIFY(is(3, RowState::Good, ""));
        QCOMPARE(atLine(rows, 3).wash.note, std::string("two\nlines, and a comma"));
        QVERIFY(is(5, RowState::Question, "400 mites on 300 bees: are the two swapped?"));
        QVERIFY(is(6, RowState::Refused, "no count of mites is given."));
        QVERIFY(is(7, RowState::Refused, "\"2021-13-20\" is not a day."));
        QVERIFY(is(8, RowState::Refused, "the day 2031-06-20 is still to come."));
        QVERIFY(is(9, RowState::Refused, "the day 1980-06-20 is before 1990."));
        QVERIFY(is(10, RowState::Refused, "Bees washed \"0\" is too small: at least 10."));
        QVERIFY(is(11, RowState::Refused, "Mites counted \"20000\" is too large: at most 10000."));
        QVERIFY(is(12, RowState::Refused, "Mites counted \"-1\" is too small: at least 0."));
        QVERIFY(is(13, RowState::Refused, "Mites counted \"three\" is not a number."));
        QVERIFY(is(14, RowState::Refused, "Mites counted \"2.5\" is not a whole number."));
        QVERIFY(is(15, RowState::Refused, "there is no colony."));
        QVERIFY(is(16, RowState::Refused, "the row of names has 5 cells, this one 3."));
        QVERIFY(is(17, RowState::Question, "no bees are given: taken as half a cup."));
        QVERIFY(is(18, RowState::Refused, "a quotation mark is opened and not closed."));
        QVERIFY(is(19, RowState::Good, ""));
        QVERIFY(is(21, RowState::Good, ""));
        QCOMPARE(rows.size(), std::size_t{18}); // the blank row is none; nothing else is missing
    }

    void beesFromTheScoop() {
        const ReadRow ml = oneRow("day,colony,mites,ml", "2024-05-01,4,3,100");
        QCOMPARE(ml.wash.scoop.beesMean, mites::scoopFromVolume(100).mean);
        QCOMPARE(ml.wash.scoop.source, records::Scoop::BeesSource::Book);
        // Half a US cup, 300 bees in the middle: the trade's measure.
        const ReadRow cups = oneRow("day,colony,mites,cups", "2024-05-01,4,3,\"0,5\"");
        QVERIFY(std::abs(cups.wash.scoop.volumeMl - records::halfCupMl) < 1e-9);
        QVERIFY(std::abs(cups.wash.scoop.beesMean / mites::scoopFromVolume(mites::kHalfCupMl).mean - 1) <
                1e-5);
        QCOMPARE(said("day,colony,mites,cups", "2024-05-01,4,3,9"),
                 QStringLiteral("Scoop in cups \"9\" is too large: at most 4.2268."));
        const ReadRow none = oneRow("day,colony,mites", "2024-05-01,4,3");
        QCOMPARE(none.state, RowState::Good); // said of the whole table, not of each row
        QCOMPARE(none.wash.scoop.volumeMl, records::halfCupMl);
    }

    void ratesComeOutWholeOrAreRefused() {
        const std::string names = "day,colony,bees,mites per 100";
        const auto mites = [&](const char* cells) {
            const ReadRow row = oneRow(names, std::string("2024-05-01,4,") + cells);
            return row.state == RowState::Refused ? -1 : row.wash.mites;
        };
        QCOMPARE(mites("300,3"), 9);
        QCOMPARE(mites("310,\"2,9\""), 9); // 8.99
        QCOMPARE(mites("300,2.33"), 7);
        QCOMPARE(mites("300,2.5"), -1);
        QCOMPARE(mites("300,1.1"), -1); // 3.3: within half a step, 0.15, there is no whole number
        QCOMPARE(mites("310,3"), -1);   // 9.3, rounded to whole: may be 8 to 10
        QCOMPARE(mites("300,0"), 0);
        QVERIFY(said("day,colony,mites per 100", "2024-05-01,4,3").contains("Which column holds the bees"));
    }

    void daysAreAskedWhereTheyCanBeReadInTwoWays() {
        const TextTable table = readTable("day,colony,mites\n05/06/2024,4,1\n07/08/2024,4,2\n");
        WashRules rules = rulesFor(table, "Home");
        const Missing missing = missingFor(table, rules);
        QVERIFY(missing.dayOrder);
        QCOMPARE(
            english(missing.sentence),
            std::string("\"07/08/2024\" can be read in two ways. Which comes first, the day or the month?"));
        rules.order = DayOrder::MonthDayYear;
        QVERIFY(missingFor(table, rules).sentence.empty());
        QCOMPARE(dayOf(readWashes(table, rules)[0]), std::string("2024-05-06"));
        const TextTable mixed = readTable("day,colony,mites\n18/06/2024,4,1\n06/18/2024,4,2\n");
        rules.order.reset();
        QVERIFY(missingFor(mixed, rules).dayOrder);
        rules.order = DayOrder::DayMonthYear;
        const auto rows = readWashes(mixed, rules);
        QCOMPARE(rows[0].state, RowState::Good);
        QCOMPARE(english(rows[1].sentence), std::string("\"06/18/2024\" is not a day."));
    }

    void whatIsMissingIsAsked() {
        const auto asked = [](const char* names) {
            const TextTable table = readTable(std::string(names) + "\n");
            return QString::fromStdString(english(missingFor(table, rulesFor(table, "Home")).sentence));
        };
        QCOMPARE(asked("colony,mites"), QStringLiteral("Which column holds the day?"));
        QCOMPARE(asked("day,mites"), QStringLiteral("Which column names the colony?"));
        QCOMPARE(asked("day,colony"), QStringLiteral("Which column holds the mites?"));
        QCOMPARE(asked("day,colony,mites"), QString());
    }

    void oddTexts() {
        // Kept as they are; a cell that is a formula is a text here, and no sentence breaks a line.
        const ReadRow formula = oneRow("day,colony,mites,note", "2024-05-01,=cmd|' /C calc'!A0,3,+1");
        QCOMPARE(formula.state, RowState::Good);
        QCOMPARE(formula.wash.colony, std::string("=cmd|' /C calc'!A0"));
        QCOMPARE(formula.wash.note, std::string("+1"));
        QVERIFY(said("day,colony,mites", "2024-05-01," + std::string(61, 'x') + ",3").contains("60 letters"));
        const QString turned = said("day,colony,mites", "2024-05-01,4,\"\xE2\x80\xAE"
                                                        "9\n9\"");
        QCOMPARE(turned, QStringLiteral("Mites counted \"?9?9\" is not a number."));
        const std::string longNote(3000, 'n');
        const ReadRow row = oneRow("day,colony,mites,note", "2024-05-01,4,3," + longNote);
        QCOMPARE(row.state, RowState::Question);
        QCOMPARE(row.wash.note.size(), longestNoteBytes);
        QCOMPARE(said("day,colony,mites,method", "2024-05-01,4,3,sticky_board"),
                 QStringLiteral(
                     "a sticky board or drone brood gives no load: only washes and rolls are taken in."));
        QVERIFY(said("day,colony,mites,method", "2024-05-01,4,3,guess").contains("is not known here"));
        QCOMPARE(oneRow("day,colony,mites,method", "2024-05-01,4,3,").state, RowState::Question);
    }

    void whatIsTakenForGrantedIsSaid() {
        const TextTable table = readTable("day,colony,mites\n2024-05-01,4,3\n");
        QStringList said;
        for (const TableSentence& each : takenForGranted(table, rulesFor(table, "Home")))
            said.append(QString::fromStdString(english(each)));
        const QString all = said.join('\n');
        for (const char* part : {"half a cup, by the book", "all are taken as alcohol washes", "it is noon"})
            QVERIFY2(all.contains(QLatin1String(part)), part);
        QVERIFY(!all.contains("Windows-1252"));
    }
};

QTEST_GUILESS_MAIN(ExchangeWashes)
#include "exchange_washes.moc"
