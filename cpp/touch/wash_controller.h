// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/colony_list_model.h"
#include "touch/count_controller.h"
#include "touch/scoop_controller.h"
#include "touch/services.h"
#include "touch/shake_controller.h"

#include <QObject>
#include <QQmlEngine>
#include <QTimer>

namespace halfcup::touch {

/// The wash: one step a page. Every step is on disk before the page changes.
class WashController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(Step step READ step NOTIFY changed)
    Q_PROPERTY(QString header READ header NOTIFY changed) // "Colony 4 · step 5 of 8"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ColonyListModel* colonies READ colonies CONSTANT) // for the colony step
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)                // for the safety step
    Q_PROPERTY(
        QString queenAnswer READ queenAnswer NOTIFY changed) // said on the scoop page; empty until asked
    Q_PROPERTY(QString positionLine READ positionLine NOTIFY
                   changed) // "Position within 6 m, 8 fixes", "No position: ..."
    Q_PROPERTY(halfcup::touch::ScoopController* scoop READ scoop CONSTANT)
    Q_PROPERTY(halfcup::touch::ShakeController* shake READ shake CONSTANT)
    Q_PROPERTY(int settleSecondsLeft READ settleSecondsLeft NOTIFY settleChanged) // 0: settled
    Q_PROPERTY(QString settleLine READ settleLine NOTIFY settleChanged)
    Q_PROPERTY(halfcup::touch::CountController* count READ count CONSTANT) // the first rinse
    Q_PROPERTY(halfcup::touch::CountController* secondRinse READ secondRinse CONSTANT)
public:
    enum Step { Colony, Safety, Scoop, Pour, Shake, Settle, Count, SecondRinse };
    Q_ENUM(Step)

    WashController(Services& services, QObject* parent = nullptr);

    Step step() const;
    QString header() const;
    bool isDemo() const { return m_sample.demo; }
    ColonyListModel* colonies() { return &m_colonies; }
    QStringList cautions() const;
    QString queenAnswer() const;
    QString positionLine() const;
    ScoopController* scoop() { return &m_scoop; }
    ShakeController* shake() { return &m_shake; }
    int settleSecondsLeft() const;
    QString settleLine() const;
    CountController* count() { return &m_count; }
    CountController* secondRinse() { return &m_secondRinse; }

    /// Begins a new sample. colonyId empty: starts at the colony step of that yard.
    void begin(const QString& yardId, const QString& colonyId);
    /// Takes up a draft at the step where it was left. False where there is none of that id.
    bool resume(const QString& sampleId);

    Q_INVOKABLE void chooseColony(const QString& colonyId);
    Q_INVOKABLE void queenSafe();
    Q_INVOKABLE void queenNotSeen();
    Q_INVOKABLE void scooped();    // the time and, when it comes, the position of the sample
    Q_INVOKABLE void startShake(); // from the pour page: the lid is on
    Q_INVOKABLE void endShake();   // from the shake page: stop here, or go on once it is over
    Q_INVOKABLE void endSettle();
    Q_INVOKABLE void
    endCount(); // from the count page; does nothing until something was counted or "none" said
    Q_INVOKABLE void noneFound(); // zero mites, said on purpose
    Q_INVOKABLE void skipSecondRinse();
    Q_INVOKABLE void endSecondRinse();

    Q_INVOKABLE void back();    // one step back; from the first, out of the wash with the draft kept
    Q_INVOKABLE void pause();   // out of the wash, the draft is kept at its step
    Q_INVOKABLE void abandon(); // kept as abandoned, never deleted

signals:
    void changed();
    void settleChanged();
    void finished(const QString& sampleId);
    void left(); // paused, abandoned or backed out of

private:
    bool goTo(records::Step step);
    bool keep(); // writes the sample; where that fails: a message, the sample as it was kept, false
    void keepShakeAndGo(records::Step step);
    void goBackToKept();
    void enter();
    void leave();
    void readColony();
    void readCounts();
    const records::Method& method() const;
    void finish(bool withSecondRinse);
    void takeStamp();
    bool resolveStamp(bool lastChance);
    bool stampIsWanted() const;

    Services& m_services;
    records::Sample m_sample;
    records::Sample m_kept; // as it is on the disk: what the page goes back to where a write is refused
    QString m_colonyLabel;
    ColonyListModel m_colonies;
    ScoopController m_scoop;
    ShakeController m_shake;
    CountController m_count;
    CountController m_secondRinse;
    QTimer m_settleTimer;
};

} // namespace halfcup::touch
