// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

#include <vector>

/// Reads CSV back with Python's csv module: a reader that is not ours.
namespace exchange_test {

using Rows = std::vector<std::vector<std::string>>;

inline Rows readByPython(const std::string& csv) {
    const QTemporaryDir folder;
    QFile file(folder.filePath("some.csv"));
    if (!file.open(QIODevice::WriteOnly) || file.write(QByteArray::fromStdString(csv)) < 0)
        qFatal("The test cannot write its own file.");
    file.close();
    const QString script =
        "import csv, json, sys\n"
        "rows = list(csv.reader(open(sys.argv[1], newline='', encoding='utf-8'), strict=True))\n"
        "print(json.dumps(rows))\n";
    QProcess python;
    python.start("python3", {"-c", script, file.fileName()});
    if (!python.waitForFinished(60'000) || python.exitCode() != 0)
        qFatal("python3 did not read the file: %s", python.readAllStandardError().constData());
    Rows rows;
    for (const QJsonValue row : QJsonDocument::fromJson(python.readAllStandardOutput()).array()) {
        rows.emplace_back();
        for (const QJsonValue cell : row.toArray())
            rows.back().push_back(cell.toString().toStdString());
    }
    return rows;
}

} // namespace exchange_test
