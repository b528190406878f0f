// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/shake.h"

#include <algorithm>
#include <cstdlib>

namespace halfcup::records {

namespace {

// Clocks drift and the wall clock is nudged by the network: under this they are taken to agree [convention].
constexpr std::int64_t clocksAgreeWithinMs = 2000;
constexpr std::int64_t lastSecondsMs = 10'000;

struct Stretch {
    std::int64_t ms = 0;
    bool trusted = true;
};

Stretch since(const ShakeReading& start, const ShakeReading& now) {
    const std::int64_t wall = now.utcMs - start.utcMs;
    if (start.bootId != now.bootId)
        return {std::max<std::int64_t>(0, wall), false}; // a new boot clock: only the wall clock is left
    const std::int64_t boot = std::max<std::int64_t>(0, now.bootMs - start.bootMs);
    return {boot, std::llabs(wall - boot) <= clocksAgreeWithinMs};
}

std::int64_t plannedMs(const ShakeRun& run) {
    return run.plannedS * 1000LL;
}

/// Adds the stretch that runs to what was shaken before.
void stop(ShakeRun& run, const ShakeReading& now) {
    if (!run.isRunning())
        return;
    const ShakeProgress soFar = progress(run, now);
    run.shakenBeforeMs = soFar.shakenMs;
    run.interrupted = soFar.interrupted;
    run.runningSince.reset();
}

} // namespace

ShakeProgress progress(const ShakeRun& run, const ShakeReading& now) {
    ShakeProgress result;
    result.interrupted = run.interrupted;
    std::int64_t shaken = run.shakenBeforeMs;
    if (run.isRunning()) {
        const Stretch stretch = since(*run.runningSince, now);
        shaken += stretch.ms;
        result.interrupted = result.interrupted || !stretch.trusted;
    }
    if (!run.ended)
        result.overdueMs = std::max<std::int64_t>(0, shaken - plannedMs(run));
    result.shakenMs = std::min(shaken, plannedMs(run));
    result.leftMs = plannedMs(run) - result.shakenMs;

    using Phase = ShakeProgress::Phase;
    if (run.ended || result.leftMs == 0)
        result.phase = Phase::Over;
    else if (run.isPaused())
        result.phase = Phase::Paused;
    else if (!run.isRunning())
        result.phase = Phase::Ready;
    else if (result.leftMs <= lastSecondsMs)
        result.phase = Phase::LastTenSeconds;
    else if (result.shakenMs * 2 >= plannedMs(run))
        result.phase = Phase::SecondHalf;
    else
        result.phase = Phase::FirstHalf;
    return result;
}

ShakeRun started(ShakeRun run, const ShakeReading& now) {
    if (!run.ended && !run.isRunning())
        run.runningSince = now;
    return run;
}

ShakeRun paused(ShakeRun run, const ShakeReading& now) {
    stop(run, now);
    return run;
}

ShakeRun ended(ShakeRun run, const ShakeReading& now) {
    stop(run, now);
    run.ended = true;
    return run;
}

} // namespace halfcup::records
