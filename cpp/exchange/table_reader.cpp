// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/table_reader.h"

#include "exchange/csv_reader.h"
#include "exchange/table_values.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <array>
#include <sstream>

namespace halfcup::exchange {

namespace {

constexpr std::array separators{',', ';', '\t'};
constexpr int rowsLookedAt = 50;
constexpr std::size_t bytesLookedAt = std::size_t{1} << 18;

CsvShape shapeOf(char separator) {
    return {separator, mostCellBytes};
}

bool isBlank(const CsvRow& row) {
    return std::all_of(row.fields.begin(), row.fields.begin() + static_cast<std::ptrdiff_t>(row.count),
                       [](const std::string& cell) { return trimmedCell(cell).empty(); });
}

/// How many of the first rows a separator cuts into as many cells as the first; none where it cuts nothing.
struct Fit {
    int rows = 0;
    std::size_t columns = 0;
    auto operator<=>(const Fit&) const = default;
};

Fit fitOf(const std::string& text, char separator) {
    std::istringstream in(text);
    CsvReader reader(in, shapeOf(separator));
    CsvRow row;
    Fit fit;
    for (int i = 0; i < rowsLookedAt && reader.next(row); ++i) {
        if (!row.complaint.empty())
            continue;
        if (fit.columns == 0)
            fit.columns = row.count;
        fit.rows += row.count == fit.columns;
    }
    return fit.columns > 1 ? fit : Fit{};
}

char separatorOf(const std::string& text) {
    const std::string head = text.substr(0, bytesLookedAt);
    Fit best;
    char found = ',';
    for (const char each : separators)
        if (const Fit fit = fitOf(head, each); fit > best) {
            best = fit;
            found = each;
        }
    return found;
}

/// A first line that only names the separator, as spreadsheets write it for each other.
char takeSeparatorLine(std::string& text) {
    if (text.size() < 5 || !text.starts_with("sep="))
        return '\0';
    const char separator = text[4];
    const std::size_t end = text.find_first_of("\r\n");
    if ((end != std::string::npos && end != 5) ||
        std::ranges::find(separators, separator) == separators.end())
        return '\0';
    text.replace(0, std::min<std::size_t>(5, text.size()),
                 ""); // the line stays, blank: lines keep their numbers
    return separator;
}

TableSentence rowSentence(const CsvRow& row, std::size_t columns) {
    if (!row.complaint.empty())
        return {row.complaint, {}};
    if (row.count != columns)
        return {tableText("the row of names has %2 cells, this one %1."),
                {std::to_string(row.count), std::to_string(columns)}};
    for (std::size_t i = 0; i < row.count; ++i)
        if (row.fields[i].size() > mostCellBytes)
            return {tableText("cell %1 is longer than a million letters."), {std::to_string(i + 1)}};
    return {};
}

void readNames(CsvReader& reader, CsvRow& row, TextTable& table) {
    do {
        if (!reader.next(row))
            throw TableError({tableText("There is nothing in this file."), {}});
    } while (row.complaint.empty() && isBlank(row));
    if (!row.complaint.empty())
        throw TableError({tableText("Line %1, which has to name the columns, cannot be read: there is a "
                                    "quotation mark too many or too few."),
                          {std::to_string(row.line)}});
    if (row.count > mostTableColumns)
        throw TableError({tableText("The table has %1 columns. So many belong to something else than washes; "
                                    "%2 is the most."),
                          {std::to_string(row.count), std::to_string(mostTableColumns)}});
    for (std::size_t i = 0; i < row.count; ++i) {
        if (looksLikeDay(trimmedCell(row.fields[i])))
            throw TableError({tableText("The first row has a day in it, not names. Put a row above it that "
                                        "names the columns: day, colony, mites."),
                              {}});
        table.names.emplace_back(trimmedCell(row.fields[i]).substr(0, 200));
    }
}

} // namespace

std::string_view TableRow::cell(std::size_t i) const {
    if (i >= m_ends.size())
        return {};
    const std::size_t begin = i == 0 ? 0 : m_ends[i - 1];
    return std::string_view(m_text).substr(begin, m_ends[i] - begin);
}

void TableRow::add(std::string_view cell) {
    m_text += cell;
    m_ends.push_back(static_cast<std::uint32_t>(m_text.size()));
}

TextTable readTable(std::string bytes) {
    if (bytes.size() > mostTableBytes)
        throw TableError({tableText("The file is larger than 64 MB. Cut it into several."), {}});
    DecodedText decoded = decodedText(std::move(bytes));
    TextTable table;
    table.code = decoded.code;
    const char named = takeSeparatorLine(decoded.utf8);
    table.separator = named ? named : separatorOf(decoded.utf8);
    std::istringstream in(std::move(decoded.utf8));
    CsvReader reader(in, shapeOf(table.separator));
    CsvRow row;
    readNames(reader, row, table);
    while (reader.next(row)) {
        if (row.complaint.empty() && isBlank(row))
            continue;
        if (table.rows.size() == mostTableRows)
            throw TableError({tableText("The table has more than 100,000 rows. Cut it into several."), {}});
        TableRow& taken = table.rows.emplace_back(row.line);
        taken.setComplaint(rowSentence(row, table.names.size()));
        for (std::size_t i = 0; taken.complaint().empty() && i < row.count; ++i)
            taken.add(trimmedCell(row.fields[i]));
    }
    return table;
}

TextTable readTableFile(const QString& path) {
    const QFileInfo info(path);
    if (!info.exists())
        throw TableError({tableText("%1 is not there any more."), {path.toStdString()}});
    if (!info.isFile())
        throw TableError({tableText("%1 is no file."), {path.toStdString()}});
    if (info.size() > static_cast<qint64>(mostTableBytes))
        throw TableError({tableText("The file is larger than 64 MB. Cut it into several."), {}});
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        throw TableError({tableText("%1 may not be read."), {path.toStdString()}});
    return readTable(file.read(static_cast<qint64>(mostTableBytes) + 1).toStdString());
}

} // namespace halfcup::exchange
