// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/for_people.h"
#include "records/judgement.h"

#include <algorithm>
#include <string>
#include <vector>

/// A keeper of records in memory, as far as files for people ask it, with one yard and two colonies.
namespace halfcup::peopletest {

struct Keeper {
    std::vector<records::Yard> keptYards;
    std::vector<records::Colony> keptColonies;
    std::vector<records::Sample> samples;
    std::vector<records::ColonyEvent> events;
    std::vector<records::GivenTreatment> treatments;
    std::vector<records::CountEvent> counts; // of every sample

    std::vector<records::Yard> yards() const { return keptYards; }
    std::vector<records::Yard> allYards() const { return keptYards; }
    std::vector<records::Colony> colonies(const records::RecordId& yard) const {
        std::vector<records::Colony> found;
        std::ranges::copy_if(keptColonies, std::back_inserter(found),
                             [&](const auto& each) { return each.yardId == yard; });
        return found;
    }
    std::vector<records::Colony> allColonies(const records::RecordId& yard) const { return colonies(yard); }
    std::vector<records::ColonyEvent> eventsOf(const records::RecordId& colony) const {
        std::vector<records::ColonyEvent> found;
        std::ranges::copy_if(events, std::back_inserter(found), [&](const auto& each) {
            return each.colonyId == colony || each.otherColonyId == colony;
        });
        return found;
    }
    std::vector<records::GivenTreatment> allTreatments() const { return treatments; } // newest first
    std::vector<records::CountEvent> countEvents(const records::RecordId&) const { return counts; }
    template <typename Visit>
    void forEachSample(Visit&& visit) const {
        for (const records::Sample& sample : samples)
            visit(sample);
    }
};

inline records::Sample wash(int number, const std::string& colony, const char* at, std::int64_t mites) {
    records::Sample sample;
    sample.id = "wash-" + std::to_string(number);
    sample.colonyId = colony;
    sample.yardId = "yard";
    sample.state = records::SampleState::Finished;
    const records::Moment moment = records::parseRfc3339(at).value_or(records::Moment{});
    sample.startedAtMs = moment.utcMs;
    sample.scoopedAtMs = moment.utcMs;
    sample.utcOffsetMinutes = moment.offsetMinutes;
    sample.scoop.beesMean = 302.17;
    sample.scoop.beesCv = 0.1204;
    sample.stamp.state = records::PositionState::Stamped;
    sample.stamp.position = {53.0714321, 19.6418768, 4.26};
    sample.answer = records::answerOf(sample, mites, {}, records::Lines{});
    return sample;
}

inline Keeper someRecords() {
    Keeper keeper;
    records::Yard yard;
    yard.id = "yard";
    yard.name = "Alder Bend";
    yard.position = records::Position{53.0712, 19.6423, 5.0};
    yard.registrationNumber = "REG-7";
    keeper.keptYards = {yard};
    for (const char* label : {"10", "4"}) {
        records::Colony colony;
        colony.id = std::string("colony-") + label;
        colony.yardId = "yard";
        colony.label = label;
        keeper.keptColonies.push_back(colony);
    }
    keeper.samples = {wash(1, "colony-4", "2025-12-31T23:30:00-02:00", 3),
                      wash(2, "colony-4", "2026-05-18T09:41:00+02:00", 9),
                      wash(3, "colony-10", "2026-05-18T10:00:00+02:00", 0)};
    records::GivenTreatment given;
    given.treatment.id = "treatment";
    given.treatment.yardId = "yard";
    given.treatment.substance = "formic-acid";
    given.treatment.product = "pads as on the label";
    given.treatment.batch = "FA-1";
    given.treatment.firstDay = {2026, 5, 20};
    given.treatment.lastDay = {2026, 5, 26};
    given.treatment.withdrawalDays = 2;
    given.colonyIds = {"colony-10", "colony-4"};
    keeper.treatments = {given};
    return keeper;
}

} // namespace halfcup::peopletest
