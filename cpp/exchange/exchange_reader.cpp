// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/exchange_reader.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <optional>

namespace halfcup::exchange {

namespace {

constexpr qint64 blockSize = 64 * 1024;
constexpr std::int64_t linesBeforeNotOurs =
    100; // damaged ones in a row, then it is something else [convention]

constexpr std::size_t lineEnds = 5;       // CR, LF, and a byte order mark
constexpr int mostLinesOfOne = 500;       // one after the other of one record [convention]
constexpr std::size_t mostOfOne = 50'000; // values and acts of counting of one record [convention]

QByteArrayView viewOf(std::string_view text) {
    return {text.data(), static_cast<qsizetype>(text.size())};
}

/// Lines of a device, none of them held beyond longestLine.
class Lines {
public:
    Lines(QIODevice& device, std::int64_t until)
        : m_device(device)
        , m_position(device.pos())
        , m_until(until) {}

    /// False at the end.
    bool next() {
        m_text.clear();
        m_isFirst = m_position == 0;
        m_isWhole = false;
        m_tooLong = false;
        while (true) {
            if (m_at == m_block.size() && !fill())
                return !m_text.empty() || m_tooLong;
            const qsizetype end = m_block.indexOf('\n', m_at);
            const qsizetype upTo = end < 0 ? m_block.size() : end + 1;
            const std::string_view piece(m_block.constData() + m_at, static_cast<std::size_t>(upTo - m_at));
            if (m_text.size() + piece.size() <= longestLine + lineEnds)
                m_text += piece;
            else
                m_tooLong = true;
            m_position += upTo - m_at;
            m_at = upTo;
            if (end >= 0) {
                m_isWhole = true;
                return true;
            }
        }
    }

    /// As it was written: without the line end, and without what others may have put beside it.
    [[nodiscard]] std::string_view text() const {
        std::string_view text = m_text;
        if (text.ends_with('\n'))
            text.remove_suffix(1);
        if (text.ends_with('\r'))
            text.remove_suffix(1);
        if (m_isFirst && text.starts_with("\xEF\xBB\xBF"))
            text.remove_prefix(3);
        return text;
    }
    [[nodiscard]] bool isWhole() const { return m_isWhole; } // it has its line end
    [[nodiscard]] bool isTooLong() const { return m_tooLong; }
    [[nodiscard]] std::int64_t position() const { return m_position; } // behind the line

private:
    bool fill() {
        const qint64 left = std::min<qint64>(blockSize, m_until - m_position);
        m_block = left > 0 ? m_device.read(left) : QByteArray();
        m_at = 0;
        return !m_block.isEmpty();
    }

    QIODevice& m_device;
    std::int64_t m_position;
    std::int64_t m_until;
    QByteArray m_block;
    qsizetype m_at = 0;
    std::string m_text;
    bool m_isFirst = false;
    bool m_isWhole = false;
    bool m_tooLong = false;
};

/// What one header began: its lines, until the line that ends it says how many they were and their sum. A
/// header that is lost counts as a line like any other.
class Section {
public:
    void begin() {
        m_hash.reset();
        m_lines = 0;
        m_anyDamaged = false;
    }
    void add(const Lines& lines) {
        ++m_lines;
        m_hash.addData(viewOf(lines.text()));
        m_hash.addData(QByteArrayView("\n", 1));
    }
    /// Its bytes are not those that were written.
    void addDamaged() {
        ++m_lines;
        m_anyDamaged = true;
    }
    [[nodiscard]] bool isOpen() const { return m_lines > 0; }
    [[nodiscard]] bool isAllOf(const ExchangeEnd& end) const {
        return end.lines == m_lines && end.sha256 == m_hash.result().toHex().toStdString();
    }
    /// Something is wrong that the damaged lines do not account for.
    [[nodiscard]] bool isAmissBeyondDamage(const ExchangeEnd& end) const {
        return m_anyDamaged ? end.lines != m_lines : !isAllOf(end);
    }

private:
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
    std::int64_t m_lines = 0;
    bool m_anyDamaged = false;
};

/// Reads one file; a function would have to carry eight things from line to line.
class Reading {
public:
    explicit Reading(const ExchangeTaker& taker)
        : m_taker(taker) {}

