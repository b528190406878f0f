// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/wash_table.h"

#include "mites/scoop.h"
#include "records/clean_text.h"
#include "records/count.h"
#include "records/method.h"
#include "records/typed_input.h"

#include <QByteArray>

#include <algorithm>
#include <array>
#include <cmath>

namespace halfcup::exchange {

namespace {

using F = WashField;

constexpr double usCupMl = 2 * records::halfCupMl;
constexpr int noon = 12 * 60; // minutes
constexpr std::int64_t minuteMs = 60'000;

/// What the writer of our own tables puts an apostrophe in front of (csv_writer.h).
bool isDefused(std::string_view text) {
    constexpr std::array<std::string_view, 11> begins{"'=",
                                                      "'+",
                                                      "'-",
                                                      "'@",
                                                      "'\t",
                                                      "'\r",
                                                      "'\n",
                                                      "'\xEF\xBC\x9D",
                                                      "'\xEF\xBC\x8B",
                                                      "'\xEF\xBC\x8D",
                                                      "'\xEF\xBC\xA0"};
    return std::ranges::any_of(begins, [&](std::string_view begin) { return text.starts_with(begin); });
}

/// Thrown to leave one row with its sentence.
struct Refusal {
    TableSentence sentence;
};

[[noreturn]] void refuse(const char* text, std::vector<std::string> arguments = {}) {
    throw Refusal{{text, std::move(arguments)}};
}

/// One row being read.
class RowReader {
public:
    RowReader(const TextTable& table, const WashRules& rules, std::optional<DayOrder> order,
              const TableRow& row)
        : m_table(table)
        , m_rules(rules)
        , m_order(order)
        , m_row(row)
        , m_own(isOwnTable(table.names)) {}

    ReadRow read();

private:
    std::string_view cell(F field) const {
        const auto column = m_rules.match[field];
        return column ? m_row.cell(*column) : std::string_view();
    }
    std::string text(F field) const;
    void ask(const char* text, std::vector<std::string> arguments = {});
    double number(F field, double smallest, double largest) const;
    std::int64_t count(F field) const;

    void readMoment(TableWash& wash) const;
    void readPlace(TableWash& wash) const;
    void readMethod(TableWash& wash);
    void readBees(TableWash& wash);
    void readMites(TableWash& wash);
    void readNote(TableWash& wash);

