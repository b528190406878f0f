// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/platform.h"
#include "store/backup.h"
#include "touch/choice_list_model.h"

#include <QString>

namespace halfcup::touch {

/// Why a file cannot be used as a backup, in a sentence.
[[nodiscard]] QString backupTrouble(store::BackupError::Kind kind, const QString& path);

/// Puts a backup in the place of the database, between two programs: no Store may be open on it. The settings
/// of the hand stay as they are on this phone. Returns what the keeper is to read then: where the records
/// before it are kept, or why nothing was changed. done, where it is not null, says which of the two.
[[nodiscard]] QString putBack(const QString& backupPath, const QString& databasePath,
                              device::Platform& platform, bool* done = nullptr);

/// What can be put back on this phone: backups, newest first, then what was kept aside. Keys are paths.
[[nodiscard]] QList<ChoiceListModel::Entry> backupsOn(device::Platform& platform,
                                                      const QString& databasePath);

} // namespace halfcup::touch
