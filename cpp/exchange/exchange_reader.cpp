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
        m_isWhole = false;
        m_tooLong = false;
        while (true) {
            if (m_at == m_block.size() && !fill())
                return !m_text.empty() || m_tooLong;
            const qsizetype end = m_block.indexOf('\n', m_at);
            const qsizetype upTo = end < 0 ? m_block.size() : end + 1;
            const std::string_view piece(m_block.constData() + m_at, static_cast<std::size_t>(upTo - m_at));
            if (m_text.size() + piece.size() <= longestLine + 1)
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

    /// Without the line end.
    [[nodiscard]] std::string_view text() const {
        std::string_view text = m_text;
        if (text.ends_with('\n'))
            text.remove_suffix(1);
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
    bool m_isWhole = false;
    bool m_tooLong = false;
};

/// What one header began: its lines, until the line that ends it says how many they were and their sum.
class Section {
public:
    void begin() {
        m_hash.reset();
        m_lines = 0;
        m_open = true;
    }
    void add(const Lines& lines) {
        ++m_lines;
        m_hash.addData(viewOf(lines.text()));
        m_hash.addData(QByteArrayView("\n", 1));
    }
    [[nodiscard]] bool isEndedBy(const ExchangeEnd& end) {
        m_open = false;
        return end.lines == m_lines && end.sha256 == m_hash.result().toHex().toStdString();
    }
    [[nodiscard]] bool isOpen() const { return m_open; }

private:
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
    std::int64_t m_lines = 0;
    bool m_open = false;
};

/// Reads one file; a function would have to carry six things from line to line.
class Reading {
public:
    explicit Reading(const ExchangeTaker& taker)
        : m_taker(taker) {}

    ExchangeReport of(Lines& lines) {
        while (report.refusal == ExchangeRefusal::None && lines.next()) {
            ++report.lines;
            read(lines);
        }
        if (report.lines == 0)
            report.refusal = ExchangeRefusal::Empty;
        else if (!m_anyIntact && report.refusal == ExchangeRefusal::None)
            report.refusal = ExchangeRefusal::NotOurs;
        report.cut = report.cut || m_section.isOpen();
        return report;
    }

private:
    void read(const Lines& lines) {
        if (!lines.isWhole() && !lines.isTooLong()) {
            report.cut = true; // half a line: it may be a good one that was cut, so it is not called damaged
            if (!m_anyIntact && readLine(lines.text()).part)
                m_anyIntact = true;
            return;
        }
        ReadLine line;
        if (lines.isTooLong())
            line.trouble = LineTrouble::TooLong;
        else
            line = readLine(lines.text());
        if (line.header) {
            readHeader(*line.header, lines);
        } else if (line.part) {
            readPart(*line.part, lines);
        } else if (line.end) {
            m_anyIntact = true;
            if (!m_section.isEndedBy(*line.end) && !m_damagedInSection)
                report.incomplete = true;
        } else {
            damaged(line.trouble, line.field);
        }
    }

    void readHeader(const ExchangeHeader& header, const Lines& lines) {
        if (header.needs > exchangeFormat) {
            // What came before it was for us; the rest of the file is not.
            report.refusal = m_anyIntact ? ExchangeRefusal::None : ExchangeRefusal::Newer;
            report.cut = true;
            m_anyIntact = true;
            m_forUs = false;
            return;
        }
        report.cut = report.cut || m_section.isOpen();
        if (!m_anyHeader)
            report.header = header;
        m_anyHeader = m_anyIntact = m_forUs = true;
        m_damagedInSection = false;
        m_section.begin();
        m_section.add(lines);
        m_taker.header(header);
    }

    void readPart(const records::RecordPart& part, const Lines& lines) {
        m_anyIntact = true;
        m_section.add(lines);
        if (!m_forUs)
            return;
        if (m_taker.part(part))
            ++report.parts;
        else
            damaged(LineTrouble::OtherKind, {});
    }

    void damaged(LineTrouble trouble, const std::string& field) {
        m_damagedInSection = true;
        ++report.damagedCount;
        if (report.damaged.size() < ExchangeReport::mostDamagedNamed)
            report.damaged.push_back({report.lines, trouble, field});
        if (!m_anyIntact && report.lines >= linesBeforeNotOurs)
            report.refusal = ExchangeRefusal::NotOurs;
    }

    ExchangeReport report;
    const ExchangeTaker& m_taker;
    Section m_section;
    bool m_anyHeader = false;
    bool m_anyIntact = false;
    bool m_damagedInSection = false;
    bool m_forUs = true;
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
            if (!line.end || !section.isEndedBy(*line.end))
                break;
            complete = lines.position();
            continue;
        }
        if (!section.isOpen())
            section.begin();
        section.add(lines);
    }
    return complete;
}

} // namespace halfcup::exchange
