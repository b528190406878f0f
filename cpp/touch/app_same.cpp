// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

// Wires of what was made twice, and of what records were before.
namespace halfcup::touch {

void App::wireSame() {
    const auto openHistory = [this](const QString& kind, const QString& id) {
        if (m_history.show(kind, id))
            m_navigator.open(Navigator::History);
    };
    connect(&m_same, &SameController::wanted, this, [this] { m_navigator.open(Navigator::Same); });
    connect(&m_same, &SameController::recordsJoined, this, [this](const QString& id, const QString& into) {
        if (m_here.yardId() == id)
            m_here.pickYard(into);
        else
            m_here.refresh();
    });
    connect(&m_same, &SameController::recordsSeparated, &m_here, &HereController::refresh);
    connect(&m_colony, &ColonyController::historyWanted, this,
            [openHistory](const QString& id) { openHistory(QStringLiteral("colony"), id); });
    connect(&m_yards, &YardsController::historyWanted, this,
            [openHistory](const QString& id) { openHistory(QStringLiteral("yard"), id); });
    connect(m_share.plan(), &PlanController::historyWanted, this, openHistory);
    connect(&m_history, &HistoryController::recordChanged, this, [this] {
        m_yards.reload(); // what is typed on its page must not be written over what was put back
        m_here.refresh();
    });
    // The row on the page of the yards is read with it; nothing asks at the hive.
    connect(&m_navigator, &Navigator::pageChanged, this, [this] {
        if (m_navigator.page() == Navigator::Yards)
            m_same.refresh();
    });
}

} // namespace halfcup::touch
