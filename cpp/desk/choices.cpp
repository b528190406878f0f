// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/csv_line.h"
#include "desk/keeper_verbs.h"
#include "desk/open_store.h"
#include "desk/table.h"
#include "handbook/built_in.h"
#include "season/forecast_text.h"
#include "season/situation.h"

#include <stdexcept>

namespace halfcup::desk {

namespace {

using season::Situation;

template <typename T>
T oneOf(const Arguments& arguments, const std::string& option,
        std::initializer_list<std::pair<std::string_view, T>> known) {
    const std::string& text = arguments.options.at(option);
    std::string all;
    for (const auto& [name, value] : known) {
        if (text == name)
            return value;
        all += (all.empty() ? "" : ", ") + std::string(name.empty() ? "nothing" : name);
    }
    throw UsageError(option + " " + shown(text) + " is none of: " + all + ".");
}

std::vector<double> temperatures(const Arguments& arguments, const std::string& option) {
    const auto unit = oneOf<season::TemperatureUnit>(
        arguments, "--unit",
        {{"C", season::TemperatureUnit::Celsius}, {"F", season::TemperatureUnit::Fahrenheit}});
    const auto read = season::readTemperatures(arguments.options.at(option), unit);
    if (const auto* problem = std::get_if<season::Phrase>(&read))
        throw UsageError(option + ": " + season::inEnglish(*problem));
    return std::get<std::vector<double>>(read);
}

Situation situationFrom(const Arguments& arguments, const FoundColony& found,
                        const handbook::Handbook& book) {
    const bool wholeYard = oneOf<bool>(arguments, "--for", {{"colony", false}, {"yard", true}});
    const std::vector<records::Colony> one{found.colony};
    Situation situation =
        season::situationOf(found.yard.yard, wholeYard ? found.yard.colonies : one, found.yard.events,
                            found.yard.treatments, dayFrom("--on", arguments.options.at("--on")), book);
    situation.dailyHighsC = temperatures(arguments, "--highs");
    situation.dailyLowsC = temperatures(arguments, "--lows");
    using records::Brood;
    if (!arguments.options.at("--brood").empty())
        situation.brood =
            oneOf<Brood>(arguments, "--brood",
                         {{"none", Brood::None}, {"open", Brood::OpenOnly}, {"capped", Brood::Capped}});
    if (!arguments.options.at("--supers").empty())
        situation.supersOn = oneOf<bool>(arguments, "--supers", {{"on", true}, {"off", false}});
    if (!arguments.options.at("--frames").empty())
        situation.adultBees =
            season::beesOnFrames(arguments.number("--frames", 0, records::mostFrames), book);
    const auto problems = season::problemsOf(situation);
    if (!problems.empty())
        throw std::runtime_error(season::inEnglish(problems.front()));
    return situation;
}

std::string_view wordOf(season::Verdict verdict) {
    switch (verdict) {
    case season::Verdict::Fits:
        return "fits";
    case season::Verdict::WithCare:
        return "fits with care";
    case season::Verdict::NotNow:
        break;
    }
    return "not now";
}

std::string sourceOf(const season::Reason& reason, const handbook::Handbook& book) {
    if (reason.entry.empty())
        return reason.sourceNote;
    const handbook::Entry& entry = book.at(reason.entry);
    return entry.source + " (" + std::string(handbook::markName(entry.mark)) + ")";
}

int run(const Arguments& arguments, Streams& streams) {
    if (arguments.words.size() < 2)
        throw UsageError("Which database, and which colony?");
    const handbook::Handbook book = handbook::builtIn();
    const auto store = openStore(arguments.words[0]);
    const FoundColony found = findColony(*store, arguments.words[1], arguments.options.at("--in"));
    const auto all = season::choices(situationFrom(arguments, found, book), book);
    CsvLine line;
    for (const char* name :
         {"choice", "name", "kind", "verdict", "ends_by", "reason", "reason_says", "source"})
        line.add(std::string_view(name));
    streams.out << line.text() << "\r\n";
    for (const season::Choice& choice : all)
        for (const season::Reason& reason : choice.reasons) {
            line.clear();
            line.add(choice.id).add(choice.name);
            line.add(
                std::string_view(choice.kind == season::ChoiceKind::Substance ? "substance" : "measure"));
            line.add(wordOf(choice.verdict))
                .add(choice.endsBy ? records::toIso(*choice.endsBy) : std::string());
            line.add(season::inEnglish(reason.phrase))
                .add(wordOf(reason.verdict))
                .add(sourceOf(reason, book));
            streams.out << line.text() << "\r\n";
        }
    return 0;
}

} // namespace

Verb choicesVerb() {
    return {
        .name = "choices",
        .summary = "Which treatment fits a colony on a day, and why. Never a dose: the label gives it.",
        .usage = "[OPTIONS] DATABASE COLONY",
        .help =
            "COLONY is a label or an id. Supers, brood, strength, floor, past treatments and the turn date\n"
            "come from the database; what is given here outranks it.\n\n"
            "Columns out, a row a reason, those that fit first: choice, name, kind, verdict, ends_by (with "
            "the\n"
            "shortest course), reason, reason_says (the verdict of this reason alone), source.\n",
        .options = {{"--on", "", "first day of the treatment, as 2026-05-18; today where not given"},
                    {"--highs", "", "daily highs from that day on, 3 to 14, as 24,26,27"},
                    {"--lows", "", "daily lows, as many"},
                    {"--unit", "C", "C or F, of highs and lows"},
                    {"--supers", "", "on or off"},
                    {"--brood", "", "none, open or capped"},
                    {"--frames", "", "frames covered with bees"},
                    {"--in", "", "name of the yard, where two have a colony of that label"},
                    {"--for", "colony", "colony, or yard for all colonies that stand with it"}},
        .mostWords = 2,
        .run = run};
}

} // namespace halfcup::desk
