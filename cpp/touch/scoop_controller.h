// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/sample.h"
#include "records/scoop_count.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The book's bees in a millilitre, for the keeper's own counted scoops to start from.
[[nodiscard]] records::BookDensity bookDensity(const handbook::Handbook& handbook);

/// The scoop of the wash at hand: how much, how it lies, and how many bees that is.
class ScoopController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("the wash's")
    Q_PROPERTY(QString measure READ measure NOTIFY changed)       // "Half a cup", "100 ml"
    Q_PROPERTY(bool settled READ isSettled NOTIFY changed)        // rapped down; else loose
    Q_PROPERTY(QString packing READ packing NOTIFY changed)       // "rapped to settle", "loose"
    Q_PROPERTY(QString beesLine READ beesLine NOTIFY changed)     // "about 300 bees, 248 to 362"
    Q_PROPERTY(QString sourceLine READ sourceLine NOTIFY changed) // "by the book", "your own figure"
    Q_PROPERTY(halfcup::touch::ChoiceListModel* choices READ choices CONSTANT) // measures to touch
    Q_PROPERTY(QString problem READ problem NOTIFY changed) // what is wrong with what was typed; else empty
public:
    ScoopController(Services& services, QObject* parent = nullptr);

    QString measure() const;
    bool isSettled() const { return m_scoop.packing == records::Packing::Settled; }
    QString packing() const;
    QString beesLine() const;
    QString sourceLine() const;
    ChoiceListModel* choices() { return &m_choices; }
    QString problem() const { return m_problem; }

    const records::Scoop& value() const { return m_scoop; }
    void setValue(const records::Scoop& scoop);
    /// The keeper's usual scoop, from the settings.
    void useUsual();

    Q_INVOKABLE void choose(const QString& key);
    Q_INVOKABLE void setSettled(bool settled);
    Q_INVOKABLE bool typeVolume(const QString& millilitres);
    Q_INVOKABLE bool typeBees(const QString& bees); // overrules the estimate

signals:
    void changed();
    void edited(); // the keeper changed it: keep it with the sample

private:
    void estimate();
    void refreshChoices();

    Services& m_services;
    records::Scoop m_scoop;
    ChoiceListModel m_choices;
    QString m_problem;
    int m_ownScoops = 0; // counted ones behind the estimate
};

} // namespace halfcup::touch
