// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include <QAccessible>
#include <QGuiApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMetaEnum>
#include <QWindow>
#include <emscripten.h>

namespace {

void tell(QAccessibleInterface* item, const QRect& glass, QJsonArray& told) {
    if (!item || !item->isValid())
        return;
    const QAccessible::State state = item->state();
    const QString name = item->text(QAccessible::Name);
    if (!state.invisible && !name.isEmpty()) {
        const QRect at = item->rect().translated(-glass.topLeft());
        told.append(QJsonObject{
            {QStringLiteral("name"), name},
            {QStringLiteral("role"),
             QLatin1String(QMetaEnum::fromType<QAccessible::Role>().valueToKey(item->role()))},
            {QStringLiteral("value"), item->text(QAccessible::Value)},
            {QStringLiteral("enabled"), !state.disabled},
            {QStringLiteral("x"), at.x()},
            {QStringLiteral("y"), at.y()},
            {QStringLiteral("width"), at.width()},
            {QStringLiteral("height"), at.height()},
        });
    }
    for (int i = 0; i < item->childCount(); ++i)
        tell(item->child(i), glass, told);
}

} // namespace

/// What a screen reader would be told of now, as JSON: names, roles, and where each item lies in CSS pixels.
/// A canvas says nothing of what is on it, so this is how tests find what they touch. Valid until the next
/// call.
extern "C" EMSCRIPTEN_KEEPALIVE const char* halfcupToldItems() {
    static QByteArray json;
    QAccessible::setActive(true);
    QJsonArray told;
    for (QWindow* window : QGuiApplication::topLevelWindows())
        if (window->isVisible())
            tell(QAccessible::queryAccessibleInterface(window), window->geometry(), told);
    json = QJsonDocument(told).toJson(QJsonDocument::Compact);
    return json.constData();
}
