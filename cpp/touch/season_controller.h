// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/dates.h"
#include "touch/choice_list_model.h"
#include "touch/picture_legend.h"
#include "touch/season_strip_item.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

#include <optional>
#include <vector>

namespace halfcup::touch {

/// The season: what runs, and the dates ahead in all yards, late ones first, then month by month.
class SeasonController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString summary READ summary NOTIFY changed) // "2 yards · 3 late"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(halfcup::touch::StripPicture picture READ picture NOTIFY changed)
    Q_PROPERTY(halfcup::touch::PictureLegend legend READ legend NOTIFY changed)
    Q_PROPERTY(QString pictureSpoken READ pictureSpoken NOTIFY changed)
    // title: what; detail: yard and colonies; note: the day; section: over the first of each group "Running
    // now", "Late" or the month
    Q_PROPERTY(halfcup::touch::ChoiceListModel* dates READ dates CONSTANT)
    Q_PROPERTY(QString result READ result NOTIFY changed) // what was written, or what went wrong
    Q_PROPERTY(bool failed READ hasFailed NOTIFY changed)
public:
    static constexpr int daysAhead = 365;

    SeasonController(Services& services, QObject* parent = nullptr);

    QString summary() const;
    bool isDemo() const { return m_demo; }
    StripPicture picture() const { return m_picture; }
    PictureLegend legend() const;
    QString pictureSpoken() const;
    ChoiceListModel* dates() { return &m_list; }
    QString result() const { return m_result; }
    bool hasFailed() const { return m_failed; }

    void refresh();

    Q_INVOKABLE void open(const QString& key); // of an entry
    Q_INVOKABLE bool writeCalendar();

signals:
    void changed();
    void yardWanted(const QString& yardId);
    void treatmentWanted(const QString& treatmentId);
    void checkWanted(const QString& treatmentId);

private:
    struct Read {
        store::Store::Written written;
        std::int64_t atMs = 0;
    };

    void readYards();
    void listDates();
    void readPicture();

    Services& m_services;
    std::vector<records::YardRecords> m_yards;
    std::vector<records::Date> m_washDays;
    records::Date m_first;      // of the bee year
    std::optional<Read> m_read; // what the three before show; nothing where they could not be read
    std::vector<season::SeasonDate> m_dates;
    StripPicture m_picture;
    ChoiceListModel m_list;
    bool m_demo = false;
    bool m_failed = false;
    QString m_result;
};

} // namespace halfcup::touch
