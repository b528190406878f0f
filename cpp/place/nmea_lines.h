// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

// From any bytes to whole NMEA 0183 sentences. Qt Positioning parses them; this stands in front of it,
// because a cable, a radio or a wrong setting delivers anything at all: halves of lines, two lines run
// together, binary protocols, no line end for ever. Pure C++; memory is bounded by kLongestSentence.

namespace halfcup::place {

// NMEA 0183 allows 82 characters; makers go beyond that, none this far [convention].
inline constexpr std::size_t kLongestSentence = 256;

class NmeaLines {
public:
    using Sink = std::function<void(std::string_view sentence)>;

    // Takes bytes as they come, in pieces of any size, and hands each good sentence to `sink`: from '$' to
    // the two digits of its checksum, without a line end. A sentence is good if its checksum is right. Old
    // receivers send none: those are taken too (and handed on with one) once kBareFirst of them came in a row
    // and none with a checksum ever did, because a line that was cut off looks just the same.
    void feed(std::string_view bytes, const Sink& sink);

    // Forgets a half line and what was learnt about checksums: a new connection.
    void reset();

    [[nodiscard]] long long sentences() const { return m_sentences; } // good ones since reset()
    [[nodiscard]] long long dropped() const { return m_dropped; }     // begun with '$' and not good

private:
    static constexpr int kBareFirst = 5;

    void finish(const Sink& sink);
    void drop();

    std::string m_line;
    bool m_inside = false; // between '$' and the line end
    bool m_sawChecksum = false;
    int m_bareInARow = 0;
    long long m_sentences = 0;
    long long m_dropped = 0;
};

// Exclusive or of all characters, the checksum of NMEA 0183; `body` is what stands between '$' and '*'.
[[nodiscard]] unsigned nmeaChecksum(std::string_view body);

// A whole sentence for `body`: "$body*hh".
[[nodiscard]] std::string nmeaSentence(std::string_view body);

// The n-th field, 0 being the address ("GPGGA"); empty where there is none.
[[nodiscard]] std::string_view nmeaField(std::string_view sentence, int n);

// Milliseconds since midnight UTC from GGA, RMC, GLL and ZDA; nothing for others and for bad times.
[[nodiscard]] std::optional<int> nmeaTimeOfDayMs(std::string_view sentence);

// Whether the sentence itself says that its position is not valid: GGA with quality 0 or none, RMC and GLL
// with status other than A. Receivers go on printing the last place there, and that must not become a stamp.
[[nodiscard]] bool nmeaSaysNoFix(std::string_view sentence);

// GGA, RMC or GLL: the sentences that carry a position.
[[nodiscard]] bool nmeaCarriesPosition(std::string_view sentence);

} // namespace halfcup::place
