// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/situation_controller.h"

#include "records/typed_input.h"
#include "touch/typed_date.h"
#include "touch/words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace halfcup::touch {

namespace {

using records::Brood;
using records::ColonyEvent;
using records::EventKind;
using records::Floor;

QString typedList(const std::vector<double>& celsius, season::TemperatureUnit unit) {
    QStringList figures;
    for (const double each : celsius) {
        const double shown = std::round(season::fromCelsius(each, unit) * 10) / 10;
        figures.append(QLocale::c().toString(shown, 'f', shown == std::round(shown) ? 0 : 1));
    }
    return figures.join(u' ');
}

ChoiceListModel::Entry option(const QString& key, const QString& title, bool chosen) {
    ChoiceListModel::Entry entry;
    entry.key = key;
    entry.title = title;
    entry.chosen = chosen;
    return entry;
}

/// Where a fact comes from: the latest day on which an event said so, of all colonies that have it.
template <class T>
void remember(const std::optional<records::Since<T>>& fact, std::optional<records::Date>& latest,
              int& known) {
    if (!fact)
        return;
    ++known;
    latest = std::max(latest.value_or(fact->day), fact->day);
}

QString noteOf(const std::optional<records::Date>& latest, int known, std::size_t colonies) {
    if (!latest)
        return SituationController::tr("not written down yet");
    if (static_cast<std::size_t>(known) < colonies)
        return SituationController::tr("written down for %1 of %2 colonies, last on %3")
            .arg(known)
            .arg(colonies)
            .arg(words::dayAndYear(*latest));
    return SituationController::tr("written down on %1").arg(words::dayAndYear(*latest));
}

/// Whether a look into the hive is still to be gone by.
template <class T>
bool holds(const records::Since<T>& fact, int days, const records::Date& on) {
    return records::daysBetween(fact.day, on) <= days;
}

bool holds(const records::Since<Brood>& seen, const records::Date& on) {
    switch (seen.value) {
    case Brood::None:
        return holds(seen, season::noBroodHoldsDays, on);
    case Brood::OpenOnly:
        return holds(seen, season::openBroodHoldsDays, on);
    case Brood::Capped:
        return true;
    case Brood::NotKnown:
        break;
    }
    return false;
}

} // namespace

SituationController::SituationController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString SituationController::context() const {
    return m_scope.colonies.empty() ? QString() : scopeName(m_scope);
}

QString SituationController::from() const {
    return words::dayAndYear(m_scope.from);
}

bool SituationController::isFahrenheit() const {
    return m_services.settings.temperatureUnit() == season::TemperatureUnit::Fahrenheit;
}

QString SituationController::forecastHint() const {
    return tr("One for each day from %1 on, 3 to 14 of them: %2")
        .arg(words::day(m_scope.from),
             isFahrenheit() ? QStringLiteral("75 79 81") : QStringLiteral("24 26 27"));
}

QString SituationController::keepNote() const {
    return m_scope.wholeYard
               ? tr("What you change here is written down for all %n colony(ies). The forecast is not kept.",
                    nullptr, static_cast<int>(m_scope.colonies.size()))
               : tr("What you change here is written down for the colony. The forecast is not kept.");
}

void SituationController::show(const TreatScope& scope) {
    m_scope = scope;
    const auto unit = m_services.settings.temperatureUnit();
    m_highs = typedList(scope.highsC, unit);
    m_lows = typedList(scope.lowsC, unit);
    m_problem.clear();
    readState();
    emit changed();
}

void SituationController::readState() {
    const season::Situation situation = situationIn(m_scope, m_services.handbook());
    m_supersOn = situation.supersOn;
    m_brood = situation.brood;
    m_floor = situation.floor;
    m_frames.clear();
    m_framesNote = tr("not written down yet");
    m_typedFrames = false;
    std::optional<records::Date> supersDay, broodDay, floorDay;
    int supers = 0, brood = 0, floor = 0;
    for (const records::Colony& colony : m_scope.colonies) {
        const records::ColonyState state = records::stateOn(colony, m_scope.kept.events, m_scope.from);
        remember(state.supersOn, supersDay, supers);
        remember(state.brood, broodDay, brood);
        remember(state.floor, floorDay, floor);
        if (!m_scope.wholeYard && state.frames) {
            const QString kept = QLocale().toString(state.frames->value, 'g', 4);
            if (holds(*state.frames, season::strengthHoldsDays, m_scope.from)) {
                m_frames = kept;
                m_framesNote = noteOf(state.frames->day, 1, 1);
            } else {
                m_framesNote = tr("%1 on %2: too long ago to go by", "frames, day")
                                   .arg(kept, words::dayAndYear(state.frames->day));
            }
        }
    }
    m_supersNote = noteOf(supersDay, supers, m_scope.colonies.size());
    m_broodNote = noteOf(broodDay, brood, m_scope.colonies.size());
    if (m_brood == Brood::NotKnown && broodDay)
        m_broodNote = tr("%1; look again", "what is written down").arg(m_broodNote);
    m_floorNote = noteOf(floorDay, floor, m_scope.colonies.size());
    listOptions();
}

void SituationController::listOptions() {
    m_supersList.setEntries({option(QStringLiteral("on"), tr("On"), m_supersOn == true),
                             option(QStringLiteral("off"), tr("Off"), m_supersOn == false)});
    m_broodList.setEntries({option(QStringLiteral("capped"), tr("Capped"), m_brood == Brood::Capped),
                            option(QStringLiteral("open_only"), tr("Open only"), m_brood == Brood::OpenOnly),
                            option(QStringLiteral("none"), tr("None"), m_brood == Brood::None)});
    m_floorList.setEntries({option(QStringLiteral("screened"), tr("Screened"), m_floor == Floor::Screened),
                            option(QStringLiteral("solid"), tr("Solid"), m_floor == Floor::Solid)});
}

