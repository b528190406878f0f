// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

namespace halfcup::touch {

void App::wireTreating() {
    connect(&m_season, &SeasonController::yardWanted, this, [this](const QString& yardId) {
        m_here.pickYard(yardId);
        m_navigator.home();
    });
    connect(&m_season, &SeasonController::treatmentWanted, this, &App::openTreatment);
    connect(&m_season, &SeasonController::checkWanted, this, &App::openCheck);
    connect(&m_answer, &AnswerController::treatWanted, this, &App::openTreat);
    connect(&m_yards, &YardsController::treatWanted, this, [this](const QString& yardId) {
        m_treat.show(yardId, {});
        m_navigator.open(Navigator::Treat);
    });

    connect(&m_treat, &TreatController::choiceWanted, this, [this](const QString& id) {
        if (const season::Choice* choice = m_treat.choice(id)) {
            m_choice.show(*m_treat.scope(), *choice);
            m_navigator.open(Navigator::Choice);
        }
    });
    connect(&m_treat, &TreatController::anotherWanted, this, [this] {
        m_treatment.beginAnother(*m_treat.scope());
        m_navigator.open(Navigator::Treatment);
    });
    connect(&m_treat, &TreatController::situationWanted, this, [this] {
        m_situation.show(*m_treat.scope());
        m_navigator.open(Navigator::Situation);
    });
    connect(&m_situation, &SituationController::kept, this,
            [this](const records::Date& from, const std::vector<double>& highsC,
                   const std::vector<double>& lowsC) {
                m_treat.showFrom(from, highsC, lowsC);
                m_navigator.back();
            });
    connect(&m_choice, &ChoiceController::sourceWanted, this, &App::openSources);
    connect(&m_choice, &ChoiceController::recordWanted, this, [this] {
        m_treatment.begin(m_choice.scope(), m_choice.choice(), m_choice.begins());
        m_navigator.open(Navigator::Treatment);
    });

    connect(&m_treatment, &TreatmentController::recordsChanged, &m_here, &HereController::refresh);
    connect(&m_treatment, &TreatmentController::firstKept, this, [this] { // what led to it is over
        m_navigator.home();
        m_navigator.open(Navigator::Treatment);
    });
    connect(&m_treatment, &TreatmentController::removedIt, this, [this] { m_navigator.back(); });
    connect(&m_treatment, &TreatmentController::checkWanted, this, &App::openCheck);

    connect(&m_check, &CheckController::backWanted, this, [this] { m_navigator.back(); });
    connect(&m_check, &CheckController::sourceWanted, this, &App::openSources);
    connect(&m_check, &CheckController::washWanted, this,
            [this](const QString& colonyId, const QString& yardId) {
                m_here.pickYard(yardId); // the treatment may have been opened from another yard
                beginWash(colonyId);
            });
}

void App::openTreat(const QString& colonyId) {
    std::optional<records::Colony> colony;
    m_services.kept([&] { colony = m_services.store.colony(colonyId.toStdString()); });
    if (!colony)
        return;
    m_treat.show(QString::fromStdString(colony->yardId), colonyId);
    m_navigator.open(Navigator::Treat);
}

void App::openTreatment(const QString& treatmentId) {
    if (m_treatment.show(treatmentId))
        m_navigator.open(Navigator::Treatment);
}

void App::openCheck(const QString& treatmentId) {
    if (m_check.show(treatmentId))
        m_navigator.open(Navigator::Check);
}

void App::openSources(const QString& topic) {
    m_sources.show(topic);
    m_navigator.open(Navigator::Sources);
}

} // namespace halfcup::touch
