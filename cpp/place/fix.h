// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>

// One position as a receiver gave it, and whether it is worth anything. Pure C++, no clock of its own: the
// caller says what time it is.

namespace halfcup::place {

// Horizontal accuracy everywhere in place/ is ONE thing: the radius in metres that holds the true place in
// about 95 of 100 cases. Sources that speak of 68 % are widened by the adapter (widenTo95).
struct Fix {
    double latitudeDeg = 0.0;                  // -90 to 90, north positive, WGS 84
    double longitudeDeg = 0.0;                 // -180 to 180, east positive
    std::optional<double> accuracyM;           // 95 % radius; nothing = the receiver did not say
    std::int64_t takenAtUtcMs = 0;             // what the age is judged by, see resolveTakenAtUtcMs
    std::optional<std::int64_t> receiverUtcMs; // what the receiver's own clock said, believed or not
    std::string source;                        // where it came from, e.g. "nmea:tcp://127.0.0.1:2947"
};

// Accuracy of a phone in the open, 95 %: about 4.9 m (handbook section 9, GPS.gov; under trees far worse).
inline constexpr double kOpenSkyAccuracyM = 4.9;
// Taken where a fix names none: twice that, because nobody said that the sky was open [convention].
inline constexpr double kUnknownAccuracyM = 2.0 * kOpenSkyAccuracyM;
// No receiver is believed to be better than this, so that one boastful fix cannot outweigh all others
// [convention].
inline constexpr double kBestAccuracyM = 1.0;
// Coarser than this cannot tell one yard from the next: places guessed from a network address, mostly
// [convention].
inline constexpr double kHopelessAccuracyM = 500.0;
// Older than this says where the keeper was, not where he is [convention].
inline constexpr std::int64_t kStaleAfterMs = 30'000;

enum class FixVerdict {
    Usable,
    NoCoordinates, // latitude or longitude is NaN or infinite
    OutOfRange,    // latitude beyond 90, longitude beyond 180 degrees
    NullIsland,    // exactly 0/0: what receivers print when they know nothing
    TooCoarse,     // accuracy worse than kHopelessAccuracyM
    Stale,         // older than kStaleAfterMs
};

// Whether a fix can be used at nowUtcMs, and if not the first reason why. A fix from the future counts as
// new: a phone's clock is set back now and then, and that does not make the position wrong.
[[nodiscard]] FixVerdict judge(const Fix& fix, std::int64_t nowUtcMs);
[[nodiscard]] inline bool isUsable(const Fix& fix, std::int64_t nowUtcMs) {
    return judge(fix, nowUtcMs) == FixVerdict::Usable;
}

// A few plain words for a verdict ("too old"), English, for the record and the log.
[[nodiscard]] const char* wordsFor(FixVerdict verdict);

// The radius to reckon with: the fix's own accuracy, not below kBestAccuracyM; kUnknownAccuracyM where it is
// missing, NaN, zero or negative (a claim that cannot be meant).
[[nodiscard]] double effectiveAccuracyM(const Fix& fix);

// Age in milliseconds at nowUtcMs, never negative, never overflowing.
[[nodiscard]] std::int64_t ageMs(std::int64_t takenAtUtcMs, std::int64_t nowUtcMs);

// Whose clock stands behind a fix's time.
enum class ReceiverClock {
    OurOwn,  // the platform's: an old time is a remembered place and really is old
    Foreign, // a receiver on a line or a replayed log: its date can be years off while the fix is new
};

// The time a fix's age is judged by. Our own clock is believed unless it lies in the future. A foreign clock
// is believed within 10 s before the arrival [convention: serial lines and multiplexers lag by seconds];
// otherwise the arrival counts.
[[nodiscard]] std::int64_t resolveTakenAtUtcMs(std::int64_t arrivedUtcMs,
                                               std::optional<std::int64_t> receiverUtcMs,
                                               ReceiverClock clock);

// A 68 % radius as a 95 % radius: sqrt(ln 0.05 / ln 0.32), the ratio of the two for a round normal scatter
// (Rayleigh distribution). Phones report 68 % (Android's Location.getAccuracy says so; for GeoClue nothing is
// documented, and the more careful reading is taken).
[[nodiscard]] double widenTo95(double radius68M);

} // namespace halfcup::place
