// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/season_strip_of_records.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace halfcup::pictures {

namespace {

using records::ColonyEvent;
using records::Date;
using records::EventKind;

constexpr int longestYear = 366;
using Days = std::array<bool, longestYear>;

std::vector<DaySpan> spansOf(const Days& days, const Date& first) {
    std::vector<DaySpan> spans;
    for (int i = 0; i < longestYear; ++i) {
        if (!days.at(i))
            continue;
        const Date day = records::plusDays(first, i);
        if (i > 0 && days.at(i - 1))
            spans.back().to = day;
        else
            spans.push_back({day, day});
    }
    return spans;
}

/// The days on which any colony had supers, capped brood, or brood that was looked for and not capped.
class Known {
public:
    Known(const Date& first, const Date& until)
        : m_first(first)
        , m_end(std::clamp(records::daysBetween(first, until) + 1, 0, longestYear)) {}

    void add(std::vector<const ColonyEvent*> events) { // of one colony
        std::ranges::sort(events, {}, [](const ColonyEvent* event) {
            return std::tuple(event->day, event->recordedAtMs, event->id);
        });
        bool supers = false;
        records::Brood brood = records::Brood::NotKnown;
        int from = 0;
        for (const ColonyEvent* event : events) {
            const int day = std::clamp(records::daysBetween(m_first, event->day), 0, m_end);
            mark(supers, brood, from, day);
            from = day;
            switch (event->kind) {
            case EventKind::SupersOn:
            case EventKind::SupersOff:
                supers = event->kind == EventKind::SupersOn;
                break;
            case EventKind::Brood:
                brood = event->brood;
                break;
            case EventKind::Dead:
            case EventKind::Merged:
                supers = false;
                brood = records::Brood::NotKnown;
                break;
            default:
                break;
            }
        }
        mark(supers, brood, from, m_end);
    }

    void fill(SeasonStrip& strip) const {
        Days without = m_uncapped;
        for (std::size_t i = 0; i < without.size(); ++i)
            without.at(i) = m_uncapped.at(i) && !m_capped.at(i);
        strip.flow = spansOf(m_flow, m_first);
        strip.capped = spansOf(m_capped, m_first);
        strip.uncapped = spansOf(without, m_first);
    }

private:
    void mark(bool supers, records::Brood brood, int from, int to) {
        if (!supers && brood == records::Brood::NotKnown) // of most colonies, all their days
            return;
        for (int i = from; i < to; ++i) {
            m_flow.at(i) = m_flow.at(i) || supers;
            m_capped.at(i) = m_capped.at(i) || brood == records::Brood::Capped;
            m_uncapped.at(i) =
                m_uncapped.at(i) || brood == records::Brood::None || brood == records::Brood::OpenOnly;
        }
    }

    Date m_first;
    int m_end; // days that are known
    Days m_flow{}, m_capped{}, m_uncapped{};
};

} // namespace

SeasonStrip seasonStripOf(std::span<const records::YardRecords> yards, std::span<const Date> washed,
                          const Date& first, const Date& until) {
    SeasonStrip strip{.first = first};
    if (!records::isValid(first) || !records::isValid(until))
        return strip;
    Known known(first, until);
    for (const records::YardRecords& kept : yards) {
        for (const records::Colony& colony : kept.colonies) {
            std::vector<const ColonyEvent*> its;
            for (const ColonyEvent& event : kept.events)
                if (!event.removed && event.colonyId == colony.id && records::isValid(event.day))
                    its.push_back(&event);
            known.add(std::move(its));
        }
        for (const records::GivenTreatment& given : kept.treatments)
            if (!given.treatment.removed && given.treatment.yardId == kept.yard.id)
                strip.treatments.push_back({given.treatment.firstDay, records::endOf(given.treatment)});
    }
    known.fill(strip);
    strip.washed.assign(washed.begin(), washed.end());
    return strip;
}

std::vector<Date> washDaysOf(std::span<const records::Sample> samples) {
    std::vector<Date> days;
    for (const records::Sample& wash : samples)
        if (wash.state == records::SampleState::Finished && !wash.removed && wash.answer)
            days.push_back(
                records::localDate({wash.scoopedAtMs.value_or(wash.startedAtMs), wash.utcOffsetMinutes}));
    return days;
}

} // namespace halfcup::pictures
