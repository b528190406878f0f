// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace halfcup::records {

/// The largest count a keeper can mean. Above it a typed figure is a slip of the finger, not a wash
/// [convention].
inline constexpr std::int64_t largestCount = 10'000;

/// One thing done while counting. Counts are kept as the acts that made them: nothing is ever overwritten, an
/// undo is an act too, and a phone that dies has lost none that was acknowledged.
struct CountEvent {
    enum class Change { Tap, Typed, Undo };

    std::int64_t number = 0; // 1, 2, 3 ... within the sample
    int rinse = 1;           // 1 the first rinse, 2 the second
    Change change = Change::Tap;
    std::int64_t typed = 0; // the figure typed, for Typed only
    std::int64_t atUtcMs = 0;

    friend bool operator==(const CountEvent&, const CountEvent&) = default;
};

/// "tap", "typed", "undo": in the database and in files.
[[nodiscard]] std::string_view nameOf(CountEvent::Change change);
[[nodiscard]] std::optional<CountEvent::Change> changeFrom(std::string_view name);

/// The figure that the events of one rinse add up to: a tap adds one, a typed figure replaces what was there,
/// an undo takes back the last act that is not yet undone (and does nothing where there is none).
class CountTally {
public:
    void add(const CountEvent& event);

    [[nodiscard]] std::int64_t mites() const { return m_mites; }
    [[nodiscard]] bool canUndo() const { return !m_done.empty(); }
    /// False until something was counted or typed: "not counted" is not "none found".
    [[nodiscard]] bool touched() const { return m_touched; }

private:
    std::vector<std::int64_t> m_done; // the figure before each act that can still be undone
    std::int64_t m_mites = 0;
    bool m_touched = false;
};

/// The tally of one rinse out of all of a sample's events.
[[nodiscard]] CountTally tally(const std::vector<CountEvent>& events, int rinse);

} // namespace halfcup::records
