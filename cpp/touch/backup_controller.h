// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/backup.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

#include <optional>

namespace halfcup::touch {

/// Backups: made, found again, looked into, put back. Putting one back needs the database closed, so it is
/// only asked for here (restoreWanted); see restoring.h.
class BackupController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString lastLine READ lastLine NOTIFY changed) // "Last backup: 15 June 2026, 09:41"
    Q_PROPERTY(
        QString placeLine READ placeLine NOTIFY changed)      // where it was written; empty before the first
    Q_PROPERTY(QString newLine READ newLine NOTIFY changed)   // "3 washes are in no backup yet"; empty: none
    Q_PROPERTY(QString reminder READ reminder NOTIFY changed) // newLine, once it is time; else empty
    Q_PROPERTY(QString whyLine READ whyLine CONSTANT)         // what a backup is good for
    Q_PROPERTY(bool canChoose READ canChoose NOTIFY changed)  // one that lies elsewhere
    Q_PROPERTY(QString result READ result NOTIFY changed)     // what was done or what went wrong
    Q_PROPERTY(bool failed READ hasFailed NOTIFY changed)
    // newest first; title: its day and time, detail: its name and size; kept-aside databases after them
    Q_PROPERTY(halfcup::touch::ChoiceListModel* backups READ backups CONSTANT)
    Q_PROPERTY(QString pickedTitle READ pickedTitle NOTIFY pickedChanged)
    Q_PROPERTY(QString pickedProblem READ pickedProblem NOTIFY pickedChanged) // why it cannot be put back
    Q_PROPERTY(bool canPutBack READ canPutBack NOTIFY pickedChanged)
    Q_PROPERTY(QString question READ question NOTIFY pickedChanged) // what putting it back will do
    Q_PROPERTY(halfcup::touch::ChoiceListModel* contents READ contents CONSTANT) // what is in the picked one
public:
    BackupController(Services& services, QObject* parent = nullptr);

    QString lastLine() const;
    QString placeLine() const;
    QString newLine() const;
    QString reminder() const;
    QString whyLine() const;
    bool canChoose() const { return m_services.device.files->canChoose(); }
    QString result() const { return m_result; }
    bool hasFailed() const { return m_failed; }
    ChoiceListModel* backups() { return &m_backups; }
    QString pickedTitle() const { return m_pickedTitle; }
    QString pickedProblem() const { return m_pickedProblem; }
    bool canPutBack() const { return m_picked.has_value(); }
    QString question() const;
    ChoiceListModel* contents() { return &m_contents; }

    /// Reads what is there anew; forgets what was said.
    void refresh();

    /// Into the phone's place for files to hand on, and on from there. False, and why, where it could not be
    /// written.
    Q_INVOKABLE bool makeBackup();
    Q_INVOKABLE void chooseFile(); // by the system's own chooser; what is chosen is picked
    /// Looks into one of the backups: all of it is read and checked.
    Q_INVOKABLE void pick(const QString& key);
    /// Asks for the picked one to be put back.
    Q_INVOKABLE void putBack();

signals:
    void changed();
    void pickedChanged();
    void restoreWanted(const QString& path);

private:
    void read();
    void listBackups();
    void listContents(const store::BackupContents& contents);
    QString freeName(const QString& folder) const;

    Services& m_services;
    std::optional<records::Moment> m_lastAt;
    QString m_lastPlace;
    qint64 m_newWashes = 0; // in no backup
    bool m_failed = false;
    QString m_result;
    ChoiceListModel m_backups;
    std::optional<store::BackupContents> m_picked; // nothing: none, or one that cannot be used
    QString m_pickedTitle;
    QString m_pickedProblem;
    ChoiceListModel m_contents;
};

} // namespace halfcup::touch
