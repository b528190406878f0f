// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/export_controller.h"
#include "touch/plan_controller.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// What leaves the phone and what comes in: all of it for another phone, files for people, files from
/// another phone, and the demo.
class ShareController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString samplesLine READ samplesLine NOTIFY changed) // "27 washes can be exported"
    Q_PROPERTY(QString result READ result NOTIFY changed) // what was done or what went wrong; empty before
    Q_PROPERTY(bool failed READ hasFailed NOTIFY changed)
    Q_PROPERTY(QString markLine READ markLine NOTIFY changed)          // by what other phones know this one
    Q_PROPERTY(bool canShowWritten READ canShowWritten NOTIFY changed) // in its folder
    Q_PROPERTY(bool demoLoaded READ isDemoLoaded NOTIFY changed)
    Q_PROPERTY(bool hasFolders READ hasFolders CONSTANT) // that other programs see; not in a browser
    Q_PROPERTY(halfcup::touch::ExportController* people READ people CONSTANT) // files for people
    Q_PROPERTY(halfcup::touch::PlanController* plan READ plan CONSTANT)       // files from another phone
public:
    ShareController(Services& services, QObject* parent = nullptr);

    QString samplesLine() const;
    QString result() const { return m_result; }
    bool hasFailed() const { return m_failed; }
    bool isDemoLoaded() const;
    bool hasFolders() const { return m_services.device.folders->areSeen(); }
    QString markLine() const;
    bool canShowWritten() const;
    ExportController* people() { return &m_people; }
    PlanController* plan() { return &m_plan; }

    void refresh();

    /// All that is kept, exact positions too, as one file for another phone; then into the share sheet, where
    /// there is one. False, and why, where it could not be written.
    Q_INVOKABLE bool writeEverything();
    Q_INVOKABLE void showWritten();
    Q_INVOKABLE void takeIn(); // a file from another phone
    Q_INVOKABLE void openLastTaken();
    Q_INVOKABLE bool loadDemo();

signals:
    void changed();
    void recordsChanged();
    void takeInWanted();
    void lastTakenWanted();

private:
    QString freeName(const QString& folder) const;

    Services& m_services;
    bool m_failed = false;
    QString m_result;
    QString m_written; // path of the file that was written last
    ExportController m_people;
    PlanController m_plan;
};

} // namespace halfcup::touch
