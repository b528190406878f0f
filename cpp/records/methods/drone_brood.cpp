// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/methods/methods.h"

#include <array>

// Capped drone brood opened with a fork, cells with mites counted (common practice, no source). Answered as
// the share of cells; see season/drone_reading.h.
namespace halfcup::records::methods {

namespace {

constexpr std::array steps{
    MethodStep{Step::Colony, methodText("Which colony?")},
    MethodStep{Step::Safety, methodText("Where is the queen?"),
               methodText("See that she is not on the frame you open.")},
    MethodStep{Step::Count, methodText("Count cells with mites"),
               methodText("Touch for each cell with a mite")},
    MethodStep{Step::OpenedCells, methodText("How many cells in all?"),
               methodText("All drone cells you opened, with mites and without. Open a hundred or more, in "
                          "several places.")},
    MethodStep{Step::Answer}};

constexpr std::array<const char*, 2> cautions{
    methodText("Opened brood dies. Take capped drone cells with pink to purple eyes."), stingCaution};

} // namespace

constexpr Method droneBrood{
    .id = "drone_brood",
    .name = methodText("drone brood opened"),
    .summary = methodText("The share of drone cells with mites. Only while there is capped drone brood; no "
                          "load can be read from it."),
    .begin = methodText("Open drone brood of colony %1"),
    .noneFound = methodText("Look into the cells and at the pale pupae once more. None found is kept as a "
                            "count of 0."),
    .measure = Measure::InfestedCells,
    .steps = steps,
    .momentAt = Step::Safety,
    .cautions = cautions};

} // namespace halfcup::records::methods
