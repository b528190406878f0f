// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "records/moment.h"
#include "records/record_id.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace halfcup::records {

/// One treatment of one or more colonies of a yard, as the law asks for it: handbook "records" (Regulation
/// (EU) 2019/6, Article 108) and what is worth keeping besides. All days are the keeper's local dates. The
/// app never writes a dose: quantity is what the keeper typed.
struct Treatment {
    RecordId id;
    RecordId yardId;       // where the colonies stood
    std::string substance; // id of a handbook substance or measure: "formic-acid", "drone-brood-removal"
    std::string product;   // as named on its label
    std::string batch;
    std::optional<Date> expiry;
    std::string supplier; // name and address
    std::string proof;    // number of the receipt, or where it is kept
    std::string quantity; // with its unit, as given to all colonies together
    Date firstDay;
    Date lastDay;                      // planned end; the first day for what is done once
    std::optional<Date> removalDue;    // nothing where nothing stays in the hive
    std::optional<Date> removedOn;     // when strips, pads or trays really came out
    std::optional<int> withdrawalDays; // by the label, also 0; nothing: not written down yet
    std::string prescriber;
    std::string doneBy;
    std::string verdict; // what the app said of it when it was chosen: "fits", "with_care", "not_now", ""
    std::string note;
    std::int64_t recordedAtMs = 0; // UTC
    bool demo = false;
    bool removed = false;
};

/// That a colony got a treatment. A record of its own, so that two phones can add colonies to one entry.
struct TreatedColony {
    RecordId id;
    RecordId treatmentId;
    RecordId colonyId;
    bool demo = false;
    bool removed = false;
};

/// A treatment and the colonies that got it.
struct GivenTreatment {
    Treatment treatment;
    std::vector<RecordId> colonyIds;
};

/// The day after which nothing acts any more: when it was taken out, else the planned end.
[[nodiscard]] Date endOf(const Treatment& treatment);
/// The first day on which honey may be taken: the end and the label's withdrawal days after it. Nothing while
/// the withdrawal is not written down: that is not "none".
[[nodiscard]] std::optional<Date> honeyFrom(const Treatment& treatment);
[[nodiscard]] bool isRunningOn(const Treatment& treatment, const Date& day);
/// From the first day on until honey may be taken again. Where the withdrawal is not written down, the course
/// itself.
[[nodiscard]] bool holdsHoneyOn(const Treatment& treatment, const Date& day);

/// What is wrong with a treatment by itself. The first group may not be kept; the second is asked about.
enum class TreatmentProblem {
    NoSubstance,
    NoProduct,
    NoColony,
    ImpossibleDay,
    EndBeforeStart,
    RemovalBeforeStart,
    NegativeWithdrawal,
    LongWithdrawal, // more than longestWithdrawalDays
    // To be asked about:
    ExpiredProduct, // expiry before the first day
    LongCourse,     // more than longestCourseDays
    FarDay,         // more than a year from the day of the entry
};
[[nodiscard]] bool isForbidding(TreatmentProblem problem);

inline constexpr int longestWithdrawalDays = 730; // [convention] two seasons
inline constexpr int longestCourseDays = 120;     // [convention] longer than any label's course

/// colonies: how many were chosen. recordedOn: the local date of the entry.
[[nodiscard]] std::vector<TreatmentProblem> problemsOf(const Treatment& treatment, int colonies,
                                                       const Date& recordedOn);

[[nodiscard]] Fields toFields(const Treatment& treatment);
[[nodiscard]] Fields toFields(const TreatedColony& treated);
/// Missing or wrongly typed fields keep their defaults; nothing without a first day that exists.
[[nodiscard]] std::optional<Treatment> treatmentFrom(const RecordId& id, const Fields& fields);
[[nodiscard]] TreatedColony treatedColonyFrom(const RecordId& id, const Fields& fields);

} // namespace halfcup::records
