// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A disk that fails at a call of one's choice. The functions of the C library that change files are defined
// anew in failing_disk.cpp, and SQLite, Qt and the store all call these. Linux with 64 bits alone.
#pragma once

#include <string>

namespace halfcup::faults {

enum class Failure {
    Broken,  // one call fails with EIO
    Full,    // one fails with ENOSPC; a write takes half of its bytes first
    Dead,    // one and all after it fail with EIO
    Crowded, // one and all after it that want room fail with ENOSPC; removing works
};

/// From now on the calls that change files in `folder` (its name as the system has it) are counted, and the
/// nth (from 0) fails.
void failAt(const std::string& folder, int nth, Failure failure);
/// The disk is sound again. How many calls there were since failAt().
int repair();
/// Whether a call failed since failAt().
[[nodiscard]] bool hasFailed();
/// Whether it failed for want of room.
[[nodiscard]] bool wasFull();
/// The name of the first call that failed, with its file, for a message.
[[nodiscard]] std::string failedCall();

} // namespace halfcup::faults
