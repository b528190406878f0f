// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/methods/methods.h"

#include <array>

// What falls through a screened floor in a day or more (common practice, no source). Answered as mites a day;
// see season/board_reading.h for what can be made of that.
namespace halfcup::records::methods {

namespace {

constexpr std::array steps{
    MethodStep{Step::Colony, methodText("Which colony?")},
    MethodStep{Step::LayBoard, methodText("Lay the board"),
               methodText("Grease the board or use a sticky one: a dry board loses mites to ants and wind.\n"
                          "Slide it under the screen so that it covers the whole floor. No gap for bees."),
               methodText("Board laid: keep the time")},
    MethodStep{Step::PullBoard, methodText("Pull the board"),
               methodText("One to three days are best. Pull it level, out of the wind."),
               methodText("Board pulled")},
    MethodStep{Step::BoardCells, methodText("How much of the board?"),
               methodText("Count the whole board, or the same share in every part of it."),
               methodText("The whole board")},
    MethodStep{Step::Count, methodText("Count the mites"), methodText("Touch anywhere for each mite")},
    MethodStep{Step::Answer}};

constexpr std::array<const char*, 1> cautions{stingCaution};

} // namespace

constexpr Method stickyBoard{
    .id = "sticky_board",
    .name = methodText("sticky board"),
    .summary = methodText("Mites that fall through a screened floor, by the day. No bee is touched; weak "
                          "evidence beside a wash."),
    .begin = methodText("Board under colony %1"),
    .noneFound = methodText("Tilt the board in the light and go along its lines once more. None found is "
                            "kept as a count of 0."),
    .measure = Measure::MitesADay,
    .steps = steps,
    .momentAt = Step::PullBoard,
    .cautions = cautions};

} // namespace halfcup::records::methods
