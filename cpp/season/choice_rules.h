// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/measure.h"
#include "handbook/substance.h"
#include "season/choices.h"

#include <vector>

/// The rules behind choices(), one group a file. Each gives the reasons that speak for or against.
namespace halfcup::season {

/// Limits for daily highs, by the forecast: handbook daily-high, best-high, watch-days.
[[nodiscard]] std::vector<Reason> weatherReasons(const handbook::Substance& substance,
                                                 const Situation& situation,
                                                 const handbook::Handbook& handbook);
/// Supers, brood and strength.
[[nodiscard]] std::vector<Reason> hiveReasons(const handbook::Substance& substance,
                                              const Situation& situation, const handbook::Handbook& handbook);
/// What was given before, and what mites are known to resist.
[[nodiscard]] std::vector<Reason> rotationReasons(const handbook::Substance& substance,
                                                  const Situation& situation,
                                                  const handbook::Handbook& handbook);
/// The turn date, and courses that still run.
[[nodiscard]] std::vector<Reason> timeReasons(const handbook::Substance& substance,
                                              const Situation& situation, const handbook::Handbook& handbook);
[[nodiscard]] std::vector<Reason> measureReasons(const handbook::Measure& measure,
                                                 const Situation& situation);
/// What holds for every substance and is always said, last.
[[nodiscard]] Reason labelReason();

/// The substance given last before the day, and what rotates with it; nothing where none is recorded.
struct LastGiven {
    const PastTreatment* treatment = nullptr;
    const handbook::Substance* substance = nullptr;
};
[[nodiscard]] LastGiven lastGiven(const Situation& situation, const std::vector<handbook::Substance>& all);

/// A reason with a handbook entry of the substance behind it.
[[nodiscard]] Reason by(Verdict verdict, const handbook::Substance& substance, const char* property,
                        Phrase phrase);
/// A reason of our own, said to be one.
[[nodiscard]] Reason ours(Verdict verdict, Phrase phrase);

} // namespace halfcup::season
