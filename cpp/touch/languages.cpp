// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/languages.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QTranslator>

#include <algorithm>
#include <memory>

namespace halfcup::touch {

namespace {

QString fileOf(const QString& code) {
    return QStringLiteral(":/halfcup/languages/halfcup_%1.qm").arg(code);
}

} // namespace

const std::vector<Language>& languages() {
    static const std::vector<Language> all{{QStringLiteral("de"), QStringLiteral("Deutsch")},
                                           {QStringLiteral("en"), QStringLiteral("English")},
                                           {QStringLiteral("es"), QStringLiteral("Español")},
                                           {QStringLiteral("fr"), QStringLiteral("Français")}};
    return all;
}

QString languageFor(const QString& wish) {
    if (!wish.isEmpty() && QFile::exists(fileOf(wish)))
        return wish;
    const auto isThere = [](const QString& code) {
        return std::ranges::any_of(languages(), [&](const Language& each) { return each.code == code; });
    };
    for (const QString& tag : QLocale::system().uiLanguages())
        if (const QString code = tag.section(u'-', 0, 0); isThere(code))
            return code;
    return QStringLiteral("en");
}

void useLanguage(const QString& wish) {
    // Belongs to the application, which it must not outlive; English has a file too, for "1 mite, 2 mites".
    static QTranslator* words = nullptr;
    const QString code = languageFor(wish);
    if (words) {
        QCoreApplication::removeTranslator(words);
        delete words;
    }
    words = new QTranslator(QCoreApplication::instance());
    QObject::connect(words, &QObject::destroyed, words, [] { words = nullptr; });
    if (words->load(fileOf(code)))
        QCoreApplication::installTranslator(words);
    const QLocale::Language language = QLocale(code).language();
    QLocale::setDefault(QLocale(language, QLocale::system().territory()));
}

} // namespace halfcup::touch
