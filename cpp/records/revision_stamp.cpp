// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/revision_stamp.h"

#include <charconv>
#include <cstdio>
#include <limits>
#include <utility>

namespace halfcup::records {

std::string toText(const RevisionStamp& stamp) {
    char text[40];
    const int length =
        std::snprintf(text, sizeof text, "%016llx-%08x-", static_cast<unsigned long long>(stamp.utcMs),
                      static_cast<unsigned>(stamp.counter));
    return std::string(text, static_cast<std::size_t>(length)) + stamp.device;
}

std::optional<RevisionStamp> parseRevisionStamp(std::string_view text) {
    if (text.size() < 27 || text[16] != '-' || text[25] != '-')
        return std::nullopt;
    RevisionStamp stamp;
    const auto time = std::from_chars(text.data(), text.data() + 16, stamp.utcMs, 16);
    const auto count = std::from_chars(text.data() + 17, text.data() + 25, stamp.counter, 16);
    if (time.ec != std::errc{} || time.ptr != text.data() + 16 || count.ec != std::errc{} ||
        count.ptr != text.data() + 25 || stamp.utcMs < 0)
        return std::nullopt;
    stamp.device = text.substr(26);
    if (toText(stamp) != text) // capitals, "-0": a second text for one stamp would sort apart from it
        return std::nullopt;
    return stamp;
}

RevisionClock::RevisionClock(std::string device, RevisionStamp latest)
    : m_device(std::move(device))
    , m_latest(std::move(latest)) {}

RevisionStamp RevisionClock::next(std::int64_t nowUtcMs) {
    if (nowUtcMs > m_latest.utcMs)
        m_latest = {nowUtcMs, 0, m_device};
    else if (m_latest.counter < std::numeric_limits<std::uint32_t>::max())
        m_latest = {m_latest.utcMs, m_latest.counter + 1, m_device};
    else // only ever seen in a stamp from elsewhere; the counter must not start again below it
        m_latest = {m_latest.utcMs + 1, 0, m_device};
    return m_latest;
}

void RevisionClock::see(const RevisionStamp& other) {
    if (other > m_latest)
        m_latest = other;
}

} // namespace halfcup::records
