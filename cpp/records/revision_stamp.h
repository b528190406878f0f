// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace halfcup::records {

/// When a value was written, in an order that all phones agree on: a hybrid logical clock (Kulkarni et al.
/// 2014, "Logical physical clocks"). Of two values for one field the later stamp wins, on every phone alike.
struct RevisionStamp {
    std::int64_t utcMs = 0;    // never behind any stamp seen before, whatever the phone's clock says
    std::uint32_t counter = 0; // orders what happens within one such millisecond
    std::string device;        // id of the phone; decides between equals

    friend bool operator==(const RevisionStamp&, const RevisionStamp&) = default;
    friend auto operator<=>(const RevisionStamp&, const RevisionStamp&) = default;
};

/// Sortable text "000001989e3f2a10-0000002a-<device>": the texts sort as the stamps do.
[[nodiscard]] std::string toText(const RevisionStamp& stamp);
[[nodiscard]] std::optional<RevisionStamp> parseRevisionStamp(std::string_view text);

/// Makes stamps that only ever grow. Not thread-safe; one for each open database.
class RevisionClock {
public:
    /// latest: the greatest stamp in the database so far (a default one for an empty database).
    RevisionClock(std::string device, RevisionStamp latest);

    /// The next stamp. nowUtcMs is the phone's clock; where it is behind, the last stamp's time is kept and
    /// counted on.
    RevisionStamp next(std::int64_t nowUtcMs);

    [[nodiscard]] const RevisionStamp& latest() const { return m_latest; }

    /// Takes note of a stamp made elsewhere, so that what is written after reading it sorts after it.
    void see(const RevisionStamp& other);

private:
    std::string m_device;
    RevisionStamp m_latest;
};

} // namespace halfcup::records
