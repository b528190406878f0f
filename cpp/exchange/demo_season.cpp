// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/demo_season.h"

#include <algorithm>

namespace halfcup::exchange {

namespace {

using namespace records;

constexpr std::int64_t dayMs = 86'400'000;
constexpr std::int64_t eveningMs = 18 * 3'600'000; // when the demo's keeper writes things down, UTC

const Colony& knownColony(const DemoFields& fields, const std::string& name, const std::string& id,
                          const std::map<std::string, Colony>& colonies) {
    const auto colony = colonies.find(id);
    if (colony == colonies.end())
        fields.fail(name, "there is no colony with this id above.");
    return colony->second;
}

} // namespace

Date movedByYears(Date date, int years) {
    date.year += years;
    if (!isValid(date))
        date.day = 28; // only 29 February can be missing from another year
    return date;
}

Moment movedByYears(const Moment& moment, int years) {
    const Date date = localDate(moment);
    return {moment.utcMs + daysBetween(date, movedByYears(date, years)) * dayMs, moment.offsetMinutes};
}

ColonyEvent readDemoEvent(DemoFields& fields, const std::map<std::string, Colony>& colonies, int years) {
    ColonyEvent event;
    event.colonyId = fields.id("colony_id");
    event.yardId = knownColony(fields, "colony_id", event.colonyId, colonies).yardId;
    const std::string word = fields.text("event");
    const auto kind = eventKindFrom(word);
    if (!kind)
        fields.fail("event", "\"" + word + "\" is not one of the words for it.");
    event.kind = *kind;
    event.day = movedByYears(fields.date("day"), years);
    event.recordedAtMs = daysSinceEpoch(event.day) * dayMs + eveningMs;
    if (event.kind == EventKind::Brood)
        event.brood = wordField(fields, "brood", {Brood::None, Brood::OpenOnly, Brood::Capped});
    if (event.kind == EventKind::Floor)
        event.floor = wordField(fields, "floor", {Floor::Solid, Floor::Screened});
    if (event.kind == EventKind::Strength)
        event.frames = fields.real("frames", 0, mostFrames);
    event.words = fields.textOr("words", "");
    event.demo = true;
    return event;
}

records::GivenTreatment readDemoTreatment(DemoFields& fields, const std::map<std::string, Colony>& colonies,
                                          int years) {
    records::GivenTreatment read;
    Treatment& treatment = read.treatment;
    const auto day = [&](const std::string& name) { return movedByYears(fields.date(name), years); };
    treatment.substance = fields.text("substance");
    treatment.product = fields.text("product");
    treatment.batch = fields.textOr("batch", "");
    if (fields.has("expiry"))
        treatment.expiry = day("expiry");
    treatment.supplier = fields.textOr("supplier", "");
    treatment.proof = fields.textOr("proof", "");
    treatment.quantity = fields.textOr("quantity", "");
    treatment.firstDay = day("first_day");
    treatment.lastDay = day("last_day");
    if (fields.has("removal_due"))
        treatment.removalDue = day("removal_due");
    if (fields.has("removed_on"))
        treatment.removedOn = day("removed_on");
    treatment.withdrawalDays = static_cast<int>(fields.integer("withdrawal_days", 0, longestWithdrawalDays));
    treatment.prescriber = fields.textOr("prescriber", "");
    treatment.doneBy = fields.textOr("done_by", "");
    treatment.note = fields.textOr("note", "");
    treatment.recordedAtMs = daysSinceEpoch(treatment.firstDay) * dayMs + eveningMs;
    treatment.demo = true;
    const nlohmann::json& list = fields.array("colony_ids");
    for (const nlohmann::json& id : list) {
        if (!id.is_string())
            fields.fail("colony_ids", "a list of ids was expected.");
        read.colonyIds.push_back(id.get<std::string>());
        treatment.yardId = knownColony(fields, "colony_ids", read.colonyIds.back(), colonies).yardId;
    }
    const auto problems = problemsOf(treatment, static_cast<int>(read.colonyIds.size()), treatment.firstDay);
    if (std::ranges::any_of(problems, isForbidding))
        fields.fail("first_day", "this is not a treatment that can be: look at its days and colonies.");
    return read;
}

} // namespace halfcup::exchange
