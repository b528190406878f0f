// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/wash_import.h"

#include "exchange/derived_id.h"
#include "records/judgement.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <map>
#include <set>
#include <tuple>

namespace halfcup::exchange {

namespace {

using Fate = PlannedRow::Fate;

constexpr std::int64_t dayMs = 86'400'000;
constexpr std::int64_t placeIdsAtMs = 946'684'800'000; // 2000-01-01

std::string sixDigits(double value) {
    std::array<char, 40> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::general, 6);
    return {buffer.data(), end.ptr};
}

/// Finds or makes places, and remembers which.
class Places {
public:
    explicit Places(const OnThisPhone& here)
        : m_here(here) {
        for (const records::Yard& yard : here.yards) {
            m_yards.emplace(yard.id, yard);
            if (!yard.demo && !yard.removed)
                m_yardsByName[comparableLabel(yard.name)].push_back(yard.id);
        }
        for (const records::Colony& colony : here.colonies) {
            m_colonies.emplace(colony.id, colony);
            if (!colony.demo && !colony.removed)
                m_coloniesByLabel[{colony.yardId, comparableLabel(colony.label)}].push_back(colony.id);
        }
    }

    /// Nothing where several have the name.
    const records::Yard* yard(const std::string& name) {
        const std::string key = comparableLabel(name);
        auto& ids = m_yardsByName[key];
        if (ids.empty()) {
            records::Yard made;
            made.id = derivedId(placeIdsAtMs, {"yard", key});
            made.name = trimmedCell(name);
            // It may have been renamed here since it was made; one that was removed comes back.
            const auto there = m_yards.find(made.id);
            if (there == m_yards.end() || there->second.removed)
                m_yards.insert_or_assign(made.id, made);
            ids.push_back(made.id);
        }
        return ids.size() == 1 ? &m_yards.at(ids.front()) : nullptr;
    }

    const records::Colony* colony(const records::Yard& yard, const std::string& yardName,
                                  const std::string& label) {
        const std::string key = comparableLabel(label);
        auto& ids = m_coloniesByLabel[{yard.id, key}];
        if (ids.empty()) {
            records::Colony made;
            made.id = derivedId(placeIdsAtMs, {"colony", comparableLabel(yardName), key});
            made.yardId = yard.id;
            made.label = trimmedCell(label);
            const auto there = m_colonies.find(made.id);
            if (there == m_colonies.end() || there->second.removed)
                m_colonies.insert_or_assign(made.id, made);
            ids.push_back(made.id);
        }
        return ids.size() == 1 ? &m_colonies.at(ids.front()) : nullptr;
    }

    /// True where a wash of that day and count was made on this phone.
    bool hasLike(const records::Sample& sample, std::int64_t mites) {
        if (!m_here.samplesOf)
            return false;
        auto [seen, isNew] = m_washes.try_emplace(sample.colonyId);
        if (isNew)
            for (const records::Sample& each : m_here.samplesOf(sample.colonyId))
                if (each.answer && !each.removed)
                    seen->second.insert({dayOf(each), each.answer->mites});
        return seen->second.contains({dayOf(sample), mites});
    }

private:
    static std::int64_t dayOf(const records::Sample& sample) {
        return records::daysSinceEpoch(
            records::localDate({sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes}));
    }

