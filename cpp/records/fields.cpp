// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/fields.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace halfcup::records {

namespace {

using enum FieldType;

struct Field {
    std::string_view name;
    FieldType type;
};

constexpr std::array<Field, 16> yardFields{{{"demo", Flag},
                                            {"first_wash_from", Text},
                                            {"latitude_deg", Real},
                                            {"line_region", Text},
                                            {"longitude_deg", Real},
                                            {"name", Text},
                                            {"own_line", Real},
                                            {"position_accuracy_m", Real},
                                            {"reach_m", Real},
                                            {"registration_number", Text},
                                            {"removed", Flag},
                                            {"same_as", Id},
                                            {"treat_line", Real},
                                            {"treat_line_source", Text},
                                            {"turn_date", Text},
                                            {"visited_on", Text}}};

constexpr std::array<Field, 8> colonyFields{{{"demo", Flag},
                                             {"label", Text},
                                             {"note", Text},
                                             {"removed", Flag},
                                             {"same_as", Id},
                                             {"stand_east_m", Real},
                                             {"stand_north_m", Real},
                                             {"yard_id", Id}}};

constexpr std::array<Field, 65> sampleFields{{{"abandoned_at_ms", Whole},
                                              {"bees_cv", Real},
                                              {"bees_mean", Real},
                                              {"bees_source", Text},
                                              {"board_cells", Whole},
                                              {"board_cells_counted", Whole},
                                              {"board_hours", Real},
                                              {"board_laid_at_ms", Whole},
                                              {"board_pulled_at_ms", Whole},
                                              {"chance_over", Real},
                                              {"chance_over_own", Real},
                                              {"colony_id", Id},
                                              {"demo", Flag},
                                              {"finished_at_ms", Whole},
                                              {"fix_accuracy_m", Real},
                                              {"fix_age_ms", Whole},
                                              {"fix_count", Whole},
                                              {"fix_moving", Flag},
                                              {"fix_source", Text},
                                              {"jar", Text},
                                              {"jar_shape", Real},
                                              {"latitude_deg", Real},
                                              {"load_q05", Real},
                                              {"load_q50", Real},
                                              {"load_q95", Real},
                                              {"longitude_deg", Real},
                                              {"method", Text},
                                              {"mites", Whole},
                                              {"mites_second_rinse", Whole},
                                              {"note", Text},
                                              {"opened_cells", Whole},
                                              {"other_chance_over", Real},
                                              {"other_count", Whole},
                                              {"other_line", Real},
                                              {"other_line_source", Text},
                                              {"other_load_q05", Real},
                                              {"other_load_q50", Real},
                                              {"other_load_q95", Real},
                                              {"other_q05", Real},
                                              {"other_q50", Real},
                                              {"other_q95", Real},
                                              {"own_line", Real},
                                              {"position_state", Text},
                                              {"queen", Text},
                                              {"recovery", Real},
                                              {"recovery_sd", Real},
                                              {"removed", Flag},
                                              {"scoop_packing", Text},
                                              {"scoop_volume_ml", Real},
                                              {"scooped_at_ms", Whole},
                                              {"settle_started_ms", Whole},
                                              {"shake_before_ms", Whole},
                                              {"shake_boot_id", Text},
                                              {"shake_ended", Flag},
                                              {"shake_interrupted", Flag},
                                              {"shake_planned_s", Whole},
                                              {"shake_since_boot_ms", Whole},
                                              {"shake_since_utc_ms", Whole},
                                              {"started_at_ms", Whole},
                                              {"state", Text},
                                              {"step", Text},
                                              {"treat_line", Real},
                                              {"treat_line_source", Text},
                                              {"utc_offset_min", Whole},
                                              {"yard_id", Id}}};

constexpr std::array<Field, 13> eventFields{{{"brood", Text},
                                             {"colony_id", Id},
                                             {"day", Text},
                                             {"demo", Flag},
                                             {"event", Text},
                                             {"floor", Text},
                                             {"frames", Real},
                                             {"other_colony_id", Id},
                                             {"other_yard_id", Id},
                                             {"recorded_at_ms", Whole},
                                             {"removed", Flag},
                                             {"words", Text},
                                             {"yard_id", Id}}};

constexpr std::array<Field, 20> treatmentFields{{{"batch", Text},
                                                 {"demo", Flag},
                                                 {"done_by", Text},
                                                 {"expiry", Text},
                                                 {"first_day", Text},
                                                 {"last_day", Text},
                                                 {"note", Text},
                                                 {"prescriber", Text},
                                                 {"product", Text},
                                                 {"proof", Text},
                                                 {"quantity", Text},
                                                 {"recorded_at_ms", Whole},
                                                 {"removal_due", Text},
                                                 {"removed", Flag},
                                                 {"removed_on", Text},
                                                 {"substance", Text},
                                                 {"supplier", Text},
                                                 {"verdict", Text},
                                                 {"withdrawal_days", Whole},
                                                 {"yard_id", Id}}};

constexpr std::array<Field, 4> treatedFields{
    {{"colony_id", Id}, {"demo", Flag}, {"removed", Flag}, {"treatment_id", Id}}};

constexpr std::array<Field, 8> scoopCountFields{{{"bees", Real},
                                                 {"counted_at_ms", Whole},
                                                 {"demo", Flag},
                                                 {"odd", Flag},
                                                 {"packing", Text},
                                                 {"removed", Flag},
                                                 {"sample_id", Id},
                                                 {"volume_ml", Real}}};

constexpr std::array<Field, 8> roundFields{{{"colony_ids", Text},
                                            {"demo", Flag},
                                            {"ended_at_ms", Whole},
                                            {"picked", Text},
                                            {"removed", Flag},
                                            {"started_at_ms", Whole},
                                            {"utc_offset_min", Whole},
                                            {"yard_id", Id}}};

template <std::size_t N>
constexpr std::array<std::string_view, N> namesOf(const std::array<Field, N>& fields) {
    std::array<std::string_view, N> names;
    std::ranges::transform(fields, names.begin(), &Field::name);
    return names;
}

struct KindOfRecord {
    std::string_view name;
    std::span<const Field> fields;
    std::span<const std::string_view> names;
};

template <auto& fields>
constexpr auto names = namesOf(fields);

/// In the order of Kind.
const std::array<KindOfRecord, allKinds.size()> kinds{
    {{"yard", yardFields, names<yardFields>},
     {"colony", colonyFields, names<colonyFields>},
     {"sample", sampleFields, names<sampleFields>},
     {"event", eventFields, names<eventFields>},
     {"treatment", treatmentFields, names<treatmentFields>},
     {"treated", treatedFields, names<treatedFields>},
     {"scoop_count", scoopCountFields, names<scoopCountFields>},
     {"round", roundFields, names<roundFields>}}};

const KindOfRecord& of(Kind kind) {
    return kinds[static_cast<std::size_t>(kind)];
}

} // namespace

