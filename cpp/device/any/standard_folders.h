// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/folders.h"

namespace halfcup::device {

/// Folders where the system wants them (QStandardPaths): the program's own data, and "Halfcup" in the
/// documents.
class StandardFolders final : public Folders {
public:
    StandardFolders() = default;
    /// Other places for either, for a program started with a folder of its own choice; empty = the system's.
    StandardFolders(QString dataPath, QString exportsPath, bool areSeen = true);
    [[nodiscard]] Folder data() const override;
    [[nodiscard]] Folder exports() const override;
    [[nodiscard]] bool areSeen() const override { return m_areSeen; }

private:
    QString m_dataPath;
    QString m_exportsPath;
    bool m_areSeen = true;
};

} // namespace halfcup::device