    const TextTable& m_table;
    const WashRules& m_rules;
    std::optional<DayOrder> m_order;
    const TableRow& m_row;
    bool m_own;
    bool m_beesKnown = false;
    TableSentence m_question;
};

/// In a table of our own, texts are defused with an apostrophe in front: it goes again. What a record does
/// not keep goes here already: two names that differ in that alone would be two yards of one name.
std::string RowReader::text(F field) const {
    std::string_view text = cell(field);
    if (m_own && isDefused(text))
        text.remove_prefix(1);
    return records::cleanText(text);
}

/// The first question is asked; a keeper who looks at the row sees the rest.
void RowReader::ask(const char* text, std::vector<std::string> arguments) {
    if (m_question.empty())
        m_question = {text, std::move(arguments)};
}

double RowReader::number(F field, double smallest, double largest) const {
    using Trouble = WrittenNumber::Trouble;
    const std::string_view text = cell(field);
    const WrittenNumber read = readTableNumber(text, smallest, largest);
    const auto shortly = [](double limit) { return QByteArray::number(limit, 'g', 5).toStdString(); };
    switch (read.trouble) {
    case Trouble::None:
        return read.value;
    case Trouble::TwoWays:
        refuse(tableText("%1 \"%2\" may be a thousand times more or not: write it without a mark."),
               {titleOf(field), shownCell(text)});
    case Trouble::NotANumber:
        refuse(tableText("%1 \"%2\" is not a number."), {titleOf(field), shownCell(text)});
    case Trouble::TooSmall:
        refuse(tableText("%1 \"%2\" is too small: at least %3."),
               {titleOf(field), shownCell(text), shortly(smallest)});
    case Trouble::TooLarge:
        break;
    }
    refuse(tableText("%1 \"%2\" is too large: at most %3."),
           {titleOf(field), shownCell(text), shortly(largest)});
}

std::int64_t RowReader::count(F field) const {
    const double value = number(field, 0, static_cast<double>(records::largestCount));
    if (value != std::floor(value))
        refuse(tableText("%1 \"%2\" is not a whole number."), {titleOf(field), shownCell(cell(field))});
    return static_cast<std::int64_t>(value);
}

void RowReader::readMoment(TableWash& wash) const {
    const std::string_view written = cell(F::Day);
    if (written.empty())
        refuse(tableText("there is no day."));
    records::Date day;
    if (const auto whole = records::parseRfc3339(written)) { // with its offset
        wash.at = *whole;
        wash.timeGiven = true;
        day = records::localDate(wash.at);
    } else {
        const auto read = readDay(written, m_order, m_rules.today);
        if (!read)
            refuse(tableText("\"%1\" is not a day."), {shownCell(written)});
        day = read->day;
        std::string_view time = cell(F::Time);
        if (time.empty()) {
            time = read->rest;
            if (time.starts_with('T') || time.starts_with(','))
                time.remove_prefix(1);
        }
        time = trimmedCell(time);
        int minutes = noon;
        if (!time.empty()) {
            const auto clock = readClock(time);
            if (!clock)
                refuse(tableText("\"%1\" is not a time of day."), {shownCell(time)});
            minutes = *clock;
            wash.timeGiven = true;
        }
        wash.at = {records::daysSinceEpoch(day) * 24 * 60 * minuteMs + minutes * minuteMs, 0};
    }
    if (day > m_rules.today)
        refuse(tableText("the day %1 is still to come."), {records::toIso(day)});
    if (day.year < earliestYear)
        refuse(tableText("the day %1 is before %2."), {records::toIso(day), std::to_string(earliestYear)});
}

void RowReader::readPlace(TableWash& wash) const {
    using Problem = records::InputProblem;
    wash.yard = m_rules.match.has(F::Yard) ? text(F::Yard) : records::cleanText(m_rules.yardForAll);
    wash.colony = text(F::Colony);
    const auto yard = records::checkName(wash.yard), colony = records::checkName(wash.colony);
    if (yard)
        *yard == Problem::Empty ? refuse(tableText("there is no yard."))
                                : refuse(tableText("the name of the yard is longer than 60 letters."));
    if (colony)
        *colony == Problem::Empty ? refuse(tableText("there is no colony."))
                                  : refuse(tableText("the label of the colony is longer than 60 letters."));
}

/// Words of the trade for the three ways that give a load, as comparableName() writes them; from memory.
std::string_view methodIn(const std::string& words) {
    const auto has = [&](std::string_view part) { return words.find(part) != std::string::npos; };
    if (has("sugar") || has("azucar") || has("sucre") || has("zucker"))
        return "sugar_roll";
    if (has("soap") || has("jabon") || has("savon") || has("seife") || has("detergent") ||
        has("detergente") || has("dish") || has("spul"))
        return "soapy_wash";
    if (has("alcohol") || has("alcool") || has("alkohol") || has("ethanol") || has("etanol") ||
        has("spiritus") || words == "wash" || words == "lavado" || words == "lavage" ||
        words == "auswaschen" || words == "auswaschung")
        return "alcohol_wash";
    return {};
}

void RowReader::readMethod(TableWash& wash) {
    wash.method = records::alcoholWash().id;
    const std::string_view written = cell(F::Method);
    if (written.empty()) {
        if (m_rules.match.has(F::Method))
            ask(tableText("no method is given: taken as an alcohol wash."));
        return;
    }
    std::string id(methodIn(comparableName(written)));
    if (const records::Method* known = records::findMethod(written))
        id = known->id;
    if (id.empty())
        refuse(tableText("the method \"%1\" is not known here: alcohol wash, soapy wash or sugar roll."),
               {shownCell(written)});
    if (records::findMethod(id)->measure != records::Measure::MitesPer100Bees)
        refuse(tableText("a sticky board or drone brood gives no load: only washes and rolls are taken in."));
    wash.method = id;
}

void RowReader::readBees(TableWash& wash) {
    records::Scoop& scoop = wash.scoop;
    scoop.packing = records::Packing::Loose; // what the trade's half cup of 300 means
    const bool ml = !cell(F::ScoopMl).empty(), cups = !cell(F::ScoopCups).empty();
    const double most = records::largestScoopMl, least = records::smallestScoopMl;
    if (ml)
        scoop.volumeMl = number(F::ScoopMl, least, most);
    else if (cups)
        scoop.volumeMl = usCupMl * number(F::ScoopCups, least / usCupMl, most / usCupMl);
    mites::BeesInScoop bees = mites::scoopFromVolume(scoop.volumeMl);
    scoop.source = records::Scoop::BeesSource::Book;
    if (!cell(F::Bees).empty()) {
        double cv = records::typedBeesCv;
        if (!cell(F::BeesCv).empty())
            cv = number(F::BeesCv, 0, 1);
        bees = mites::scoopCountedByHand(number(F::Bees, records::fewestBees, records::mostBees), cv);
        scoop.source = records::Scoop::BeesSource::Typed;
    } else if (!ml && !cups &&
               (m_rules.match.has(F::Bees) || m_rules.match.has(F::ScoopMl) ||
                m_rules.match.has(F::ScoopCups))) {
        ask(tableText("no bees are given: taken as half a cup."));
    }
    m_beesKnown = scoop.source == records::Scoop::BeesSource::Typed;
    scoop.beesMean = bees.mean;
    scoop.beesCv = bees.cv;
}

void RowReader::readMites(TableWash& wash) {
    if (!cell(F::Mites).empty()) {
        wash.mites = count(F::Mites);
    } else if (!cell(F::MitesPer100).empty()) {
        if (!m_beesKnown)
            refuse(tableText("mites per 100 bees say how many were counted only beside the number of bees."));
        const WrittenNumber written = readTableNumber(cell(F::MitesPer100), 0, mostPer100);
        const double per100 = number(F::MitesPer100, 0, mostPer100);
        const double counted = per100 * wash.scoop.beesMean / 100;
        const double whole = std::round(counted);
        // The figure was rounded at its last place, by half a step at most.
        const double slack = 0.5 * std::pow(10.0, -written.decimals) * wash.scoop.beesMean / 100;
        const double off = std::abs(counted - whole);
        if (off > 1e-6 * (1 + counted) && (slack >= 0.5 || off > slack))
            refuse(tableText("%1 per 100 of %2 bees are %3 mites, which is no whole number: give the mites."),
                   {shownCell(cell(F::MitesPer100)), shownCell(cell(F::Bees)), std::to_string(counted)});
        if (whole > static_cast<double>(records::largestCount))
            refuse(tableText("so many mites are in no jar: at most 10000."));
        wash.mites = static_cast<std::int64_t>(whole);
    } else {
        refuse(tableText("no count of mites is given."));
    }
    if (!cell(F::SecondRinse).empty())
        wash.secondRinse = count(F::SecondRinse);
    if (static_cast<double>(wash.mites) > wash.scoop.beesMean)
        ask(tableText("%1 mites on %2 bees: are the two swapped?"),
            {std::to_string(wash.mites), std::to_string(std::llround(wash.scoop.beesMean))});
}

void RowReader::readNote(TableWash& wash) {
    wash.note = text(F::Note);
    if (wash.note.size() > longestNoteBytes) {
        wash.note = cutCell(wash.note, longestNoteBytes);
        ask(tableText("the note is longer than 2,000 letters: the rest of it is left off."));
    }
}

ReadRow RowReader::read() {
    ReadRow result;
    result.line = m_row.line();
    try {
        if (!m_row.complaint().empty())
            throw Refusal{m_row.complaint()};
        if (cell(F::Invented) == "yes")
            refuse(tableText("it is marked as invented (demo)."));
        TableWash& wash = result.wash;
        readMoment(wash);
        readPlace(wash);
        readMethod(wash);
        readBees(wash);
        readMites(wash);
        readNote(wash);
        if (records::isRecordId(cell(F::SampleId)))
            wash.sampleId = std::string(cell(F::SampleId));
        result.state = m_question.empty() ? RowState::Good : RowState::Question;
        result.sentence = m_question;
    } catch (Refusal& refusal) {
        result.sentence = std::move(refusal.sentence);
    }
    return result;
}

OrderFound orderIn(const TextTable& table, const WashRules& rules) {
    std::vector<std::string_view> cells;
    for (const TableRow& row : table.rows)
        cells.push_back(row.cell(*rules.match[F::Day]));
    return findDayOrder(cells);
}

} // namespace

Missing missingFor(const TextTable& table, const WashRules& rules) {
    const auto& match = rules.match;
    if (!match.has(F::Day))
        return {{tableText("Which column holds the day?"), {}}};
    if (!match.has(F::Colony))
        return {{tableText("Which column names the colony?"), {}}};
    if (!match.has(F::Mites) && !match.has(F::MitesPer100))
        return {{tableText("Which column holds the mites?"), {}}};
    if (!match.has(F::Mites) && !match.has(F::Bees))
        return {
            {tableText("Mites per 100 bees say how many were counted only beside the number of bees. Which "
                       "column holds the bees?"),
             {}}};
    if (!match.has(F::Yard) && comparableLabel(rules.yardForAll).empty())
        return {{tableText("No column names the yard. In which yard were these washes?"), {}}};
    if (!match.has(F::Yard) && records::checkName(rules.yardForAll))
        return {{tableText("The name of the yard is longer than 60 letters."), {}}};
    if (rules.order)
        return {};
    const OrderFound found = orderIn(table, rules);
    if (found.order)
        return {};
    if (found.both)
        return {
            {tableText("Some days are written day first, others month first (\"%1\"). Which is right? The "
                       "others will be refused."),
             {shownCell(found.example)}},
            true};
    return {{tableText("\"%1\" can be read in two ways. Which comes first, the day or the month?"),
             {shownCell(found.example)}},
            true};
}

std::vector<ReadRow> readWashes(const TextTable& table, const WashRules& rules) {
    const auto order = rules.order ? rules.order : orderIn(table, rules).order;
    std::vector<ReadRow> rows;
    rows.reserve(table.rows.size());
    for (const TableRow& row : table.rows)
        rows.push_back(RowReader(table, rules, order, row).read());
    return rows;
}

std::vector<TableSentence> takenForGranted(const TextTable& table, const WashRules& rules) {
    std::vector<TableSentence> said;
    const auto say = [&](const char* text) { said.push_back({text, {}}); };
    const auto& match = rules.match;
    if (isOwnTable(table.names))
        say(tableText(
            "This app wrote this table. To bring records to another phone, an exchange file is better: "
            "it keeps the place, the shake and each touch of the count."));
    if (table.code == TextCode::Windows1252)
        say(tableText(
            "The file is not written in UTF-8: it is read as Windows-1252. Look whether letters with "
            "accents are right."));
    if (!match.has(F::Bees) && !match.has(F::ScoopMl) && !match.has(F::ScoopCups))
        say(tableText("No column holds the bees: each wash is taken as half a cup, by the book."));
    else if (!match.has(F::Bees))
        say(tableText("Bees are taken from the scoop, as they fell in, by the book."));
    if (!match.has(F::Method))
        say(tableText("No column names the method: all are taken as alcohol washes."));
    if (!isOwnTable(table.names))
        say(tableText("Where no time of day is given, it is noon. The table says no time zone: day and clock "
                      "are kept as they are written."));
    return said;
}

} // namespace halfcup::exchange
