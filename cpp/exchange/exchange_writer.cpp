// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/exchange_writer.h"

#include <QCryptographicHash>

#include <algorithm>
#include <span>

namespace halfcup::exchange {

namespace {

/// A line stays well under longestLine even where every byte of a text has to be escaped.
constexpr std::size_t roughLine = 32 * 1024;
constexpr std::size_t countsInLine = 500;

std::size_t roughSize(const records::Revision& revision) {
    const auto* text = std::get_if<std::string>(&revision.value);
    return revision.field.size() + revision.stamp.size() + (text ? text->size() : 24);
}

} // namespace

ExchangeWriter::ExchangeWriter(ByteSink sink, const ExchangeHeader& header)
    : m_sink(std::move(sink))
    , m_hash(std::make_unique<QCryptographicHash>(QCryptographicHash::Sha256)) {
    line(headerLine(header));
}

ExchangeWriter::~ExchangeWriter() = default;

void ExchangeWriter::line(std::string text) {
    text += '\n';
    m_hash->addData(QByteArrayView(text.data(), static_cast<qsizetype>(text.size())));
    ++m_lines;
    m_sink(text);
}

void ExchangeWriter::part(const records::RecordPart& part) {
    std::span<const records::Revision> revisions(part.revisions);
    std::span<const records::StampedCount> counts(part.counts);
    do {
        std::size_t size = 0;
        std::size_t many = 0;
        while (many < revisions.size() && (many == 0 || size + roughSize(revisions[many]) <= roughLine))
            size += roughSize(revisions[many++]);
        const std::size_t acts = many < revisions.size() ? 0 : std::min(counts.size(), countsInLine);
        line(partLine(part.id, part.kind, revisions.first(many), counts.first(acts)));
        revisions = revisions.subspan(many);
        counts = counts.subspan(acts);
    } while (!revisions.empty() || !counts.empty());
}

void ExchangeWriter::end() {
    const ExchangeEnd end{m_lines, m_hash->result().toHex().toStdString()};
    line(endLine(end));
}

} // namespace halfcup::exchange
