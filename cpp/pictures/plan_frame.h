// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/yard.h"

#include <QPointF>
#include <QRectF>
#include <QString>

#include <optional>

namespace halfcup::pictures {

/// Whether a stand can be drawn: finite, and no further from the yard's position than a yard can reach
/// (20 km [convention]; what lies beyond is a slip or a damaged file).
[[nodiscard]] bool canStand(const records::Stand& stand);

/// A piece of ground, metres from the yard's position; west <= east and south <= north.
struct PlanBounds {
    double westM = 0, eastM = 0, southM = 0, northM = 0;

    [[nodiscard]] double widthM() const { return eastM - westM; }
    [[nodiscard]] double heightM() const { return northM - southM; }
    [[nodiscard]] bool holds(const records::Stand& stand) const;
    void include(const records::Stand& stand);
    [[nodiscard]] PlanBounds grown(double metres) const; // on all sides

    friend bool operator==(const PlanBounds&, const PlanBounds&) = default;
};

/// Metres on the ground as units on the plan and back; north is up.
class PlanFrame {
public:
    /// No less ground than this is shown across, metres [convention]: a hive's own length more or less is
    /// beside the point.
    static constexpr double leastSpanM = 6;

    PlanFrame() = default; // one unit a metre
    /// The ground in the middle of the area, as large as fits, with a margin of units on all sides.
    PlanFrame(const PlanBounds& ground, const QRectF& area, double margin);

    [[nodiscard]] double unitsPerM() const { return m_unitsPerM; }
    [[nodiscard]] QPointF at(const records::Stand& stand) const;
    [[nodiscard]] records::Stand standAt(QPointF point) const; // to the centimetre

private:
    double m_unitsPerM = 1;
    records::Stand m_middle;
    QPointF m_at;
};

/// A bar of a round length (1, 2 or 5 and zeros) in the keeper's units.
struct ScaleBar {
    double units = 0; // how long it is on the plan
    QString text;     // "5 m", "1 km", "20 ft"
};
/// The longest that is no longer than that many units; nothing where not even a tenth of a metre or foot
/// fits.
[[nodiscard]] std::optional<ScaleBar> scaleBarOf(const PlanFrame& frame, double longest, bool feet);

} // namespace halfcup::pictures
