// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The yards, and the page on which one is made or changed.
class YardsController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(halfcup::touch::ChoiceListModel* yards READ yards CONSTANT)
    // The yard being edited. Texts are as typed; problem says in a sentence what is wrong with them.
    Q_PROPERTY(bool isNew READ isNew NOTIFY changed)
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY loaded)
    Q_PROPERTY(QString treatLine READ treatLine NOTIFY loaded) // "3"
    Q_PROPERTY(QString treatLineSource READ treatLineSource NOTIFY
                   changed)                                // "The trade's rule: ..., common practice"
    Q_PROPERTY(QString ownLine READ ownLine NOTIFY loaded) // "" where there is none
    Q_PROPERTY(QString followedLine READ followedLine NOTIFY changed) // "Followed: Ontario. Today 3 per 100"
    Q_PROPERTY(QString turnDate READ turnDate NOTIFY loaded) // the keeper's own; "" where there is none
    Q_PROPERTY(QString turnDateHint READ turnDateHint NOTIFY changed) // what holds then, and why
    Q_PROPERTY(QString firstWash READ firstWash NOTIFY loaded)
    Q_PROPERTY(QString firstWashHint READ firstWashHint NOTIFY changed)
    Q_PROPERTY(QString positionLine READ positionLine NOTIFY
                   changed) // "48.11730 N 11.51667 E, within 6 m", "No position yet"
    Q_PROPERTY(QString coloniesLine READ coloniesLine NOTIFY changed) // "9 colonies: 1, 2, 3, 4 ..."
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    YardsController(Services& services, QObject* parent = nullptr);

    ChoiceListModel* yards() { return &m_yards; }
    bool isNew() const { return m_isNew; }
    bool isDemo() const { return m_yard.demo; }
    QString name() const;
    QString treatLine() const;
    QString treatLineSource() const;
    QString ownLine() const;
    QString followedLine() const;
    QString turnDate() const;
    QString turnDateHint() const;
    QString firstWash() const;
    QString firstWashHint() const;
    QString positionLine() const;
    QString coloniesLine() const;
    QString problem() const { return m_problem; }

    void refresh();
    void reload();   // the yard being edited was changed on another page
    void startNew(); // takes the present position where there is one

    Q_INVOKABLE void makeNew();
    Q_INVOKABLE void edit(const QString& yardId);
    Q_INVOKABLE void useThisPlace(); // the present position becomes the yard's
    /// Writes name and lines; false and problem where something typed cannot be.
    Q_INVOKABLE bool save(const QString& name, const QString& treatLine, const QString& ownLine);
    /// The same with the two days that come every year; an empty one is the usual one again.
    Q_INVOKABLE bool saveAll(const QString& name, const QString& treatLine, const QString& ownLine,
                             const QString& turnDate, const QString& firstWash);
    // For all colonies of the yard being edited.
    Q_INVOKABLE void supersForAll(bool on);
    Q_INVOKABLE void treatAll();
    Q_INVOKABLE void openDay();
    Q_INVOKABLE void openLines();
    Q_INVOKABLE void openPlan();
    Q_INVOKABLE void openHistory(); // what changed
    /// Adds colonies: one label ("B12") or a run of numbers ("1-8"). Saves a new yard first.
    Q_INVOKABLE bool addColonies(const QString& labels);

signals:
    void changed();
    void loaded(); // the texts to type in are those of another yard, or were kept: what was typed goes
    void editWanted();
    void saved(const QString& yardId);
    void supersWanted(const QString& yardId, bool on);
    void treatWanted(const QString& yardId); // all its colonies
    void dayWanted(const QString& yardId);
    void linesWanted(const QString& yardId);
    void planWanted(const QString& yardId);
    void historyWanted(const QString& yardId);

private:
    bool fail(const QString& problem);
    bool write(records::Yard changed, const QString& name, const QString& treatLine, const QString& ownLine);
    QString yardId() const { return QString::fromStdString(m_yard.id); }

    Services& m_services;
    ChoiceListModel m_yards;
    records::Yard m_yard;
    bool m_isNew = true;
    QString m_problem;
};

} // namespace halfcup::touch
