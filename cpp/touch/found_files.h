// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/services.h"

#include <QFileInfo>
#include <QStringList>

/// Files that a keeper put where this phone puts files: what came by mail, by cable or by another program.
namespace halfcup::touch {

/// Downloads, documents and the folder of what is handed on, as far as there are such.
[[nodiscard]] QStringList foldersOfFiles(const Services& services);

/// Files of these folders (not of those in them) that match a pattern ("*.halfcup") and can be read, newest
/// first, at most `most` of them.
[[nodiscard]] QFileInfoList newestFiles(const QStringList& folders, const QStringList& patterns,
                                        qsizetype most);

/// "15 June 2026, 12.4 kB": when it was changed last, and its size.
[[nodiscard]] QString ageAndSize(const Services& services, const QFileInfo& file);

/// The main action beside a list of files that were found: another look; in a browser, where nothing is
/// found, the choice itself.
[[nodiscard]] QString mainActionOfFiles(const Services& services);
/// The other one, the system's own chooser; empty where it has none, or it is the main action.
[[nodiscard]] QString chooserOfFiles(const Services& services, bool anyFound);

} // namespace halfcup::touch
