// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/sample.h"
#include "season/phrase.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// What a board or opened brood says: in its own terms first, and no load where none can honestly be read.
class OtherAnswerController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed) // "Colony 4, Alder Bend · sticky board"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(int standing READ standing NOTIFY changed)     // StandingWord::Value
    Q_PROPERTY(QString headline READ headline NOTIFY changed) // "Over the handbook's line"
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed) // "About 12 mites a day. It could be ..."
    Q_PROPERTY(QString chanceLine READ chanceLine NOTIFY changed)
    Q_PROPERTY(QString loadLine READ loadLine NOTIFY changed) // as mites per 100 bees, or why not
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
    Q_PROPERTY(bool wantsWash READ wantsWash NOTIFY changed) // a wash has to decide
    Q_PROPERTY(QString nextLine READ nextLine NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* facts READ facts CONSTANT) // title, detail, where it is from
    Q_PROPERTY(QString placeLine READ placeLine NOTIFY changed)
public:
    OtherAnswerController(Services& services, QObject* parent = nullptr);

    QString context() const;
    bool isDemo() const { return m_sample.demo; }
    int standing() const;
    QString headline() const;
    QString sentence() const;
    QString chanceLine() const;
    QString loadLine() const;
    QStringList cautions() const;
    bool wantsWash() const;
    QString nextLine() const;
    ChoiceListModel* facts() { return &m_facts; }
    QString placeLine() const;

    /// Shows a finished sample. False where there is none of that id with such an answer.
    bool show(const QString& sampleId);

    Q_INVOKABLE void washInstead(); // half a cup of the same colony
    Q_INVOKABLE void done();
    Q_INVOKABLE void openSources();

signals:
    void changed();
    void washWanted(const QString& colonyId);
    void homeWanted();
    void sourcesWanted();

private:
    bool isBoard() const;
    void listFacts();

    Services& m_services;
    records::Sample m_sample;
    records::OtherAnswer m_answer;
    QString m_colonyLabel;
    QString m_yardName;
    int m_month = 7; // of the north's year
    season::Phrase m_noLoad;
    ChoiceListModel m_facts;
};

/// "12 mites a day", "16 of 100 drone cells": the figure of an answer that is no load.
[[nodiscard]] QString otherFigure(const records::Sample& sample, double figure);
/// "7.3 to 19", from 0 where none was found.
[[nodiscard]] QString otherRange(const records::OtherAnswer& answer);

} // namespace halfcup::touch