    const OnThisPhone& m_here;
    std::map<records::RecordId, records::Yard> m_yards;
    std::map<records::RecordId, records::Colony> m_colonies;
    std::map<std::string, std::vector<records::RecordId>> m_yardsByName;
    std::map<std::pair<records::RecordId, std::string>, std::vector<records::RecordId>> m_coloniesByLabel;
    std::map<records::RecordId, std::set<std::pair<std::int64_t, std::int64_t>>> m_washes;
};

std::vector<std::string> partsOf(const TableWash& wash) {
    const records::Date day = records::localDate(wash.at);
    const std::int64_t minute =
        (wash.at.utcMs + wash.at.offsetMinutes * 60'000LL - records::daysSinceEpoch(day) * dayMs) / 60'000;
    return {"wash",
            comparableLabel(wash.yard),
            comparableLabel(wash.colony),
            records::toIso(day),
            wash.timeGiven ? std::to_string(minute) : std::string("-"),
            std::to_string(wash.mites),
            sixDigits(wash.scoop.beesMean),
            wash.method};
}

records::Sample sampleOf(const TableWash& wash, const std::string& source) {
    records::Sample sample;
    sample.method = wash.method;
    sample.state = records::SampleState::Finished;
    sample.step = records::Step::Answer;
    sample.startedAtMs = wash.at.utcMs;
    sample.utcOffsetMinutes = wash.at.offsetMinutes;
    sample.scoopedAtMs = wash.at.utcMs;
    sample.finishedAtMs = wash.at.utcMs;
    sample.scoop = wash.scoop;
    sample.stamp.state = records::PositionState::NotTried;
    sample.stamp.source = "table"; // why there is none
    sample.note = wash.note.empty() ? source : wash.note + "\n" + source;
    // What was counted, until it is judged: an answer has to hold it.
    sample.answer = records::Answer{};
    sample.answer->mites = wash.mites;
    sample.answer->mitesSecondRinse = wash.secondRinse;
    return sample;
}

const records::Yard* findYard(const std::vector<records::Yard>& yards, const records::RecordId& id) {
    const auto found = std::ranges::find(yards, id, &records::Yard::id);
    return found == yards.end() ? nullptr : &*found;
}

void answer(records::Sample& sample, const records::Lines& lines) {
    sample.answer = records::answerOf(sample, sample.answer->mites, sample.answer->mitesSecondRinse, lines);
}

} // namespace

std::size_t ImportPlan::count(Fate fate) const {
    return static_cast<std::size_t>(std::ranges::count(rows, fate, &PlannedRow::fate));
}

ImportPlan planImport(const std::vector<ReadRow>& rows, const OnThisPhone& here, const std::string& source) {
    Places places(here);
    std::map<std::vector<std::string>, int> alike;
    std::set<records::RecordId> seen;
    ImportPlan plan;
    plan.rows.reserve(rows.size());
    for (const ReadRow& row : rows) {
        PlannedRow& planned = plan.rows.emplace_back();
        planned.line = row.line;
        planned.sentence = row.sentence;
        if (row.state == RowState::Refused)
            continue;
        const TableWash& wash = row.wash;
        const records::Yard* yard = places.yard(wash.yard);
        const records::Colony* colony = yard ? places.colony(*yard, wash.yard, wash.colony) : nullptr;
        if (!colony) {
            planned.sentence =
                yard ? TableSentence{tableText("two colonies here are both called \"%1\": rename one first."),
                                     {shownCell(wash.colony)}}
                     : TableSentence{tableText("two yards here are both called \"%1\": rename one first."),
                                     {shownCell(wash.yard)}};
            continue;
        }
        planned.fate = row.state == RowState::Question ? Fate::Question : Fate::New;
        planned.yard = yard->name;
        planned.colony = colony->label;
        planned.sample = sampleOf(wash, source);
        planned.sample.yardId = yard->id;
        planned.sample.colonyId = colony->id;
        std::vector<std::string> parts = partsOf(wash);
        const int number = alike[parts]++;
        parts.push_back(std::to_string(number));
        planned.sample.id = wash.sampleId ? *wash.sampleId : derivedId(wash.at.utcMs, parts);
        if (!seen.insert(planned.sample.id).second) { // an id twice in a table of our own
            planned.fate = Fate::Refused;
            planned.sentence = {tableText("this wash stands in the table already."), {}};
        } else if (here.hasSample && here.hasSample(planned.sample.id)) {
            planned.fate = Fate::Here;
            planned.sentence = {};
        } else if (places.hasLike(planned.sample, wash.mites)) {
            planned.fate = Fate::Question;
            planned.sentence = {
                tableText("a wash of this colony with the same count on this day is here already."), {}};
        } else if (number > 0) {
            planned.fate = Fate::Question;
            planned.sentence = {tableText("the same as a row above: a second jar, or written twice?"), {}};
        }
    }
    return plan;
}

ImportRecords recordsOf(const ImportPlan& plan, const OnThisPhone& here, bool withQuestions) {
    std::set<records::RecordId> yards, colonies;
    for (const records::Yard& yard : here.yards)
        if (!yard.removed)
            yards.insert(yard.id);
    for (const records::Colony& colony : here.colonies)
        if (!colony.removed)
            colonies.insert(colony.id);
    ImportRecords result;
    for (const PlannedRow& row : plan.rows) {
        if (row.fate != Fate::New && (row.fate != Fate::Question || !withQuestions))
            continue;
        if (yards.insert(row.sample.yardId).second) {
            records::Yard& yard = result.yards.emplace_back();
            yard.id = row.sample.yardId;
            yard.name = row.yard;
        }
        if (colonies.insert(row.sample.colonyId).second) {
            records::Colony& colony = result.colonies.emplace_back();
            colony.id = row.sample.colonyId;
            colony.yardId = row.sample.yardId;
            colony.label = row.colony;
        }
        result.samples.push_back(row.sample);
    }
    return result;
}

void judge(ImportRecords& records, const OnThisPhone& here) {
    // Washes of the same figures have the same answer, and tables are full of them.
    std::map<std::tuple<std::string, std::int64_t, double, double, double, double, std::string>,
             records::Answer>
        known;
    std::map<records::RecordId, records::Yard> yards;
    for (const records::Yard& yard : here.yards)
        yards.emplace(yard.id, yard);
    for (const records::Yard& yard : records.yards)
        yards.insert_or_assign(yard.id, yard);
    for (records::Sample& sample : records.samples) {
        const records::Date day = records::localDate({sample.startedAtMs, sample.utcOffsetMinutes});
        const records::Lines lines = here.linesOn(yards.at(sample.yardId), day);
        const auto second = sample.answer->mitesSecondRinse;
        auto [found, isNew] =
            known.try_emplace({sample.method, sample.answer->mites, sample.scoop.beesMean,
                               sample.scoop.beesCv, lines.treat, lines.own.value_or(-1), lines.treatSource});
        if (isNew) {
            answer(sample, lines);
            found->second = *sample.answer;
        }
        sample.answer = found->second;
        sample.answer->mitesSecondRinse = second;
    }
}

records::Sample judged(const PlannedRow& row, const OnThisPhone& here) {
    records::Sample sample = row.sample;
    records::Yard yard;
    yard.id = sample.yardId;
    if (const records::Yard* there = findYard(here.yards, sample.yardId))
        yard = *there;
    answer(sample, here.linesOn(yard, records::localDate({sample.startedAtMs, sample.utcOffsetMinutes})));
    return sample;
}

} // namespace halfcup::exchange
