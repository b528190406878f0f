// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/treat_controller.h"

#include "touch/verdict_mark.h"

#include <algorithm>

namespace halfcup::touch {

namespace {

const QLatin1String anotherKey("another");

} // namespace

TreatController::TreatController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {
    connect(&services.settings, &Settings::changed, this, [this] {
        if (m_scope)
            list();
    });
}

bool TreatController::show(const QString& yardId, const QString& colonyId) {
    std::optional<TreatScope> scope;
    const records::Date today = m_services.today();
    m_services.kept(
        [&] { scope = readScope(m_services, yardId.toStdString(), colonyId.toStdString(), today); });
    if (scope && m_scope && m_scope->kept.yard.id == scope->kept.yard.id && m_typedOn == today) {
        scope->from = m_scope->from;
        scope->highsC = m_scope->highsC;
        scope->lowsC = m_scope->lowsC;
    }
    const bool found = scope.has_value();
    m_scope = std::move(scope);
    list();
    return found;
}

void TreatController::showFrom(const records::Date& from, std::vector<double> highsC,
                               std::vector<double> lowsC) {
    if (!m_scope)
        return;
    m_scope->from = from;
    m_scope->highsC = std::move(highsC);
    m_scope->lowsC = std::move(lowsC);
    m_typedOn = m_services.today();
    refresh();
}

void TreatController::refresh() {
    if (!m_scope)
        return;
    std::optional<TreatScope> fresh;
    m_services.kept([&] {
        fresh =
            readScope(m_services, m_scope->kept.yard.id,
                      m_scope->wholeYard ? records::RecordId() : m_scope->colonies.front().id, m_scope->from);
    });
    if (fresh) {
        fresh->highsC = std::move(m_scope->highsC);
        fresh->lowsC = std::move(m_scope->lowsC);
    }
    m_scope = std::move(fresh);
    list();
}

void TreatController::list() {
    m_found.clear();
    m_context.clear();
    m_line.clear();
    m_problem.clear();
    QList<ChoiceListModel::Entry> entries;
    if (!m_scope) {
        m_problem = tr("There is no colony here to treat.");
    } else {
        const season::Situation situation = situationIn(*m_scope, m_services.handbook());
        m_context = scopeName(*m_scope);
        m_line = situationLine(situation, m_services);
        if (const auto problems = season::problemsOf(situation); !problems.empty())
            m_problem = m_services.say(problems.front());
        else
            m_found = season::choices(situation, m_services.handbook());
    }
    for (const season::Choice& choice : m_found) {
        ChoiceListModel::Entry entry;
        entry.key = QString::fromStdString(choice.id);
        entry.title = QString::fromStdString(choice.name);
        entry.detail = m_services.say(choice.reasons.front().phrase);
        entry.standing = VerdictMark::from(choice.verdict);
        entry.note = VerdictMark::word(choice.verdict);
        if (entries.isEmpty() || entries.last().note != entry.note)
            entry.section = entry.note;
        entries.append(entry);
    }
    if (!m_found.empty()) {
        ChoiceListModel::Entry other;
        other.key = anotherKey;
        other.title = tr("Another substance");
        other.detail =
            tr("Record what the handbook does not know. Nothing is said of it here: read its label.");
        other.section = tr("Not in the handbook");
        entries.append(other);
    }
    m_choices.setEntries(entries);
    emit changed();
}

const season::Choice* TreatController::choice(const QString& id) const {
    const auto found = std::ranges::find(m_found, id.toStdString(), &season::Choice::id);
    return found == m_found.end() ? nullptr : &*found;
}

void TreatController::openChoice(const QString& id) {
    if (id == anotherKey)
        emit anotherWanted();
    else
        emit choiceWanted(id);
}

void TreatController::widen() {
    if (canWiden())
        show(QString::fromStdString(m_scope->kept.yard.id), {});
}

void TreatController::openSituation() {
    if (m_scope)
        emit situationWanted();
}

} // namespace halfcup::touch
