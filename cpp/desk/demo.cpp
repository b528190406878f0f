// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/keeper_verbs.h"
#include "desk/open_store.h"
#include "desk/table.h"
#include "exchange/keep_demo.h"

namespace halfcup::desk {

namespace {

constexpr std::int64_t dayMs = 86'400'000;

int run(const Arguments& arguments, Streams& streams) {
    if (arguments.words.empty())
        throw UsageError("Which database?");
    const std::string& path = arguments.words[0];
    exchange::DemoOptions options;
    const std::string& until = arguments.options.at("--until");
    if (!until.empty())
        options.untilUtcMs = (records::daysSinceEpoch(dayFrom("--until", until)) + 1) * dayMs - 1;
    const exchange::Demo demo = exchange::readDemo(exchange::builtInDemo(), options);
    const auto store = openOrMakeStore(path);
    exchange::keepDemo(*store, demo);
    streams.out << demo.yards.size() << " yards, " << demo.colonies.size() << " colonies, "
                << demo.samples.size() << " washes, " << demo.treatments.size()
                << " treatments, all invented, are in " << shown(path) << ".\n";
    return 0;
}

} // namespace

Verb demoVerb() {
    return {.name = "demo",
            .summary = "Loads the invented demo season into a database, made where there is none.",
            .usage = "[OPTIONS] DATABASE",
            .help = "Every record is marked as demo. Loading it twice changes nothing.\n",
            .options = {{"--until", "", "leave out what happened after this day"}},
            .run = run};
}

} // namespace halfcup::desk
