// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

// Wires of the backups.
namespace halfcup::touch {

void App::wireBackup() {
    connect(&m_backup, &BackupController::restoreWanted, this, &App::restoreWanted);
    // The reminder stands on the season's page and beside the way to the backups.
    connect(&m_navigator, &Navigator::pageChanged, this, [this] {
        const Navigator::Page page = m_navigator.page();
        if (page == Navigator::Backup || page == Navigator::Season || page == Navigator::Share)
            m_backup.refresh();
    });
}

} // namespace halfcup::touch
