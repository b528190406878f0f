// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/type.h"
#include "records/moment.h"

#include <QString>

#include <vector>

namespace halfcup::pictures {

/// Days from left to right, and the months or years to write under them.
class TimeAxis {
public:
    /// last is after first, or is moved to the day after it. left and right: where they lie.
    TimeAxis(const records::Date& first, const records::Date& last, double left, double right);

    [[nodiscard]] const records::Date& first() const { return m_first; }
    [[nodiscard]] const records::Date& last() const { return m_last; }
    [[nodiscard]] double left() const { return m_left; }
    [[nodiscard]] double right() const { return m_right; }
    /// The start of the day. Days outside lie at the nearer end.
    [[nodiscard]] double x(const records::Date& day) const;
    [[nodiscard]] bool holds(const records::Date& day) const { return day >= m_first && day <= m_last; }

    struct Tick {
        records::Date day; // the first of a month
        double x = 0;
        bool year = false; // January
        QString text;      // "Jun", "J", "2026"; empty where there is no room
        QRectF box;        // of the text, x alone counts; centred in its month or year
    };
    /// Months with their names as long as there is room, else with their first letters, else years alone, and
    /// of these only each second, fifth or tenth with its name where there is no room for all.
    [[nodiscard]] std::vector<Tick> ticks(const Type& type) const;

private:
    enum class Names { Short, Narrow, Years };
    [[nodiscard]] Names namesFor(const Type& type) const;
    [[nodiscard]] int yearsApart(const Type& type) const;
    void nameOver(Tick& tick, const Type& type) const;

    records::Date m_first;
    records::Date m_last;
    double m_left;
    double m_right;
};

} // namespace halfcup::pictures
