// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/board_reading.h"

#include "mites/colony_mites.h"
#include "mites/constants.h"
#include "season/situation.h"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <string_view>

namespace halfcup::season {

namespace {

using handbook::Entry;

constexpr std::array<std::string_view, 12> monthNames{"January",   "February", "March",    "April",
                                                      "May",       "June",     "July",     "August",
                                                      "September", "October",  "November", "December"};
constexpr double hoursInDay = 24;
constexpr double strengthOff = 4.0 / 3; // frames counted by eye
constexpr double normalEnd90 = 1.645;   // of a 90 % range, in standard deviations

bool isWinter(int month) {
    return month >= 11 || month <= 2;
}

bool isFor(const Entry& entry, int month) {
    const std::string_view property = entry.property;
    return entry.unit == "mites a day" &&
           (property.starts_with(monthNames[static_cast<std::size_t>(month - 1)]) ||
            (property.starts_with("winter") && isWinter(month)) || property.starts_with("any time"));
}

bool saysTreat(const Entry& entry) {
    return entry.value && !entry.property.ends_with("watch") && !entry.property.ends_with("young colony");
}

} // namespace

BoardContext boardContext(const records::Yard& yard, const records::Colony& colony,
                          std::span<const records::ColonyEvent> events, const records::Date& day) {
    const records::ColonyState state = records::stateOn(colony, events, day);
    BoardContext context;
    context.month = northernMonth(yard, day);
    context.brood = broodHolding(state, day);
    if (state.frames && records::daysBetween(state.frames->day, day) <= strengthHoldsDays)
        context.frames = state.frames->value;
    return context;
}

std::vector<const Entry*> boardLines(int month, const handbook::Handbook& handbook) {
    std::vector<const Entry*> lines;
    for (const Entry* entry : handbook.topic("other-lines"))
        if (isFor(*entry, month))
            lines.push_back(entry);
    std::stable_partition(lines.begin(), lines.end(),
                          [](const Entry* entry) { return !entry->property.starts_with("any time"); });
    return lines;
}

const Entry* boardLine(int month, const handbook::Handbook& handbook) {
    const Entry* lowest = nullptr;
    for (const Entry* entry : boardLines(month, handbook))
        if (saysTreat(*entry) && (!lowest || *entry->value < *lowest->value))
            lowest = entry;
    return lowest;
}

mites::FallFactor fallFactor(int month, const handbook::Handbook& handbook) {
    const bool summer = month >= 5 && month <= 8;
    const double usual = handbook.figureAt(summer            ? "fall-factor-summer"
                                           : isWinter(month) ? "fall-factor-winter"
                                                             : "fall-factor-spring-autumn");
    const double spread = handbook.figureAt("fall-factor-spread");
    return {usual / spread, usual, usual * spread};
}

Phrase noLoadBecause(const BoardContext& context) {
    if (context.brood == records::Brood::NotKnown)
        return {
            phraseText("Not said in mites per 100 bees: whether there is capped brood is not written down, "
                       "and the factors hold only with brood.")};
    if (context.brood != records::Brood::Capped)
        return {phraseText("Not said in mites per 100 bees: there was no capped brood, and the factors hold "
                           "only with brood.")};
    if (!context.frames || *context.frames <= 0)
        return {phraseText("Not said in mites per 100 bees: how strong the colony is was not written down "
                           "lately. Tell its frames of bees, and the next board can say it.")};
    return {};
}

records::OtherAnswer boardAnswer(const records::Sample& sample, std::int64_t mites,
                                 const BoardContext& context, const handbook::Handbook& handbook) {
    const auto hours = records::hoursOf(sample.board);
    if (!hours)
        throw std::domain_error("How long the board lay under the colony is not known.");
    const mites::FallPosterior fall(
        mites::boardCount(mites, *hours / hoursInDay, records::shareCounted(sample.board)));
    const mites::LoadEstimate aDay = fall.estimate();
    records::OtherAnswer answer;
    answer.count = mites;
    answer.q05 = aDay.q05;
    answer.q50 = aDay.q50;
    answer.q95 = aDay.q95;
    if (const Entry* line = boardLine(context.month, handbook)) {
        answer.line = *line->value;
        answer.lineSource = line->id;
        answer.chanceOver = fall.chanceOver(*line->value);
    }
    if (noLoadBecause(context).empty()) {
        const mites::LoadEstimate all = mites::mitesFromFall(aDay, fallFactor(context.month, handbook));
        const double bees = mites::beesOnFrames(*context.frames);
        const double share = handbook.figureAt("share-on-bees");
        const double least = share - normalEnd90 * handbook.figureAt("share-on-bees-sd");
        const double most = share + normalEnd90 * handbook.figureAt("share-on-bees-sd");
        answer.loadQ05 = 100 * all.q05 * least / (bees * strengthOff);
        answer.loadQ50 = 100 * all.q50 * share / bees;
        answer.loadQ95 = 100 * all.q95 * most / (bees / strengthOff);
    }
    return answer;
}

} // namespace halfcup::season
