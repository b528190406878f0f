// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/table_values.h"

#include "records/plain_number.h"

#include <QString>

#include <algorithm>
#include <array>
#include <cmath>

namespace halfcup::exchange {

namespace {

constexpr std::array<std::string_view, 4> blanks{" ", "\t", "\xC2\xA0", "\xE2\x80\xAF"};
constexpr std::array<std::string_view, 2> lineEnds{"\r", "\n"};

bool startsBlank(std::string_view text, std::size_t& size) {
    const auto is = [&](std::string_view blank) {
        size = blank.size();
        return text.starts_with(blank);
    };
    return std::ranges::any_of(blanks, is) || std::ranges::any_of(lineEnds, is);
}

bool endsBlank(std::string_view text, std::size_t& size) {
    const auto is = [&](std::string_view blank) {
        size = blank.size();
        return text.ends_with(blank);
    };
    return std::ranges::any_of(blanks, is) || std::ranges::any_of(lineEnds, is);
}

/// Small letters without accents; a sharp s as two.
QString plainLetters(std::string_view text) {
    QString result;
    const QString apart = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()))
                              .normalized(QString::NormalizationForm_KD)
                              .toCaseFolded();
    for (const QChar c : apart)
        if (!c.isMark())
            result += c;
    return result;
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Takes one to `most` figures off the front.
struct Figures {
    int value = 0;
    int count = 0;
};
Figures takeFigures(std::string_view& text, int most) {
    Figures figures;
    while (!text.empty() && isDigit(text.front()) && figures.count < most) {
        figures.value = figures.value * 10 + (text.front() - '0');
        ++figures.count;
        text.remove_prefix(1);
    }
    if (!text.empty() && isDigit(text.front()))
        figures.count = 0; // longer than such a part is
    return figures;
}

/// Three numbers of a day, as they stand.
struct Parts {
    std::array<Figures, 3> figures;
    char mark = ' ';
    std::string_view rest;
};

std::optional<Parts> partsOf(std::string_view cell) {
    Parts parts;
    for (std::size_t i = 0; i < 3; ++i) {
        parts.figures[i] = takeFigures(cell, 4);
        if (parts.figures[i].count == 0)
            return std::nullopt;
        if (i == 2)
            break;
        if (cell.empty() || (i == 0 ? std::string_view("-/.").find(cell.front()) == std::string_view::npos
                                    : cell.front() != parts.mark))
            return std::nullopt;
        parts.mark = cell.front();
        cell.remove_prefix(1);
        if (parts.mark == '.') // "18. 5. 2026"
            cell = trimmedCell(cell);
    }
    if (!cell.empty() && cell.front() != 'T' && cell.front() != ' ' && cell.front() != ',')
        return std::nullopt;
    parts.rest = cell;
    return parts;
}

bool yearInFront(const Parts& parts) {
    return parts.figures[0].count == 4 && parts.figures[1].count <= 2 && parts.figures[2].count <= 2;
}

bool yearBehind(const Parts& parts) {
    return parts.figures[0].count <= 2 && parts.figures[1].count <= 2 &&
           (parts.figures[2].count == 4 || parts.figures[2].count == 2);
}

int yearOf(const Figures& figures, const records::Date& today) {
    if (figures.count != 2)
        return figures.value;
    const int year = today.year / 100 * 100 + figures.value;
    return year > today.year ? year - 100 : year;
}

/// The names of months in the languages below, from memory; three letters and more of one, with or without a
/// point. A short form that two languages use for different months is in neither.
constexpr std::array<std::string_view, 12> monthNames{
    "january enero janvier januar ene",
    "february febrero fevrier februar fev",
    "march marzo mars marz maerz mrz",
    "april abril avril abr avr",
    "may mayo mai",
    "june junio juin juni",
    "july julio juillet juli",
    "august agosto aout ago",
    "september septiembre septembre sept",
    "october octubre octobre oktober okt",
    "november noviembre novembre",
    "december diciembre decembre dezember dez dic",
};

int monthOf(std::string_view word) {
    if (word.size() < 3)
        return 0;
    int found = 0;
    for (std::size_t month = 0; month < monthNames.size(); ++month) {
        std::string_view names = monthNames[month];
        while (!names.empty()) {
            const std::string_view name = names.substr(0, names.find(' '));
            names.remove_prefix(std::min(names.size(), name.size() + 1));
            if (name == word)
                return static_cast<int>(month) + 1;
            if (name.starts_with(word) && found != static_cast<int>(month) + 1)
                found = found == 0 ? static_cast<int>(month) + 1 : -1;
        }
    }
    return std::max(found, 0);
}

/// "18 May 2026", "18-may.-26", "18. Mai 2026", "18 de mayo de 2026", "May 18, 2026". Whatever stands behind
/// a year of four figures may be a time.
std::optional<WrittenDay> readNamedDay(std::string_view cell, const records::Date& today) {
    std::vector<Figures> figures;
    int month = 0;
    bool monthInFront = false;
    std::string_view left = cell;
    while (!left.empty() && (figures.size() < 2 || month == 0)) {
        if (isDigit(left.front())) {
            figures.push_back(takeFigures(left, 4));
            if (figures.back().count == 0 || figures.size() > 2)
                return std::nullopt;
        } else if (const std::size_t blank = std::min(left.find_first_of("0123456789 -/.,"), left.size());
                   blank > 0) {
            const std::string word = plainLetters(left.substr(0, blank)).toStdString();
            left.remove_prefix(blank);
            if (word == "de" || word == "del" || word == "of" || word == "st" || word == "nd" ||
                word == "rd" || word == "th" || word == "er")
                continue;
            if (month != 0 || (month = monthOf(word)) == 0)
                return std::nullopt;
            monthInFront = figures.empty();
        } else {
            left.remove_prefix(1);
        }
    }
    if (month == 0 || figures.size() != 2)
        return std::nullopt;
    const bool yearFirst = !monthInFront && figures[0].count == 4;
    const Figures day = yearFirst ? figures[1] : figures[0];
    const Figures year = yearFirst ? figures[0] : figures[1];
    if (day.count > 2 || (year.count != 4 && year.count != 2))
        return std::nullopt;
    const records::Date date{yearOf(year, today), month, day.value};
    if (!records::isValid(date))
        return std::nullopt;
    return WrittenDay{date, left};
}

} // namespace

