// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

// Wires of the tray: scooped now, washed later.
namespace halfcup::touch {

void App::wireTray() {
    const auto takeUp = [this](const QString& sampleId) {
        if (!m_wash.resume(sampleId))
            return;
        m_navigator.home();
        m_navigator.open(Navigator::Wash);
    };
    const auto open = [this] {
        m_navigator.home();
        m_here.refresh();
        m_navigator.open(Navigator::Tray);
    };
    connect(&m_wash, &WashController::putInTray, this, open);
    connect(&m_here, &HereController::trayWanted, this, open);
    connect(&m_round, &RoundController::trayWanted, this, open);
    connect(&m_tray, &TrayController::draftWanted, this, takeUp);
    connect(&m_answer, &AnswerController::jarWanted, this, takeUp);
    connect(&m_tray, &TrayController::backWanted, this, [this] { m_navigator.home(); });
    connect(&m_tray, &TrayController::washWanted, this,
            [this](const QString& colonyId) { beginWash(colonyId, m_wash.methodId()); });
}

} // namespace halfcup::touch
