// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace halfcup::records {

/// The shake of a wash lasts a minute by common practice; the keeper may set 20 to 180 seconds.
inline constexpr int shortestShakeS = 20;
inline constexpr int usualShakeS = 60;
inline constexpr int longestShakeS = 180;

/// What the phone's clocks said at one instant. The boot clock counts on while the phone sleeps and is the
/// truth for a shake; the wall clock can be set by anybody and only serves to notice that something is wrong.
struct ShakeReading {
    std::int64_t bootMs = 0;
    std::int64_t utcMs = 0;
    std::string bootId; // changes when the phone starts anew, and the boot clock with it
};

/// A shake as it is kept: plain values, written at start, pause and end, so that a program killed in between
/// finds the running shake again. All times in milliseconds.
struct ShakeRun {
    int plannedS = usualShakeS;
    std::optional<ShakeReading> runningSince; // set while the jar is being shaken
    std::int64_t shakenBeforeMs = 0;          // from stretches that ended with a pause
    bool interrupted = false;                 // the clocks disagreed: the seconds are a guess
    bool ended = false;

    [[nodiscard]] bool isRunning() const { return runningSince.has_value() && !ended; }
    [[nodiscard]] bool isPaused() const { return !runningSince && !ended && shakenBeforeMs > 0; }
};

/// Where a shake stands at a reading.
struct ShakeProgress {
    enum class Phase { Ready, FirstHalf, SecondHalf, LastTenSeconds, Paused, Over };

    Phase phase = Phase::Ready;
    std::int64_t shakenMs = 0;  // so far, never more than planned while it runs
    std::int64_t leftMs = 0;    // until the planned end
    std::int64_t overdueMs = 0; // since the planned end, where nobody has touched the phone since
    bool interrupted = false;
};

[[nodiscard]] ShakeProgress progress(const ShakeRun& run, const ShakeReading& now);

/// Each returns the run as it is after the act; an act that makes no sense in the present state changes
/// nothing.
[[nodiscard]] ShakeRun started(ShakeRun run, const ShakeReading& now);
[[nodiscard]] ShakeRun paused(ShakeRun run, const ShakeReading& now);
/// Ends the shake: at the planned end it counts as planned (when the sound was heard), before it as really
/// shaken.
[[nodiscard]] ShakeRun ended(ShakeRun run, const ShakeReading& now);

} // namespace halfcup::records
