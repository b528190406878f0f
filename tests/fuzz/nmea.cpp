// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Any bytes from a receiver, in pieces of any size, through the filter into Qt's reader and on into a stamp.
// Once as they are, and once with the check sum of each sentence put right, because few guessed ones are.
#include "place/moment_source.h"
#include "place/nmea_lines.h"
#include "place/source_setting.h"
#include "place/stamp.h"

#include <QCoreApplication>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <vector>

using namespace halfcup::place;

namespace {

constexpr std::int64_t nowMs = 1'781'514'000'000; // 2026-06-15 09:00 UTC

void require(bool holds, const char* sentence) {
    if (holds)
        return;
    std::fprintf(stderr, "A finding: %s\n", sentence);
    std::abort();
}

/// Qt's reader keeps a timer, and a timer wants an application.
void startQt() {
    static int count = 1;
    static char name[] = "nmea";
    static char* words[] = {name, nullptr};
    static const QCoreApplication application(count, words);
}

std::vector<std::string> sentencesIn(std::string_view bytes, std::size_t pieceSize) {
    NmeaLines lines;
    std::vector<std::string> sentences;
    for (std::size_t at = 0; at < bytes.size(); at += pieceSize)
        lines.feed(bytes.substr(at, pieceSize),
                   [&](std::string_view sentence) { sentences.emplace_back(sentence); });
    require(lines.sentences() == static_cast<long long>(sentences.size()), "sentences are miscounted");
    return sentences;
}

void checkSentence(std::string_view sentence) {
    require(sentence.size() <= kLongestSentence + 4, "a sentence is longer than any"); // with "$" and "*hh"
    require(sentence.size() >= 4 && sentence.front() == '$', "a sentence does not begin as one");
    const std::size_t star = sentence.rfind('*');
    require(star != std::string_view::npos && star + 3 == sentence.size(), "a sentence has no check sum");
    require(sentence.find_first_of("\r\n") == std::string_view::npos, "a sentence holds a line end");
}

void through(std::string_view bytes, std::size_t pieceSize) {
    const std::vector<std::string> sentences = sentencesIn(bytes, pieceSize);
    require(sentences == sentencesIn(bytes, bytes.size() + 1), "it matters how the bytes were cut");
    SentenceDevice device;
    MomentSource source;
    source.setDevice(&device);
    StampBuilder builder;
    builder.start(nowMs);
    QObject::connect(
        &source, &QGeoPositionInfoSource::positionUpdated, &source, [&](const QGeoPositionInfo& info) {
            require(info.coordinate().isValid(), "a position that is none is handed out");
            Fix fix;
            fix.latitudeDeg = info.coordinate().latitude();
            fix.longitudeDeg = info.coordinate().longitude();
            if (info.hasAttribute(QGeoPositionInfo::HorizontalAccuracy))
                fix.accuracyM = static_cast<double>(info.attribute(QGeoPositionInfo::HorizontalAccuracy));
            fix.receiverUtcMs = source.receiverUtcMs(info);
            fix.takenAtUtcMs = resolveTakenAtUtcMs(nowMs, fix.receiverUtcMs, ReceiverClock::Foreign);
            builder.add(fix, nowMs);
        });
    source.startUpdates();
    for (const std::string& sentence : sentences) {
        checkSentence(sentence);
        device.put(sentence);
    }
    device.put(nmeaSentence("GPZDA,120000,15,06,2026,00,00")); // Qt holds a moment back until the next one
    if (const auto stamp = builder.stamp(nowMs)) {
        require(std::abs(stamp->latitudeDeg) <= 90 && std::abs(stamp->longitudeDeg) <= 180,
                "a stamp lies nowhere on earth");
        require(std::isfinite(stamp->accuracyM) && stamp->accuracyM > 0, "a stamp is of no accuracy");
    }
}

/// The same lines, each sentence with the check sum it should have.
std::string withSums(std::string_view bytes) {
    std::string summed;
    for (std::size_t at = 0; at < bytes.size();) {
        const std::size_t end = std::min(bytes.find('\n', at), bytes.size());
        const std::string_view line = bytes.substr(at, end - at);
        const std::size_t star = line.rfind('*');
        if (line.starts_with('$') && star != std::string_view::npos)
            summed += nmeaSentence(line.substr(1, star - 1)) + "\r";
        else
            summed += line;
        summed += '\n';
        at = end + 1;
    }
    return summed;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    startQt();
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const std::size_t pieceSize = 1 + size % 97;
    through(bytes, pieceSize);
    through(withSums(bytes), pieceSize);
    // What these read is a sentence or none.
    static_cast<void>(nmeaTimeOfDayMs(bytes));
    static_cast<void>(nmeaSaysNoFix(bytes));
    for (const int n : {0, 1, 7, 1000})
        static_cast<void>(nmeaField(bytes, n));
    const SourceSetting setting =
        readSourceSetting(QString::fromUtf8(bytes.data(), static_cast<qsizetype>(bytes.size())));
    require((setting.kind == SourceSetting::Kind::Bad) == !setting.problem.isEmpty(),
            "a bad setting without a sentence, or a good one with one");
    return 0;
}
