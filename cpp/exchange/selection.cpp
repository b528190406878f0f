// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/selection.h"

#include <algorithm>

namespace halfcup::exchange {

namespace {

bool touches(const Selection& selection, const records::RecordId& yard, const records::Date& first,
             const records::Date& last) {
    if (selection.periods.empty())
        return true;
    const auto found = selection.periods.find(yard);
    return found != selection.periods.end() && first <= found->second.last && found->second.first <= last;
}

} // namespace

records::Moment momentOf(const records::Sample& sample) {
    return {sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes};
}

bool Selection::holdsYard(const records::RecordId& yard) const {
    return yardId.empty() || yardId == yard;
}

bool Selection::holdsColony(const records::RecordId& colony) const {
    return colonyId.empty() || colonyId == colony;
}

bool Selection::holds(const records::Sample& sample) const {
    const records::Date day = records::localDate(momentOf(sample));
    return holdsColony(sample.colonyId) && holdsYard(sample.yardId) &&
           touches(*this, sample.yardId, day, day);
}

bool Selection::holds(const records::ColonyEvent& event) const {
    return (holdsColony(event.colonyId) || holdsColony(event.otherColonyId)) &&
           (holdsYard(event.yardId) || holdsYard(event.otherYardId)) &&
           touches(*this, event.yardId, event.day, event.day);
}

bool Selection::holds(const records::GivenTreatment& given) const {
    const records::Treatment& treatment = given.treatment;
    records::Date last = records::endOf(treatment);
    if (const auto honey = records::honeyFrom(treatment))
        last = std::max(last, records::plusDays(*honey, -1));
    return (colonyId.empty() || std::ranges::count(given.colonyIds, colonyId) > 0) &&
           holdsYard(treatment.yardId) && touches(*this, treatment.yardId, treatment.firstDay, last);
}

} // namespace halfcup::exchange
