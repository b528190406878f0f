// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/fields.h"

namespace halfcup::records {

namespace {

constexpr std::array<std::string_view, 11> yardFields{
    "demo",     "latitude_deg",        "longitude_deg",    "name",
    "own_line", "position_accuracy_m", "reach_m",          "registration_number",
    "removed",  "treat_line",          "treat_line_source"};

constexpr std::array<std::string_view, 5> colonyFields{"demo", "label", "note", "removed", "yard_id"};

constexpr std::array<std::string_view, 48> sampleFields{"abandoned_at_ms",
                                                        "bees_cv",
                                                        "bees_mean",
                                                        "bees_source",
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

} // namespace

std::string_view nameOf(Kind kind) {
    switch (kind) {
    case Kind::Yard:
        return "yard";
    case Kind::Colony:
        return "colony";
    case Kind::Sample:
        return "sample";
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
    }
    return {};
}

} // namespace halfcup::records
