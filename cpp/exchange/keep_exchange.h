// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/exchange_reader.h"
#include "exchange/exchange_writer.h"
#include "records/clean_text.h"
#include "records/moment.h"

#include <QFileInfo>
#include <QIODevice>

/// Exchange and store do not know each other, so what joins them is a template: for store::Outgoing and
/// store::Merge, or anything like them.
namespace halfcup::exchange {

template <typename Outgoing>
ExchangeHeader headerFor(Outgoing& outgoing, std::int64_t nowUtcMs) {
    ExchangeHeader header;
    header.device = outgoing.device();
    header.written = records::toRfc3339({nowUtcMs, 0});
    header.counts = outgoing.counts();
    header.seen = outgoing.seen();
    return header;
}

/// Writes everything there is.
template <typename Outgoing>
void writeExchange(Outgoing& outgoing, const ByteSink& sink, std::int64_t nowUtcMs) {
    ExchangeWriter writer(sink, headerFor(outgoing, nowUtcMs));
    outgoing.forEachPart([&](const records::RecordPart& part) { writer.part(part); });
    writer.end();
}

/// What a merge takes of a file. name: for the keeper. passedOn: it lies in the exchange folder.
template <typename Merge>
ExchangeTaker takerFor(Merge& merge, std::string name, bool passedOn = false) {
    return {[&merge, name, passedOn](const ExchangeHeader& header) {
                merge.from({name, header.seen, passedOn});
            },
            [&merge](const records::RecordPart& part) { return merge.take(part); },
            latestStampMs(merge.utcNowMs())};
}

/// Hands all of a file to a merge. Finish and keep it, or drop it, afterwards.
template <typename Merge>
ExchangeReport takeExchangeFile(Merge& merge, const QString& path) {
    const std::string name = records::cleanText(QFileInfo(path).fileName().toStdString());
    merge.from({name, {}, false}); // also where its first line is damaged
    return readExchangeFile(path, takerFor(merge, name));
}

} // namespace halfcup::exchange
