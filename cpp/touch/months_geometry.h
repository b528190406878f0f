// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"

#include <QList>
#include <QObject>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QtQmlIntegration/qqmlintegration.h>

namespace halfcup::touch {

/// What the strip of months shows: twelve months from the first, today, turn dates, washes due, and courses.
class MonthsPicture {
    Q_GADGET
    QML_VALUE_TYPE(monthsPicture)
public:
    struct Course {
        records::Date from, to;
        friend bool operator==(const Course&, const Course&) = default;
    };
    records::Date first; // the first of a month
    records::Date today;
    QList<records::Date> turnDates;
    QList<records::Date> washes;
    QList<Course> courses;
    QList<QString> letters; // twelve, from the first month on

    friend bool operator==(const MonthsPicture&, const MonthsPicture&) = default;
};

/// Where days lie in a strip of twelve months. The months are of one width each, so that their letters stand
/// evenly; a day lies within its month. Knows nothing of painting.
class MonthsGeometry {
public:
    static constexpr int months = 12;
    static constexpr int mostLanes = 3; // courses side by side; what is more shares the last

    /// letterHeight: of the row with the letters, at the top.
    MonthsGeometry(records::Date first, QSizeF size, double letterHeight);

    [[nodiscard]] bool holds(const records::Date& day) const;
    [[nodiscard]] double x(const records::Date& day) const; // left edge of the day; outside: the nearer end
    [[nodiscard]] QRectF month(int index) const;            // with its letter; 0 to 11
    [[nodiscard]] QRectF band() const;                      // under the letters
    /// Each course's bar; one that lies wholly outside is empty. Courses that overlap lie in different lanes.
    [[nodiscard]] QList<QRectF> bars(const QList<MonthsPicture::Course>& courses) const;

private:
    records::Date m_first;
    QSizeF m_size;
    double m_letterHeight;
};

} // namespace halfcup::touch
