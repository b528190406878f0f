// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

namespace halfcup::touch {

void App::wireRound() {
    const auto open = [this](const QString& yardId) {
        if (!m_round.show(yardId))
            return;
        m_navigator.home();
        m_navigator.open(Navigator::Round);
    };
    connect(&m_here, &HereController::roundWanted, this, open);
    connect(&m_answer, &AnswerController::roundWanted, this, open);
    connect(&m_round, &RoundController::washWanted, this,
            [this](const QString& colonyId) { beginWash(colonyId); });
    connect(&m_round, &RoundController::colonyWanted, this, &App::openColony);
    connect(&m_round, &RoundController::homeWanted, this, [this] { m_navigator.home(); });
    connect(&m_navigator, &Navigator::pageChanged, this, [this] {
        if (m_navigator.page() == Navigator::Round)
            m_round.refresh();
    });
}

} // namespace halfcup::touch
