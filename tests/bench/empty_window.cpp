// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The floor under the start of the app: what Qt itself needs for a window.
#include "first_frame.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    const QString page = argc > 1 ? QStringLiteral("Words") : QStringLiteral("Empty");
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/HalfcupBenchEmpty/%1Window.qml").arg(page)));
    if (engine.rootObjects().isEmpty())
        return 1;
    halfcup::bench::endWithFirstFrame(qobject_cast<QQuickWindow*>(engine.rootObjects().first()));
    return QGuiApplication::exec();
}
