// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/lines.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace halfcup::season {

namespace {

using records::MonthDay;

// The month from which a figure holds, by the words of the handbook; seasons of the northern regions that
// have figures [own choice].
constexpr std::array<std::pair<std::string_view, int>, 8> monthOf{{{"any time", 1},
                                                                   {"February", 2},
                                                                   {"spring", 3},
                                                                   {"May", 5},
                                                                   {"July", 7},
                                                                   {"August", 8},
                                                                   {"late summer", 8},
                                                                   {"fall", 9}}};

std::optional<int> firstMonth(std::string_view words) {
    const std::string_view month = words.substr(0, words.find(',')); // "July, soon"
    for (const auto& [name, number] : monthOf)
        if (name == month)
            return number;
    return std::nullopt;
}

} // namespace

std::vector<std::string> lineRegions(const handbook::Handbook& handbook) {
    return handbook.subjects("lines");
}

std::vector<SeasonLine> linesOfRegion(const std::string& region, const handbook::Handbook& handbook) {
    std::vector<SeasonLine> lines;
    for (const handbook::Entry* entry : handbook.about(region)) {
        const auto month = firstMonth(entry->property);
        const auto figure = entry->low ? entry->low : entry->value;
        if (entry->topic != "lines" || !month || !figure)
            continue;
        const MonthDay from{*month, 1};
        const auto same = std::ranges::find(lines, from, &SeasonLine::from);
        if (same == lines.end())
            lines.push_back({from, *figure, entry->id});
        else if (*figure < same->per100)
            *same = {from, *figure, entry->id};
    }
    std::ranges::sort(lines, {}, &SeasonLine::from);
    return lines;
}

records::Lines linesOn(const records::Yard& yard, const records::Date& day,
                       const handbook::Handbook& handbook) {
    records::Lines lines = yard.lines;
    if (yard.lineRegion.empty())
        return lines;
    const std::vector<SeasonLine> region = linesOfRegion(yard.lineRegion, handbook);
    if (region.empty())
        return lines;
    const bool allYear = region.size() > 1 || region.front().from == MonthDay{1, 1};
    if (!allYear && region.front().from.month != day.month)
        return lines;
    const SeasonLine* holds = &region.back(); // of last year, until the first of this one
    for (const SeasonLine& line : region)
        if (line.from <= MonthDay{day.month, day.day})
            holds = &line;
    lines.treat = holds->per100;
    lines.treatSource = holds->entry;
    return lines;
}

} // namespace halfcup::season
