// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/demo_reader.h"

#include "exchange/demo_fields.h"
#include "exchange/demo_season.h"
#include "mites/scoop.h"
#include "records/judgement.h"
#include "records/typed_input.h"

#include <algorithm>
#include <map>
#include <set>
#include <span>

namespace halfcup::embedded {
std::span<const std::string_view> demoTexts(); // written by cpp/embed.cmake
}

namespace halfcup::exchange {

namespace {

using namespace records;

constexpr std::int64_t dayMs = 86'400'000;
constexpr std::int64_t longestWashS = 86'400; // a jar may wait for the evening; longer is a slip
constexpr double smallestLine = 0.01;

int yearsToFit(const Moment& today, const Moment& now) {
    const int years = localDate(now).year - localDate(today).year;
    return movedByYears(today, years).utcMs <= now.utcMs ? years : years - 1;
}

/// Reads one file: ids are checked against what came before, in the order yards, colonies, samples, events,
/// treatments.
class Reader {
public:
    explicit Reader(const DemoOptions& options)
        : m_options(options) {}

    Demo read(const nlohmann::json& document);

private:
    std::string newId(DemoFields& fields);
    Yard readYard(DemoFields fields);
    Colony readColony(DemoFields fields);
    DemoSample readSample(DemoFields fields);
    void readScoop(DemoFields fields, Scoop& scoop);
    void readStamp(DemoFields& fields, PositionStamp& stamp);
    void readCount(DemoFields& fields, DemoSample& result, std::int64_t fromMs);

