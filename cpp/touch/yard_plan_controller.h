// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/yard_plan_item.h"
#include "touch/yard_plan_records.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The plan of a yard: looked at, and changed. A hive is moved by a touch on it and a touch where it stands,
/// or by steps; each move is kept at once.
class YardPlanController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString yardName READ yardName NOTIFY changed)
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(halfcup::touch::YardPlanPicture picture READ picture NOTIFY changed)
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed) // the picture in words
    Q_PROPERTY(bool hasHives READ hasHives NOTIFY changed)
    Q_PROPERTY(bool moving READ isMoving NOTIFY changed)
    Q_PROPERTY(QString line READ line NOTIFY changed)             // what a touch does now, or did
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY changed) // "Colony 4" where one is picked, "Done"
    Q_PROPERTY(QString mainDetail READ mainDetail NOTIFY changed) // how the picked one stands; or empty
    // By steps: the hive that is picked.
    Q_PROPERTY(QString stepTitle READ stepTitle NOTIFY changed) // "Move colony 4"
    Q_PROPERTY(QString standLine READ standLine NOTIFY changed) // where it stands
    Q_PROPERTY(QString northStep READ northStep NOTIFY changed) // "1 m north", "3 ft north"
    Q_PROPERTY(QString southStep READ southStep NOTIFY changed)
    Q_PROPERTY(QString westStep READ westStep NOTIFY changed)
    Q_PROPERTY(QString eastStep READ eastStep NOTIFY changed)
    Q_PROPERTY(bool canTakeOff READ canTakeOff NOTIFY changed) // the keeper put it there
public:
    enum Direction { North, South, West, East };
    Q_ENUM(Direction)

    explicit YardPlanController(Services& services, QObject* parent = nullptr);

    QString yardName() const { return QString::fromStdString(m_yard.name); }
    bool isDemo() const { return m_yard.demo; }
    YardPlanPicture picture() const { return {m_read.plan}; }
    QString spoken() const { return pictures::sentenceOf(m_read.plan); }
    bool hasHives() const { return !m_read.plan.hives.empty(); }
    bool isMoving() const { return m_moving; }
    QString line() const;
    QString mainAction() const;
    QString mainDetail() const;
    QString stepTitle() const;
    QString standLine() const;
    QString northStep() const;
    QString southStep() const;
    QString westStep() const;
    QString eastStep() const;
    bool canTakeOff() const;

    bool show(const QString& yardId);
    void refresh(); // reads the store again; nothing where no yard was shown yet

    Q_INVOKABLE void startMoving();
    Q_INVOKABLE void act();  // the main action
    Q_INVOKABLE void back(); // ends moving, else leaves
    /// A touch on the picture, as YardPlanItem tells it.
    Q_INVOKABLE void touched(const QString& key, bool onGround, double eastM, double northM);
    Q_INVOKABLE void startSteps(); // picks the hive that was moved last, or the first, where none is picked
    Q_INVOKABLE void step(Direction direction);
    Q_INVOKABLE void pickNext();
    Q_INVOKABLE void pickPrevious();
    Q_INVOKABLE void takeOff(); // the picked hive's place: from its positions again, or none

signals:
    void changed();
    void left();
    void colonyWanted(const QString& colonyId);

private:
    void read();
    void pick(const QString& key);
    void pickBeside(int by);
    void keep(const QString& key, std::optional<records::Stand> stand);
    void widenFor(const records::Stand& stand);
    void stopMoving();
    const pictures::PlannedHive* picked() const;
    int indexOfPicked() const; // -1: none
    QString length(double metres) const;
    QString stepLength() const;
    double stepM() const;

    Services& m_services;
    records::Yard m_yard;
    YardPlanRecords m_read;
    std::optional<pictures::PlanBounds> m_ground; // while moving
    bool m_moving = false;
    QString m_picked;
    QString m_moved; // key of the hive moved last
};

} // namespace halfcup::touch
