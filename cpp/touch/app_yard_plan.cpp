// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

namespace halfcup::touch {

void App::wireYardPlan() {
    connect(&m_yards, &YardsController::planWanted, this, [this](const QString& yardId) {
        if (m_yardPlan.show(yardId))
            m_navigator.open(Navigator::YardPlan);
    });
    connect(&m_yardPlan, &YardPlanController::left, this, [this] { m_navigator.back(); });
    connect(&m_yardPlan, &YardPlanController::colonyWanted, this, &App::openColony);
    connect(&m_navigator, &Navigator::pageChanged, this, [this] {
        if (m_navigator.page() == Navigator::YardPlan)
            m_yardPlan.refresh();
    });
}

} // namespace halfcup::touch
