// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

namespace halfcup::device {

/// What can be wrong with a folder. The text for the keeper is made above; `path` of the Folder belongs in
/// it.
enum class FolderTrouble {
    None,
    NoPlace,       ///< the system names no such folder
    NotAFolder,    ///< there is a file of that name, here or further up
    CannotCreate,  ///< it is not there and could not be made (a parent may not be written, the disk is full)
    CannotWrite,   ///< it is there but nothing can be written into it
    CannotProtect, ///< others on this phone can look into it and that could not be changed (data folder only)
};

struct Folder {
    QString path; ///< absolute, without a slash at the end; also set where there is trouble, if it is known
    FolderTrouble trouble = FolderTrouble::None;
    [[nodiscard]] bool ok() const { return trouble == FolderTrouble::None; }
};

/// Where the program may put files. Each call looks afresh, makes the folder where it is missing and tries it
/// by writing a small file and removing it: a folder that says ok was written to a moment ago. Nothing that
/// was in a folder is touched.
class Folders {
public:
    virtual ~Folders() = default;
    /// For the database: the program's own, readable by its owner alone (0700), for yards are worth stealing.
    [[nodiscard]] virtual Folder data() const = 0;
    /// For what the keeper hands on: a folder of the program in the keeper's documents.
    [[nodiscard]] virtual Folder exports() const = 0;
    /// Whether the keeper reaches such folders with other programs too; in a browser nobody else does.
    [[nodiscard]] virtual bool areSeen() const { return true; }
};

} // namespace halfcup::device
