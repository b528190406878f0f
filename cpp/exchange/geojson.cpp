// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/geojson.h"

#include "exchange/selection.h"
#include "records/judgement.h"

#include <nlohmann/json.hpp>

#include <utility>

namespace halfcup::exchange {

namespace {

using Json = nlohmann::ordered_json;

Json figureOrNull(std::optional<double> value) {
    return value ? Json(*value) : Json(nullptr); // what is not finite is written as null by the library
}

void addPosition(Json& feature, Json& properties, const std::optional<ShownPosition>& shown) {
    feature["geometry"] = nullptr;
    if (shown)
        feature["geometry"] = {{"type", "Point"}, {"coordinates", {shown->longitudeDeg, shown->latitudeDeg}}};
    properties["position_is"] = !shown ? "none" : shown->exact ? "exact" : "blurred";
    properties["position_accuracy_m"] = figureOrNull(shown ? shown->accuracyM : std::nullopt);
}

void addLoad(Json& properties, const std::string& before, const std::optional<records::Answer>& answer) {
    const auto figure = [&](double records::Answer::*which) {
        return answer ? Json((*answer).*which) : Json(nullptr);
    };
    properties[before + "load_q05_per_100"] = figure(&records::Answer::loadQ05);
    properties[before + "load_q50_per_100"] = figure(&records::Answer::loadQ50);
    properties[before + "load_q95_per_100"] = figure(&records::Answer::loadQ95);
}

Json standingOf(const records::Sample& sample) {
    const auto standing = records::graverStanding(sample);
    return standing ? Json(wordOf(*standing)) : Json(nullptr);
}

Json begun(const records::RecordId& id) {
    return {{"type", "Feature"}, {"id", id}};
}

std::string written(Json feature, Json properties) {
    feature["properties"] = std::move(properties);
    return feature.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace

GeoJsonWriter::GeoJsonWriter(ByteSink sink, PositionDetail detail)
    : m_sink(std::move(sink))
    , m_detail(detail) {}

void GeoJsonWriter::feature(const std::string& text) {
    m_sink(m_any ? ",\n" : "{\"type\":\"FeatureCollection\",\"features\":[\n");
    m_any = true;
    m_sink(text);
}

void GeoJsonWriter::yard(const YardRow& row) {
    Json feature = begun(row.yard.id);
    Json properties = {{"kind", "yard"},
                       {"name", row.yard.name},
                       {"demo", row.yard.demo},
                       {"colonies", row.colonies},
                       {"last_wash_on", nullptr}};
    if (row.lastWash)
        properties["last_wash_on"] = records::toIso(records::localDate(momentOf(*row.lastWash)));
    addLoad(properties, "last_", row.lastWash ? row.lastWash->answer : std::nullopt);
    properties["last_standing"] = row.lastWash ? standingOf(*row.lastWash) : Json(nullptr);
    std::optional<ShownPosition> shown;
    if (row.yard.position)
        shown = shownPosition(*row.yard.position, m_detail);
    addPosition(feature, properties, shown);
    this->feature(written(std::move(feature), std::move(properties)));
}

void GeoJsonWriter::sample(const SampleRow& row) {
    const records::Sample& sample = row.sample;
    Json feature = begun(sample.id);
    Json properties = {{"kind", "sample"},
                       {"yard", row.yardName},
                       {"colony", row.colonyLabel},
                       {"demo", sample.demo},
                       {"method", sample.method},
                       {"state", std::string(nameOf(sample.state))},
                       {"sampled_on", records::toIso(records::localDate(momentOf(sample)))},
                       {"mites", nullptr}};
    if (sample.answer)
        properties["mites"] = sample.answer->mites;
    addLoad(properties, "", sample.answer);
    properties["standing"] = standingOf(sample);
    addPosition(feature, properties, shownPosition(sample.stamp, row.yardPosition, m_detail));
    this->feature(written(std::move(feature), std::move(properties)));
}

void GeoJsonWriter::end() {
    m_sink(m_any ? "\n]}\n" : "{\"type\":\"FeatureCollection\",\"features\":[]}\n");
}

} // namespace halfcup::exchange
