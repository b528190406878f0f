// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/nmea_lines.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace halfcup::place {

namespace {

int hexDigit(char c) {
    if (c >= '0' && c <= '9')
        return c - '0';
    if (c >= 'A' && c <= 'F')
        return c - 'A' + 10;
    if (c >= 'a' && c <= 'f')
        return c - 'a' + 10;
    return -1;
}

// "GGA" of "$GNGGA,...": the talker in front may be any (GP, GN, GL, GA, GB, BD, IN ...).
std::string_view kindOf(std::string_view sentence) {
    const std::string_view address = nmeaField(sentence, 0);
    return address.size() == 5 ? address.substr(2) : std::string_view{};
}

bool looksComplete(std::string_view body) {
    // Fields by NMEA 0183 version 2.0; a cut line has fewer.
    const auto commas = std::count(body.begin(), body.end(), ',');
    const std::string_view kind = kindOf(body);
    if (kind == "GGA")
        return commas >= 14;
    if (kind == "RMC")
        return commas >= 11;
    if (kind == "GLL")
        return commas >= 6;
    return kind == "GSA" && commas >= 17;
}

} // namespace

void NmeaLines::feed(std::string_view bytes, const Sink& sink) {
    for (const char c : bytes) {
        if (c == '$') {
            // Also in the middle of a line: the one before was cut off, this one is new.
            if (m_inside)
                drop();
            m_line.clear();
            m_inside = true;
        } else if (!m_inside) {
            continue;
        } else if (c == '\r' || c == '\n') {
            finish(sink);
        } else if (c < ' ' || c > '~' || m_line.size() >= kLongestSentence) {
            drop();
        } else {
            m_line.push_back(c);
        }
    }
}

void NmeaLines::drop() {
    m_inside = false;
    m_line.clear();
    ++m_dropped;
}

void NmeaLines::finish(const Sink& sink) {
    std::string line;
    line.swap(m_line);
    m_inside = false;
    const auto star = line.find('*');
    const std::string body = line.substr(0, star);
    if (star == std::string::npos) {
        m_bareInARow = looksComplete(body) ? m_bareInARow + 1 : m_bareInARow;
        if (m_sawChecksum || m_bareInARow < kBareFirst || !looksComplete(body)) {
            ++m_dropped;
            return;
        }
    } else {
        const bool hasDigits = line.size() >= star + 3;
        const int high = hasDigits ? hexDigit(line[star + 1]) : -1;
        const int low = hasDigits ? hexDigit(line[star + 2]) : -1;
        if (high < 0 || low < 0 || static_cast<unsigned>(high * 16 + low) != nmeaChecksum(body)) {
            ++m_dropped;
            return;
        }
        m_sawChecksum = true;
    }
    ++m_sentences;
    sink(nmeaSentence(body));
}

void NmeaLines::reset() {
    *this = NmeaLines();
}

unsigned nmeaChecksum(std::string_view body) {
    unsigned sum = 0;
    for (const char c : body)
        sum ^= static_cast<unsigned char>(c);
    return sum;
}

std::string nmeaSentence(std::string_view body) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    const unsigned sum = nmeaChecksum(body);
    std::string sentence;
    sentence.reserve(body.size() + 4);
    sentence += '$';
    sentence += body;
    sentence += '*';
    sentence += digits[sum / 16];
    sentence += digits[sum % 16];
    return sentence;
}

std::string_view nmeaField(std::string_view sentence, int n) {
    if (!sentence.empty() && sentence.front() == '$')
        sentence.remove_prefix(1);
    sentence = sentence.substr(0, sentence.find('*'));
    for (; n > 0; --n) {
        const auto comma = sentence.find(',');
        if (comma == std::string_view::npos)
            return {};
        sentence.remove_prefix(comma + 1);
    }
    return sentence.substr(0, sentence.find(','));
}

std::optional<int> nmeaTimeOfDayMs(std::string_view sentence) {
    const std::string_view kind = kindOf(sentence);
    std::string_view time;
    if (kind == "GGA" || kind == "RMC" || kind == "ZDA")
        time = nmeaField(sentence, 1);
    else if (kind == "GLL")
        time = nmeaField(sentence, 5);
    if (time.size() < 6 ||
        !std::all_of(time.begin(), time.begin() + 6, [](char c) { return c >= '0' && c <= '9'; }))
        return std::nullopt;
    std::array<int, 3> parts{};
    for (std::size_t i = 0; i < 3; ++i)
        std::from_chars(time.data() + 2 * i, time.data() + 2 * i + 2, parts[i]);
    // 60 is a leap second.
    if (parts[0] > 23 || parts[1] > 59 || parts[2] > 60)
        return std::nullopt;
    int ms = ((parts[0] * 60 + parts[1]) * 60 + parts[2]) * 1000;
    if (time.size() > 7 && time[6] == '.') {
        int scale = 100;
        for (std::size_t i = 7; i < time.size() && scale > 0; ++i, scale /= 10) {
            if (time[i] < '0' || time[i] > '9')
                return std::nullopt;
            ms += (time[i] - '0') * scale;
        }
    }
    return ms;
}

bool nmeaSaysNoFix(std::string_view sentence) {
    const std::string_view kind = kindOf(sentence);
    if (kind == "GGA") {
        const std::string_view quality = nmeaField(sentence, 6);
        return quality.empty() || quality == "0";
    }
    if (kind == "RMC")
        return nmeaField(sentence, 2) != "A";
    // Before NMEA 0183 version 2.0 a GLL had neither time nor status: five fields and no word on validity.
    if (kind == "GLL")
        return nmeaField(sentence, 6) != "A" && std::count(sentence.begin(), sentence.end(), ',') > 4;
    return false;
}

bool nmeaCarriesPosition(std::string_view sentence) {
    const std::string_view kind = kindOf(sentence);
    return kind == "GGA" || kind == "RMC" || kind == "GLL";
}

} // namespace halfcup::place
