// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QList>
#include <QObject>
#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QtQmlIntegration/qqmlintegration.h>

namespace halfcup::touch {

/// Loads day by day, mites per 100 bees as a wash finds them: lower end, middle, upper end. All of one
/// length, or all empty where there is none.
struct OutlookBand {
    QList<double> low, middle, high;
    friend bool operator==(const OutlookBand&, const OutlookBand&) = default;
};

/// What the picture of a "what if" shows. Days are counted from the starting wash, from 0.
class OutlookPicture {
    Q_GADGET
    QML_VALUE_TYPE(outlookPicture)
public:
    struct Month {
        int day = 0;    // its first day
        QString letter; // "J"
        friend bool operator==(const Month&, const Month&) = default;
    };
    OutlookBand nothing; // if nothing is done
    OutlookBand with;    // with the choice; may be empty
    double line = 0;     // the treat line
    int today = 0;
    int turnDay = -1;   // -1: none within the days
    int autumnDay = -1; // mid-autumn
    QList<Month> months;

    [[nodiscard]] int days() const { return static_cast<int>(nothing.middle.size()); }
    friend bool operator==(const OutlookPicture&, const OutlookPicture&) = default;
};

/// Where days and loads lie in a picture of that size. Knows nothing of painting.
class OutlookGeometry {
public:
    /// labelHeight: room under the days for the months; labelWidth: room at the left for loads.
    OutlookGeometry(const OutlookPicture& picture, QSizeF size, double labelWidth, double labelHeight);

    /// The load at the top of the picture: a round figure over the line and what is likely, but never so high
    /// that the line sinks to the bottom. What lies above is cut off there.
    [[nodiscard]] double top() const { return m_top; }
    [[nodiscard]] QRectF plot() const { return m_plot; }
    [[nodiscard]] double x(int day) const;
    [[nodiscard]] double y(double load) const; // above the top: the top
    [[nodiscard]] QPolygonF
    area(const OutlookBand& band) const; // between low and high; empty where there is none
    [[nodiscard]] QPolygonF middle(const OutlookBand& band) const;

private:
    int m_days = 0;
    double m_top = 1;
    QRectF m_plot;
};

} // namespace halfcup::touch
