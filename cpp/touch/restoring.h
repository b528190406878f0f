// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/platform.h"
#include "store/backup.h"

#include <QString>

namespace halfcup::touch {

/// Why a file cannot be used as a backup, in a sentence.
[[nodiscard]] QString backupTrouble(store::BackupError::Kind kind, const QString& path);

/// Puts a backup in the place of the database, between two programs: no Store may be open on it. The settings
/// of the hand stay as they are on this phone. Returns what the keeper is to read then: where the records
/// before it are kept, or why nothing was changed.
[[nodiscard]] QString putBack(const QString& backupPath, const QString& databasePath,
                              device::Platform& platform);

} // namespace halfcup::touch
