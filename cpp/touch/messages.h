// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QQmlEngine>
#include <QStringList>

namespace halfcup::touch {

/// What went wrong, in sentences, until the keeper has read them. Nothing is only logged.
class Messages : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString text READ text NOTIFY changed) // the oldest one; empty where there is none
public:
    using QObject::QObject;
    QString text() const { return m_waiting.isEmpty() ? QString() : m_waiting.first(); }
    void say(const QString& sentence); // the same one twice in a row is said once

    Q_INVOKABLE void dismiss();

signals:
    void changed();

private:
    QStringList m_waiting;
};

} // namespace halfcup::touch
