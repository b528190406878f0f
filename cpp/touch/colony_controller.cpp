// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/colony_controller.h"

#include "pictures/load_history.h"
#include "records/method.h"
#include "records/typed_input.h"
#include "season/lines.h"
#include "touch/colony_entries.h"
#include "touch/story.h"
#include "touch/story_entries.h"
#include "touch/words.h"

#include <algorithm>
#include <set>

namespace halfcup::touch {

namespace {

constexpr int fanStepDays = 5; // between two days of the outlook that are worked out

} // namespace

ColonyController::ColonyController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services)
    , m_loads(services) {}

QString ColonyController::title() const {
    return tr("Colony %1").arg(label());
}

QString ColonyController::label() const {
    return QString::fromStdString(m_colony.label);
}

bool ColonyController::choose(const QString& colonyId) {
    std::optional<records::Colony> found;
    m_services.kept([&] { found = m_services.store.colony(colonyId.toStdString()); });
    if (found)
        m_colony = *found;
    return found.has_value();
}

bool ColonyController::show(const QString& colonyId) {
    const bool found = choose(colonyId);
    if (found)
        m_services.kept([this] { read(); });
    m_problem.clear();
    emit changed();
    return found;
}

void ColonyController::refresh() {
    if (!m_colony.id.empty())
        show(colonyId());
}

/// What to beware of where counts of several kinds stand in one story.
QString ColonyController::methodsLineOf(std::span<const records::Sample> samples) {
    std::set<std::string> washes;
    bool others = false;
    for (const records::Sample& sample : samples) {
        if (sample.answer)
            washes.insert(sample.method);
        others = others || sample.otherAnswer;
    }
    if (others)
        return tr("Boards and drone brood count other things than a wash: hold each against its own kind.");
    return washes.size() > 1
               ? tr("Counted by several methods: their loads are made alike as far as is known, "
                    "and differ more than loads of one method.")
               : QString();
}

void ColonyController::read() {
    const auto yard = m_services.store.yard(m_colony.yardId);
    m_yardName = yard ? QString::fromStdString(yard->name) : QString();
    ColonyRecords kept = readColony(m_services.store, m_colony);
    const auto entry = yard ? colonyEntry(m_services, *yard, kept) : std::nullopt;
    m_dueLine = entry ? entry->dueLine : QString();
    const records::ColonyState state = records::stateOn(m_colony, kept.events, m_services.today());
    m_alive = state.alive();
    m_stateLine = story::stateLine(m_services, state);
    m_story.setEntries(storyEntries(m_services, kept));
    m_methodsLine = methodsLineOf(kept.samples);
    std::erase_if(kept.samples, [now = m_services.now().utcMs](const records::Sample& sample) {
        return records::liesAhead(sample, now);
    });
    pictures::LoadChart chart = chartOf(kept);
    m_growthLine.clear();
    m_growth.reset();
    if (yard && m_alive)
        foretell(*yard, state, kept, chart);
    m_loads.show(chart, m_colony.id, kept.samples);
}

/// What was so; the outlook comes with foretell().
pictures::LoadChart ColonyController::chartOf(const ColonyRecords& kept) const {
    pictures::LoadChart chart = pictures::loadChartOf(
        {m_colony.id, kept.samples, kept.treatments, kept.events},
        [&](const std::string& id) { return story::capitalised(story::substanceName(m_services, id)); });
    if (m_alive)
        chart.today = m_services.today();
    return chart;
}

void ColonyController::foretell(const records::Yard& yard, const records::ColonyState& state,
                                const ColonyRecords& kept, pictures::LoadChart& chart) {
    const records::Date today = m_services.today();
    const records::Lines lines = season::linesOn(yard, today, m_services.handbook());
    chart.lines.push_back({today, lines.treat, lines.own});
    std::optional<records::Date> since = state.seriesBroken;
    for (const records::GivenTreatment& given : kept.treatments) {
        if (given.treatment.firstDay > today)
            continue;
        if (records::isRunningOn(given.treatment, today))
            return; // what grew before it says nothing of what is left
        since = std::max(since.value_or(records::endOf(given.treatment)), records::endOf(given.treatment));
    }
    const double line = std::min(lines.treat, lines.own.value_or(lines.treat));
    m_growth =
        season::growthOutlook(kept.samples, since, line, season::growthModelOf(kept.samples), fanStepDays);
    if (!m_growth || records::daysBetween(m_growth->lastWash, today) > season::growthOutlookDays)
        return;
    m_growthLine = m_services.say(season::phraseOf(*m_growth, line, today));
    chart.aheadUpperOnly = m_growth->allZero;
    for (const season::LoadOnDay& ahead : m_growth->course)
        chart.ahead.push_back({ahead.day, ahead.load.q05, ahead.load.q50, ahead.load.q95});
}

QString ColonyController::mainAction() const {
    const std::string usual = m_services.settings.usualMethod();
    return usual == records::alcoholWash().id ? tr("Wash this colony") : words::begin(usual, label());
}

void ColonyController::pickMethod() {
    emit methodsWanted(colonyId());
}

void ColonyController::wash() {
    emit washWanted(colonyId());
}

void ColonyController::treat() {
    emit treatWanted(colonyId());
}

void ColonyController::tellEvent() {
    emit newEventWanted(colonyId());
}

void ColonyController::openDay() {
    emit dayWanted(colonyId());
}

void ColonyController::openHistory() {
    emit historyWanted(colonyId());
}

void ColonyController::openStory(const QString& key) {
    const qsizetype dash = key.indexOf(u'-');
    const QString kind = key.left(dash);
    const QString id = key.mid(dash + 1);
    if (kind == QLatin1String("wash"))
        openWash(id);
    else if (kind == QLatin1String("event"))
        emit eventWanted(id);
    else if (kind == QLatin1String("treatment"))
        emit treatmentWanted(id);
}

void ColonyController::openWash(const QString& sampleId) {
    std::optional<records::Sample> sample;
    m_services.kept([&] { sample = m_services.store.sample(sampleId.toStdString()); });
    if (!sample)
        return;
    if (sample->state == records::SampleState::Draft)
        emit draftWanted(sampleId);
    else if (sample->state == records::SampleState::Finished)
        emit answerWanted(sampleId);
}

bool ColonyController::rename(const QString& label) {
    const QString name = label.trimmed();
    std::optional<records::InputProblem> problem = records::checkName(name.toStdString());
    m_services.kept([&] {
        for (const records::Colony& other : m_services.store.colonies(m_colony.yardId))
            if (!problem && other.id != m_colony.id && other.label == name.toStdString())
                problem = records::InputProblem::AlreadyThere;
    });
    m_problem.clear();
    if (problem) {
        m_problem = words::problem(*problem, tr("The label"), 0, records::longestName);
        emit changed();
        return false;
    }
    records::Colony renamed = m_colony;
    renamed.label = name.toStdString();
    const bool done = m_services.kept([&] { m_services.store.save(renamed); });
    if (done)
        m_colony = renamed;
    emit changed();
    return done;
}

} // namespace halfcup::touch
