// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/export_controller.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// What leaves the phone, and the demo that comes in.
class ShareController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString samplesLine READ samplesLine NOTIFY changed) // "27 washes can be exported"
    Q_PROPERTY(QString result READ result NOTIFY changed) // what was done or what went wrong; empty before
    Q_PROPERTY(bool failed READ hasFailed NOTIFY changed)
    Q_PROPERTY(bool demoLoaded READ isDemoLoaded NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ExportController* people READ people CONSTANT) // files for people
public:
    ShareController(Services& services, QObject* parent = nullptr);

    QString samplesLine() const;
    QString result() const { return m_result; }
    bool hasFailed() const { return m_failed; }
    bool isDemoLoaded() const;
    ExportController* people() { return &m_people; }

    void refresh();

    Q_INVOKABLE bool loadDemo();

signals:
    void changed();
    void recordsChanged();

private:
    Services& m_services;
    bool m_failed = false;
    QString m_result;
    ExportController m_people;
};

} // namespace halfcup::touch
