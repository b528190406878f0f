// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/treatments_csv.h"

#include "records/moment.h"

#include <array>

namespace halfcup::exchange {

namespace {

constexpr std::array<std::string_view, 25> columns{
    "treatment_id",      // UUID; the same for all colonies of one entry
    "yard",              // its name
    "yard_registration", // as the keeper typed it
    "colony_id",         // UUID
    "colony",            // its label
    "demo",              // yes: invented data
    "substance",         // id in the handbook, or what the keeper typed
    "substance_name",    // the handbook's name
    "product",           // as named on its label
    "batch",             //
    "expiry",            // day
    "supplier",          // name and address
    "proof_of_purchase", // number of the receipt, or where it is kept
    "quantity",          // with its unit, as given to all colonies of the entry together
    "first_day",         //
    "last_day",          // planned end
    "removal_due",       // empty: nothing stays in the hive
    "removed_on",        // when it really came out
    "withdrawal_days",   // by the label, also 0
    "honey_from",        // first day on which honey may be taken
    "prescriber",        //
    "done_by",           //
    "app_said",          // fits, with_care, not_now, or nothing: what the app said when it was chosen
    "note",              //
    "recorded_at",       // RFC 3339, UTC
};

void day(CsvWriter& csv, const std::optional<records::Date>& date) {
    if (date)
        csv.text(records::toIso(*date));
    else
        csv.empty();
}

} // namespace

std::span<const std::string_view> treatmentColumns() {
    return columns;
}

void writeTreatmentHeader(CsvWriter& csv) {
    for (const std::string_view column : columns)
        csv.text(column);
    csv.endRow();
}

void writeTreatmentRow(CsvWriter& csv, const TreatmentRow& row) {
    const records::Treatment& treatment = row.treatment;
    csv.text(treatment.id);
    csv.text(row.yard.name);
    csv.text(row.yard.registrationNumber);
    csv.text(row.colonyId);
    csv.text(row.colonyLabel);
    csv.flag(treatment.demo);
    csv.text(treatment.substance);
    csv.text(row.substanceName);
    csv.text(treatment.product);
    csv.text(treatment.batch);
    day(csv, treatment.expiry);
    csv.text(treatment.supplier);
    csv.text(treatment.proof);
    csv.text(treatment.quantity);
    day(csv, treatment.firstDay);
    day(csv, treatment.lastDay);
    day(csv, treatment.removalDue);
    day(csv, treatment.removedOn);
    if (treatment.withdrawalDays)
        csv.number(std::int64_t{*treatment.withdrawalDays});
    else
        csv.empty();
    day(csv, records::honeyFrom(treatment));
    csv.text(treatment.prescriber);
    csv.text(treatment.doneBy);
    csv.text(treatment.verdict);
    csv.text(treatment.note);
    csv.text(records::toRfc3339({treatment.recordedAtMs, 0}));
    csv.endRow();
}

} // namespace halfcup::exchange
