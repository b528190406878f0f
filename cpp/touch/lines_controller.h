// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The lines of one yard: the one in force today, the regions whose figures can be followed through the year,
/// and what the lines were until now. Answers that were given keep the lines they were judged by.
class LinesController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString yardName READ yardName NOTIFY changed)
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString todayLine READ todayLine NOTIFY changed)     // "Today 2 per 100"
    Q_PROPERTY(QString todaySource READ todaySource NOTIFY changed) // title and source of that figure
    Q_PROPERTY(QString ownLine READ ownLine NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* regions READ regions CONSTANT) // none of them first
    Q_PROPERTY(halfcup::touch::ChoiceListModel* past READ past CONSTANT)       // newest first
public:
    LinesController(Services& services, QObject* parent = nullptr);

    QString yardName() const { return QString::fromStdString(m_yard.name); }
    bool isDemo() const { return m_yard.demo; }
    QString todayLine() const;
    QString todaySource() const;
    QString ownLine() const;
    ChoiceListModel* regions() { return &m_regions; }
    ChoiceListModel* past() { return &m_past; }

    bool show(const QString& yardId);

    /// Follows the figures of a region; the empty key: one line all year. On disk at once.
    Q_INVOKABLE void follow(const QString& region);

signals:
    void changed();
    void yardChanged(const QString& yardId);

private:
    void read();
    QList<ChoiceListModel::Entry> regionEntries() const;
    QList<ChoiceListModel::Entry> pastEntries();

    Services& m_services;
    records::Yard m_yard;
    ChoiceListModel m_regions;
    ChoiceListModel m_past;
};

/// Where a line's figure comes from: "The trade's rule: ...", "Set by you."
[[nodiscard]] QString lineSource(const Services& services, const records::Lines& lines);

} // namespace halfcup::touch
