// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The keeper's settings. Each change is on disk at once.
class SetupController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(int shakeSeconds READ shakeSeconds NOTIFY changed)
    Q_PROPERTY(QString shakeText READ shakeText NOTIFY changed) // "60 s"
    Q_PROPERTY(bool leftHand READ isLeftHand WRITE setLeftHand NOTIFY changed)
    Q_PROPERTY(bool dusk READ isDusk WRITE setDusk NOTIFY changed)
    Q_PROPERTY(bool thickGloves READ hasThickGloves WRITE setThickGloves NOTIFY changed)
    Q_PROPERTY(int textPercent READ textPercent NOTIFY changed)
    Q_PROPERTY(QString textLine READ textLine NOTIFY changed)                // "100 %"
    Q_PROPERTY(bool usUnits READ hasUsUnits WRITE setUsUnits NOTIFY changed) // feet, degrees Fahrenheit
    Q_PROPERTY(bool sound READ hasSound WRITE setSound NOTIFY changed)
    Q_PROPERTY(bool voice READ hasVoice WRITE setVoice NOTIFY changed)
    Q_PROPERTY(bool voiceWorks READ voiceWorks NOTIFY changed) // there is an engine with this language
    Q_PROPERTY(QString positionSource READ positionSource NOTIFY changed) // as typed, "" for the phone's own
    Q_PROPERTY(QString positionSourceLine READ positionSourceLine NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* scoops READ scoops CONSTANT)   // the usual scoop
    Q_PROPERTY(halfcup::touch::ChoiceListModel* methods READ methods CONSTANT) // the usual way to count bees
    Q_PROPERTY(halfcup::touch::ChoiceListModel* languages READ languages CONSTANT)
    Q_PROPERTY(QString databaseLine READ databaseLine CONSTANT) // where the records lie
    Q_PROPERTY(QString versionLine READ versionLine CONSTANT)
    Q_PROPERTY(QString whatThisIsNot READ whatThisIsNot CONSTANT) // Markdown, for the page of the first start
    Q_PROPERTY(bool knowsWhatThisIsNot READ knowsWhatThisIsNot NOTIFY changed) // that page was read before
    Q_PROPERTY(QString whatThisIsNotTitle READ whatThisIsNotTitle CONSTANT)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
public:
    SetupController(Services& services, QObject* parent = nullptr);

    int shakeSeconds() const;
    QString shakeText() const;
    bool isLeftHand() const;
    void setLeftHand(bool left);
    bool isDusk() const;
    void setDusk(bool dusk);
    bool hasThickGloves() const;
    void setThickGloves(bool thick);
    int textPercent() const;
    QString textLine() const;
    bool hasUsUnits() const;
    void setUsUnits(bool us);
    bool hasSound() const;
    void setSound(bool on);
    bool hasVoice() const;
    void setVoice(bool on);
    bool voiceWorks() const;
    QString positionSource() const;
    QString positionSourceLine() const;
    ChoiceListModel* scoops() { return &m_scoops; }
    ChoiceListModel* methods() { return &m_methods; }
    ChoiceListModel* languages() { return &m_languages; }
    QString databaseLine() const;
    QString versionLine() const;
    QString whatThisIsNot() const;
    bool knowsWhatThisIsNot() const { return m_services.settings.readWhatThisIsNot(); }
    QString whatThisIsNotTitle() const;
    QString problem() const { return m_problem; }

    Q_INVOKABLE void shakeLonger();    // by 10 s, up to 180
    Q_INVOKABLE void shakeShorter();   // by 10 s, down to 20
    Q_INVOKABLE void lettersLarger();  // by 25 %, up to 200
    Q_INVOKABLE void lettersSmaller(); // by 25 %, down to 100
    Q_INVOKABLE void chooseScoop(const QString& key);
    Q_INVOKABLE void chooseMethod(const QString& id);
    Q_INVOKABLE void chooseLanguage(const QString& code); // "" the phone's own
    Q_INVOKABLE bool typePositionSource(const QString& text);
    Q_INVOKABLE void understoodWhatThisIsNot(); // it is not shown by itself again

signals:
    void changed();
    void understood();
    void languageChosen(); // another one than before: the program is to be put together again

private:
    void refreshScoops();
    void refreshMethods();
    void refreshLanguages();

    Services& m_services;
    ChoiceListModel m_scoops;
    ChoiceListModel m_methods;
    ChoiceListModel m_languages;
    QString m_problem;
};

} // namespace halfcup::touch
