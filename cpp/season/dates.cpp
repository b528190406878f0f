// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/dates.h"

#include "season/natural_order.h"
#include "season/turn_date.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace halfcup::season {

namespace {

using records::Date;

class Dates {
public:
    Dates(std::span<const YardRecords> yards, const records::Moment& now, int daysAhead)
        : m_yards(yards)
        , m_now(now)
        , m_today(records::localDate(now))
        , m_last(records::plusDays(m_today, daysAhead)) {}

    std::vector<SeasonDate> all() {
        for (std::size_t yard = 0; yard < m_yards.size(); ++yard) {
            m_due = dueInYard(m_yards[yard], m_now);
            addWashes(yard);
            for (const GivenTreatment& given : m_yards[yard].treatments) {
                addTreatment(yard, given);
                addCheck(yard, given);
            }
            if (const auto turn = turnDateFrom(m_yards[yard].yard, m_today))
                add(yard, *turn, DateKind::TurnDate, {}, {}, {phraseText("Turn date: mites low by now")},
                    "turn/" + m_yards[yard].yard.id + "/" + records::toIso(*turn));
        }
        std::ranges::stable_sort(m_dates, {},
                                 [](const SeasonDate& date) { return std::tuple(date.day, date.kind); });
        return std::move(m_dates);
    }

private:
    void add(std::size_t yard, const Date& day, DateKind kind, std::vector<std::string> labels,
             const records::RecordId& treatmentId, Phrase phrase, std::string key) {
        if (day > m_last)
            return;
        std::ranges::sort(labels, [](const auto& a, const auto& b) { return naturalOrder(a, b) < 0; });
        m_dates.push_back({day, kind, day < m_today, yard, std::move(labels), treatmentId, std::move(phrase),
                           std::move(key)});
    }

    void addWashes(std::size_t yard) {
        struct Together {
            Date day;
            std::vector<std::string> labels;
            DueReason reason = DueReason::FirstWashOfYear;
        };
        std::map<Date, Together> byDay; // all late ones under today's key
        for (const DueColony& due : m_due) {
            if (due.due.reason == DueReason::AfterTreatment)
                continue; // has a date of its own, with its treatment
            Together& together =
                byDay.try_emplace(std::max(due.due.dueOn, m_today), Together{due.due.dueOn, {}})
                    .first->second;
            together.day = std::min(together.day, due.due.dueOn);
            together.labels.push_back(due.colony.label);
            together.reason = std::max(together.reason, due.due.reason);
        }
        for (auto& [key, together] : byDay)
            add(yard, together.day, DateKind::WashDue, std::move(together.labels), {},
                {phraseText("Wash: %1"), {wordOf(together.reason)}},
                "wash/" + m_yards[yard].yard.id + "/" + records::toIso(together.day));
    }

    void addTreatment(std::size_t yard, const GivenTreatment& given) {
        const records::Treatment& treatment = given.treatment;
        if (treatment.removed)
            return;
        std::vector<std::string> labels;
        for (const records::Colony& colony : m_yards[yard].colonies)
            if (std::ranges::find(given.colonyIds, colony.id) != given.colonyIds.end())
                labels.push_back(colony.label);
        if (labels.empty())
            return; // given here once; its colonies stand elsewhere, and their yard tells of it
        const Words product{treatment.product};
        const Date end = records::endOf(treatment);
        if (treatment.removalDue && !treatment.removedOn)
            add(yard, *treatment.removalDue, DateKind::RemovalDue, labels, treatment.id,
                {phraseText("Take out: %1"), {product}}, keyOf("removal/", yard, treatment));
        else if (!treatment.removalDue && end >= m_today && end != treatment.firstDay)
            add(yard, end, DateKind::TreatmentEnds, labels, treatment.id,
                {phraseText("Last day of: %1"), {product}}, keyOf("end/", yard, treatment));
        if (const auto honey = records::honeyFrom(treatment); honey && *honey >= m_today)
            add(yard, *honey, DateKind::HoneyFrom, labels, treatment.id,
                {phraseText("Honey may be taken again after: %1"), {product}},
                keyOf("honey/", yard, treatment));
    }

    /// For the colonies that are due for it and no others: another of the same course may have been washed, a
    /// later treatment may have taken its place, or the colony may be dead.
    void addCheck(std::size_t yard, const GivenTreatment& given) {
        const records::Treatment& treatment = given.treatment;
        std::vector<std::string> labels;
        std::erase_if(m_due, [&](const DueColony& due) { // two that end on one day: one check tells of both
            const auto& last = due.colony.lastTreatment; // there where it is the reason
            if (treatment.removed || due.due.reason != DueReason::AfterTreatment ||
                last->end != records::endOf(treatment) ||
                std::ranges::find(given.colonyIds, due.colony.colonyId) == given.colonyIds.end())
                return false;
            labels.push_back(due.colony.label);
            return true;
        });
        if (!labels.empty())
            add(yard, records::plusDays(records::endOf(treatment), afterTreatmentDays), DateKind::CheckWash,
                std::move(labels), treatment.id,
                {phraseText("Wash: did it work? %1"), {Words{treatment.product}}},
                keyOf("check/", yard, treatment));
    }

    /// With the yard: the colonies of one treatment may stand in two by now, and each has its entry.
    std::string keyOf(const char* what, std::size_t yard, const records::Treatment& treatment) const {
        return what + treatment.id + "/" + m_yards[yard].yard.id;
    }

    std::span<const YardRecords> m_yards;
    records::Moment m_now;
    Date m_today;
    Date m_last;
    std::vector<DueColony> m_due; // in the yard that is being read
    std::vector<SeasonDate> m_dates;
};

} // namespace

std::vector<SeasonDate> seasonDates(std::span<const YardRecords> yards, const records::Moment& now,
                                    int daysAhead) {
    return Dates(yards, now, daysAhead).all();
}

std::optional<int> alarmDaysBefore(DateKind kind) {
    switch (kind) {
    case DateKind::RemovalDue:
    case DateKind::CheckWash:
    case DateKind::WashDue:
        return 1;
    case DateKind::TurnDate:
        return 14;
    case DateKind::HoneyFrom:
    case DateKind::TreatmentEnds:
        break;
    }
    return std::nullopt;
}

} // namespace halfcup::season
