// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/exchange_reader.h"
#include "store/merge_plan.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>
#include <QStringList>

#include <optional>

namespace halfcup::touch {

/// Taking in a file from another phone: pick it, see what it would do, take it in, take it back. A plan is a
/// merge that is not kept (store/merge.h): before the last touch nothing is written.
class PlanController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(Step step READ step NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed)     // empty before one is picked
    Q_PROPERTY(QString problem READ problem NOTIFY changed)       // in a sentence; else empty
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY changed) // empty: there is none
    // Files
    Q_PROPERTY(halfcup::touch::ChoiceListModel* files READ files CONSTANT) // newest first
    Q_PROPERTY(QString filesLine READ filesLine NOTIFY changed)            // what is looked for, and where
    Q_PROPERTY(QString chooser READ chooser NOTIFY changed) // by the system's own one; empty: it has none
    // Plan
    Q_PROPERTY(QString writtenLine READ writtenLine NOTIFY changed) // by which phone, when, what it held
    Q_PROPERTY(QString headline READ headline NOTIFY changed)
    Q_PROPERTY(QStringList troubles READ troubles NOTIFY changed) // damage, and how it heals
    Q_PROPERTY(QStringList remarks READ remarks NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* counts READ counts CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* items READ items CONSTANT)
    Q_PROPERTY(QString moreItems READ moreItems NOTIFY changed)
    // Done, and the last one that was kept
    Q_PROPERTY(QString result READ result NOTIFY changed)
    /// What changed on both phones or was removed there, just after it was taken in.
    Q_PROPERTY(halfcup::touch::ChoiceListModel* toLookAt READ toLookAt CONSTANT)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
    Q_PROPERTY(QString undoQuestion READ undoQuestion NOTIFY changed)
    Q_PROPERTY(QString lastLine READ lastLine NOTIFY changed) // "halfcup-….halfcup, 12 records"; or empty
    Q_PROPERTY(QString lastNote READ lastNote NOTIFY changed) // when, or that it was taken back
public:
    enum Step { Files, Reading, Plan, Done };
    Q_ENUM(Step)

    explicit PlanController(Services& services, QObject* parent = nullptr);

    Step step() const { return m_step; }
    QString title() const;
    QString fileName() const { return m_fileName; }
    QString problem() const { return m_problem; }
    QString mainAction() const;
    ChoiceListModel* files() { return &m_files; }
    QString filesLine() const;
    QString chooser() const;
    QString writtenLine() const { return m_writtenLine; }
    QString headline() const;
    QStringList troubles() const;
    QStringList remarks() const;
    ChoiceListModel* counts() { return &m_counts; }
    ChoiceListModel* items() { return &m_items; }
    QString moreItems() const;
    ChoiceListModel* toLookAt() { return &m_toLookAt; }
    QString result() const { return m_result; }
    bool canUndo() const { return m_canUndo; }
    QString undoQuestion() const;
    QString lastLine() const { return m_lastLine; }
    QString lastNote() const { return m_lastNote; }

    /// Where files are looked for; without this: foldersOfFiles().
    void setFolders(const QStringList& folders) { m_folders = folders; }
    /// From the start: which files are there.
    void begin();
    /// The last one that was kept, to be taken back. False where there is none.
    bool showLast();
    /// Reads lastLine anew.
    void refreshLast();

    /// A file that was handed in. A large one is read a moment later, so that the page can say so.
    Q_INVOKABLE void openFile(const QString& path);
    Q_INVOKABLE void chooseFile(); // by the system's own chooser
    Q_INVOKABLE void act();        // the main action
    Q_INVOKABLE void undo();
    Q_INVOKABLE void openHistory(const QString& key); // of one of toLookAt
    Q_INVOKABLE void back();

signals:
    void changed();
    void recordsChanged();
    void historyWanted(const QString& kind, const QString& id);
    void backWanted();
    void homeWanted();

private:
    void listFiles();
    void soon(void (PlanController::*work)()); // at once where the file is small
    void look();
    void takeIn();
    bool read(bool keep);
    void listPlan();

    Services& m_services;
    QStringList m_folders;
    Step m_step = Files;
    QString m_path;
    QString m_fileName;
    QString m_problem;
    QString m_result;
    QString m_writtenLine;
    exchange::ExchangeReport m_report;
    store::MergePlan m_plan;
    bool m_kept = false; // by the last read()
    bool m_canUndo = false;
    QString m_lastLine, m_lastNote;
    ChoiceListModel m_files, m_counts, m_items, m_toLookAt;
};

} // namespace halfcup::touch
