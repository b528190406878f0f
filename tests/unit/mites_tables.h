// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// For the tests of cpp/mites: tables computed by other routes (kept outside the project; tests that need one
// are skipped where it is absent), comparisons that say by how much, and refusals that must come as a plain
// sentence.
#include <QFile>
#include <QHash>
#include <QStringList>
#include <QTest>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <vector>

namespace halfcup::mites::testing {

inline constexpr double kInfinity = std::numeric_limits<double>::infinity();
inline constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

class Table {
public:
    class Row {
    public:
        Row(const Table& table, const QStringList& cells)
            : m_table(table)
            , m_cells(cells) {}
        QString text(const char* column) const { return m_cells.value(m_table.m_columns.value(column, -1)); }
        bool has(const char* column) const { return text(column) != "NA" && !text(column).isEmpty(); }
        double number(const char* column) const {
            const QString cell = text(column);
            if (cell == "Inf" || cell == "-Inf")
                return cell == "Inf" ? kInfinity : -kInfinity;
            bool good = false;
            const double value = cell.toDouble(&good);
            return good ? value : kNaN;
        }
        std::int64_t count(const char* column) const { return static_cast<std::int64_t>(number(column)); }
        std::vector<double> numbers(const char* column) const {
            std::vector<double> values;
            for (const QString& part : text(column).split(' ', Qt::SkipEmptyParts))
                values.push_back(part.toDouble());
            return values;
        }

    private:
        const Table& m_table;
        const QStringList& m_cells;
    };

    // path below the shared folder, e.g. "reference/wash_posterior.csv". Cells of these tables hold no
    // quotes.
    explicit Table(const QString& path) {
        QFile file(QStringLiteral(HALFCUP_SHARED_DIR "/") + path);
        if (!file.open(QIODevice::ReadOnly | QIODevice::Text))
            return;
        const QStringList lines = QString::fromUtf8(file.readAll()).split('\n', Qt::SkipEmptyParts);
        const QStringList names = cellsOf(lines.value(0));
        for (int i = 0; i < names.size(); ++i)
            m_columns.insert(names[i], i);
        for (const QString& line : lines.mid(1))
            m_cells.push_back(cellsOf(line));
    }
    bool missing() const { return m_cells.empty(); }
    std::vector<Row> rows() const {
        std::vector<Row> rows;
        for (const QStringList& cells : m_cells)
            rows.emplace_back(*this, cells);
        return rows;
    }

private:
    static QStringList cellsOf(const QString& line) {
        QStringList cells{QString()};
        bool quoted = false;
        for (const QChar c : line) {
            if (c == '"')
                quoted = !quoted;
            else if (c == ',' && !quoted)
                cells.push_back(QString());
            else
                cells.back().append(c);
        }
        return cells;
    }

    QHash<QString, int> m_columns;
    std::vector<QStringList> m_cells;
};

} // namespace halfcup::mites::testing

#define NEED_TABLE(table)                                                                                    \
    if ((table).missing())                                                                                   \
    QSKIP("The tables that this is compared with are not on this machine.")

// Within an absolute, a relative distance; note names the row.
#define NEAR(actual, expected, distance, note)                                                               \
    do {                                                                                                     \
        const double a_ = (actual);                                                                          \
        const double e_ = (expected);                                                                        \
        QVERIFY2(std::abs(a_ - e_) <= (distance), qPrintable(QStringLiteral("%1: %2 is not %3, off by %4")   \
                                                                 .arg(note)                                  \
                                                                 .arg(a_, 0, 'g', 12)                        \
                                                                 .arg(e_, 0, 'g', 12)                        \
                                                                 .arg(a_ - e_)));                            \
    } while (false)
#define RELATIVE(actual, expected, share, note) NEAR(actual, expected, std::abs(expected) * (share), note)

// Refused with a sentence: starts with a capital, ends with a full stop.
#define REFUSES(expression)                                                                                  \
    do {                                                                                                     \
        bool refused_ = false;                                                                               \
        try {                                                                                                \
            (void)(expression);                                                                              \
        } catch (const std::domain_error& error_) {                                                          \
            const QString said_ = QString::fromUtf8(error_.what());                                          \
            refused_ = said_.size() > 15 && said_.front().isUpper() && said_.endsWith('.');                  \
        }                                                                                                    \
        QVERIFY2(refused_, "not refused with a sentence: " #expression);                                     \
    } while (false)
