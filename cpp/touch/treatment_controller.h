// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/treat_scope.h"
#include "touch/treatment_form.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// One treatment: the form in which it is written down, and the record as it is kept.
class TreatmentController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed) // the yard
    Q_PROPERTY(QString title READ title NOTIFY changed)     // the substance or measure
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(bool editing READ isEditing NOTIFY changed)
    Q_PROPERTY(bool isNew READ isNew NOTIFY changed)
    Q_PROPERTY(bool typed READ hasTyped NOTIFY changed) // something that is not kept yet
    Q_PROPERTY(bool showsMore READ showsMore WRITE setShowsMore NOTIFY changed)
    Q_PROPERTY(halfcup::touch::FieldListModel* needed READ needed CONSTANT)
    Q_PROPERTY(halfcup::touch::FieldListModel* more READ more CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* colonies READ colonies CONSTANT) // chosen: gets it
    Q_PROPERTY(QString coloniesLine READ coloniesLine NOTIFY changed) // "5 colonies: 1, 2, 4, 7, 10"
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QStringList questions READ questions NOTIFY changed) // to be asked before it is kept
    // The record as it is kept
    Q_PROPERTY(QString statusLine READ statusLine NOTIFY changed) // "Runs until 26 June"
    Q_PROPERTY(QString honeyLine READ honeyLine NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* facts READ facts CONSTANT) // title and detail
    Q_PROPERTY(bool canTakeOut READ canTakeOut NOTIFY changed)
public:
    TreatmentController(Services& services, QObject* parent = nullptr);

    QString context() const { return m_yardName; }
    QString title() const { return m_name; }
    bool isDemo() const { return m_entry.treatment.demo; }
    bool isEditing() const { return m_editing; }
    bool isNew() const { return m_entry.treatment.id.empty(); }
    bool hasTyped() const { return m_editing && m_typed; }
    bool showsMore() const { return m_showsMore; }
    void setShowsMore(bool more);
    FieldListModel* needed() { return &m_form.needed; }
    FieldListModel* more() { return &m_form.more; }
    ChoiceListModel* colonies() { return &m_colonies; }
    QString coloniesLine() const;
    QStringList cautions() const;
    QString problem() const { return m_problem; }
    QStringList questions() const { return m_questions; }
    QString statusLine() const;
    QString honeyLine() const;
    ChoiceListModel* facts() { return &m_facts; }
    bool canTakeOut() const;

    /// A new record for what was chosen; nothing is kept before keep().
    void begin(const TreatScope& scope, const season::Choice& choice, const records::Date& firstDay);
    /// The same for a substance that the handbook does not know: it is typed.
    void beginAnother(const TreatScope& scope);
    /// A kept one. False where there is none of that id.
    bool show(const QString& treatmentId);

    Q_INVOKABLE void type(const QString& key, const QString& text);
    Q_INVOKABLE void moveDay(const QString& key, int days);
    Q_INVOKABLE void toggleColony(const QString& colonyId);
    Q_INVOKABLE void pickAllColonies();
    /// Keeps what is typed. False where something cannot be (problem) or must be asked first (questions).
    Q_INVOKABLE bool keep();
    Q_INVOKABLE bool keepAllTheSame(); // after the questions
    Q_INVOKABLE void dropQuestions();
    Q_INVOKABLE void edit();
    Q_INVOKABLE bool stopEditing(); // false where there is no kept record to go back to
    Q_INVOKABLE void takenOutToday();
    Q_INVOKABLE void remove(); // marked as removed; the history keeps it
    Q_INVOKABLE void check();

signals:
    void changed();
    void recordsChanged();
    void firstKept(); // a new record, for the first time
    void removedIt();
    void checkWanted(const QString& treatmentId);

private:
    void beginForm(const TreatScope& scope, const records::Treatment& treatment, const QString& name);
    void readYard(const records::RecordId& yardId);
    void listColonies();
    void listFacts();
    bool write(const records::GivenTreatment& entry);
    records::GivenTreatment chosen() const;

    Services& m_services;
    records::GivenTreatment m_entry; // as it is kept; a new one without an id
    std::vector<records::Colony> m_candidates;
    std::vector<records::RecordId> m_chosen;
    TreatmentForm m_form;
    bool m_editing = false;
    bool m_showsMore = false;
    bool m_typed = false;
    QString m_yardName, m_name, m_courseHint, m_problem;
    QStringList m_questions;
    ChoiceListModel m_colonies, m_facts;
};

} // namespace halfcup::touch
