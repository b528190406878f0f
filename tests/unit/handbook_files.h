// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The handbook's own files, as the app gets them, for tests.
#include "handbook/handbook.h"

#include <QDir>
#include <QFile>

#include <string>
#include <vector>

// Texts of all files of assets/handbook but the schema, in the order of their names.
inline std::vector<std::string> handbookTexts() {
    std::vector<std::string> texts;
    const QDir folder(QStringLiteral(HALFCUP_SOURCE_DIR "/assets/handbook"));
    for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (name != QLatin1String("schema.json") && file.open(QIODevice::ReadOnly))
            texts.push_back(file.readAll().toStdString());
    }
    return texts;
}

inline halfcup::handbook::Handbook wholeHandbook() {
    const auto texts = handbookTexts();
    const std::vector<std::string_view> views(texts.begin(), texts.end());
    return halfcup::handbook::Handbook::fromTexts(views);
}
