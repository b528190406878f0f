// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/fields.h"

namespace halfcup::records {

namespace {

constexpr std::array<std::string_view, 15> yardFields{
    "demo",    "first_wash_from", "latitude_deg",        "line_region", "longitude_deg",
    "name",    "own_line",        "position_accuracy_m", "reach_m",     "registration_number",
    "removed", "treat_line",      "treat_line_source",   "turn_date",   "visited_on"};

constexpr std::array<std::string_view, 5> colonyFields{"demo", "label", "note", "removed", "yard_id"};

constexpr std::array<std::string_view, 65> sampleFields{"abandoned_at_ms",
                                                        "bees_cv",
                                                        "bees_mean",
                                                        "bees_source",
                                                        "board_cells",
                                                        "board_cells_counted",
                                                        "board_hours",
                                                        "board_laid_at_ms",
                                                        "board_pulled_at_ms",
                                                        "chance_over",
                                                        "chance_over_own",
                                                        "colony_id",
                                                        "demo",
                                                        "finished_at_ms",
                                                        "fix_accuracy_m",
                                                        "fix_age_ms",
                                                        "fix_count",
                                                        "fix_moving",
                                                        "fix_source",
                                                        "jar",
                                                        "jar_shape",
                                                        "latitude_deg",
                                                        "load_q05",
                                                        "load_q50",
                                                        "load_q95",
                                                        "longitude_deg",
                                                        "method",
                                                        "mites",
                                                        "mites_second_rinse",
                                                        "note",
                                                        "opened_cells",
                                                        "other_chance_over",
                                                        "other_count",
                                                        "other_line",
                                                        "other_line_source",
                                                        "other_load_q05",
                                                        "other_load_q50",
                                                        "other_load_q95",
                                                        "other_q05",
                                                        "other_q50",
                                                        "other_q95",
                                                        "own_line",
                                                        "position_state",
                                                        "queen",
                                                        "recovery",
                                                        "recovery_sd",
                                                        "removed",
                                                        "scoop_packing",
                                                        "scoop_volume_ml",
                                                        "scooped_at_ms",
                                                        "settle_started_ms",
                                                        "shake_before_ms",
                                                        "shake_boot_id",
                                                        "shake_ended",
                                                        "shake_interrupted",
                                                        "shake_planned_s",
                                                        "shake_since_boot_ms",
                                                        "shake_since_utc_ms",
                                                        "started_at_ms",
                                                        "state",
                                                        "step",
                                                        "treat_line",
                                                        "treat_line_source",
                                                        "utc_offset_min",
                                                        "yard_id"};

constexpr std::array<std::string_view, 13> eventFields{
    "brood",         "colony_id",      "day",     "demo",  "event",  "floor", "frames", "other_colony_id",
    "other_yard_id", "recorded_at_ms", "removed", "words", "yard_id"};

constexpr std::array<std::string_view, 20> treatmentFields{
    "batch",      "demo",      "done_by",  "expiry",   "first_day",       "last_day",    "note",
    "prescriber", "product",   "proof",    "quantity", "recorded_at_ms",  "removal_due", "removed",
    "removed_on", "substance", "supplier", "verdict",  "withdrawal_days", "yard_id"};

constexpr std::array<std::string_view, 8> scoopCountFields{
    "bees", "counted_at_ms", "demo", "odd", "packing", "removed", "sample_id", "volume_ml"};

constexpr std::array<std::string_view, 8> roundFields{
    "colony_ids", "demo", "ended_at_ms", "picked", "removed", "started_at_ms", "utc_offset_min", "yard_id"};

constexpr std::array<std::string_view, 4> treatedFields{"colony_id", "demo", "removed", "treatment_id"};

} // namespace

std::string_view nameOf(Kind kind) {
    switch (kind) {
    case Kind::Yard:
        return "yard";
    case Kind::Colony:
        return "colony";
    case Kind::Sample:
        return "sample";
    case Kind::Event:
        return "event";
    case Kind::Treatment:
        return "treatment";
    case Kind::Treated:
        return "treated";
    case Kind::ScoopCount:
        return "scoop_count";
    case Kind::Round:
        return "round";
    }
    return "";
}

std::span<const std::string_view> fieldNames(Kind kind) {
    switch (kind) {
    case Kind::Yard:
        return yardFields;
    case Kind::Colony:
        return colonyFields;
    case Kind::Sample:
        return sampleFields;
    case Kind::Event:
        return eventFields;
    case Kind::Treatment:
        return treatmentFields;
    case Kind::Treated:
        return treatedFields;
    case Kind::ScoopCount:
        return scoopCountFields;
    case Kind::Round:
        return roundFields;
    }
    return {};
}

} // namespace halfcup::records
