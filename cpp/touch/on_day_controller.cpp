// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/on_day_controller.h"

#include "season/natural_order.h"
#include "touch/colony_entries.h"
#include "touch/story.h"
#include "touch/typed_date.h"
#include "touch/words.h"

#include <algorithm>

namespace halfcup::touch {

OnDayController::OnDayController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString OnDayController::context() const {
    return m_yardName;
}

QString OnDayController::title() const {
    return m_colonyId.isEmpty() ? tr("All colonies") : tr("Colony %1").arg(m_label);
}

QString OnDayController::dayLine() const {
    const QString day = words::dayAndYear(m_day);
    return m_day == m_services.today() ? tr("Today, %1").arg(day) : tr("On %1").arg(day);
}

bool OnDayController::showColony(const QString& colonyId) {
    bool found = false;
    m_services.kept([&] { found = m_services.store.colony(colonyId.toStdString()).has_value(); });
    m_colonyId = colonyId;
    m_yardId.clear();
    m_cameFromYard = false;
    m_day = m_services.today();
    if (found)
        read();
    return found;
}

bool OnDayController::showYard(const QString& yardId) {
    bool found = false;
    m_services.kept([&] { found = m_services.store.yard(yardId.toStdString()).has_value(); });
    m_colonyId.clear();
    m_yardId = yardId;
    m_cameFromYard = false;
    m_day = m_services.today();
    if (found)
        read();
    return found;
}

void OnDayController::read() {
    m_rows.clear();
    m_problem.clear();
    m_services.kept([&] {
        const auto colony =
            m_colonyId.isEmpty() ? std::nullopt : m_services.store.colony(m_colonyId.toStdString());
        if (colony) {
            m_colonies.setEntries({});
            readColony(*colony);
        } else {
            readYard();
        }
    });
    m_facts.setEntries(m_rows);
    emit changed();
}

void OnDayController::fact(const QString& title, const QString& detail, const QString& note) {
    ChoiceListModel::Entry entry;
    entry.title = title;
    entry.detail = detail;
    entry.note = note;
    m_rows.append(entry);
}

// All that is kept of it, because an inspector may ask for any of it; what was left empty is said to be.
void OnDayController::addTreatment(const QString& title, const records::Treatment& treatment) {
    const auto typed = [](const std::string& text) {
        return text.empty() ? tr("not written down") : QString::fromStdString(text);
    };
    QStringList lines;
    lines.append(tr("Course: %1").arg(story::course(treatment)));
    if (treatment.removedOn)
        lines.append(tr("Taken out: %1").arg(words::dayAndYear(*treatment.removedOn)));
    else if (treatment.removalDue)
        lines.append(tr("To be taken out: %1").arg(words::dayAndYear(*treatment.removalDue)));
    lines.append(tr("Batch: %1").arg(typed(treatment.batch)));
    lines.append(tr("Use by: %1")
                     .arg(treatment.expiry ? words::dayAndYear(*treatment.expiry) : tr("not written down")));
    lines.append(tr("Quantity, all colonies: %1").arg(typed(treatment.quantity)));
    lines.append(tr("Supplier: %1").arg(typed(treatment.supplier)));
    if (!treatment.proof.empty())
        lines.append(tr("Proof of purchase: %1").arg(typed(treatment.proof)));
    if (!treatment.prescriber.empty())
        lines.append(tr("Prescribed by: %1").arg(typed(treatment.prescriber)));
    lines.append(tr("Given by: %1").arg(typed(treatment.doneBy)));
    lines.append(treatment.withdrawalDays ? tr("Withdrawal: %1").arg(words::days(*treatment.withdrawalDays))
                                          : tr("Withdrawal: not written down"));
    fact(title, story::treatmentName(m_services, treatment), lines.join(u'\n'));
}

void OnDayController::readColony(const records::Colony& colony) {
    const auto events = m_services.store.eventsOf(colony.id);
    const auto treatments = m_services.store.treatmentsOf(colony.id);
    const auto samples = m_services.store.samplesOf(colony.id);
    const records::ColonyOnDay told = records::onDay(colony, events, treatments, samples, m_day);
    const auto yard = m_services.store.yard(told.state.yardId);
    m_yardName = yard ? QString::fromStdString(yard->name) : QString();
    m_label = QString::fromStdString(colony.label);
    m_demo = colony.demo;

    if (told.beforeRecords)
        fact(tr("Before its records"), tr("Nothing was written down of this colony until after this day."));
    for (const records::GivenTreatment& given : told.inHive)
        addTreatment(tr("In the hive"), given.treatment);
    if (told.inHive.empty())
        fact(tr("In the hive"), tr("No treatment."));
    fact(tr("Honey"), story::honeyOnDay(told.honey));
    for (const records::GivenTreatment& given : told.withdrawn)
        addTreatment(tr("Over, but honey waits"), given.treatment);
    fact(tr("Its state"), story::stateLine(m_services, told.state));
    const QString number = yard ? QString::fromStdString(yard->registrationNumber) : QString();
    fact(tr("It stood in"), m_yardName, number.isEmpty() ? QString() : tr("Registered as %1").arg(number));
    if (told.lastWash)
        fact(tr("Last wash before"), words::standing(words::headlineOf(*told.lastWash)),
             tr("%1 per 100 on %2", "a load and a date")
                 .arg(words::load(told.lastWash->answer ? told.lastWash->answer->loadQ50 : 0),
                      words::dayAndYear(records::localDate(sampledAt(*told.lastWash)))));
    else
        fact(tr("Last wash before"), tr("None."));
}

// Colonies that stood there that day, wherever they stand now.
void OnDayController::readYard() {
    const std::string wanted = m_yardId.toStdString();
    const auto shown = m_services.store.yard(wanted);
    m_yardName = shown ? QString::fromStdString(shown->name) : QString();
    m_demo = shown && shown->demo;
    QList<ChoiceListModel::Entry> rows;
    for (const records::Yard& yard : m_services.store.yards()) {
        const auto events = m_services.store.eventsOfYard(yard.id);
        const auto treatments = m_services.store.treatmentsOfYard(yard.id);
        for (const records::Colony& colony : m_services.store.colonies(yard.id)) {
            const records::ColonyOnDay told = records::onDay(colony, events, treatments, {}, m_day);
            const bool gone = told.state.ended && told.state.ended->day < m_day;
            const bool notYet = std::ranges::any_of(events, [&](const records::ColonyEvent& event) {
                return event.kind == records::EventKind::Split && event.otherColonyId == colony.id &&
                       event.day > m_day;
            });
            if (told.state.yardId != wanted || gone || notYet)
                continue;
            QStringList inHive;
            for (const records::GivenTreatment& given : told.inHive)
                inHive.append(story::treatmentName(m_services, given.treatment));
            ChoiceListModel::Entry entry;
            entry.key = QString::fromStdString(colony.id);
            entry.title = tr("Colony %1").arg(QString::fromStdString(colony.label));
            entry.detail = inHive.isEmpty() ? tr("No treatment in the hive")
                                            : tr("In the hive: %1").arg(inHive.join(QStringLiteral(", ")));
            entry.note = story::honeyOnDay(told.honey);
            rows.append(entry);
        }
    }
    std::ranges::sort(rows, [](const auto& a, const auto& b) {
        return season::naturalOrder(a.title.toStdString(), b.title.toStdString()) < 0;
    });
    m_colonies.setEntries(rows);
    if (rows.isEmpty())
        fact(tr("No colony"), tr("None stood here on that day, by your records."));
}

void OnDayController::earlier() {
    m_day = records::plusDays(m_day, -1);
    read();
}

void OnDayController::later() {
    if (!canGoLater())
        return;
    m_day = records::plusDays(m_day, 1);
    read();
}

bool OnDayController::typeDay(const QString& text) {
    const TypedDate typed = readDate(text, m_services.today(), tr("The day"));
    m_problem = typed.problem;
    if (typed.date && *typed.date > m_services.today())
        m_problem =
            tr("%1 has not come yet. Nobody can say what will be so.").arg(words::dayAndYear(*typed.date));
    if (m_problem.isEmpty() && !typed.date)
        m_problem = tr("Type a day, such as 1 July.");
    if (!m_problem.isEmpty()) {
        emit changed();
        return false;
    }
    m_day = *typed.date;
    read();
    return true;
}

void OnDayController::openColony(const QString& colonyId) {
    m_colonyId = colonyId;
    m_cameFromYard = true;
    read();
}

bool OnDayController::back() {
    if (!m_cameFromYard || m_colonyId.isEmpty())
        return false;
    m_colonyId.clear();
    m_cameFromYard = false;
    read();
    return true;
}

} // namespace halfcup::touch
