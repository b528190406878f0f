// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// One colony and its washes.
class ColonyController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString title READ title NOTIFY changed) // "Colony 4"
    Q_PROPERTY(QString yardName READ yardName NOTIFY changed)
    Q_PROPERTY(QString label READ label NOTIFY changed) // "4"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString dueLine READ dueLine NOTIFY changed)
    Q_PROPERTY(
        halfcup::touch::ChoiceListModel* washes READ washes CONSTANT) // newest first, abandoned ones too
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    ColonyController(Services& services, QObject* parent = nullptr);

    QString title() const;
    QString yardName() const { return m_yardName; }
    QString label() const;
    bool isDemo() const { return m_colony.demo; }
    QString dueLine() const { return m_dueLine; }
    ChoiceListModel* washes() { return &m_washes; }
    QString problem() const { return m_problem; }

    bool show(const QString& colonyId);

    Q_INVOKABLE void wash();
    Q_INVOKABLE void openWash(const QString& sampleId);
    Q_INVOKABLE bool rename(const QString& label);

signals:
    void changed();
    void washWanted(const QString& colonyId);
    void draftWanted(const QString& sampleId);
    void answerWanted(const QString& sampleId);

private:
    void listWashes();

    Services& m_services;
    records::Colony m_colony;
    QString m_yardName;
    QString m_dueLine;
    ChoiceListModel m_washes;
    QString m_problem;
};

} // namespace halfcup::touch
