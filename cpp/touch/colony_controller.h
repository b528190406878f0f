// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_state.h"
#include "season/growth_outlook.h"
#include "touch/choice_list_model.h"
#include "touch/colony_records.h"
#include "touch/load_chart_controller.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

#include <optional>
#include <span>

namespace halfcup::touch {

/// One colony and its story: washes, treatments and what else happened, newest first.
class ColonyController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString title READ title NOTIFY changed) // "Colony 4"
    Q_PROPERTY(QString yardName READ yardName NOTIFY changed)
    Q_PROPERTY(QString label READ label NOTIFY changed) // "4"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(bool alive READ isAlive NOTIFY changed) // neither dead nor put into another
    Q_PROPERTY(QString dueLine READ dueLine NOTIFY changed)
    Q_PROPERTY(QString stateLine READ stateLine NOTIFY changed) // "Supers on since 3 May, capped brood"
    /// How fast its load grows and when it will be over the line; empty while a treatment runs, without a
    /// wash since the last one, and where the last wash is too long ago.
    Q_PROPERTY(QString growthLine READ growthLine NOTIFY changed)
    /// Abandoned washes too. Keys: "wash-<id>", "event-<id>", "treatment-<id>".
    Q_PROPERTY(halfcup::touch::ChoiceListModel* story READ story CONSTANT)
    Q_PROPERTY(halfcup::touch::LoadChartController* loads READ loads CONSTANT)
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY changed)   // "Wash this colony", as is usual
    Q_PROPERTY(QString methodsLine READ methodsLine NOTIFY changed) // where its counts are of several kinds
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    ColonyController(Services& services, QObject* parent = nullptr);

    QString title() const;
    QString yardName() const { return m_yardName; }
    QString label() const;
    bool isDemo() const { return m_colony.demo; }
    bool isAlive() const { return m_alive; }
    QString dueLine() const { return m_dueLine; }
    QString stateLine() const { return m_stateLine; }
    QString growthLine() const { return m_growthLine; }
    const std::optional<season::GrowthOutlook>& growth() const { return m_growth; }
    ChoiceListModel* story() { return &m_story; }
    LoadChartController* loads() { return &m_loads; }
    QString mainAction() const;
    QString methodsLine() const { return m_methodsLine; }
    QString problem() const { return m_problem; }
    QString colonyId() const { return QString::fromStdString(m_colony.id); }

    /// The colony that refresh() is to read. False where there is none of that id: the one before stays.
    bool choose(const QString& colonyId);
    bool show(const QString& colonyId); // both
    void refresh();                     // reads the store again; nothing where no colony was shown yet

    Q_INVOKABLE void wash();
    Q_INVOKABLE void treat();
    Q_INVOKABLE void pickMethod();  // another way to count, or the usual one
    Q_INVOKABLE void tellEvent();   // something happened
    Q_INVOKABLE void openDay();     // what was so on a day
    Q_INVOKABLE void openHistory(); // what changed of its name, its yard, its note
    Q_INVOKABLE void openStory(const QString& key);
    Q_INVOKABLE bool rename(const QString& label);

signals:
    void changed();
    void washWanted(const QString& colonyId);
    void draftWanted(const QString& sampleId);
    void answerWanted(const QString& sampleId);
    void treatWanted(const QString& colonyId);
    void treatmentWanted(const QString& treatmentId);
    void newEventWanted(const QString& colonyId);
    void eventWanted(const QString& eventId);
    void dayWanted(const QString& colonyId);
    void historyWanted(const QString& colonyId);
    void methodsWanted(const QString& colonyId);

private:
    void openWash(const QString& sampleId);
    static QString methodsLineOf(std::span<const records::Sample> samples);
    pictures::LoadChart chartOf(const ColonyRecords& kept) const;
    void read();
    void foretell(const records::Yard& yard, const records::ColonyState& state, const ColonyRecords& kept,
                  pictures::LoadChart& chart);

    Services& m_services;
    records::Colony m_colony;
    QString m_yardName;
    QString m_dueLine;
    QString m_stateLine;
    QString m_growthLine;
    QString m_methodsLine;
    std::optional<season::GrowthOutlook> m_growth;
    bool m_alive = true;
    ChoiceListModel m_story;
    LoadChartController m_loads;
    QString m_problem;
};

} // namespace halfcup::touch
