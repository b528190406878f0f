// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/comb_item.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// What a finished wash says.
class AnswerController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed) // "Colony 4, Alder Bend · 9 mites in half a cup"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(int standing READ standing NOTIFY changed)     // StandingWord::Value of the headline
    Q_PROPERTY(QString headline READ headline NOTIFY changed) // "Over your line"
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed) // "About 3.2 mites on every 100 bees. ..."
    Q_PROPERTY(QString zeroLine READ zeroLine NOTIFY changed) // what none found can still hide; else empty
    Q_PROPERTY(halfcup::touch::CombPicture comb READ comb NOTIFY changed) // of the 90 % range
    Q_PROPERTY(QString lineText READ lineText NOTIFY changed) // "Your line is 3, or 9 in a half cup."
    Q_PROPERTY(
        QString chanceLine READ chanceLine NOTIFY changed) // "Chance that the true load is over 3: 55 %"
    Q_PROPERTY(
        QString ownLine READ ownLine NOTIFY changed) // the other line's standing and chance; may be empty
    Q_PROPERTY(
        QString placeLine READ placeLine NOTIFY changed)      // "Scooped at 10:12, within 6 m", "no position"
    Q_PROPERTY(QString nextLine READ nextLine NOTIFY changed) // what to do next
    Q_PROPERTY(bool wantsTreating READ wantsTreating NOTIFY changed)           // over the line or close to it
    Q_PROPERTY(halfcup::touch::ChoiceListModel* details READ details CONSTANT) // title and detail pairs
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY changed)
    Q_PROPERTY(QString mainAction READ mainAction NOTIFY changed) // "Wash colony 2 next", or "Done"
public:
    AnswerController(Services& services, QObject* parent = nullptr);

    QString context() const;
    bool isDemo() const { return m_sample.demo; }
    int standing() const { return m_standing; }
    QString headline() const;
    QString sentence() const;
    QString zeroLine() const;
    CombPicture comb() const { return {pictures::combOf(m_answer)}; }
    QString lineText() const;
    QString chanceLine() const;
    QString ownLine() const;
    QString placeLine() const;
    QString nextLine() const;
    bool wantsTreating() const;
    ChoiceListModel* details() { return &m_details; }
    QString note() const;
    void setNote(const QString& note);
    QString mainAction() const;

    QString methodId() const { return QString::fromStdString(m_sample.method); }

    /// Shows a finished sample of bees. False where there is none of that id.
    bool show(const QString& sampleId);

    Q_INVOKABLE void act(); // the main action
    Q_INVOKABLE void openColony();
    Q_INVOKABLE void openTreat();
    Q_INVOKABLE void countBees();   // of this jar
    Q_INVOKABLE void openSources(); // where the line and the figures come from

signals:
    void changed();
    void washWanted(const QString& colonyId);
    void roundWanted(const QString& yardId); // all its colonies are washed: the yard's answer
    void jarWanted(const QString& sampleId); // the next one in the tray
    void colonyWanted(const QString& colonyId);
    void homeWanted();
    void sourcesWanted();
    void treatWanted(const QString& colonyId);
    void countWanted(const QString& sampleId);

private:
    bool headlineIsOwnLine() const;
    void listDetails();
    void readNextJar();
    void readRound();

    Services& m_services;
    records::Sample m_sample;
    records::Answer m_answer;
    QString m_colonyLabel;
    records::Yard m_yard;
    QString m_nextColonyId;
    QString m_nextColonyLabel;
    bool m_roundIsDone = false;     // of an open round of the yard
    QString m_nextJarId, m_nextJar; // in the tray, where this one came from it
    int m_standing = 0;
    ChoiceListModel m_details;
};

} // namespace halfcup::touch
