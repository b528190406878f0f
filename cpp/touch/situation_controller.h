// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/treat_scope.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// What is so now: day, forecast, supers, brood, strength and floor. What is known from events is filled in;
/// what the keeper changes is kept as events of the colonies.
class SituationController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed)
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString from READ from NOTIFY changed) // "18 May 2026"
    Q_PROPERTY(QString highs READ highs NOTIFY changed)
    Q_PROPERTY(QString lows READ lows NOTIFY changed)
    Q_PROPERTY(QString forecastHint READ forecastHint NOTIFY changed)
    Q_PROPERTY(bool fahrenheit READ isFahrenheit NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* supers READ supers CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* brood READ brood CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* floors READ floors CONSTANT)
    Q_PROPERTY(QString supersNote READ supersNote NOTIFY changed) // "written down on 3 May"
    Q_PROPERTY(QString broodNote READ broodNote NOTIFY changed)
    Q_PROPERTY(QString floorNote READ floorNote NOTIFY changed)
    Q_PROPERTY(bool asksStrength READ asksStrength NOTIFY changed) // of one colony; not of a whole yard
    Q_PROPERTY(QString frames READ frames NOTIFY changed)
    Q_PROPERTY(QString framesNote READ framesNote NOTIFY changed)
    Q_PROPERTY(QString keepNote READ keepNote NOTIFY changed) // what is kept of it, and for whom
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    SituationController(Services& services, QObject* parent = nullptr);

    QString context() const;
    bool isDemo() const { return m_scope.demo(); }
    QString from() const;
    QString highs() const { return m_highs; }
    QString lows() const { return m_lows; }
    QString forecastHint() const;
    bool isFahrenheit() const;
    ChoiceListModel* supers() { return &m_supersList; }
    ChoiceListModel* brood() { return &m_broodList; }
    ChoiceListModel* floors() { return &m_floorList; }
    QString supersNote() const { return m_supersNote; }
    QString broodNote() const { return m_broodNote; }
    QString floorNote() const { return m_floorNote; }
    bool asksStrength() const { return !m_scope.wholeYard; }
    QString frames() const { return m_frames; }
    QString framesNote() const { return m_framesNote; }
    QString keepNote() const;
    QString problem() const { return m_problem; }

    void show(const TreatScope& scope);

    Q_INVOKABLE bool typeFrom(const QString& text);
    Q_INVOKABLE void moveFrom(int days); // a day on or back
    Q_INVOKABLE void typeHighs(const QString& text);
    Q_INVOKABLE void typeLows(const QString& text);
    Q_INVOKABLE void typeFrames(const QString& text);
    Q_INVOKABLE void setFahrenheit(bool on); // how what is typed is read, from now on
    Q_INVOKABLE void pickSupers(const QString& key);
    Q_INVOKABLE void pickBrood(const QString& key);
    Q_INVOKABLE void pickFloor(const QString& key);
    /// Writes what was changed as events and hands on day and forecast; false and a problem where something
    /// typed cannot be, and then nothing is written.
    Q_INVOKABLE bool keep();

signals:
    void changed();
    void kept(const records::Date& from, const std::vector<double>& highsC, const std::vector<double>& lowsC);

private:
    void readState();
    void listOptions();
    bool fail(const QString& problem);
    std::vector<records::ColonyEvent> newEvents(const std::optional<double>& frames) const;

    Services& m_services;
    TreatScope m_scope;
    QString m_highs, m_lows, m_frames;
    // As picked; nothing and NotKnown: not known, and then nothing is kept.
    std::optional<bool> m_supersOn;
    records::Brood m_brood = records::Brood::NotKnown;
    records::Floor m_floor = records::Floor::NotKnown;
    bool m_typedFrames = false;
    QString m_supersNote, m_broodNote, m_floorNote, m_framesNote;
    ChoiceListModel m_supersList, m_broodList, m_floorList;
    QString m_problem;
};

} // namespace halfcup::touch