    ExchangeReport of(Lines& lines) {
        while (report.refusal == ExchangeRefusal::None && lines.next()) {
            ++report.lines;
            if (!lines.text().empty() || lines.isTooLong())
                read(lines);
        }
        if (report.lines == 0)
            report.refusal = ExchangeRefusal::Empty;
        else if (!m_isOurs && report.refusal == ExchangeRefusal::None)
            report.refusal = ExchangeRefusal::NotOurs;
        report.cut = report.cut || m_section.isOpen();
        return report;
    }

private:
    void read(const Lines& lines) {
        ReadLine line;
        if (lines.isTooLong())
            line.trouble = LineTrouble::TooLong;
        else
            line = readLine(lines.text(), m_taker.latestMs);
        const bool isIntact = line.header || line.part || line.end;
        if (!lines.isWhole() && !lines.isTooLong() && !isIntact) {
            report.cut = true; // it may be a good line that was cut, so it is not called damaged
            m_isOurs = m_isOurs || lines.text().starts_with(exchangeMagic);
            return;
        }
        m_isOurs = m_isOurs || isIntact;
        if (line.header)
            readHeader(*line.header, lines);
        else if (!m_forUs)
            return;
        else if (line.part)
            readPart(*line.part, lines);
        else if (line.end)
            readEnd(*line.end);
        else
            readTrouble(line, lines);
    }

    void readHeader(const ExchangeHeader& header, const Lines& lines) {
        report.cut = report.cut || m_section.isOpen();
        m_section.begin();
        m_forUs = header.needs <= exchangeFormat;
        if (!m_forUs) {
            report.partlyNewer = true;
            if (report.parts == 0 && !m_anyHeader)
                report.refusal = ExchangeRefusal::Newer;
            return;
        }
        if (!m_anyHeader)
            report.header = header;
        m_anyHeader = true;
        m_section.add(lines);
        m_taker.header(header);
    }

    void readPart(const records::RecordPart& part, const Lines& lines) {
        m_section.add(lines);
        if (part.id != m_lastId) {
            m_lastId = part.id;
            m_linesOfOne = 0;
            m_ofOne = 0;
        }
        m_ofOne += part.revisions.size() + part.counts.size();
        if (++m_linesOfOne > mostLinesOfOne || m_ofOne > mostOfOne)
            name(LineTrouble::TooMuch, {});
        else if (m_taker.part(part))
            ++report.parts;
        else
            name(LineTrouble::OtherKind, {});
    }

    void readEnd(const ExchangeEnd& end) {
        report.incomplete = report.incomplete || m_section.isAmissBeyondDamage(end);
        m_section.begin();
    }

    void readTrouble(const ReadLine& line, const Lines& lines) {
        using enum LineTrouble;
        // A line that says what cannot be may still have come as it was written.
        if (line.trouble == Damaged || line.trouble == TooLong || line.trouble == TooDeep)
            m_section.addDamaged();
        else
            m_section.add(lines);
        name(line.trouble, line.field);
        if (!m_isOurs && report.lines >= linesBeforeNotOurs)
            report.refusal = ExchangeRefusal::NotOurs;
    }

    void name(LineTrouble trouble, const std::string& field) {
        ++report.damagedCount;
        if (report.damaged.size() < ExchangeReport::mostDamagedNamed)
            report.damaged.push_back({report.lines, trouble, field});
    }

    ExchangeReport report;
    const ExchangeTaker& m_taker;
    Section m_section;
    bool m_anyHeader = false;
    bool m_isOurs = false; // some line of it is intact
    bool m_forUs = true;
    records::RecordId m_lastId;
    int m_linesOfOne = 0;
    std::size_t m_ofOne = 0;
};

} // namespace

ExchangeReport readExchange(QIODevice& device, const ExchangeTaker& taker, std::int64_t until) {
    Lines lines(device, until);
    return Reading(taker).of(lines);
}

ExchangeReport readExchangeFile(const QString& path, const ExchangeTaker& taker) {
    ExchangeReport report;
    const QFileInfo info(path);
    QFile file(path);
    if (!info.exists())
        report.refusal = ExchangeRefusal::NotThere;
    else if (!info.isFile() || !file.open(QIODevice::ReadOnly))
        report.refusal = ExchangeRefusal::CannotRead;
    else if (file.size() > largestExchangeFile)
        report.refusal = ExchangeRefusal::TooLarge;
    if (report.refusal != ExchangeRefusal::None)
        return report;
    report = readExchange(file, taker);
    if (file.error() != QFileDevice::NoError)
        report.refusal = ExchangeRefusal::CannotRead;
    return report;
}

std::int64_t completeUpTo(QIODevice& device, std::int64_t from) {
    if (!device.seek(from))
        return from;
    Lines lines(device, largestExchangeFile);
    Section section;
    std::int64_t complete = from;
    while (lines.next() && lines.isWhole() && !lines.isTooLong()) {
        const std::string_view text = lines.text();
        if (text.starts_with(R"({"end":)")) { // as endLine() writes it
            const ReadLine line = readLine(text);
            if (!line.end || !section.isAllOf(*line.end))
                break;
            complete = lines.position();
            section.begin();
        } else if (!text.empty()) {
            section.add(lines);
        }
    }
    return complete;
}

} // namespace halfcup::exchange
