// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The part of the store that keeps what happens to colonies, what is given to them, and counted scoops.
#include "store/sqlite_errors.h"
#include "store/store.h"

#include <algorithm>

namespace halfcup::store {

using namespace records;

void Store::save(const ColonyEvent& event) {
    write(Kind::Event, event.id, toFields(event));
}

void Store::save(const Treatment& treatment) {
    write(Kind::Treatment, treatment.id, toFields(treatment));
}

void Store::save(const GivenTreatment& entry) {
    inOneTransaction([&] {
        save(entry.treatment);
        std::vector<TreatedColony> there;
        for (const Row& row : rows(Kind::Treated, "WHERE treatment_id = ? ORDER BY id", {entry.treatment.id}))
            there.push_back(treatedColonyFrom(row.id, row.fields));
        for (TreatedColony& treated : there) {
            treated.removed = std::ranges::find(entry.colonyIds, treated.colonyId) == entry.colonyIds.end();
            write(Kind::Treated, treated.id, toFields(treated));
        }
        for (const RecordId& colonyId : entry.colonyIds)
            if (std::ranges::find(there, colonyId, &TreatedColony::colonyId) == there.end()) {
                const TreatedColony treated{newId(), entry.treatment.id, colonyId, entry.treatment.demo,
                                            false};
                write(Kind::Treated, treated.id, toFields(treated));
            }
    });
}

std::vector<ColonyEvent> Store::eventsWhere(const std::string& rest, const RecordId& id) {
    return guarded([&] {
        std::vector<ColonyEvent> events;
        table(Kind::Event)
            .forEach(rest + " AND removed = 0 ORDER BY day, recorded_at_ms, id", {id}, [&](const Row& row) {
                if (auto event = colonyEventFrom(row.id, row.fields))
                    events.push_back(std::move(*event));
            });
        return events;
    });
}

std::vector<ColonyEvent> Store::eventsOf(const RecordId& colonyId) {
    return eventsWhere("WHERE (colony_id = ?1 OR other_colony_id = ?1)", colonyId);
}

std::vector<ColonyEvent> Store::eventsOfYard(const RecordId& yardId) {
    return eventsWhere("WHERE (colony_id IN (SELECT id FROM colony WHERE yard_id = ?1)"
                       " OR other_colony_id IN (SELECT id FROM colony WHERE yard_id = ?1))",
                       yardId);
}

std::optional<ColonyEvent> Store::event(const RecordId& id) {
    for (const Row& row : rows(Kind::Event, "WHERE id = ?", {id}))
        return colonyEventFrom(row.id, row.fields);
    return std::nullopt;
}

std::vector<GivenTreatment> Store::treatmentsWhere(const std::string& rest,
                                                   const std::vector<Value>& values) {
    std::vector<GivenTreatment> entries;
    for (const Row& row : rows(Kind::Treatment, rest, values)) {
        const auto treatment = treatmentFrom(row.id, row.fields);
        if (!treatment)
            continue;
        GivenTreatment entry{*treatment, {}};
        for (const Row& treated :
             rows(Kind::Treated, "WHERE treatment_id = ? AND removed = 0 ORDER BY id", {row.id})) {
            RecordId colonyId = treatedColonyFrom(treated.id, treated.fields).colonyId;
            if (std::ranges::find(entry.colonyIds, colonyId) == entry.colonyIds.end()) // two joined colonies
                entry.colonyIds.push_back(std::move(colonyId));
        }
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::optional<GivenTreatment> Store::treatment(const RecordId& id) {
    const auto found = treatmentsWhere("WHERE id = ?", {id});
    return found.empty() ? std::nullopt : std::optional{found.front()};
}

std::vector<GivenTreatment> Store::treatmentsOf(const RecordId& colonyId) {
    return treatmentsWhere("WHERE removed = 0 AND id IN (SELECT treatment_id FROM treated WHERE colony_id = ?"
                           " AND removed = 0) ORDER BY first_day DESC, id DESC",
                           {colonyId});
}

std::vector<GivenTreatment> Store::treatmentsOfYard(const RecordId& yardId) {
    return treatmentsWhere("WHERE removed = 0 AND (yard_id = ?1 OR id IN (SELECT treatment_id FROM treated"
                           " JOIN colony ON colony.id = treated.colony_id WHERE colony.yard_id = ?1"
                           " AND treated.removed = 0)) ORDER BY first_day DESC, id DESC",
                           {yardId});
}

std::vector<GivenTreatment> Store::allTreatments() {
    return treatmentsWhere("WHERE removed = 0 ORDER BY first_day DESC, id DESC", {});
}

std::optional<YardRecords> Store::yardRecords(const RecordId& yardId) {
    const RecordId id = m_builder->standsFor(yardId); // a joined one has nothing under its own id
    const auto kept = yard(id);
    if (!kept)
        return std::nullopt;
    return YardRecords{*kept, colonies(id), eventsOfYard(id), treatmentsOfYard(id), latestFinished(id)};
}

void Store::save(const ScoopCount& count) {
    write(Kind::ScoopCount, count.id, toFields(count));
}

std::vector<ScoopCount> Store::scoopCounts() {
    std::vector<ScoopCount> counts;
    for (const Row& row : rows(Kind::ScoopCount, "WHERE removed = 0 ORDER BY counted_at_ms, id", {}))
        counts.push_back(scoopCountFrom(row.id, row.fields));
    return counts;
}

/// Its colonies led to those that stand for them: a round names them in a text, which is kept as it is.
Round Store::ledRound(const Row& row) {
    Round round = roundFrom(row.id, row.fields);
    std::vector<RecordId> led;
    for (const RecordId& id : round.colonyIds)
        if (const RecordId& to = m_builder->standsFor(id); std::ranges::find(led, to) == led.end())
            led.push_back(to);
    round.colonyIds = std::move(led);
    return round;
}

void Store::save(const Round& round) {
    inOneTransaction([&] {
        Fields fields = toFields(round);
        // As it was read: the names it was kept with stay, so that separating puts it back too.
        const auto there = m_builder->anyJoined() ? table(Kind::Round).find(round.id) : std::nullopt;
        if (there && ledRound(*there).colonyIds == round.colonyIds)
            fields.erase("colony_ids");
        write(Kind::Round, round.id, fields);
    });
}

std::vector<Round> Store::roundsOf(const RecordId& yardId) {
    std::vector<Round> rounds;
    for (const Row& row : rows(
             Kind::Round, "WHERE yard_id = ? AND removed = 0 ORDER BY started_at_ms DESC, id DESC", {yardId}))
        rounds.push_back(ledRound(row));
    return rounds;
}

std::vector<Sample> Store::samplesOfYard(const RecordId& yardId, std::int64_t sinceUtcMs) {
    std::vector<Sample> samples;
    for (const Row& row :
         rows(Kind::Sample,
              "JOIN colony ON colony.id = sample.colony_id WHERE colony.yard_id = ? AND sample.started_at_ms "
              ">= ?"
              " AND sample.state = 'finished' AND sample.other_count IS NULL AND sample.removed = 0 ORDER BY "
              "sample.started_at_ms, sample.id",
              {yardId, sinceUtcMs}))
        samples.push_back(sampleFrom(row.id, row.fields));
    return samples;
}

std::vector<Date> Store::washDays(std::int64_t sinceUtcMs) {
    return guarded([&] {
        SQLite::Statement moments(
            *m_database,
            "SELECT coalesce(s.scooped_at_ms, s.started_at_ms), s.utc_offset_min FROM yard"
            " CROSS JOIN colony ON colony.yard_id = yard.id" // in this order: by sample_washes
            " CROSS JOIN sample s ON s.colony_id = colony.id WHERE yard.removed = 0 AND s.started_at_ms >= ?"
            " AND s.state = 'finished' AND s.other_count IS NULL AND s.removed = 0 AND s.mites IS NOT NULL");
        moments.bind(1, sinceUtcMs);
        std::vector<Date> days;
        while (moments.executeStep())
            days.push_back(localDate({moments.getColumn(0).getInt64(), moments.getColumn(1).getInt()}));
        return days;
    });
}

} // namespace halfcup::store
