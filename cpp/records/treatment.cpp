// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/treatment.h"

#include "records/field_access.h"

#include <cstdlib>

namespace halfcup::records {

namespace {

constexpr int daysInYear = 366;

Value valueOfDate(const std::optional<Date>& date) {
    return date ? Value{toIso(*date)} : Value{};
}

std::optional<Date> dateIn(const Fields& fields, std::string_view name) {
    return parseIsoDate(textIn(fields, name).value_or(""));
}

} // namespace

Date endOf(const Treatment& treatment) {
    return treatment.removedOn.value_or(treatment.lastDay);
}

std::optional<Date> honeyFrom(const Treatment& treatment) {
    if (!treatment.withdrawalDays)
        return std::nullopt;
    return dateFromDays(daysSinceEpoch(endOf(treatment)) + *treatment.withdrawalDays);
}

bool isRunningOn(const Treatment& treatment, const Date& day) {
    return !treatment.removed && treatment.firstDay <= day && day <= endOf(treatment);
}

bool holdsHoneyOn(const Treatment& treatment, const Date& day) {
    if (isRunningOn(treatment, day))
        return true;
    const auto from = honeyFrom(treatment);
    return !treatment.removed && from && treatment.firstDay <= day && day < *from;
}

bool isForbidding(TreatmentProblem problem) {
    return problem < TreatmentProblem::ExpiredProduct;
}

std::vector<TreatmentProblem> problemsOf(const Treatment& treatment, int colonies, const Date& recordedOn) {
    std::vector<TreatmentProblem> problems;
    if (treatment.substance.empty())
        problems.push_back(TreatmentProblem::NoSubstance);
    if (treatment.product.empty())
        problems.push_back(TreatmentProblem::NoProduct);
    if (colonies < 1)
        problems.push_back(TreatmentProblem::NoColony);
    const auto possible = [](const std::optional<Date>& date) { return !date || isValid(*date); };
    if (!isValid(treatment.firstDay) || !isValid(treatment.lastDay) || !possible(treatment.expiry) ||
        !possible(treatment.removalDue) || !possible(treatment.removedOn)) {
        problems.push_back(TreatmentProblem::ImpossibleDay);
        return problems; // nothing can be said of days that do not exist
    }
    if (treatment.lastDay < treatment.firstDay)
        problems.push_back(TreatmentProblem::EndBeforeStart);
    if ((treatment.removedOn && *treatment.removedOn < treatment.firstDay) ||
        (treatment.removalDue && *treatment.removalDue < treatment.firstDay))
        problems.push_back(TreatmentProblem::RemovalBeforeStart);
    if (treatment.withdrawalDays && *treatment.withdrawalDays < 0)
        problems.push_back(TreatmentProblem::NegativeWithdrawal);
    if (treatment.withdrawalDays && *treatment.withdrawalDays > longestWithdrawalDays)
        problems.push_back(TreatmentProblem::LongWithdrawal);
    if (treatment.expiry && *treatment.expiry < treatment.firstDay)
        problems.push_back(TreatmentProblem::ExpiredProduct);
    if (daysSinceEpoch(treatment.lastDay) - daysSinceEpoch(treatment.firstDay) > longestCourseDays)
        problems.push_back(TreatmentProblem::LongCourse);
    if (std::abs(daysSinceEpoch(treatment.firstDay) - daysSinceEpoch(recordedOn)) > daysInYear)
        problems.push_back(TreatmentProblem::FarDay);
    return problems;
}

Fields toFields(const Treatment& treatment) {
    Fields f;
    f["yard_id"] = treatment.yardId;
    f["substance"] = treatment.substance;
    f["product"] = treatment.product;
    f["batch"] = treatment.batch;
    f["expiry"] = valueOfDate(treatment.expiry);
    f["supplier"] = treatment.supplier;
    f["proof"] = treatment.proof;
    f["quantity"] = treatment.quantity;
    f["first_day"] = toIso(treatment.firstDay);
    f["last_day"] = toIso(treatment.lastDay);
    f["removal_due"] = valueOfDate(treatment.removalDue);
    f["removed_on"] = valueOfDate(treatment.removedOn);
    f["withdrawal_days"] =
        treatment.withdrawalDays ? Value{std::int64_t{*treatment.withdrawalDays}} : Value{};
    f["prescriber"] = treatment.prescriber;
    f["done_by"] = treatment.doneBy;
    f["verdict"] = treatment.verdict;
    f["note"] = treatment.note;
    f["recorded_at_ms"] = treatment.recordedAtMs;
    f["demo"] = valueOf(treatment.demo);
    f["removed"] = valueOf(treatment.removed);
    return f;
}

std::optional<Treatment> treatmentFrom(const RecordId& id, const Fields& fields) {
    const auto firstDay = dateIn(fields, "first_day");
    if (!firstDay)
        return std::nullopt;
    const auto text = [&](std::string_view name) { return textIn(fields, name).value_or(""); };
    Treatment treatment;
    treatment.id = id;
    treatment.yardId = text("yard_id");
    treatment.substance = text("substance");
    treatment.product = text("product");
    treatment.batch = text("batch");
    treatment.expiry = dateIn(fields, "expiry");
    treatment.supplier = text("supplier");
    treatment.proof = text("proof");
    treatment.quantity = text("quantity");
    treatment.firstDay = *firstDay;
    treatment.lastDay = dateIn(fields, "last_day").value_or(*firstDay);
    treatment.removalDue = dateIn(fields, "removal_due");
    treatment.removedOn = dateIn(fields, "removed_on");
    if (const auto days = integerIn(fields, "withdrawal_days"))
        treatment.withdrawalDays = static_cast<int>(*days);
    treatment.prescriber = text("prescriber");
    treatment.doneBy = text("done_by");
    treatment.verdict = text("verdict");
    treatment.note = text("note");
    treatment.recordedAtMs = integerIn(fields, "recorded_at_ms").value_or(0);
    treatment.demo = flagIn(fields, "demo");
    treatment.removed = flagIn(fields, "removed");
    return treatment;
}

Fields toFields(const TreatedColony& treated) {
    Fields f;
    f["treatment_id"] = treated.treatmentId;
    f["colony_id"] = treated.colonyId;
    f["demo"] = valueOf(treated.demo);
    f["removed"] = valueOf(treated.removed);
    return f;
}

TreatedColony treatedColonyFrom(const RecordId& id, const Fields& fields) {
    TreatedColony treated;
    treated.id = id;
    treated.treatmentId = textIn(fields, "treatment_id").value_or("");
    treated.colonyId = textIn(fields, "colony_id").value_or("");
    treated.demo = flagIn(fields, "demo");
    treated.removed = flagIn(fields, "removed");
    return treated;
}

} // namespace halfcup::records
