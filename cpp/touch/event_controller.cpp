// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/event_controller.h"

#include "records/typed_input.h"
#include "touch/story.h"
#include "touch/typed_date.h"
#include "touch/words.h"

#include <QLocale>

#include <algorithm>
#include <array>

namespace halfcup::touch {

namespace {

using records::EventKind;
using records::EventProblem;

// Most often told first.
constexpr std::array kindsInOrder{EventKind::SupersOn,  EventKind::SupersOff, EventKind::Brood,
                                  EventKind::Strength,  EventKind::Swarmed,   EventKind::Split,
                                  EventKind::Requeened, EventKind::Moved,     EventKind::Merged,
                                  EventKind::Floor,     EventKind::Dead};

QString keyOf(std::string_view name) {
    return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
}

QString keyOf(EventKind kind) {
    return keyOf(records::nameOf(kind));
}

ChoiceListModel::Entry choice(const QString& key, const QString& title, bool chosen) {
    ChoiceListModel::Entry entry;
    entry.key = key;
    entry.title = story::capitalised(title);
    entry.chosen = chosen;
    return entry;
}

} // namespace

EventController::EventController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

bool EventController::begin(const records::RecordId& yardId, std::vector<records::Colony> colonies) {
    const auto yard = m_services.store.yard(yardId);
    if (!yard || colonies.empty())
        return false;
    m_yard = *yard;
    m_colonies = std::move(colonies);
    m_event = {};
    m_event.day = m_services.today();
    m_typed.clear();
    m_note.clear();
    m_problem.clear();
    m_question.clear();
    return true;
}

bool EventController::startFor(const QString& colonyId) {
    bool found = false;
    m_services.kept([&] {
        const auto colony = m_services.store.colony(colonyId.toStdString());
        found = colony && begin(colony->yardId, {*colony});
        if (found)
            listKinds();
    });
    m_wholeYard = false;
    m_view = Picking;
    emit changed();
    return found;
}

bool EventController::startForYard(const QString& yardId, EventKind kind) {
    bool found = false;
    m_services.kept([&] {
        const std::string id = yardId.toStdString();
        found = begin(id, livingColonies(m_services, id, m_services.today()));
    });
    if (!found)
        return false;
    m_wholeYard = true;
    m_event.kind = kind;
    m_view = Telling;
    m_choices.setEntries({});
    emit changed();
    return true;
}

bool EventController::open(const QString& eventId) {
    bool found = false;
    m_services.kept([&] {
        const auto event = m_services.store.event(eventId.toStdString());
        const auto colony = event ? m_services.store.colony(event->colonyId) : std::nullopt;
        found = colony && begin(colony->yardId, {*colony});
        if (found)
            m_event = *event;
    });
    if (!found)
        return false;
    m_wholeYard = false;
    m_view = Kept;
    m_choices.setEntries({});
    (hasNote() ? m_note : m_typed) = QString::fromStdString(m_event.words);
    if (m_event.frames)
        m_typed = QLocale().toString(*m_event.frames, 'g', 4);
    emit changed();
    return true;
}

void EventController::listKinds() {
    const records::ColonyState state = records::stateOn(
        m_colonies.front(), m_services.store.eventsOf(m_colonies.front().id), m_services.today());
    m_likely = keyOf(state.supersOn && state.supersOn->value ? EventKind::SupersOff : EventKind::SupersOn);
    QList<ChoiceListModel::Entry> entries;
    for (const EventKind kind : kindsInOrder)
        if (keyOf(kind) != m_likely)
            entries.append(choice(keyOf(kind), story::kindName(kind), false));
    m_kinds.setEntries(entries);
}

void EventController::listChoices() {
    QList<ChoiceListModel::Entry> entries;
    m_services.kept([&] {
        if (m_event.kind == EventKind::Brood)
            for (const records::Brood brood :
                 {records::Brood::Capped, records::Brood::OpenOnly, records::Brood::None})
                entries.append(choice(keyOf(nameOf(brood)), story::broodName(brood), m_event.brood == brood));
        if (m_event.kind == EventKind::Floor)
            for (const records::Floor floor : {records::Floor::Solid, records::Floor::Screened})
                entries.append(choice(keyOf(nameOf(floor)), story::floorName(floor), m_event.floor == floor));
        if (m_event.kind == EventKind::Merged)
            for (const records::Colony& other : livingColonies(m_services, m_yard.id, m_event.day))
                if (other.id != m_colonies.front().id)
                    entries.append(choice(QString::fromStdString(other.id),
                                          tr("Colony %1").arg(QString::fromStdString(other.label)),
                                          m_event.otherColonyId == other.id));
        if (m_event.kind == EventKind::Moved)
            for (const records::Yard& yard : m_services.store.yards())
                if (yard.id != m_yard.id)
                    entries.append(choice(QString::fromStdString(yard.id), QString::fromStdString(yard.name),
                                          m_event.otherYardId == yard.id));
    });
    m_choices.setEntries(entries);
}

void EventController::pick(const QString& kindKey) {
    const auto kind = records::eventKindFrom(kindKey.toStdString());
    if (!kind)
        return;
    const records::Date day = m_event.day;
    m_event = {};
    m_event.day = day;
    m_event.kind = *kind;
    m_typed.clear();
    m_problem.clear();
    m_view = Telling;
    listChoices();
    emit changed();
}

void EventController::choose(const QString& key) {
    const std::string word = key.toStdString();
    switch (m_event.kind) {
    case EventKind::Brood:
        m_event.brood = records::broodFrom(word);
        break;
    case EventKind::Floor:
        m_event.floor = records::floorFrom(word);
        break;
    case EventKind::Merged:
        m_event.otherColonyId = word;
        break;
    case EventKind::Moved:
        m_event.otherYardId = word;
        break;
    default:
        return;
    }
    m_problem.clear();
    listChoices();
    emit changed();
}

void EventController::step(double by) {
    const auto read = records::readNumber(m_typed.toStdString());
    const auto* frames = std::get_if<double>(&read);
    const double next = std::clamp((frames ? *frames : 0) + by, 0.0, records::mostFrames);
    m_typed = QLocale().toString(next, 'g', 4);
    m_problem.clear();
    emit changed();
}

void EventController::more() {
    step(1);
}

void EventController::fewer() {
    step(-1);
}

void EventController::setDay(const records::Date& day) {
    m_event.day = day;
    m_problem.clear();
    if (m_event.kind == EventKind::Merged)
        listChoices(); // who lived then
    emit changed();
}

void EventController::earlier() {
    setDay(records::plusDays(m_event.day, -1));
}

void EventController::later() {
    if (canGoLater())
        setDay(records::plusDays(m_event.day, 1));
}

bool EventController::typeDay(const QString& text) {
    const TypedDate typed = readDate(text, m_services.today(), tr("The day"));
    if (!typed.problem.isEmpty())
        return fail(typed.problem);
    if (typed.date && *typed.date > m_services.today()) {
        records::ColonyEvent late = m_event;
        late.day = *typed.date;
        return fail(refusal(m_services, EventProblem::DayInFuture, late));
    }
    if (typed.date)
        setDay(*typed.date);
    return true;
}

bool EventController::fail(const QString& problem) {
    m_problem = problem;
    emit changed();
    return false;
}

QString EventController::fill() {
    const QString typed = m_typed.trimmed();
    m_event.words = (hasNote() ? m_note : typed).trimmed().toStdString();
    m_wanted = {};
    if (m_event.kind == EventKind::Strength && m_view == Telling) {
        const auto read = records::readNumber(typed.toStdString());
        if (const auto* problem = std::get_if<records::InputProblem>(&read))
            return words::problem(*problem, tr("The number of frames"), 0, records::mostFrames);
        m_event.frames = std::get<double>(read);
    }
    if (m_event.kind == EventKind::Split && m_view == Telling && !typed.isEmpty()) {
        if (const auto problem = records::checkName(typed.toStdString()))
            return words::problem(*problem, tr("The number of the new colony"), 0, records::longestName);
        for (const records::Colony& other : m_services.store.colonies(m_yard.id))
            if (other.label == typed.toStdString())
                return tr("There is a colony %1 in this yard already. Choose another number.").arg(typed);
        m_wanted.newColonyLabel = typed;
    }
    return {};
}

bool EventController::keep(const QString& typed, const QString& note) {
    m_typed = typed;
    m_note = note;
    m_problem.clear();
    m_question.clear();
    bool ready = false;
    if (!m_services.kept([&] {
            m_problem = fill();
            ready = m_problem.isEmpty() && (m_view == Kept || check());
        }))
        return false;
    if (m_view == Kept && ready)
        m_wanted.events = {m_event};
    emit changed();
    return ready && m_question.isEmpty() && write();
}

// Puts together what is to be kept. Of a whole yard those are left out of which it is known already.
bool EventController::check() {
    QStringList questions;
    for (const records::Colony& colony : m_colonies) {
        records::ColonyEvent event = m_event;
        event.id = m_services.store.newId();
        event.colonyId = colony.id;
        event.demo = m_yard.demo;
        event.recordedAtMs = m_services.now().utcMs;
        const auto events = m_services.store.eventsOf(colony.id);
        event.yardId = records::stateOn(colony, events, event.day).yardId;
        const auto problems = records::problemsOf(
            event, colony, events, m_services.store.treatmentsOf(colony.id), m_services.today());
        if (m_wholeYard && std::ranges::any_of(problems, [](EventProblem each) {
                return each == EventProblem::SaidAlready || each == EventProblem::EndedBefore;
            }))
            continue;
        for (const EventProblem each : problems) {
            if (isForbidding(each)) {
                m_problem = refusal(m_services, each, event);
                return false;
            }
            questions.append(touch::question(m_services, each, event, colony));
        }
        m_wanted.events.push_back(event);
    }
    if (m_wanted.events.empty()) {
        m_problem = m_event.kind == EventKind::SupersOn
                        ? tr("By your records the supers are on all colonies already.")
                        : tr("By your records no colony has supers on.");
        return false;
    }
    m_question = questions.join(QStringLiteral("\n\n"));
    return true;
}

bool EventController::write() {
    if (!m_services.kept([&] { keepEvents(m_services, m_wanted); }))
        return false;
    m_question.clear();
    emit left();
    return true;
}

bool EventController::keepAnyway() {
    return !m_wanted.events.empty() && write();
}

bool EventController::takeBack() {
    if (m_view != Kept || !m_services.kept([&] { takeBackEvent(m_services, m_event); }))
        return false;
    emit left();
    return true;
}

bool EventController::back() {
    if (m_view != Telling || m_wholeYard)
        return false;
    m_view = Picking;
    m_problem.clear();
    emit changed();
    return true;
}

} // namespace halfcup::touch
