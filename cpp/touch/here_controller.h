// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/colony_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The Here page: the yard where the keeper stands (or the one picked), its colonies, what is due.
class HereController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(View view READ view NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)         // yard name, or what is asked
    Q_PROPERTY(QString placeLine READ placeLine NOTIFY changed) // "You are here, within 6 m · 18 May"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed) // the yard is from the demo: every page says so
    Q_PROPERTY(QString yardId READ yardId NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ColonyListModel* colonies READ colonies CONSTANT)
    Q_PROPERTY(
        halfcup::touch::ChoiceListModel* yardChoices READ yardChoices CONSTANT) // nearest first, for Asking
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY
                   changed) // "Wash colony 4"; empty where nothing can be washed
    Q_PROPERTY(QString mainDetail READ mainDetail NOTIFY changed) // "half a cup, alcohol"
    Q_PROPERTY(
        QString draftLine READ draftLine NOTIFY changed) // "Colony 7 waits at: count the mites"; else empty
    Q_PROPERTY(QString trayLine READ trayLine NOTIFY changed)   // "3 jars wait"; empty where the tray is
    Q_PROPERTY(QString roundLine READ roundLine NOTIFY changed) // "Round: 3 of 8 washed"; empty: none is open
public:
    enum View {
        NoYards,  // nothing kept yet: offer to make a yard, or to load the demo
        Asking,   // several yards are this close: which?
        Stranger, // no yard within reach: offer to make one here, or to pick one
        AtYard,   // a yard, known or picked
    };
    Q_ENUM(View)

    HereController(Services& services, QObject* parent = nullptr);

    View view() const { return m_view; }
    QString title() const;
    QString placeLine() const;
    bool isDemo() const;
    QString yardId() const { return m_yardId; }
    ColonyListModel* colonies() { return &m_colonies; }
    ChoiceListModel* yardChoices() { return &m_yardChoices; }
    QString mainAction() const;
    QString mainDetail() const;
    QString draftLine() const;
    QString trayLine() const { return m_trayLine; }

    QString roundLine() const { return m_roundLine; }

    /// The main action: goes on with the draft where there is one, else with the round, else washes the most
    /// urgent colony.
    Q_INVOKABLE void act();
    Q_INVOKABLE void openTray();
    Q_INVOKABLE void openYardRound(); // the open one, or the plan of a new one
    Q_INVOKABLE void compareColonies();
    Q_INVOKABLE void washColony(const QString& colonyId);
    Q_INVOKABLE void openColony(const QString& colonyId);
    Q_INVOKABLE void pickYard(const QString& yardId); // also tells the position what it could not
    Q_INVOKABLE void makeYardHere(); // opens the yard page with the present position filled in
    Q_INVOKABLE void lookAgain();    // asks for the position once more

    void refresh(); // reads the store again
    /// The page came up, or the app came back to the front: refresh, and look for the position again where
    /// the last look is so old that the keeper may have driven to another yard.
    void arrive();

signals:
    void changed();
    void washWanted(const QString& colonyId);
    void draftWanted(const QString& sampleId);
    void colonyWanted(const QString& colonyId);
    void trayWanted();
    void newYardWanted();
    void roundWanted(const QString& yardId);
    void compareWanted(const QString& yardId);

private:
    void usePosition();
    void recognise(const place::Stamp& stamp);
    void keepVisit(const records::RecordId& yardId);
    QString lastYard() const;
    void readYard();
    void readRound();

    Services& m_services;
    View m_view = NoYards;
    std::vector<records::Yard> m_yards;
    QString m_yardId;
    QString m_yardName;
    bool m_demo = false;
    bool m_pickedByHand = false;     // the keeper knows better than the receiver, until asked to look again
    bool m_pickIsOld = false;        // a yard that the position is sure of replaces an old pick
    std::int64_t m_lookedAtMs = 0;   // when the position was last asked for, UTC
    bool m_atYardByPosition = false; // the position says so too
    ColonyListModel m_colonies;
    ChoiceListModel m_yardChoices;
    QString m_roundLine;
    bool m_roundWaits = false; // its colonies are washed, or scooped and in the tray
    QString m_roundNextId;     // empty: none is open, or all of it are washed
    QString m_roundNextLabel;
    QString m_draftId;
    QString m_draftLine;
    QString m_trayLine;
};

} // namespace halfcup::touch
