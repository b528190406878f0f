// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/wash_import.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>
#include <QStringList>

#include <optional>

namespace halfcup::touch {

/// Taking in a table of earlier washes: pick the file, match its columns, look at what it would be, keep it.
/// Nothing is written before the last touch.
class ImportController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(Step step READ step NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed) // empty before one is picked
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY changed) // empty: there is none
    // Files
    Q_PROPERTY(halfcup::touch::ChoiceListModel* files READ files CONSTANT) // newest first
    Q_PROPERTY(QString filesLine READ filesLine NOTIFY changed)            // where was looked
    Q_PROPERTY(QString chooser READ chooser NOTIFY changed) // by the system's own one; empty: it has none
    // Columns
    Q_PROPERTY(halfcup::touch::ChoiceListModel* fields READ fields CONSTANT)   // what a wash needs
    Q_PROPERTY(halfcup::touch::ChoiceListModel* columns READ columns CONSTANT) // for the field in question
    Q_PROPERTY(QString fieldTitle READ fieldTitle NOTIFY changed)              // the field in question
    Q_PROPERTY(bool asksYard READ asksYard NOTIFY changed)                     // no column names it
    Q_PROPERTY(QString yardForAll READ yardForAll NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* yards READ yards CONSTANT) // those of this phone
    Q_PROPERTY(QString orderQuestion READ orderQuestion NOTIFY changed)    // empty: it is not asked
    Q_PROPERTY(halfcup::touch::ChoiceListModel* orders READ orders CONSTANT)
    // Preview
    Q_PROPERTY(QStringList remarks READ remarks NOTIFY changed)              // taken for granted
    Q_PROPERTY(halfcup::touch::ChoiceListModel* counts READ counts CONSTANT) // how many of what
    Q_PROPERTY(
        halfcup::touch::ChoiceListModel* washes READ washes CONSTANT) // the first, as they will be kept
    Q_PROPERTY(
        halfcup::touch::ChoiceListModel* questions READ questions CONSTANT) // rows, with a sentence each
    Q_PROPERTY(QString moreQuestions READ moreQuestions NOTIFY changed)     // those not listed
    Q_PROPERTY(
        halfcup::touch::ChoiceListModel* decisions READ decisions CONSTANT) // keep them, leave them out
    Q_PROPERTY(halfcup::touch::ChoiceListModel* refused READ refused CONSTANT)
    Q_PROPERTY(QString moreRefused READ moreRefused NOTIFY changed)
    // Done
    Q_PROPERTY(QString result READ result NOTIFY changed)
public:
    enum Step { Files, Columns, Preview, Done };
    Q_ENUM(Step)

    explicit ImportController(Services& services, QObject* parent = nullptr);

    Step step() const { return m_step; }
    QString title() const;
    QString fileName() const { return m_fileName; }
    QString problem() const { return m_problem; }
    QString mainAction() const;
    ChoiceListModel* files() { return &m_files; }
    QString filesLine() const;
    QString chooser() const;
    ChoiceListModel* fields() { return &m_fields; }
    ChoiceListModel* columns() { return &m_columns; }
    QString fieldTitle() const;
    bool asksYard() const;
    QString yardForAll() const { return QString::fromStdString(m_rules.yardForAll); }
    ChoiceListModel* yards() { return &m_yards; }
    QString orderQuestion() const { return m_orderQuestion; }
    ChoiceListModel* orders() { return &m_orders; }
    QStringList remarks() const { return m_remarks; }
    ChoiceListModel* counts() { return &m_counts; }
    ChoiceListModel* washes() { return &m_washes; }
    ChoiceListModel* questions() { return &m_questions; }
    QString moreQuestions() const { return m_moreQuestions; }
    ChoiceListModel* decisions() { return &m_decisions; }
    ChoiceListModel* refused() { return &m_refused; }
    QString moreRefused() const { return m_moreRefused; }
    QString result() const { return m_result; }

    /// Where tables are looked for; without this: documents, downloads and the folder of what is handed on.
    void setFolders(const QStringList& folders) { m_folders = folders; }
    /// From the start: which files are there.
    void begin();
    Q_INVOKABLE void chooseFile(); // by the system's own chooser
    /// A table that was handed in. False, with a problem, where it is none.
    Q_INVOKABLE bool openFile(const QString& path);

    Q_INVOKABLE void pickField(const QString& key); // which column holds it? see columns
    Q_INVOKABLE void pickColumn(const QString& key);
    Q_INVOKABLE void typeYard(const QString& name);
    Q_INVOKABLE void pickOrder(const QString& key);
    Q_INVOKABLE void decide(const QString& key); // "keep" or "leave" the rows in question
    Q_INVOKABLE void act();                      // the main action
    Q_INVOKABLE void back();

signals:
    void changed();
    void recordsChanged();
    void backWanted();
    void homeWanted();

private:
    void listFiles();
    void listMatch();
    void listPreview();
    void listRows();
    void look();
    void keep();
    exchange::OnThisPhone here();
    std::size_t kept() const; // washes that the main action keeps

    Services& m_services;
    QStringList m_folders;
    Step m_step = Files;
    QString m_fileName;
    QString m_problem;
    exchange::TextTable m_table;
    exchange::WashRules m_rules;
    std::optional<exchange::WashField> m_field; // in question
    exchange::ImportPlan m_plan;
    std::optional<bool> m_withQuestions;
    QString m_orderQuestion, m_moreQuestions, m_moreRefused, m_result;
    QStringList m_remarks;
    ChoiceListModel m_files, m_fields, m_columns, m_yards, m_orders;
    ChoiceListModel m_counts, m_washes, m_questions, m_decisions, m_refused;
};

} // namespace halfcup::touch
