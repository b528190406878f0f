// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/page_text.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QLocale>

namespace halfcup::touch {

namespace {

constexpr qsizetype mostColumns = 4; // of a table that reads as a list

class PageText {
    Q_DECLARE_TR_FUNCTIONS(PageText)
};

QString read(const QString& name) {
    const QString language = QLocale::languageToCode(QLocale().language());
    for (const QString& folder : {language + u'/', QString()}) { // English lies beside the folders
        QFile file(QStringLiteral(":/halfcup/assets/pages/%1%2.md").arg(folder, name));
        if (file.open(QIODevice::ReadOnly))
            return QString::fromUtf8(file.readAll());
    }
    return {};
}

QStringList cells(const QString& row) {
    QStringList parts = row.trimmed().split(u'|');
    parts.removeFirst();
    if (!parts.isEmpty())
        parts.removeLast();
    for (QString& part : parts)
        part = part.trimmed();
    return parts;
}

QString asList(const QStringList& rows) {
    if (rows.size() < 3)
        return {};
    const QStringList heads = cells(rows[0]);
    if (heads.size() > mostColumns)
        return PageText::tr(
            "*(A wide table is left out here; it is on the page that comes with the program.)*\n");
    QString list;
    for (qsizetype i = 2; i < rows.size(); ++i) {
        const QStringList values = cells(rows[i]);
        QStringList rest;
        for (qsizetype c = 1; c < values.size(); ++c)
            rest.append(heads.size() > 2 ? heads.value(c) + u' ' + values[c] : values[c]);
        list += QStringLiteral("- **%1**: %2\n").arg(values.value(0), rest.join(QStringLiteral(", ")));
    }
    return list;
}

} // namespace

QStringList builtInPages() {
    QStringList names;
    for (const QString& file :
         QDir(QStringLiteral(":/halfcup/assets/pages")).entryList({QStringLiteral("*.md")}))
        names.append(file.chopped(3));
    return names;
}

QString pageTitle(const QString& name) {
    for (const QString& line : read(name).split(u'\n'))
        if (line.startsWith(QLatin1String("# ")))
            return line.mid(2).trimmed();
    return {};
}

QString pageForScreen(const QString& name) {
    QString text;
    QStringList table;
    for (const QString& line : (read(name) + u'\n').split(u'\n')) {
        if (line.startsWith(u'|')) {
            table.append(line);
            continue;
        }
        if (!table.isEmpty()) {
            text += asList(table);
            table.clear();
        }
        if (!line.startsWith(QLatin1String("# ")) && !line.startsWith(QLatin1String("<!--")))
            text += line + u'\n';
    }
    return text.trimmed();
}

} // namespace halfcup::touch
