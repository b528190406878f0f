// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/scoop_count.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

#include <optional>
#include <vector>

namespace halfcup::touch {

/// Counting or weighing the bees of a washed jar, and what the keeper's own scoops say.
class OwnScoopsController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    // Counting the bees of one wash
    Q_PROPERTY(QString context READ context NOTIFY changed)           // "Colony 4 · 9 mites in half a cup"
    Q_PROPERTY(QString expectedLine READ expectedLine NOTIFY changed) // how many it was taken to hold
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(bool weighs READ weighs WRITE setWeighs NOTIFY changed) // by mass instead of by count
    Q_PROPERTY(
        halfcup::touch::ChoiceListModel* states READ states CONSTANT) // drained after the wash, or alive
    Q_PROPERTY(QString massLine READ massLine NOTIFY changed)         // the figure used, with its source
    Q_PROPERTY(QString question READ question NOTIFY changed) // asked once before an odd count is kept
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    // All of the keeper's scoops
    Q_PROPERTY(QString summary READ summary NOTIFY changed) // "336 bees in half a cup, from 5 counted scoops"
    Q_PROPERTY(QString rangeLine READ rangeLine NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* counts READ counts CONSTANT) // newest first
    Q_PROPERTY(halfcup::touch::ChoiceListModel* bookFigures READ bookFigures CONSTANT)
public:
    OwnScoopsController(Services& services, QObject* parent = nullptr);

    QString context() const { return m_context; }
    QString expectedLine() const;
    bool isDemo() const { return m_sample.demo; }
    bool weighs() const { return m_weighs; }
    void setWeighs(bool weighs);
    ChoiceListModel* states() { return &m_states; }
    QString massLine() const;
    QString question() const { return m_question; }
    QString problem() const { return m_problem; }
    QString summary() const { return m_summary; }
    QString rangeLine() const { return m_rangeLine; }
    ChoiceListModel* counts() { return &m_counts; }
    ChoiceListModel* bookFigures();

    /// The bees of a finished wash are to be counted. False where there is no such wash.
    bool show(const QString& sampleId);
    void refresh(); // of the list

    Q_INVOKABLE void pickState(const QString& key); // "drained" or "alive"
    /// Counting by touch: what stands in the field and so many bees more. What is no number stays as it is,
    /// with a problem.
    Q_INVOKABLE QString plus(const QString& soFar, int bees);
    /// Keeps what was typed, a count or grams. False, with a problem or a question, where it is not kept.
    Q_INVOKABLE bool keep(const QString& typed);
    Q_INVOKABLE bool keepAllTheSame(); // after the question
    Q_INVOKABLE void dropQuestion();
    Q_INVOKABLE void takeOut(const QString& countId); // marked as removed; the history keeps it

signals:
    void changed();
    void kept(const QString& sampleId);

private:
    void listBookFigures();
    bool keepCount(double bees, bool odd);
    bool keepMass(const QString& typed);
    bool revise(const records::Scoop& scoop, const records::ScoopCount* count);
    bool fail(const QString& sentence);
    void listStates();
    QString colonyOf(const records::ScoopCount& count);
    void list(const std::vector<records::ScoopCount>& counts);

    Services& m_services;
    records::Sample m_sample;
    QString m_context;
    bool m_weighs = false;
    std::optional<bool> m_drained;
    double m_asked = 0; // the odd count in question
    QString m_question;
    QString m_problem;
    QString m_summary;
    QString m_rangeLine;
    ChoiceListModel m_states;
    ChoiceListModel m_counts;
    ChoiceListModel m_bookFigures;
};

} // namespace halfcup::touch
