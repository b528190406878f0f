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

/// Why a file could not be written, in a sentence.
[[nodiscard]] QString fileTrouble(exchange::FileProblem problem, const QString& path);

/// Writes the text as a file of that name into the phone's place for files to hand on, whole or not at all.
[[nodiscard]] Exported writeExport(Services& services, const QString& name, const std::string& text);

} // namespace halfcup::touch
