// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/safe_file.h"
#include "touch/services.h"

#include <QString>

#include <functional>

namespace halfcup::touch {

/// What came of writing a file to hand on.
struct Exported {
    bool failed = false;
    QString sentence; // what went wrong; empty where it was written
    QString path;     // where it was written
};

/// Why there is no place for files to hand on, in a sentence. folder: one that is not ok.
[[nodiscard]] QString noPlaceToWrite(const device::Folder& folder);

/// Why a file could not be written, in a sentence.
[[nodiscard]] QString fileTrouble(exchange::FileProblem problem, const QString& path);

/// Shows the phone's ways to send the file, where it has a list of them. In a browser that is the only way a
/// file gets out. path: written and closed.
void handOn(Services& services, const QString& path);

/// Where a file that was handed on is found, for the end of a sentence: its path, or in a browser its name
/// and who has it now.
[[nodiscard]] QString whereItIs(const Services& services, const QString& path);

/// Writes the text as a file of that name into the phone's place for files to hand on, whole or not at all,
/// and hands it on.
[[nodiscard]] Exported writeExport(Services& services, const QString& name, const std::string& text);

} // namespace halfcup::touch
