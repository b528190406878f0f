// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/csv_line.h"
#include "desk/keeper_verbs.h"
#include "desk/open_store.h"
#include "season/yard_due.h"

namespace halfcup::desk {

namespace {

int run(const Arguments& arguments, Streams& streams) {
    if (arguments.words.empty())
        throw UsageError("Which database?");
    const records::Date on = dayFrom("--on", arguments.options.at("--on"));
    const auto store = openStore(arguments.words[0]);
    const std::vector<records::YardRecords> yards = yardsOn(*store, on);
    CsvLine line;
    for (const char* name : {"yard", "colony", "due_on", "days_late", "reason", "sentence"})
        line.add(std::string_view(name));
    streams.out << line.text() << "\r\n";
    for (const season::DueInYard& each : season::dueInYards(yards, noonOn(on))) {
        line.clear();
        line.add(yards[each.yard].yard.name).add(each.due.colony.label);
        line.add(records::toIso(each.due.due.dueOn)).add(static_cast<long long>(each.due.due.daysLate));
        line.add(std::string_view(season::wordOf(each.due.due.reason).text));
        line.add(season::inEnglish(season::phraseOf(each.due.due)));
        streams.out << line.text() << "\r\n";
    }
    return 0;
}

} // namespace

Verb dueVerb() {
    return {
        .name = "due",
        .summary = "What is due in all yards, most urgent first.",
        .usage = "[OPTIONS] DATABASE",
        .help =
            "Columns out, a row a colony: yard, colony, due_on, days_late (below 0: days ahead), reason,\n"
            "sentence. Days are those of the system's time zone (TZ).\n",
        .options = {{"--on", "",
                     "the day, as 2026-05-18; today where not given. Washes begun later are left out"}},
        .run = run};
}

} // namespace halfcup::desk