    const DemoOptions& m_options;
    int m_years = 0;
    std::set<std::string> m_ids;
    std::map<std::string, Yard> m_yards;      // by id
    std::map<std::string, Colony> m_colonies; // by id
};

Demo Reader::read(const nlohmann::json& document) {
    DemoFields top(document, "");
    if (top.text("format") != "halfcup-demo")
        top.fail("format", "this is not a demo file of Halfcup.");
    if (top.integer("version", 0, 1'000'000) != 1)
        top.fail("version", "only version 1 is known here.");
    static_cast<void>(top.text("invented")); // for people who open the file
    Demo demo;
    demo.today = top.moment("today");
    m_years = m_options.fitTo ? yearsToFit(demo.today, *m_options.fitTo) : 0;
    demo.today = movedByYears(demo.today, m_years);
    demo.shiftedYears = m_years;
    const auto each = [&top](const std::string& name, auto&& use) {
        const nlohmann::json& list = top.array(name);
        for (std::size_t i = 0; i < list.size(); ++i)
            use(DemoFields(list[i], name + "[" + std::to_string(i) + "]"));
    };
    each("yards", [&](const DemoFields& fields) {
        demo.yards.push_back(readYard(fields));
        m_yards.emplace(demo.yards.back().id, demo.yards.back());
    });
    each("colonies", [&](const DemoFields& fields) {
        demo.colonies.push_back(readColony(fields));
        m_colonies.emplace(demo.colonies.back().id, demo.colonies.back());
    });
    each("samples", [&](const DemoFields& fields) {
        DemoSample read = readSample(fields);
        const std::int64_t endedMs = read.sample.finishedAtMs.value_or(read.sample.abandonedAtMs.value_or(0));
        if (!m_options.untilUtcMs || endedMs <= *m_options.untilUtcMs)
            demo.samples.push_back(std::move(read));
    });
    const auto isPast = [&](const Date& day) {
        return !m_options.untilUtcMs || day <= localDate({*m_options.untilUtcMs, demo.today.offsetMinutes});
    };
    each("events", [&](DemoFields fields) {
        const std::string id = newId(fields);
        ColonyEvent event = readDemoEvent(fields, m_colonies, m_years);
        fields.done();
        event.id = id;
        if (isPast(event.day))
            demo.events.push_back(std::move(event));
    });
    each("treatments", [&](DemoFields fields) {
        const std::string id = newId(fields);
        records::GivenTreatment read = readDemoTreatment(fields, m_colonies, m_years);
        fields.done();
        read.treatment.id = id;
        if (!isPast(read.treatment.firstDay))
            return;
        if (read.treatment.removedOn && !isPast(*read.treatment.removedOn))
            read.treatment.removedOn.reset(); // still in the hive on that day
        demo.treatments.push_back(std::move(read));
    });
    top.done();
    std::ranges::stable_sort(demo.samples, {}, [](const DemoSample& s) { return s.sample.startedAtMs; });
    return demo;
}

std::string Reader::newId(DemoFields& fields) {
    std::string id = fields.id("id");
    if (!m_ids.insert(id).second)
        fields.fail("id", "another record has this id.");
    return id;
}

Yard Reader::readYard(DemoFields fields) {
    Yard yard;
    yard.id = newId(fields);
    yard.name = fields.text("name");
    if (checkName(yard.name))
        fields.fail("name", "a name has 1 to 60 characters.");
    yard.position = Position{fields.real("latitude_deg", -90, 90), fields.real("longitude_deg", -180, 180),
                             fields.real("position_accuracy_m", 0, 10'000)};
    yard.reachM = fields.real("reach_m", 1, 10'000);
    yard.registrationNumber = fields.textOr("registration_number", "");
    yard.lines.treat = fields.real("treat_line_per_100", smallestLine, largestLine);
    yard.lines.treatSource = fields.text("treat_line_source");
    if (fields.has("own_line_per_100"))
        yard.lines.own = fields.real("own_line_per_100", smallestLine, largestLine);
    yard.demo = true;
    fields.done();
    return yard;
}

Colony Reader::readColony(DemoFields fields) {
    Colony colony;
    colony.id = newId(fields);
    colony.yardId = fields.id("yard_id");
    if (!m_yards.contains(colony.yardId))
        fields.fail("yard_id", "there is no yard with this id above.");
    colony.label = fields.text("label");
    if (checkName(colony.label))
        fields.fail("label", "a label has 1 to 60 characters.");
    colony.note = fields.textOr("note", "");
    colony.demo = true;
    fields.done();
    return colony;
}

void Reader::readScoop(DemoFields fields, Scoop& scoop) {
    scoop.volumeMl = fields.real("volume_ml", smallestScoopMl, largestScoopMl);
    scoop.packing = wordField(fields, "packing", {Packing::Loose, Packing::Settled});
    using Source = Scoop::BeesSource;
    scoop.source = wordField(fields, "bees_source", {Source::Book, Source::Typed, Source::Counted});
    if (scoop.source != Source::Book) {
        scoop.beesMean = fields.real("bees", fewestBees, mostBees);
        scoop.beesCv = fields.real("bees_cv", 0, 1);
    } else if (scoop.packing == Packing::Settled) {
        fields.fail("bees_source", "for bees rapped down, give how many they are.");
    } else {
        const mites::BeesInScoop bees = mites::scoopFromVolume(scoop.volumeMl);
        scoop.beesMean = bees.mean;
        scoop.beesCv = bees.cv;
    }
    fields.done();
}

void Reader::readStamp(DemoFields& fields, PositionStamp& stamp) {
    using State = PositionState;
    stamp.state = wordField(fields, "position_state",
                            {State::NotTried, State::Stamped, State::NoFix, State::NoSource, State::Denied});
    if (stamp.state != State::Stamped)
        return;
    DemoFields position = fields.object("position");
    stamp.position =
        Position{position.real("latitude_deg", -90, 90), position.real("longitude_deg", -180, 180),
                 position.real("accuracy_m", 0, 10'000)};
    stamp.fixCount = static_cast<int>(position.integer("fix_count", 1, 10'000));
    stamp.ageMs = position.integer("age_ms", 0, dayMs);
    stamp.source = "demo";
    position.done();
}

DemoSample Reader::readSample(DemoFields fields) {
    DemoSample result;
    Sample& sample = result.sample;
    sample.id = newId(fields);
    sample.colonyId = fields.id("colony_id");
    const auto colony = m_colonies.find(sample.colonyId);
    if (colony == m_colonies.end())
        fields.fail("colony_id", "there is no colony with this id above.");
    sample.yardId = colony->second.yardId;
    sample.method = fields.text("method");
    const Method* method = findMethod(sample.method);
    if (!method)
        fields.fail("method", "\"" + sample.method + "\" is not a method known here.");
    sample.state = wordField(fields, "state", {SampleState::Finished, SampleState::Abandoned});
    const bool finished = sample.state == SampleState::Finished;
    const Moment started = movedByYears(fields.moment("started_at"), m_years);
    sample.startedAtMs = started.utcMs;
    sample.utcOffsetMinutes = started.offsetMinutes;
    const auto after = [&](const std::string& name, std::int64_t notBeforeS) {
        return fields.integer(name, notBeforeS, longestWashS);
    };
    sample.queen = wordField(fields, "queen", {Queen::NotAsked, Queen::SeenAndSafe, Queen::NotSeen});
    std::int64_t lastS = 0;
    if (finished || fields.has("scooped_after_s")) {
        lastS = after("scooped_after_s", lastS);
        sample.scoopedAtMs = sample.startedAtMs + lastS * 1000;
        readScoop(fields.object("scoop"), sample.scoop);
    }
    readStamp(fields, sample.stamp);
    if (finished || fields.has("shaken_s")) {
        sample.shake.shakenBeforeMs = fields.integer("shaken_s", 1, longestShakeS) * 1000;
        sample.shake.ended = true;
    }
    if (finished) {
        lastS = after("settled_after_s", lastS + sample.shake.shakenBeforeMs / 1000);
        sample.settleStartedMs = sample.startedAtMs + lastS * 1000;
        lastS += method->settleS;
    }
    const std::int64_t endedMs = sample.startedAtMs + after("ended_after_s", lastS) * 1000;
    (finished ? sample.finishedAtMs : sample.abandonedAtMs) = endedMs;
    sample.step = finished ? Step::Answer : stepFrom(fields.text("step"));
    if (!finished && nameOf(sample.step) != fields.text("step"))
        fields.fail("step", "\"" + fields.text("step") + "\" is not a step of a wash.");
    if (finished)
        readCount(fields, result, sample.startedAtMs + lastS * 1000);
    sample.note = fields.textOr("note", "");
    sample.demo = true;
    fields.done();
    return result;
}

/// The acts of counting that end in these figures, spread evenly between the end of settling and the end.
std::vector<CountEvent> acts(std::int64_t mites, bool typed, std::int64_t slips, std::int64_t secondRinse,
                             std::int64_t fromMs, std::int64_t toMs) {
    std::vector<CountEvent> events;
    using Change = CountEvent::Change;
    const auto add = [&](int rinse, Change change, std::int64_t figure = 0) {
        events.push_back({static_cast<std::int64_t>(events.size()) + 1, rinse, change, figure, 0});
    };
    if (typed || mites == 0) // none found is typed as 0: there is nothing to tap
        add(1, Change::Typed, mites);
    for (std::int64_t i = 0; !typed && i < mites; ++i)
        add(1, Change::Tap);
    for (std::int64_t i = 0; i < slips; ++i) {
        add(1, Change::Tap);
        add(1, Change::Undo);
    }
    if (secondRinse == 0)
        add(2, Change::Typed, 0);
    for (std::int64_t i = 0; i < secondRinse; ++i)
        add(2, Change::Tap);
    const auto parts = static_cast<std::int64_t>(events.size()) + 1;
    for (CountEvent& event : events)
        event.atUtcMs = fromMs + (toMs - fromMs) * event.number / parts;
    return events;
}

void Reader::readCount(DemoFields& fields, DemoSample& result, std::int64_t fromMs) {
    Sample& sample = result.sample;
    const std::int64_t mites = fields.integer("mites", 0, largestCount);
    const auto secondRinse = fields.optionalInteger("mites_second_rinse", 0, largestCount);
    sample.answer = answerOf(sample, mites, secondRinse, m_yards.at(sample.yardId).lines);

    const std::string by = fields.textOr("counted_by", "taps");
    if (by != "taps" && by != "typed")
        fields.fail("counted_by", "\"" + by + "\" is neither taps nor typed.");
    const std::int64_t slips = fields.optionalInteger("slips", 0, 100).value_or(0);
    result.counts = acts(mites, by == "typed", slips, secondRinse.value_or(-1), fromMs, *sample.finishedAtMs);
}

} // namespace

std::string_view builtInDemo() {
    return embedded::demoTexts().front();
}

Demo readDemo(std::string_view json, const DemoOptions& options) {
    nlohmann::json document;
    try {
        document = nlohmann::json::parse(json);
    } catch (const nlohmann::json::parse_error& error) {
        const std::size_t end = std::min(error.byte, json.size());
        const auto line = 1 + std::ranges::count(json.substr(0, end), '\n');
        throw DemoError("Line " + std::to_string(line) + ": this is no JSON (" + error.what() + ").");
    }
    return Reader(options).read(document);
}

} // namespace halfcup::exchange
