// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

#include <QGuiApplication>

// Wires of the exchange folder: when it is looked into without being asked for.
namespace halfcup::touch {

void App::wireFolder() {
    connect(&m_folder, &FolderController::recordsChanged, &m_here, &HereController::refresh);
    connect(&m_navigator, &Navigator::pageChanged, this, [this] {
        if (m_navigator.page() == Navigator::Folder)
            m_folder.refresh();
        else if (m_navigator.page() == Navigator::Here)
            m_folder.exchangeQuietly();
    });
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive && m_navigator.page() == Navigator::Here)
            m_folder.exchangeQuietly();
    });
}

} // namespace halfcup::touch
