// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/round.h"
#include "season/yard_round.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>
#include <QStringList>

namespace halfcup::touch {

/// A yard round: planned, under way, or ended with the yard's answer.
class RoundController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(View view READ view NOTIFY changed)
    Q_PROPERTY(QString yardName READ yardName NOTIFY changed)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY changed) // "3 of 8 washed", or when it was
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY changed) // empty where there is nothing to do
    // Planning
    Q_PROPERTY(QString planLine READ planLine NOTIFY changed)
    Q_PROPERTY(QString handLine READ handLine NOTIFY changed) // what picking by hand does; else empty
    Q_PROPERTY(halfcup::touch::ChoiceListModel* ways READ ways CONSTANT)       // random, keeper, all
    Q_PROPERTY(halfcup::touch::ChoiceListModel* numbers READ numbers CONSTANT) // for random: how many
    Q_PROPERTY(halfcup::touch::ChoiceListModel* byHand READ byHand CONSTANT)   // for keeper: which
    Q_PROPERTY(halfcup::touch::ChoiceListModel* earlier READ earlier CONSTANT) // rounds that ended
    // Under way and ended
    Q_PROPERTY(QString clearLine READ clearLine NOTIFY changed) // the answer is clear, or is not; else empty
    Q_PROPERTY(QString skipAction READ skipAction NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* washed READ washed CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* left READ left CONSTANT)
    // Ended
    Q_PROPERTY(int standing READ standing NOTIFY changed) // StandingWord::Value
    Q_PROPERTY(QString headline READ headline NOTIFY changed)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)
    Q_PROPERTY(QString chanceLine READ chanceLine NOTIFY changed)
    Q_PROPERTY(QString fromLine READ fromLine NOTIFY changed)
    Q_PROPERTY(QString outLine READ outLine NOTIFY changed) // colonies that stand out; else empty
    Q_PROPERTY(QStringList leftOut READ leftOut NOTIFY changed)
public:
    enum View { Planning, Going, Ended };
    Q_ENUM(View)

    RoundController(Services& services, QObject* parent = nullptr);

    View view() const { return m_view; }
    QString yardName() const { return QString::fromStdString(m_yard.name); }
    QString subtitle() const;
    bool isDemo() const { return m_yard.demo; }
    QString mainAction() const;
    QString planLine() const;
    QString handLine() const;
    ChoiceListModel* ways() { return &m_ways; }
    ChoiceListModel* numbers() { return &m_numbers; }
    ChoiceListModel* byHand() { return &m_byHand; }
    ChoiceListModel* earlier() { return &m_earlier; }
    QString clearLine() const;
    QString skipAction() const;
    ChoiceListModel* washed() { return &m_washed; }
    ChoiceListModel* left() { return &m_left; }
    int standing() const;
    QString headline() const;
    QString sentence() const;
    QString chanceLine() const;
    QString fromLine() const;
    QString outLine() const;
    QStringList leftOut() const;

    /// The yard's open round, or the plan of a new one. False where there is no such yard.
    bool show(const QString& yardId);
    void refresh();

    Q_INVOKABLE void pickWay(const QString& key); // "random", "hand", "all"
    Q_INVOKABLE void pickNumber(const QString& key);
    Q_INVOKABLE void toggle(const QString& colonyId); // by hand
    Q_INVOKABLE void act();  // the main action: starts it, washes the next colony, ends it, or goes back
    Q_INVOKABLE void skip(); // the next colony cannot be opened: another by chance in its place
    Q_INVOKABLE void end();
    Q_INVOKABLE void openEarlier(const QString& roundId);
    Q_INVOKABLE void openColony(const QString& colonyId);

signals:
    void changed();
    void washWanted(const QString& colonyId);
    void colonyWanted(const QString& colonyId);
    void homeWanted();
    void trayWanted(); // all that are left are scooped

private:
    void read();
    void plan();
    void listPlan();
    void listParts();
    void start();
    QString label(const records::RecordId& colonyId);
    QString labelsOf(season::RoundPlace place) const;

    Services& m_services;
    View m_view = Planning;
    records::Yard m_yard;
    records::Round m_round; // open or shown
    season::RoundReading m_reading;
    double m_line = 0;
    std::vector<records::RecordId> m_living;  // of the yard
    std::vector<records::RecordId> m_skipped; // since the page came up: not to be drawn again
    std::vector<std::pair<records::RecordId, QString>> m_labels;
    records::Round::Picked m_way = records::Round::Picked::AtRandom;
    int m_count = 0; // how many at random
    std::optional<season::PlannedByLoad> m_byLoad;
    ChoiceListModel m_ways, m_numbers, m_byHand, m_earlier, m_washed, m_left;
};

} // namespace halfcup::touch
