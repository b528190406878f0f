// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/choice_rules.h"

namespace halfcup::season {

namespace {

Reason supers(const handbook::Substance& substance, const Situation& situation) {
    using handbook::Allowed;
    if (substance.supers == Allowed::Yes)
        return by(Verdict::Fits, substance, "supers", {phraseText("Supers may be on.")});
    if (substance.supers == Allowed::ByLabel) {
        if (situation.supersOn == false)
            return by(Verdict::Fits, substance, "supers", {phraseText("Supers are off.")});
        return by(Verdict::WithCare, substance, "supers",
                  {situation.supersOn ? phraseText("Supers are on: only where the label allows it.")
                                      : phraseText("With supers on only where the label allows it.")});
    }
    if (!situation.supersOn)
        return by(Verdict::WithCare, substance, "supers",
                  {phraseText("Not with supers on; whether they are is not written down.")});
    if (*situation.supersOn)
        return by(Verdict::NotNow, substance, "supers", {phraseText("Not while supers are on.")});
    return by(Verdict::Fits, substance, "supers",
              {phraseText("Supers are off; they stay off until the label allows them again.")});
}

ShareSpan efficacy(const std::optional<double>& low, const std::optional<double>& high) {
    return {low.value_or(0), high.value_or(low.value_or(0))};
}

Reason adultsOnly(const handbook::Substance& substance, const Situation& situation) {
    const bool capped = situation.brood == records::Brood::Capped;
    if (situation.brood == records::Brood::NotKnown)
        return by(
            Verdict::WithCare, substance, "under-cappings",
            {phraseText("Does not reach under cappings; whether there is capped brood now is not known.")});
    if (!capped)
        return substance.efficacyLow
                   ? by(Verdict::Fits, substance, "efficacy",
                        {phraseText("No capped brood: all mites are on bees. Killed then: %1."),
                         {efficacy(substance.efficacyLow, substance.efficacyHigh)}})
                   : by(Verdict::Fits, substance, "under-cappings",
                        {phraseText("No capped brood: all mites are on bees.")});
    return substance.efficacyBroodLow
               ? by(Verdict::WithCare, substance, "efficacy-brood",
                    {phraseText("Does not reach under cappings: with brood it killed %1 of the mites."),
                     {efficacy(substance.efficacyBroodLow, substance.efficacyBroodHigh)}})
               : by(Verdict::WithCare, substance, "under-cappings",
                    {phraseText("Does not reach under cappings, and there is capped brood.")});
}

/// Whether mites that are under cappings on the first day come out into the course. Drones are the longest
/// under theirs.
bool outlastsCappedBrood(const handbook::Substance& substance, const handbook::Handbook& handbook) {
    const handbook::Entry& capped = handbook.at("capped-drone-days");
    return substance.courseDaysLow.value_or(0) > capped.high.value_or(capped.figure().value_or(0));
}

Reason cappings(const handbook::Substance& substance, const Situation& situation,
                const handbook::Handbook& handbook) {
    using handbook::UnderCappings;
    if (substance.underCappings == UnderCappings::Yes)
        return by(Verdict::Fits, substance, "under-cappings",
                  {phraseText("Also kills mites under cappings.")});
    if (substance.underCappings == UnderCappings::LongContact)
        return by(Verdict::Fits, substance, "under-cappings",
                  {phraseText("Not under cappings, but still there when the bees hatch.")});
    if (!substance.broodlessOnly && outlastsCappedBrood(substance, handbook))
        return by(Verdict::Fits, substance, "course",
                  {phraseText("Not under cappings, but the course outlasts the capped brood.")});
    return adultsOnly(substance, situation);
}

} // namespace

std::vector<Reason> hiveReasons(const handbook::Substance& substance, const Situation& situation,
                                const handbook::Handbook& handbook) {
    std::vector<Reason> reasons{supers(substance, situation), cappings(substance, situation, handbook)};
    if (!substance.leastBees)
        return reasons;
    const Number least{*substance.leastBees};
    if (!situation.adultBees)
        reasons.push_back(by(
            Verdict::WithCare, substance, "least-bees",
            {phraseText("Wants at least about %1 bees; the colony's strength now is not known."), {least}}));
    else if (*situation.adultBees < *substance.leastBees)
        reasons.push_back(by(Verdict::NotNow, substance, "least-bees",
                             {phraseText("Too few bees: about %1, at least about %2 are wanted."),
                              {Number{*situation.adultBees}, least}}));
    else
        reasons.push_back(by(Verdict::Fits, substance, "least-bees",
                             {phraseText("Strong enough: at least about %1 bees."), {least}}));
    return reasons;
}

} // namespace halfcup::season