std::string_view trimmedCell(std::string_view cell) {
    std::size_t size = 0;
    while (startsBlank(cell, size))
        cell.remove_prefix(size);
    while (endsBlank(cell, size))
        cell.remove_suffix(size);
    return cell;
}

std::string_view cutCell(std::string_view cell, std::size_t mostBytes) {
    if (cell.size() <= mostBytes)
        return cell;
    while (mostBytes > 0 && (static_cast<unsigned char>(cell[mostBytes]) & 0xC0U) == 0x80U)
        --mostBytes;
    return cell.substr(0, mostBytes);
}

std::string comparableName(std::string_view name) {
    QString plain = plainLetters(cutCell(name, 400));
    plain.replace(QLatin1Char('%'), QStringLiteral(" percent "));
    for (QChar& c : plain)
        if (!c.isLetterOrNumber())
            c = u' ';
    return plain.simplified().toStdString();
}

std::string comparableLabel(std::string_view label) {
    QString plain = QString::fromUtf8(label.data(), static_cast<qsizetype>(label.size()))
                        .normalized(QString::NormalizationForm_C)
                        .toCaseFolded();
    plain.removeIf([](QChar c) { return c.isSpace(); });
    return plain.toStdString();
}

std::optional<WrittenDay> readDay(std::string_view cell, std::optional<DayOrder> order,
                                  const records::Date& today) {
    cell = trimmedCell(cell);
    const auto parts = partsOf(cell);
    if (!parts)
        return readNamedDay(cutCell(cell, 60), today);
    const auto& [first, second, third] = parts->figures;
    records::Date day;
    if (yearInFront(*parts))
        day = {first.value, second.value, third.value};
    else if (!yearBehind(*parts) || !order || *order == DayOrder::YearMonthDay)
        return std::nullopt;
    else if (*order == DayOrder::DayMonthYear)
        day = {yearOf(third, today), second.value, first.value};
    else
        day = {yearOf(third, today), first.value, second.value};
    if (!records::isValid(day))
        return std::nullopt;
    return WrittenDay{day, parts->rest};
}

bool looksLikeDay(std::string_view cell) {
    const records::Date anyDay{2026, 1, 1};
    return readDay(cell, DayOrder::DayMonthYear, anyDay) || readDay(cell, DayOrder::MonthDayYear, anyDay);
}

