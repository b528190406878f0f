// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/sample.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The sticky board of a sample: the floor it lies under, its hours, how much of it is counted.
class BoardController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("the wash's")
    Q_PROPERTY(QString floorLine READ floorLine NOTIFY changed) // "Floor: screened floor since 3 May"
    Q_PROPERTY(bool floorIsScreened READ floorIsScreened NOTIFY changed)
    Q_PROPERTY(bool floorIsSolid READ floorIsSolid NOTIFY changed) // neither: not written down
    Q_PROPERTY(QString laidLine READ laidLine NOTIFY changed)      // "Laid on 21 July at 10:12, 24 h ago"
    Q_PROPERTY(QString hoursLine READ hoursLine NOTIFY changed)    // "24 h, as you typed"; may be empty
    Q_PROPERTY(bool wantsHours READ wantsHours NOTIFY changed)     // the clock cannot say how long it lay
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    BoardController(Services& services, QObject* parent = nullptr);

    QString floorLine() const;
    bool floorIsScreened() const { return m_floor == records::Floor::Screened; }
    bool floorIsSolid() const { return m_floor == records::Floor::Solid; }
    QString laidLine() const;
    QString hoursLine() const;
    bool wantsHours() const { return m_wantsHours; }
    QString problem() const { return m_problem; }

    void setSample(const records::Sample& sample);
    const records::BoardStay& value() const { return m_board; }

    Q_INVOKABLE void lay();       // now; only under a screened floor
    Q_INVOKABLE void liesThere(); // laid without the phone: its hours are asked when it is pulled
    /// Pulled now, where it was not before. False where its hours cannot be told or cannot be right: then
    /// nothing was changed, problem says why, and they have to be typed.
    Q_INVOKABLE bool pull();
    Q_INVOKABLE void countWhole();
    Q_INVOKABLE bool floorWasChanged(); // the keeper says: it is screened. Kept as an event of today
    Q_INVOKABLE bool typeHours(const QString& hours);
    /// How many cells of the board's grid are counted, then how many it has. False: problem says why.
    Q_INVOKABLE bool typeCounted(const QString& cells);
    Q_INVOKABLE bool typeCells(const QString& cells);
    Q_INVOKABLE void clearProblem();

signals:
    void changed();
    void edited();   // keep it with the sample
    void stepDone(); // keep it, and go on

private:
    QString whyNotHours(const std::optional<double>& hours) const;
    void readFloor();

    Services& m_services;
    records::RecordId m_colonyId;
    int m_utcOffsetMinutes = 0;
    records::BoardStay m_board;
    records::Floor m_floor = records::Floor::NotKnown;
    QString m_floorLine;
    std::int64_t m_countedTyped = 0;
    bool m_wantsHours = false;
    QString m_problem;
};

} // namespace halfcup::touch