bool SituationController::fail(const QString& problem) {
    m_problem = problem;
    emit changed();
    return false;
}

bool SituationController::typeFrom(const QString& text) {
    const TypedDate typed = readDate(text, m_services.today(), tr("The day"));
    if (!typed.problem.isEmpty())
        return fail(typed.problem);
    m_problem.clear();
    if (typed.date && *typed.date != m_scope.from) {
        m_scope.from = *typed.date;
        readState();
    }
    emit changed();
    return true;
}

void SituationController::moveFrom(int days) {
    m_scope.from = records::plusDays(m_scope.from, days);
    m_problem.clear();
    readState();
    emit changed();
}

void SituationController::typeHighs(const QString& text) {
    m_highs = text;
}

void SituationController::typeLows(const QString& text) {
    m_lows = text;
}

void SituationController::typeFrames(const QString& text) {
    m_typedFrames = m_typedFrames || text != m_frames;
    m_frames = text;
}

void SituationController::setFahrenheit(bool on) {
    m_services.kept([&] { m_services.settings.setUnits(on ? Units::UsCustomary : Units::Metric); });
    emit changed();
}

void SituationController::pickSupers(const QString& key) {
    m_supersOn = key == QLatin1String("on");
    listOptions();
    emit changed();
}

void SituationController::pickBrood(const QString& key) {
    m_brood = records::broodFrom(key.toStdString());
    listOptions();
    emit changed();
}

void SituationController::pickFloor(const QString& key) {
    m_floor = records::floorFrom(key.toStdString());
    listOptions();
    emit changed();
}

/// One event for each colony and fact that is not as picked. What is seen is seen today at the latest.
std::vector<ColonyEvent> SituationController::newEvents(const std::optional<double>& frames) const {
    std::vector<ColonyEvent> events;
    const records::Date day = std::min(m_scope.from, m_services.today());
    const season::Situation before = situationIn(m_scope, m_services.handbook());
    for (const records::Colony& colony : m_scope.colonies) {
        const records::ColonyState state = records::stateOn(colony, m_scope.kept.events, m_scope.from);
        const auto add = [&](EventKind kind) -> ColonyEvent& {
            ColonyEvent event;
            event.colonyId = colony.id;
            event.yardId = colony.yardId;
            event.kind = kind;
            event.day = day;
            event.recordedAtMs = m_services.now().utcMs;
            event.demo = colony.demo;
            return events.emplace_back(event);
        };
        // What was not touched stays as it is, also where the colonies of a yard differ.
        if (m_supersOn && m_supersOn != before.supersOn &&
            (!state.supersOn || state.supersOn->value != *m_supersOn))
            add(*m_supersOn ? EventKind::SupersOn : EventKind::SupersOff);
        if (m_brood != Brood::NotKnown && m_brood != before.brood &&
            (!state.brood || state.brood->value != m_brood || !holds(*state.brood, m_scope.from)))
            add(EventKind::Brood).brood = m_brood;
        if (m_floor != Floor::NotKnown && m_floor != before.floor &&
            (!state.floor || state.floor->value != m_floor))
            add(EventKind::Floor).floor = m_floor;
        if (frames && (!state.frames || state.frames->value != *frames ||
                       !holds(*state.frames, season::strengthHoldsDays, m_scope.from)))
            add(EventKind::Strength).frames = *frames;
    }
    return events;
}

bool SituationController::keep() {
    const auto unit = m_services.settings.temperatureUnit();
    const auto highs = season::readTemperatures(m_highs.toStdString(), unit);
    const auto lows = season::readTemperatures(m_lows.toStdString(), unit);
    for (const auto* each : {&highs, &lows})
        if (const auto* wrong = std::get_if<season::Phrase>(each))
            return fail(m_services.say(*wrong));
    std::optional<double> frames;
    if (m_typedFrames && !m_frames.trimmed().isEmpty()) {
        const auto read = records::readNumber(m_frames.toStdString());
        std::optional<records::InputProblem> wrong;
        if (const auto* problem = std::get_if<records::InputProblem>(&read))
            wrong = *problem;
        else if (frames = std::get<double>(read); *frames < 0)
            wrong = records::InputProblem::Negative;
        else if (*frames > records::mostFrames)
            wrong = records::InputProblem::TooLarge;
        if (wrong)
            return fail(words::problem(*wrong, tr("The number of frames"), 0, records::mostFrames));
    }
    TreatScope asked = m_scope;
    asked.highsC = std::get<std::vector<double>>(highs);
    asked.lowsC = std::get<std::vector<double>>(lows);
    if (const auto problems = season::problemsOf(situationIn(asked, m_services.handbook()));
        !problems.empty()) {
        QStringList sentences;
        for (const season::Phrase& each : problems)
            sentences.append(m_services.say(each));
        return fail(sentences.join(u' '));
    }
    auto events = newEvents(frames);
    const bool done = m_services.kept([&] {
        m_services.store.inOneTransaction([&] {
            for (ColonyEvent& event : events) {
                event.id = m_services.store.newId();
                m_services.store.save(event);
            }
        });
    });
    if (!done)
        return false;
    m_problem.clear();
    emit changed();
    emit kept(asked.from, asked.highsC, asked.lowsC);
    return true;
}

} // namespace halfcup::touch
