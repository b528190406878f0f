// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/sample.h"
#include "touch/load_chart_item.h"
#include "touch/picture_legend.h"
#include "touch/services.h"

#include <QHash>
#include <QObject>
#include <QQmlEngine>

#include <span>

namespace halfcup::touch {

/// The picture of a colony's loads on its page: which washes are shown, and the one whose figures are told.
/// Where washes go back further than a season, it begins with the last season.
class LoadChartController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("part of a colony's page")
    Q_PROPERTY(halfcup::touch::LoadPicture picture READ picture NOTIFY changed)
    Q_PROPERTY(halfcup::touch::PictureLegend legend READ legend NOTIFY changed)
    Q_PROPERTY(bool hasWash READ hasWash NOTIFY changed)
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed)         // the picture in a few sentences
    Q_PROPERTY(QString chosenLine READ chosenLine NOTIFY changed) // the chosen wash in one
    Q_PROPERTY(bool canGoEarlier READ canGoEarlier NOTIFY changed)
    Q_PROPERTY(bool canGoLater READ canGoLater NOTIFY changed)
    Q_PROPERTY(bool hasYears READ hasYears NOTIFY changed) // more than a season is kept
    Q_PROPERTY(bool showsAll READ showsAll NOTIFY changed)
public:
    explicit LoadChartController(const Services& services, QObject* parent = nullptr);

    LoadPicture picture() const { return m_picture; }
    PictureLegend legend() const;
    bool hasWash() const { return !m_picture.chart.washes.empty(); }
    QString spoken() const;
    QString chosenLine() const;
    bool canGoEarlier() const { return m_chosen > 0; }
    bool canGoLater() const { return m_chosen + 1 < m_picture.chart.washes.size(); }
    bool hasYears() const { return m_hasYears; }
    bool showsAll() const { return m_showsAll; }

    /// A colony's chart. The same colony's again keeps the chosen wash and what is shown, where it still is
    /// there. samples: where the washes come from, for their methods.
    void show(const pictures::LoadChart& chart, const records::RecordId& colonyId,
              std::span<const records::Sample> samples);

    Q_INVOKABLE void choose(const QString& key); // nothing where there is no such wash
    Q_INVOKABLE void earlier();
    Q_INVOKABLE void later();
    Q_INVOKABLE void setShowsAll(bool all);

signals:
    void changed();

private:
    void put(); // what is to be shown of the whole into the picture
    void chooseAt(std::size_t place);

    const Services& m_services;
    records::RecordId m_colonyId;
    pictures::LoadChart m_whole; // washes in order
    QHash<QString, QString> m_methods;
    LoadPicture m_picture;
    std::size_t m_chosen = 0; // among the washes shown
    bool m_hasYears = false;
    bool m_showsAll = false;
};

} // namespace halfcup::touch
