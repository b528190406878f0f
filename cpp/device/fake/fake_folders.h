// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/folders.h"

#include <QTemporaryDir>

namespace halfcup::device {

/// Two real folders inside a temporary one that goes with this object. Trouble can be put on either.
class FakeFolders final : public Folders {
public:
    FakeFolders();
    [[nodiscard]] Folder data() const override { return m_data; }
    [[nodiscard]] Folder exports() const override { return m_exports; }
    /// From now on data() or exports() reports this; the folder itself stays as it is.
    void setDataTrouble(FolderTrouble trouble) { m_data.trouble = trouble; }
    void setExportsTrouble(FolderTrouble trouble) { m_exports.trouble = trouble; }
    [[nodiscard]] bool areSeen() const override { return m_areSeen; }
    void setSeen(bool seen) { m_areSeen = seen; } // false: as in a browser

private:
    QTemporaryDir m_root;
    Folder m_data;
    Folder m_exports;
    bool m_areSeen = true;
};

} // namespace halfcup::device