std::string_view nameOf(Kind kind) {
    return of(kind).name;
}

std::optional<Kind> kindFrom(std::string_view name) {
    for (const Kind kind : allKinds)
        if (nameOf(kind) == name)
            return kind;
    return std::nullopt;
}

std::span<const std::string_view> fieldNames(Kind kind) {
    return of(kind).names;
}

std::optional<FieldType> typeOf(Kind kind, std::string_view name) {
    const auto fields = of(kind).fields;
    const auto found = std::ranges::lower_bound(fields, name, {}, &Field::name);
    return found != fields.end() && found->name == name ? std::optional{found->type} : std::nullopt;
}

bool fits(const Value& value, FieldType type) {
    if (std::holds_alternative<std::monostate>(value))
        return true;
    const auto* whole = std::get_if<std::int64_t>(&value);
    switch (type) {
    case FieldType::Whole:
        return whole != nullptr;
    case FieldType::Flag:
        return whole && (*whole == 0 || *whole == 1);
    case FieldType::Real:
        return whole || (std::holds_alternative<double>(value) && std::isfinite(std::get<double>(value)));
    case FieldType::Text:
    case FieldType::Id:
        break;
    }
    return std::holds_alternative<std::string>(value);
}

bool fits(const Value& value, Kind kind, std::string_view field) {
    const auto type = typeOf(kind, field);
    if (!type || !fits(value, *type))
        return false;
    if (const auto* text = std::get_if<std::string>(&value))
        return text->size() <= longestText;
    if (const auto* whole = std::get_if<std::int64_t>(&value); whole && *type == FieldType::Whole)
        return field.ends_with("_ms") ? *whole >= 0 && *whole < (std::int64_t{1} << 48)
                                      : std::abs(*whole) <= 1'000'000'000;
    const auto* real = std::get_if<double>(&value);
    const auto* whole = std::get_if<std::int64_t>(&value);
    if (!real && !whole)
        return true;
    const double figure = std::abs(real ? *real : static_cast<double>(*whole));
    return figure <= (field == "latitude_deg" ? 90 : field == "longitude_deg" ? 180 : 1e12);
}

std::optional<Kind> referredKind(Kind kind, std::string_view field) {
    if (field == "same_as")
        return kind;
    if (field == "yard_id" || field == "other_yard_id")
        return Kind::Yard;
    if (field == "colony_id" || field == "other_colony_id")
        return Kind::Colony;
    if (field == "sample_id")
        return Kind::Sample;
    if (field == "treatment_id")
        return Kind::Treatment;
    return std::nullopt;
}

bool isNeeded(Kind kind, std::string_view field) {
    switch (kind) {
    case Kind::Colony:
    case Kind::Treatment:
        return field == "yard_id";
    case Kind::Sample:
        return field == "colony_id" || field == "yard_id" || field == "state" || field == "started_at_ms";
    case Kind::Event:
        return field == "colony_id";
    case Kind::Treated:
        return field == "treatment_id" || field == "colony_id";
    case Kind::Yard:
    case Kind::ScoopCount:
    case Kind::Round:
        break;
    }
    return false;
}

} // namespace halfcup::records