OrderFound findDayOrder(const std::vector<std::string_view>& cells) {
    bool dayFirst = false, monthFirst = false, points = false, unsure = false, behind = false;
    std::string unsureCell, monthFirstCell;
    for (const std::string_view cell : cells) {
        const auto parts = partsOf(trimmedCell(cell));
        if (!parts || yearInFront(*parts) || !yearBehind(*parts))
            continue;
        behind = true;
        const int first = parts->figures[0].value, second = parts->figures[1].value;
        if (parts->mark == '.') {
            points = true;
        } else if (first > 12 && second <= 12) {
            dayFirst = true;
        } else if (second > 12 && first <= 12) {
            monthFirst = true;
            monthFirstCell = trimmedCell(cell);
        } else if (first <= 12 && second <= 12 && first != second) {
            unsure = true;
            unsureCell = trimmedCell(cell);
        }
    }
    if ((dayFirst || points) && monthFirst)
        return {std::nullopt, true, monthFirstCell};
    if (monthFirst)
        return {DayOrder::MonthDayYear, false, {}};
    if (dayFirst || !unsure) // nothing is left that could be read in two ways
        return {behind ? DayOrder::DayMonthYear : DayOrder::YearMonthDay, false, {}};
    return {std::nullopt, false, unsureCell};
}

std::optional<int> readClock(std::string_view cell) {
    cell = trimmedCell(cell);
    const Figures hour = takeFigures(cell, 2);
    if (hour.count == 0 || cell.empty() ||
        std::string_view(":.hH").find(cell.front()) == std::string_view::npos)
        return std::nullopt;
    cell.remove_prefix(1);
    const Figures minute = takeFigures(cell, 2);
    if (minute.count != 2 || minute.value > 59)
        return std::nullopt;
    if (!cell.empty() && cell.front() == ':') {
        cell.remove_prefix(1);
        const Figures second = takeFigures(cell, 2);
        if (second.count != 2 || second.value > 60)
            return std::nullopt;
        if (!cell.empty() && cell.front() == '.') { // parts of a second
            cell.remove_prefix(1);
            if (takeFigures(cell, 9).count == 0)
                return std::nullopt;
        }
    }
    const std::string half = plainLetters(trimmedCell(cell)).remove(u'.').remove(u' ').toStdString();
    int hours = hour.value;
    if (half == "am" || half == "pm") {
        if (hours < 1 || hours > 12)
            return std::nullopt;
        hours = hours % 12 + (half == "pm" ? 12 : 0);
    } else if (!half.empty() && half != "h" && half != "uhr") {
        return std::nullopt;
    }
    if (hours > 23)
        return std::nullopt;
    return hours * 60 + minute.value;
}

WrittenNumber readTableNumber(std::string_view cell, double smallest, double largest) {
    using Trouble = WrittenNumber::Trouble;
    std::string digits(trimmedCell(cell));
    WrittenNumber number;
    std::size_t mark = std::string::npos;
    for (std::size_t i = 0; i < digits.size(); ++i) {
        if (digits[i] == '.' || digits[i] == ',') {
            if (mark != std::string::npos)
                return {Trouble::NotANumber};
            mark = i;
            digits[i] = '.';
        } else if (!isDigit(digits[i]) && !(i == 0 && digits[i] == '-')) {
            return {Trouble::NotANumber};
        }
    }
    const records::PlainNumber read = records::readPlainNumber(digits);
    if (read.error == std::errc::result_out_of_range)
        return {Trouble::TooLarge};
    if (!read.isRead())
        return {Trouble::NotANumber};
    number.value = read.value;
    const auto within = [&](double value) { return value >= smallest && value <= largest; };
    if (mark != std::string::npos) {
        number.decimals = static_cast<int>(digits.size() - mark - 1);
        // "0.125" parts no thousands: they do not begin with a nought.
        if (number.decimals == 3 && mark >= 1 && mark <= 3 && digits[0] != '0' && digits[0] != '-') {
            const double thousands = std::round(number.value * 1000);
            if (within(thousands) && within(number.value))
                return {Trouble::TwoWays};
            if (within(thousands))
                return {Trouble::None, thousands, 0};
        }
    }
    if (!within(number.value))
        number.trouble = number.value < smallest ? Trouble::TooSmall : Trouble::TooLarge;
    return number;
}

} // namespace halfcup::exchange
