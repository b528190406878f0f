// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/for_people.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// Files for people: tables for a spreadsheet, a map, a calendar, a report for an inspector or a vet.
class ExportController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    // What to write: samples, counts, treatments, map, calendar, report. Touching one chooses it.
    Q_PROPERTY(halfcup::touch::ChoiceListModel* kinds READ kinds CONSTANT)
    // Of a report: colony, yard, season; then which colony or yard, and which years.
    Q_PROPERTY(halfcup::touch::ChoiceListModel* scopes READ scopes CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* subjects READ subjects CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* years READ years CONSTANT)
    Q_PROPERTY(bool report READ isReport NOTIFY changed)
    Q_PROPERTY(bool table READ isTable NOTIFY changed)                // has a dialect
    Q_PROPERTY(bool placed READ isPlaced NOTIFY changed)              // has positions
    Q_PROPERTY(bool exact READ isExact WRITE setExact NOTIFY changed) // asked for each time
    Q_PROPERTY(QString positionsLine READ positionsLine NOTIFY changed)
    Q_PROPERTY(bool semicolon READ isSemicolon WRITE setSemicolon NOTIFY changed)
    Q_PROPERTY(bool letter READ isLetter WRITE setLetter NOTIFY changed) // paper; else A4
    Q_PROPERTY(QString action READ action NOTIFY changed)                // on the button: "Write the report"
    Q_PROPERTY(QString result READ result NOTIFY changed) // where it lies, or what went wrong; empty before
    Q_PROPERTY(bool failed READ hasFailed NOTIFY changed)
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
public:
    enum Kind { Samples, Counts, Treatments, Map, Calendar, Report };

    explicit ExportController(Services& services, QObject* parent = nullptr);

    ChoiceListModel* kinds() { return &m_kinds; }
    ChoiceListModel* scopes() { return &m_scopes; }
    ChoiceListModel* subjects() { return &m_subjects; }
    ChoiceListModel* years() { return &m_years; }
    bool isReport() const { return m_kind == Report; }
    bool isTable() const { return m_kind <= Treatments; }
    bool isPlaced() const { return m_kind == Samples || m_kind == Map || m_kind == Report; }
    bool isExact() const { return m_exact; }
    void setExact(bool exact);
    QString positionsLine() const;
    bool isSemicolon() const { return m_semicolon; }
    void setSemicolon(bool semicolon);
    bool isLetter() const { return m_letter; }
    void setLetter(bool letter);
    QString action() const;
    QString result() const { return m_result; }
    bool hasFailed() const { return m_failed; }
    bool isDemo() const { return m_demo; }

    /// The page comes up; yardId: the yard the keeper looks at.
    void show(const QString& yardId);
    /// Writes what is chosen to that path, for who names a place of their own (the tour).
    bool writeTo(const QString& path);

    Q_INVOKABLE void chooseKind(const QString& key);
    Q_INVOKABLE void chooseScope(const QString& key);
    Q_INVOKABLE void chooseSubject(const QString& key);
    Q_INVOKABLE void chooseYears(const QString& key);
    /// Writes the file into the phone's place for files to hand on.
    Q_INVOKABLE bool write();

signals:
    void changed();

private:
    void list();
    void listSubjects();
    exchange::Selection selection() const;
    QString fileName() const;
    QString subjectName() const;
    /// Writes into the sink; returns what was written, in words.
    QString writeInto(const exchange::ByteSink& sink);
    QString writeReport(const exchange::ByteSink& sink);
    QString writeCalendar(const exchange::ByteSink& sink);

    Services& m_services;
    Kind m_kind = Samples;
    QString m_scope;
    QString m_yardId;
    QString m_colonyId;
    QString m_year;
    bool m_exact = false;
    bool m_semicolon = false;
    bool m_letter = false;
    bool m_demo = false;
    bool m_failed = false;
    QString m_result;
    ChoiceListModel m_kinds, m_scopes, m_subjects, m_years;
};

} // namespace halfcup::touch
