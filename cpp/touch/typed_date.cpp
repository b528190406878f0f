// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/typed_date.h"

#include "touch/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <array>
#include <cstdlib>

namespace halfcup::touch {

namespace {

class TypedDates {
    Q_DECLARE_TR_FUNCTIONS(TypedDates)
};

constexpr int leapYear = 2028; // has every day a year can have

/// What the parts of a typed date mean; year 0: none was typed.
struct Parts {
    int year = 0;
    int month = 0;
    int day = 0;
};

/// Small letters without marks: "Août" and "aout" are one.
QString plain(const QString& word) {
    QString letters;
    for (const QChar each : word.normalized(QString::NormalizationForm_D).toCaseFolded())
        if (each.category() != QChar::Mark_NonSpacing)
            letters.append(each);
    return letters;
}

/// Words that stand in a date and say nothing: "18 de mayo", "1er mai", "the 3rd of June".
bool isFiller(const QString& word) {
    static const QStringList fillers{QStringLiteral("de"),  QStringLiteral("del"), QStringLiteral("el"),
                                     QStringLiteral("le"),  QStringLiteral("er"),  QStringLiteral("den"),
                                     QStringLiteral("der"), QStringLiteral("the"), QStringLiteral("of"),
                                     QStringLiteral("st"),  QStringLiteral("nd"),  QStringLiteral("rd"),
                                     QStringLiteral("th")};
    return fillers.contains(plain(word));
}

/// The month whose name begins so; 0 where none does, or several ("jui" in French).
int monthNamed(const QString& word) {
    if (word.size() < 3)
        return 0;
    for (const QLocale& locale : {QLocale(), QLocale(QLocale::English)}) {
        int only = 0;
        for (int month = 1; month <= 12; ++month)
            for (const QString& name : {locale.monthName(month), locale.standaloneMonthName(month)})
                if (plain(name).startsWith(plain(word)) && only != month)
                    only = only == 0 ? month : -1;
        if (only != 0)
            return std::max(only, 0);
    }
    return 0;
}

/// Where day, month and year stand when the locale writes figures: "dMy", "Mdy", "yMd".
QString localeOrder() {
    const QString format = QLocale().dateFormat(QLocale::ShortFormat);
    QString order;
    for (const QChar letter : format)
        if (QStringLiteral("dMy").contains(letter) && !order.contains(letter))
            order.append(letter);
    return order;
}

std::optional<Parts> fromFigures(const QStringList& figures) {
    Parts parts;
    if (figures.front().size() == 4 && figures.size() == 3) {
        parts = {figures[0].toInt(), figures[1].toInt(), figures[2].toInt()};
        return parts;
    }
    QString order = localeOrder();
    if (figures.size() == 2)
        order.remove(u'y');
    else if (figures.last().size() == 4 && order.startsWith(u'y'))
        order = QStringLiteral("dMy");
    for (qsizetype i = 0; i < figures.size() && i < order.size(); ++i) {
        const int value = figures[i].toInt();
        (order[i] == u'd' ? parts.day : order[i] == u'M' ? parts.month : parts.year) = value;
        if (order[i] == u'y')
            parts.year = figures[i].size() <= 2 ? 2000 + value : value;
    }
    return parts;
}

std::optional<Parts> withMonthInWords(const QStringList& figures, int month) {
    Parts parts;
    parts.month = month;
    for (const QString& figure : figures)
        if (figure.size() <= 2 && parts.day == 0)
            parts.day = figure.toInt();
        else
            parts.year = figure.size() <= 2 ? 2000 + figure.toInt() : figure.toInt();
    return parts.day > 0 ? std::optional(parts) : std::nullopt;
}

std::optional<Parts> partsOf(const QString& text) {
    static const QRegularExpression allowed(QStringLiteral("^[\\p{L}\\d\\s.,/\\-]+$"));
    static const QRegularExpression token(QStringLiteral("\\d+|\\p{L}+"));
    if (!allowed.match(text).hasMatch())
        return std::nullopt;
    QStringList figures;
    int month = 0;
    for (auto found = token.globalMatch(text); found.hasNext();) {
        const QString each = found.next().captured();
        if (each.front().isDigit()) {
            if (each.size() > 4 || each.size() == 3)
                return std::nullopt;
            figures.append(each);
        } else if (month == 0 && monthNamed(each) != 0) {
            month = monthNamed(each);
        } else if (!isFiller(each)) {
            return std::nullopt;
        }
    }
    if (month != 0 && (figures.size() == 1 || figures.size() == 2))
        return withMonthInWords(figures, month);
    if (month == 0 && (figures.size() == 2 || figures.size() == 3))
        return fromFigures(figures);
    return std::nullopt;
}

QString notADate(const QString& text, const QString& what) {
    return TypedDates::tr("%1: \"%2\" is no date. Type it like 18 May 2026 or 2026-05-18.")
        .arg(what, text.left(30));
}

QString noSuchDay(const Parts& parts, const QString& what) {
    const bool real = parts.month >= 1 && parts.month <= 12 && parts.day >= 1 && parts.day <= 31;
    if (!real)
        return TypedDates::tr("%1: there is no day %2 of month %3.")
            .arg(what)
            .arg(parts.day)
            .arg(parts.month);
    const QString month = QLocale().standaloneMonthName(parts.month);
    if (parts.year > 0 && isValid(records::MonthDay{parts.month, parts.day}))
        return TypedDates::tr("%1: %2 has no %3 %4. It is no leap year.", "what, year, day, month")
            .arg(what)
            .arg(parts.year)
            .arg(parts.day)
            .arg(month);
    return TypedDates::tr("%1: %2 has no day %3.", "what, month, day").arg(what, month).arg(parts.day);
}

/// The year in which that day of the year is nearest to today. 29 February only in years that have it.
std::optional<records::Date> nearest(const Parts& parts, const records::Date& today) {
    std::optional<records::Date> best;
    for (int year = today.year - 1; year <= today.year + 1; ++year) {
        const records::Date candidate{year, parts.month, parts.day};
        if (isValid(candidate) &&
            (!best || std::abs(daysBetween(candidate, today)) < std::abs(daysBetween(*best, today))))
            best = candidate;
    }
    return best;
}

} // namespace

TypedDate readDate(const QString& typed, const records::Date& today, const QString& what) {
    const QString text = typed.simplified();
    if (text.isEmpty())
        return {};
    const auto parts = partsOf(text);
    if (!parts)
        return {std::nullopt, notADate(text, what)};
    if (parts->year != 0 && (parts->year < 1970 || parts->year > 2200))
        return {std::nullopt, TypedDates::tr("%1: the year %2 is too far away.").arg(what).arg(parts->year)};
    const auto date = parts->year == 0 ? nearest(*parts, today)
                                       : std::optional(records::Date{parts->year, parts->month, parts->day});
    if (!date || !isValid(*date)) {
        Parts named = *parts;
        if (named.year == 0)
            named.year = today.year;
        return {std::nullopt, noSuchDay(named, what)};
    }
    return {date, {}};
}

TypedDate readYearlyDay(const QString& typed, const records::Date& today, const QString& what) {
    static const QRegularExpression iso(QStringLiteral("^(\\d{2})-(\\d{2})$"));
    const QString text = typed.simplified();
    if (text.isEmpty())
        return {};
    std::optional<Parts> parts;
    if (const auto match = iso.match(text); match.hasMatch())
        parts = Parts{0, match.captured(1).toInt(), match.captured(2).toInt()};
    else
        parts = partsOf(text);
    if (!parts || parts->year != 0)
        return {std::nullopt, TypedDates::tr("%1: \"%2\" is no day of the year. Type it like 15 August.")
                                  .arg(what, text.left(30))};
    if (!isValid(records::MonthDay{parts->month, parts->day}))
        return {std::nullopt, noSuchDay({0, parts->month, parts->day}, what)};
    const records::Date thisYear{today.year, parts->month, parts->day};
    return {isValid(thisYear) ? thisYear : records::Date{leapYear, parts->month, parts->day}, {}};
}

} // namespace halfcup::touch
