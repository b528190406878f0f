// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/first_pages.h"

#ifdef HALFCUP_HAS_WORKER_SCRIPT
extern void qml_register_types_QtQml_WorkerScript();
#endif

namespace halfcup::touch {

namespace {

/// A module of QML that is not in the program is a plugin, and making one known is the main thread's work:
/// while that does something else, the thread that reads the pages stands still. The linker keeps what is
/// named.
void keepModules() {
#ifdef HALFCUP_HAS_WORKER_SCRIPT
    [[maybe_unused]] void (*volatile keep)() = &qml_register_types_QtQml_WorkerScript;
#endif
}

} // namespace

QUrl urlOfPage(const QString& page) {
    return QUrl(QStringLiteral("qrc:/qt/qml/Halfcup/") + page);
}

FirstPages::FirstPages(QQmlEngine& engine) {
    keepModules();
    for (const char* page : {"Main.qml", "here/HerePage.qml", "here/HereYard.qml"})
        m_pages.push_back(std::make_unique<QQmlComponent>(&engine, urlOfPage(QLatin1String(page)),
                                                          QQmlComponent::Asynchronous));
}

} // namespace halfcup::touch
