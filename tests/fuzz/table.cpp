// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Any bytes as a table of washes: refused with a sentence, or each row is a wash, a question or a refusal;
// what is a wash is kept, and found again when the same table comes a second time.
#include "exchange/keep_import.h"
#include "fuzz_kit.h"
#include "handbook/built_in.h"
#include "season/lines.h"

#include <algorithm>
#include <memory>
#include <optional>

using namespace halfcup;
using namespace halfcup::fuzz;
using exchange::ImportPlan;
using exchange::PlannedRow;

namespace {

const Folder& folder() {
    static const Folder one;
    return one;
}

std::uint64_t chance = 7;

/// Stays from try to try until something was kept in it.
std::unique_ptr<store::Store>& phone() {
    static const std::string database = smallDatabase();
    static std::unique_ptr<store::Store> one;
    if (!one) {
        folder().clear();
        putBytes(folder().file("here.db"), database);
        one = std::make_unique<store::Store>(folder().file("here.db"), host(chance = 7));
    }
    return one;
}

exchange::OnThisPhone onPhone() {
    static const handbook::Handbook book = handbook::builtIn();
    return exchange::onThisPhone(*phone(), [](const records::Yard& yard, const records::Date& day) {
        return season::linesOn(yard, day, book);
    });
}

/// How the keeper would answer; nothing where the table cannot be read with any answer.
std::optional<exchange::WashRules> rulesFor(const exchange::TextTable& table) {
    exchange::WashRules rules;
    rules.match = exchange::guessedMatch(table.names);
    rules.today = {2026, 6, 15};
    rules.yardForAll = "By the ford";
    exchange::Missing missing = exchange::missingFor(table, rules);
    if (missing.dayOrder) {
        rules.order = exchange::DayOrder::DayMonthYear;
        missing = exchange::missingFor(table, rules);
        require(!missing.dayOrder, "the order of days is asked twice");
    }
    if (missing.sentence.empty())
        return rules;
    static_cast<void>(exchange::inEnglish(missing.sentence));
    return std::nullopt;
}

ImportPlan planOf(const exchange::TextTable& table, const exchange::WashRules& rules) {
    const std::vector<exchange::ReadRow> rows = exchange::readWashes(table, rules);
    require(rows.size() == table.rows.size(), "a row is lost");
    ImportPlan plan = exchange::planImport(rows, onPhone(), "From a table: washes.csv");
    require(plan.rows.size() == rows.size(), "a row is lost in the plan");
    for (const PlannedRow& row : plan.rows) {
        const bool wantsWords =
            row.fate == PlannedRow::Fate::Refused || row.fate == PlannedRow::Fate::Question;
        require(!wantsWords || !exchange::inEnglish(row.sentence).empty(), "a refusal without a sentence");
    }
    return plan;
}

void keep(const ImportPlan& plan) {
    const exchange::OnThisPhone here = onPhone();
    exchange::ImportRecords records = exchange::recordsOf(plan, here, true);
    if (records.samples.empty())
        return;
    exchange::judge(records, here);
    exchange::keepImport(*phone(), records);
}

void tryOut(std::string_view bytes) {
    const exchange::TextTable table = exchange::readTable(std::string(bytes));
    require(std::ranges::none_of(
                table.rows,
                [](const exchange::TableRow& row) { return row.count() > exchange::mostTableColumns; }),
            "a row is wider than any table");
    const auto rules = rulesFor(table);
    if (!rules)
        return;
    static_cast<void>(exchange::takenForGranted(table, *rules));
    const ImportPlan plan = planOf(table, *rules);
    const std::size_t kept = plan.count(PlannedRow::Fate::New) + plan.count(PlannedRow::Fate::Question);
    if (kept == 0)
        return;
    keep(plan);
    const ImportPlan again = planOf(table, *rules);
    require(again.count(PlannedRow::Fate::New) == 0, "a row is taken in a second time");
    require(again.count(PlannedRow::Fate::Refused) == plan.count(PlannedRow::Fate::Refused),
            "a row that was good is refused the second time");
    require(phone()->integrityReport() == "ok", "the database fails its check");
    readAllOf(*phone());
    phone().reset();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    try {
        tryOut(textOf(data, size));
    } catch (const exchange::TableError& error) {
        require(!exchange::inEnglish(error.sentence()).empty(), "a table is refused without a sentence");
    }
    return 0;
}
