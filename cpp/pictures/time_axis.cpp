// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/time_axis.h"

#include <QLocale>

#include <algorithm>

namespace halfcup::pictures {

namespace {

constexpr double besides = 4; // units free on both sides of a name together

records::Date nextMonth(const records::Date& day) {
    return day.month == 12 ? records::Date{day.year + 1, 1, 1} : records::Date{day.year, day.month + 1, 1};
}

QString monthName(int month, QLocale::FormatType format) {
    return QLocale().standaloneMonthName(month, format);
}

} // namespace

TimeAxis::TimeAxis(const records::Date& first, const records::Date& last, double left, double right)
    : m_first(first)
    , m_last(std::max(last, records::plusDays(first, 1)))
    , m_left(left)
    , m_right(right) {}

double TimeAxis::x(const records::Date& day) const {
    const double all = records::daysBetween(m_first, m_last);
    return m_left + (m_right - m_left) * std::clamp(records::daysBetween(m_first, day) / all, 0.0, 1.0);
}

TimeAxis::Names TimeAxis::namesFor(const Type& type) const {
    const double month = (m_right - m_left) * 28.0 / records::daysBetween(m_first, m_last);
    double wide = 0, narrow = 0;
    for (int each = 1; each <= 12; ++each) {
        wide = std::max(wide, type.width(monthName(each, QLocale::ShortFormat)));
        narrow = std::max(narrow, type.width(monthName(each, QLocale::NarrowFormat)));
    }
    if (month >= wide + besides)
        return Names::Short;
    return month >= narrow + besides ? Names::Narrow : Names::Years;
}

/// How many years lie between two whose names have room.
int TimeAxis::yearsApart(const Type& type) const {
    const double year = (m_right - m_left) * 365.0 / records::daysBetween(m_first, m_last);
    const double name = type.width(QStringLiteral("2026")) + besides;
    for (const int every : {1, 2, 5, 10, 20, 50})
        if (every * year >= name)
            return every;
    return 100;
}

/// The year's name in the middle of its year, reaching over its neighbours, which have none.
void TimeAxis::nameOver(Tick& tick, const Type& type) const {
    const QString text = QString::number(tick.day.year);
    const double start = x(std::max(tick.day, m_first));
    const double end = x(std::min(records::Date{tick.day.year + 1, 1, 1}, m_last));
    const double width = type.width(text), left = (start + end - width) / 2;
    if (left < m_left || left + width > m_right)
        return;
    tick.text = text;
    tick.box = {left, 0, width, type.height()};
}

std::vector<TimeAxis::Tick> TimeAxis::ticks(const Type& type) const {
    const Names names = namesFor(type);
    std::vector<Tick> found;
    const auto add = [&](const records::Date& from, const records::Date& to, const QString& text) {
        const double start = x(std::max(from, m_first)), end = x(std::min(to, m_last));
        const double width = type.width(text);
        Tick tick{from, x(from), from.month == 1, {}, {}};
        if (end - start >= width + besides) {
            tick.text = text;
            tick.box = {(start + end - width) / 2, 0, width, type.height()};
        }
        found.push_back(tick);
    };
    if (names == Names::Years) {
        const int every = yearsApart(type);
        for (int year = m_first.year; year <= m_last.year; ++year) {
            add({year, 1, 1}, {year + 1, 1, 1}, every == 1 ? QString::number(year) : QString());
            if (every > 1 && year % every == 0)
                nameOver(found.back(), type);
        }
        return found;
    }
    for (records::Date month{m_first.year, m_first.month, 1}; month <= m_last; month = nextMonth(month))
        add(month, nextMonth(month),
            monthName(month.month, names == Names::Short ? QLocale::ShortFormat : QLocale::NarrowFormat));
    return found;
}

} // namespace halfcup::pictures
