// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/shake.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>
#include <QTimer>

#include <memory>

namespace halfcup::touch {

/// The shake timer as it is shown. The truth is the boot clock in the kept ShakeRun; this only looks at it,
/// four times a second while the page is there, so a phone that slept shows the right second at once.
class ShakeController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("the wash's")
    Q_PROPERTY(Phase phase READ phase NOTIFY changed)
    Q_PROPERTY(int secondsLeft READ secondsLeft NOTIFY changed)
    Q_PROPERTY(double fraction READ fraction NOTIFY changed) // of the planned time that is done, 0 to 1
    Q_PROPERTY(QString word READ word NOTIFY changed)        // "Half time is past. Keep the jar turning."
    Q_PROPERTY(QString unit READ unit NOTIFY changed)        // "seconds left"; "second left" for one
    Q_PROPERTY(QString stopAction READ stopAction NOTIFY changed) // "Stop here"; "Set the jar down" once over
    Q_PROPERTY(QString stopDetail READ stopDetail NOTIFY changed) // what stopping keeps
    /// For a screen reader: a sentence that stays for many seconds, so that each change may be read out.
    Q_PROPERTY(QString announced READ announced NOTIFY changed)
    Q_PROPERTY(bool interrupted READ isInterrupted NOTIFY changed)
    Q_PROPERTY(bool sound READ hasSound WRITE setSound NOTIFY changed)
public:
    enum Phase { Ready, FirstHalf, SecondHalf, LastTenSeconds, Paused, Over };
    Q_ENUM(Phase)

    ShakeController(Services& services, QObject* parent = nullptr);

    Phase phase() const;
    int secondsLeft() const;
    double fraction() const;
    QString word() const;
    QString unit() const;
    QString stopAction() const;
    QString stopDetail() const;
    QString announced() const;
    bool isInterrupted() const { return m_progress.interrupted; }
    bool hasSound() const;
    void setSound(bool on);

    const records::ShakeRun& run() const { return m_run; }
    void setRun(const records::ShakeRun& run); // a draft's; goes on counting where it runs
    /// What the method says: while it is shaken, on the button once it is over, and as a sentence then.
    void setWords(const QString& during, const QString& overAction, const QString& over);
    /// Begins, or goes on where it was paused. The wash keeps what start() and end() change.
    void start(int plannedS);
    void end();

    Q_INVOKABLE void pause();
    Q_INVOKABLE void goOn();

signals:
    void changed();
    void edited(); // paused or went on: keep it with the sample

private:
    void look();
    void say(records::ShakeProgress::Phase before);

    Services& m_services;
    records::ShakeRun m_run;
    records::ShakeProgress m_progress;
    QString m_during;
    QString m_overAction;
    QString m_over;
    QTimer m_timer;
    std::unique_ptr<device::KeepAwake::Hold> m_awake;
};

} // namespace halfcup::touch
