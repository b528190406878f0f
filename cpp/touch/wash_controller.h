// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/board_controller.h"
#include "touch/choice_list_model.h"
#include "touch/colony_list_model.h"
#include "touch/count_controller.h"
#include "touch/sample_position.h"
#include "touch/scoop_controller.h"
#include "touch/services.h"
#include "touch/shake_controller.h"

#include <QObject>
#include <QQmlEngine>
#include <QTimer>

namespace halfcup::touch {

/// The wash, or another method of counting: one step a page. Every step is on disk before the page changes.
class WashController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(Step step READ step NOTIFY changed)
    Q_PROPERTY(QString header READ header NOTIFY changed) // "Colony 4 · step 5 of 8"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)     // of the step, as the method says it
    Q_PROPERTY(QStringList lines READ lines NOTIFY changed) // what to do
    Q_PROPERTY(QString action READ action NOTIFY changed)   // on the main button
    Q_PROPERTY(QString sampleId READ sampleId NOTIFY changed)
    Q_PROPERTY(QString jar READ jar NOTIFY changed)              // its label, where it came from the tray
    Q_PROPERTY(bool maySetAside READ maySetAside NOTIFY changed) // this jar can wait in the tray
    Q_PROPERTY(halfcup::touch::ColonyListModel* colonies READ colonies CONSTANT) // for the colony step
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)                // for the safety step
    Q_PROPERTY(QString queenAnswer READ queenAnswer NOTIFY changed)   // on the scoop page; empty until asked
    Q_PROPERTY(QString positionLine READ positionLine NOTIFY changed) // "Position within 6 m, 8 fixes"
    Q_PROPERTY(halfcup::touch::ScoopController* scoop READ scoop CONSTANT)
    Q_PROPERTY(halfcup::touch::ShakeController* shake READ shake CONSTANT)
    Q_PROPERTY(int settleSecondsLeft READ settleSecondsLeft NOTIFY settleChanged) // 0: settled
    Q_PROPERTY(QString settleLine READ settleLine NOTIFY settleChanged)
    Q_PROPERTY(halfcup::touch::CountController* count READ count CONSTANT) // the first rinse, or all
    Q_PROPERTY(halfcup::touch::CountController* secondRinse READ secondRinse CONSTANT)
    Q_PROPERTY(halfcup::touch::BoardController* board READ board CONSTANT)
public:
    /// As records::Step; the last step before the answer stays while that comes up.
    enum Step {
        Colony,
        Safety,
        Scoop,
        Pour,
        Shake,
        Settle,
        Count,
        SecondRinse,
        LayBoard,
        PullBoard,
        BoardCells,
        OpenedCells
    };
    Q_ENUM(Step)
    WashController(Services& services, QObject* parent = nullptr);
    Step step() const;
    QString header() const;
    bool isDemo() const { return m_sample.demo; }
    QString title() const;
    QStringList lines() const;
    QString action() const;
    QString sampleId() const { return QString::fromStdString(m_sample.id); }
    QString jar() const { return QString::fromStdString(m_sample.jar); }
    bool maySetAside() const;
    ColonyListModel* colonies() { return &m_colonies; }
    QStringList cautions() const;
    QString queenAnswer() const;
    QString positionLine() const { return m_position.line(m_sample.stamp); }
    ScoopController* scoop() { return &m_scoop; }
    ShakeController* shake() { return &m_shake; }
    int settleSecondsLeft() const;
    QString settleLine() const;
    CountController* count() { return &m_count; }
    CountController* secondRinse() { return &m_secondRinse; }
    BoardController* board() { return &m_board; }

    /// A new sample. colonyId empty: starts at the colony step. methodId empty or not known: the usual one.
    void begin(const QString& yardId, const QString& colonyId, const QString& methodId = {});
    /// Takes up a draft where it was left. False where there is none, or its method is of a newer version.
    bool resume(const QString& sampleId);
    QString methodId() const { return QString::fromStdString(m_sample.method); }

    // Each does nothing on another step than its own.
    Q_INVOKABLE void chooseColony(const QString& colonyId);
    Q_INVOKABLE void queenSafe();
    Q_INVOKABLE void queenNotSeen();
    Q_INVOKABLE void scooped();  // the time and, when it comes, the position of the sample
    Q_INVOKABLE void poured();   // the jar is closed
    Q_INVOKABLE void endShake(); // stop here, or go on once it is over
    Q_INVOKABLE void endSettle();
    Q_INVOKABLE void endCount();     // only once something was counted or "none" said
    Q_INVOKABLE void noneWasFound(); // zero, said on purpose
    Q_INVOKABLE void skipSecondRinse();
    Q_INVOKABLE void endSecondRinse();
    Q_INVOKABLE void back();    // one step back; from the first, out of the wash with the draft kept
    Q_INVOKABLE void pause();   // out of the wash, the draft is kept at its step
    Q_INVOKABLE void abandon(); // kept as abandoned, never deleted
    /// Puts the jar aside under a label the caller has checked. False: it may not wait, or was not kept.
    Q_INVOKABLE bool setAside(const QString& label);

signals:
    void changed();
    void settleChanged();
    void finished(const QString& sampleId);
    void left(); // paused, abandoned or backed out of
    void putInTray();

private:
    bool goTo(records::Step step);
    bool keep(); // writes the sample; where that fails: a message, the sample as it was kept, false
    bool isAt(records::Step step) const { return m_sample.step == step; }
    void advance();
    void boardDone();
    void cellsOpened(std::int64_t cells);
    void stampMoment();
    void putDown();
    void goBackToKept();
    void showKept();
    void enter();
    void leave();
    void readColony();
    void readCounts();
    const records::Method& method() const;
    const records::MethodStep& page() const;
    void judge(const records::Yard& yard, std::optional<std::int64_t> second);
    void finish(bool withSecondRinse);
    void takeStamp();

    Services& m_services;
    records::Sample m_sample;
    records::Sample m_kept; // as it is on the disk: what the page goes back to where a write is refused
    SamplePosition m_position;
    QString m_colonyLabel;
    ColonyListModel m_colonies;
    ScoopController m_scoop;
    ShakeController m_shake;
    CountController m_count;
    CountController m_secondRinse;
    BoardController m_board;
    QTimer m_settleTimer;
};

} // namespace halfcup::touch
