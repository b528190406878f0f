// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/platform.h"
#include "store/store_error.h"
#include "touch/choice_list_model.h"

#include <QObject>
#include <QQmlEngine>
#include <QString>

namespace halfcup::touch {

/// What a keeper can do where the records cannot be opened: save what can be read of them, put a backup in
/// their place, or close the app and do something about it outside. No Store may be open on the database.
class RecoveryController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed) // what is wrong; then what was done
    Q_PROPERTY(QString detail READ detail NOTIFY changed)     // the technical text; then what came of it
    Q_PROPERTY(QString problem READ problem NOTIFY changed)   // why the last try did nothing; empty: none
    Q_PROPERTY(bool canRescue READ canRescue NOTIFY changed)
    Q_PROPERTY(bool done READ isDone NOTIFY changed)                           // the app can be started now
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY changed)              // see start()
    Q_PROPERTY(halfcup::touch::ChoiceListModel* backups READ backups CONSTANT) // empty where none can help
    Q_PROPERTY(
        QString question READ question NOTIFY changed) // about the picked backup; empty: none is picked
public:
    RecoveryController(device::Platform& platform, QString databasePath, store::StoreError::Kind kind,
                       QString technical, QObject* parent = nullptr);

    QString title() const;
    QString sentence() const { return m_sentence; }
    QString detail() const { return m_detail; }
    QString problem() const { return m_problem; }
    bool canRescue() const { return m_isDamaged && !m_done; }
    bool isDone() const { return m_done; }
    QString mainAction() const;
    ChoiceListModel* backups() { return &m_backups; }
    QString question() const;
    /// The keeper wants the app started on what is there now.
    [[nodiscard]] bool wantsStart() const { return m_wantsStart; }

    /// Reads what can be read into new records; the damaged file is kept.
    Q_INVOKABLE void rescue();
    Q_INVOKABLE void pick(const QString& backupPath); // empty: none
    Q_INVOKABLE void putBack();                       // the picked one
    /// Starts the app on what is there now, or closes it; a page in a browser cannot be closed, it is loaded
    /// anew.
    Q_INVOKABLE void start();

signals:
    void changed();
    void closeWanted();

private:
    void finish(const QString& sentence, const QString& detail);

    device::Platform& m_platform;
    QString m_path;
    bool m_isDamaged;
    bool m_done = false;
    bool m_wantsStart = false;
    QString m_sentence;
    QString m_detail;
    QString m_problem;
    QString m_picked;
    ChoiceListModel m_backups;
};

/// Throws StoreError (Damaged) where the last program was killed and the database is damaged. Nothing is
/// looked at after a clean end, so that a start costs nothing.
void refuseDamaged(const QString& databasePath);

} // namespace halfcup::touch
