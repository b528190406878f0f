// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// What leaves the phone, and the demo that comes in.
class ShareController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString samplesLine READ samplesLine NOTIFY changed)   // "27 washes can be exported"
    Q_PROPERTY(bool exact READ isExact WRITE setExact NOTIFY changed) // positions exact, asked for each time
    Q_PROPERTY(QString positionsLine READ positionsLine NOTIFY changed) // what happens to positions
    Q_PROPERTY(QString result READ result NOTIFY changed) // what was done or what went wrong; empty before
    Q_PROPERTY(bool failed READ hasFailed NOTIFY changed)
    Q_PROPERTY(bool demoLoaded READ isDemoLoaded NOTIFY changed)
public:
    ShareController(Services& services, QObject* parent = nullptr);

    QString samplesLine() const;
    bool isExact() const { return m_exact; }
    void setExact(bool exact);
    QString positionsLine() const;
    QString result() const { return m_result; }
    bool hasFailed() const { return m_failed; }
    bool isDemoLoaded() const;

    void refresh();
    /// Writes the samples into a CSV file; path where the folder is given, else the phone's own place for
    /// exports.
    bool writeSamples(const QString& path);

    Q_INVOKABLE bool exportSamples();
    Q_INVOKABLE bool loadDemo();

signals:
    void changed();
    void recordsChanged();

private:
    Services& m_services;
    bool m_exact = false;
    bool m_failed = false;
    QString m_result;
};

} // namespace halfcup::touch
