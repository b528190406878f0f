// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"
#include "records/sample.h"

#include <optional>

/// What a counted sample says, computed in one place for the screen, the files and the demo alike.
namespace halfcup::records {

/// The answer of a counted sample: its washed load (mites/wash_load.h) held against the lines. Only the first
/// rinse counts: lines are set on what one rinse finds. Throws std::domain_error with a sentence where bees,
/// spread or count are outside what a wash can be, or where the method is one this version does not know.
[[nodiscard]] Answer answerOf(const Sample& sample, std::int64_t mites,
                              std::optional<std::int64_t> mitesSecondRinse, const Lines& lines);

/// The standing of an answered sample against its treat line and its own line; nothing where there is no
/// answer, no such line, or the kept figures cannot be (damaged).
[[nodiscard]] std::optional<mites::Standing> standingAgainstTreatLine(const Sample& sample);
[[nodiscard]] std::optional<mites::Standing> standingAgainstOwnLine(const Sample& sample);

/// What the keeper sees first: the graver of both (over, then close, then can't tell, then under).
[[nodiscard]] std::optional<mites::Standing> graverStanding(const Sample& sample);

} // namespace halfcup::records
