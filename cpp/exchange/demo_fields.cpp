// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/demo_fields.h"

#include "exchange/demo_reader.h"
#include "records/record_id.h"

#include <utility>

namespace halfcup::exchange {

namespace {

std::string shortly(double value) {
    return nlohmann::json(value).dump();
}

} // namespace

DemoFields::DemoFields(const nlohmann::json& object, std::string place)
    : m_object(object)
    , m_place(std::move(place)) {
    if (!object.is_object())
        throw DemoError((m_place.empty() ? "The file" : m_place) + ": an object in braces was expected.");
}

bool DemoFields::has(const std::string& name) const {
    return m_object.contains(name);
}

std::string DemoFields::text(const std::string& name) {
    const nlohmann::json& value = field(name);
    if (!value.is_string())
        fail(name, "a text was expected.");
    return value.get<std::string>();
}

std::string DemoFields::textOr(const std::string& name, const std::string& otherwise) {
    return has(name) ? text(name) : otherwise;
}

double DemoFields::real(const std::string& name, double smallest, double largest) {
    const nlohmann::json& value = field(name);
    if (!value.is_number())
        fail(name, "a number was expected.");
    const double number = value.get<double>();
    if (!(number >= smallest && number <= largest))
        fail(name,
             shortly(number) + " is not between " + shortly(smallest) + " and " + shortly(largest) + ".");
    return number;
}

std::int64_t DemoFields::integer(const std::string& name, std::int64_t smallest, std::int64_t largest) {
    if (!field(name).is_number_integer())
        fail(name, "a whole number was expected.");
    // Read as a real first: an integer too large for 64 bits would wrap around.
    return static_cast<std::int64_t>(real(name, static_cast<double>(smallest), static_cast<double>(largest)));
}

std::optional<std::int64_t> DemoFields::optionalInteger(const std::string& name, std::int64_t smallest,
                                                        std::int64_t largest) {
    return has(name) ? std::optional{integer(name, smallest, largest)} : std::nullopt;
}

records::Moment DemoFields::moment(const std::string& name) {
    const std::string value = text(name);
    const auto moment = records::parseRfc3339(value);
    if (!moment)
        fail(name, "\"" + value + "\" is not a time like 2026-05-18T09:40:00+02:00.");
    return *moment;
}

records::Date DemoFields::date(const std::string& name) {
    const std::string value = text(name);
    const auto date = records::parseIsoDate(value);
    if (!date)
        fail(name, "\"" + value + "\" is not a day like 2026-05-20.");
    return *date;
}

std::string DemoFields::id(const std::string& name) {
    std::string value = text(name);
    if (!records::isRecordId(value))
        fail(name, "\"" + value + "\" is not a record id (a UUID of version 7 in small letters).");
    return value;
}

const nlohmann::json& DemoFields::array(const std::string& name) {
    const nlohmann::json& value = field(name);
    if (!value.is_array())
        fail(name, "a list was expected.");
    return value;
}

DemoFields DemoFields::object(const std::string& name) {
    return {field(name), placeOf(name)};
}

void DemoFields::done() const {
    for (const auto& [name, value] : m_object.items())
        if (!m_read.contains(name))
            fail(name, "there is no such field.");
}

void DemoFields::fail(const std::string& name, const std::string& sentence) const {
    throw DemoError(placeOf(name) + ": " + sentence);
}

const nlohmann::json& DemoFields::field(const std::string& name) {
    m_read.insert(name);
    const auto found = m_object.find(name);
    if (found == m_object.end())
        fail(name, "the field is missing.");
    return *found;
}

std::string DemoFields::placeOf(const std::string& name) const {
    return m_place.empty() ? name : m_place + "." + name;
}

} // namespace halfcup::exchange
