// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/keeper_verbs.h"
#include "desk/open_store.h"
#include "desk/table.h"
#include "exchange/keep_import.h"
#include "handbook/built_in.h"
#include "season/lines.h"

#include <charconv>
#include <filesystem>

namespace halfcup::desk {

namespace {

using exchange::DayOrder;
using exchange::ImportPlan;
using exchange::PlannedRow;
using exchange::WashField;

std::string many(std::size_t count, const char* one, const char* more) {
    return std::to_string(count) + " " + (count == 1 ? one : more);
}

// A column by its name, or by its number as #3.
std::size_t columnFrom(const std::string& text, const std::vector<std::string>& names) {
    if (text.starts_with('#')) {
        std::size_t number = 0;
        const auto [end, error] = std::from_chars(text.data() + 1, text.data() + text.size(), number);
        if (error == std::errc() && end == text.data() + text.size() && number >= 1 && number <= names.size())
            return number - 1;
        throw UsageError("--match: there is no column " + shown(text) + ".");
    }
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] != text)
            continue;
        if (found)
            throw UsageError("--match: two columns are named " + shown(text) + "; say #" +
                             std::to_string(*found + 1) + " or #" + std::to_string(i + 1) + ".");
        found = i;
    }
    if (!found)
        throw UsageError("--match: there is no column " + shown(text) + ".");
    return *found;
}

void setMatch(exchange::ColumnMatch& match, const std::string& text, const std::vector<std::string>& names) {
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t end = std::min(text.find(',', at), text.size());
        const std::string pair = text.substr(at, end - at);
        at = end + 1;
        const std::size_t equals = pair.find('=');
        const auto field = exchange::washFieldFrom(pair.substr(0, equals));
        if (equals == std::string::npos || !field)
            throw UsageError("--match " + shown(pair) + " is not like mites=Milben.");
        const std::string column = pair.substr(equals + 1);
        match.set(*field, column.empty() ? std::nullopt : std::optional{columnFrom(column, names)});
    }
}

std::optional<DayOrder> orderFrom(const std::string& text) {
    if (text.empty())
        return std::nullopt;
    if (text == "d.m.y" || text == "d/m/y")
        return DayOrder::DayMonthYear;
    if (text == "m/d/y")
        return DayOrder::MonthDayYear;
    if (text == "y-m-d")
        return DayOrder::YearMonthDay;
    throw UsageError("--dates " + shown(text) + " is none of d.m.y, m/d/y and y-m-d.");
}

bool isYes(const std::string& option, const std::string& text) {
    if (text != "yes" && text != "no")
        throw UsageError(option + " " + shown(text) + " is neither yes nor no.");
    return text == "yes";
}

void tellRows(const ImportPlan& plan, std::ostream& out) {
    for (const PlannedRow& row : plan.rows)
        if (!row.sentence.empty())
            out << "Line " << row.line << ": "
                << (row.fate == PlannedRow::Fate::Refused ? "refused: " : "in question: ")
                << exchange::inEnglish(row.sentence) << "\n";
}

int run(const Arguments& arguments, Streams& streams) {
    if (arguments.words.size() != 2)
        throw UsageError("Which database, and which table?");
    const std::string& path = arguments.words[0];
    const bool dry = isYes("--dry-run", arguments.options.at("--dry-run"));
    const std::string& questions = arguments.options.at("--questions");
    if (!questions.empty() && questions != "keep" && questions != "leave")
        throw UsageError("--questions " + shown(questions) + " is neither keep nor leave.");

    const exchange::TextTable table = exchange::readTableFile(QString::fromStdString(arguments.words[1]));
    exchange::WashRules rules;
    rules.match = exchange::guessedMatch(table.names);
    setMatch(rules.match, arguments.options.at("--match"), table.names);
    rules.order = orderFrom(arguments.options.at("--dates"));
    rules.yardForAll = arguments.options.at("--yard");
    rules.today = dayFrom("today", "");
    if (const exchange::Missing missing = exchange::missingFor(table, rules); !missing.sentence.empty())
        throw UsageError(exchange::inEnglish(missing.sentence) +
                         (missing.dayOrder ? " Say so with --dates." : " Say so with --match or --yard."));

    std::unique_ptr<store::Store> store;
    if (!dry)
        store = openOrMakeStore(path);
    else if (std::filesystem::exists(path))
        store = openStore(path);
    const handbook::Handbook book = handbook::builtIn();
    const auto linesOn = [&book](const records::Yard& yard, const records::Date& day) {
        return season::linesOn(yard, day, book);
    };
    exchange::OnThisPhone here;
    if (store)
        here = exchange::onThisPhone(*store, linesOn);
    const std::string name = std::filesystem::path(arguments.words[1]).filename().string();
    const ImportPlan plan =
        exchange::planImport(exchange::readWashes(table, rules), here, "From a table: " + name);

    for (const exchange::TableSentence& each : exchange::takenForGranted(table, rules))
        streams.out << exchange::inEnglish(each) << "\n";
    tellRows(plan, streams.out);
    using Fate = PlannedRow::Fate;
    const std::size_t asked = plan.count(Fate::Question), refused = plan.count(Fate::Refused);
    exchange::ImportRecords records = exchange::recordsOf(plan, here, questions == "keep");
    const bool undecided = asked > 0 && questions.empty();
    if (!dry && !undecided) {
        exchange::judge(records, here);
        exchange::keepImport(*store, records);
    }
    streams.out << many(records.samples.size(), "wash", "washes")
                << (dry || undecided ? " to keep, " : " kept, ")
                << many(records.yards.size(), "new yard", "new yards") << ", "
                << many(records.colonies.size(), "new colony", "new colonies") << ", "
                << plan.count(Fate::Here) << " here already, " << asked << " in question, " << refused
                << " refused.\n";
    if (dry)
        streams.out << "Nothing was written: this was a dry run.\n";
    else if (undecided)
        streams.out << "Nothing was written. Say what becomes of the rows in question: --questions keep, or "
                       "--questions leave.\n";
    return refused > 0 || undecided ? 1 : 0;
}

std::string fieldHelp() {
    std::string help = "Fields of --match, each with what it is:\n";
    for (const WashField field : exchange::allWashFields)
        help += "  " + std::string(exchange::nameOf(field)) + ": " + exchange::titleOf(field) + "\n";
    return help;
}

} // namespace

Verb importVerb() {
    return {
        .name = "import",
        .summary = "Takes in a table (CSV) of earlier washes.",
        .usage = "[OPTIONS] DATABASE TABLE",
        .help =
            "The columns are matched by their names, in English, Spanish, French and German; --match says it "
            "better.\nThe database is made where there is none. Taking a table in twice adds nothing.\n\n" +
            fieldHelp(),
        .options = {{"--match", "", "field=column,field=column; a column by name or as #3; field= for none"},
                    {"--dates", "", "d.m.y, m/d/y or y-m-d, where the table does not show it"},
                    {"--yard", "", "the yard of all washes, where no column names it"},
                    {"--questions", "", "keep or leave: what becomes of rows that need a look"},
                    {"--dry-run", "no", "yes: say what would be kept, and keep nothing"}},
        .mostWords = 2,
        .run = run};
}

} // namespace halfcup::desk
