// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"
#include "mites/season_model.h"
#include "records/moment.h"
#include "season/choices.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// The load ahead if nothing is done, and for each treatment that fits: mites/season_model.h run from the
/// last wash on, through what has been given since, to the turn date and mid-autumn.
namespace halfcup::season {

/// The wash to start from.
struct StartingLoad {
    records::Date day;
    double washedQ05 = 0; // mites per 100 bees as washed
    double washedQ50 = 0;
    double washedQ95 = 0;
};

/// The model is linear in its start, so a washed load in gives washed loads out: what lines are set on.
struct LoadRange {
    double low = 0; // mites per 100 bees, as a wash would find them
    double middle = 0;
    double high = 0;
};

struct OutlookDay {
    records::Date day;
    LoadRange load;
    bool likelyFailing = false; // above the load at which the model means nothing any more
};

struct Outlook {
    std::string choiceId; // empty: nothing is done
    records::Date begins; // of the treatment
    std::vector<OutlookDay> days;
    std::optional<OutlookDay> atTurnDate; // nothing where it lies beyond the days or there is none
    std::optional<OutlookDay> atMidAutumn;
    std::vector<Phrase> notes; // what could not be counted in, and what the model leaves out
};

struct WhatIf {
    StartingLoad start;
    records::Date from;                    // today: treatments begin on this day or startsInDays later
    int startsInDays = 0;                  // 0 to 120
    std::optional<records::Date> turnDate; // on or after from
    bool southern = false;                 // the colony's year is half a year later
    std::vector<PastTreatment> since;      // given after the starting wash
};

inline constexpr int longestWait = 120;     // days from today to the start [convention]
inline constexpr int oldestStartDays = 120; // a wash older than this is no start any more [convention]

/// How a treatment is put into the model: a long course by what a comparison before and after would show, in
/// the whole colony; one that acts for a day and not under cappings by its share of the mites on the bees.
/// Nothing where the handbook has no figure for what it kills.
struct ModelledTreatment {
    mites::TreatmentReach reach = mites::TreatmentReach::Whole;
    double efficacyLow = 0, efficacyMiddle = 0, efficacyHigh = 0; // below 1
    int days = 1;                                                 // the middle of the course
};
[[nodiscard]] std::optional<ModelledTreatment> modelled(const std::string& substanceId,
                                                        const handbook::Handbook& handbook);

/// If nothing is done. Errors: std::invalid_argument with a sentence for a start after today or too old, a
/// wait out of range, loads that are none.
[[nodiscard]] Outlook outlookOfNothing(const WhatIf& question, const handbook::Handbook& handbook);

/// With a choice. Nothing where the handbook has no figure for what it kills: then no outlook is honest. The
/// range is that of the wash, of growth (the model's low and high band) and of the efficacy seen.
[[nodiscard]] std::optional<Outlook> outlookWith(const Choice& choice, const WhatIf& question,
                                                 const handbook::Handbook& handbook);

/// Where outlookWith() has nothing to say, why.
[[nodiscard]] Phrase whyNoOutlook(const Choice& choice);

/// One sentence: "If nothing is done, about 5.2 per 100 on 15 August (2.9 to 9.4) ...".
[[nodiscard]] Phrase sentenceOf(const Outlook& outlook);

} // namespace halfcup::season
