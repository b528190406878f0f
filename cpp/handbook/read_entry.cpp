// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "handbook/read_entry.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace halfcup::handbook {

namespace {

using nlohmann::json;

constexpr std::array<std::pair<Mark, std::string_view>, 6> kMarks{{
    {Mark::Published, "published"},
    {Mark::Quoted, "quoted"},
    {Mark::FromMemory, "from memory"},
    {Mark::CommonPractice, "common practice"},
    {Mark::Computed, "computed"},
    {Mark::OwnChoice, "own choice"},
}};
constexpr std::array<std::string_view, 12> kFields{"id",   "title",  "value", "low",  "high",    "words",
                                                   "unit", "source", "year",  "mark", "subject", "property"};

[[noreturn]] void refuse(const std::string& where, const std::string& what) {
    throw HandbookError(where + " " + what);
}

std::optional<double> readFigure(const json& entry, const char* field, const std::string& where) {
    const auto found = entry.find(field);
    if (found == entry.end())
        return std::nullopt;
    if (!found->is_number() || !std::isfinite(found->get<double>()))
        refuse(where, std::string("has a '") + field + "' that is not a number.");
    return found->get<double>();
}

std::string readOptionalText(const json& entry, const char* field, const std::string& where) {
    return entry.contains(field) ? readText(entry, field, where) : std::string();
}

std::optional<int> readYear(const json& entry, const std::string& where) {
    const auto found = entry.find("year");
    if (found == entry.end())
        refuse(where, "has no 'year' (null where the source bears no date).");
    if (found->is_null())
        return std::nullopt;
    if (!found->is_number_integer() || found->get<long long>() < 1500 || found->get<long long>() > 2100)
        refuse(where, "has a 'year' that is not a year.");
    return found->get<int>();
}

Mark readMark(const json& entry, const std::string& where) {
    const std::string text = readText(entry, "mark", where);
    for (const auto& [mark, name] : kMarks)
        if (name == text)
            return mark;
    refuse(where, "has the unknown 'mark' \"" + text + "\".");
}

void checkFields(const json& entry, const std::string& where) {
    for (const auto& item : entry.items())
        if (item.key() != "note" && std::find(kFields.begin(), kFields.end(), item.key()) == kFields.end())
            refuse(where, "has the unknown field '" + item.key() + "'.");
}

void checkFigures(const Entry& entry, const std::string& where) {
    const bool figures = entry.value || entry.low || entry.high;
    if (!figures && entry.words.empty())
        refuse(where, "has neither a 'value', a 'low', a 'high' nor 'words'.");
    if (entry.low && entry.high && *entry.low > *entry.high)
        refuse(where, "has a 'low' above its 'high'.");
    if (entry.value &&
        ((entry.low && *entry.value < *entry.low) || (entry.high && *entry.value > *entry.high)))
        refuse(where, "has a 'value' outside its 'low' and 'high'.");
    if (figures == (entry.unit == "words"))
        refuse(where, "has a 'unit' that does not fit: \"words\" is for entries without a figure.");
    if (entry.subject.empty() != entry.property.empty())
        refuse(where, "needs 'subject' and 'property' together or neither.");
}

} // namespace

std::string_view markName(Mark mark) {
    for (const auto& [known, name] : kMarks)
        if (known == mark)
            return name;
    return {};
}

std::string readText(const json& json, const char* field, const std::string& where) {
    const auto found = json.find(field);
    if (found == json.end())
        refuse(where, std::string("has no '") + field + "'.");
    if (!found->is_string() ||
        found->get_ref<const std::string&>().find_first_not_of(" \t\n") == std::string::npos)
        refuse(where, std::string("has a '") + field + "' that is not a text or is blank.");
    return found->get<std::string>();
}

Entry readEntry(const json& json, const std::string& file, std::size_t place, const std::string& topic) {
    const std::string number = "entry " + std::to_string(place) + " of " + file;
    if (!json.is_object())
        refuse("In the handbook, " + number, "is not an object.");
    Entry entry;
    entry.id = readText(json, "id", "In the handbook, " + number);
    const std::string where = "In the handbook, \"" + entry.id + "\" (" + number + ")";
    checkFields(json, where);
    entry.topic = topic;
    entry.title = readText(json, "title", where);
    entry.value = readFigure(json, "value", where);
    entry.low = readFigure(json, "low", where);
    entry.high = readFigure(json, "high", where);
    entry.words = readOptionalText(json, "words", where);
    entry.unit = readText(json, "unit", where);
    entry.source = readText(json, "source", where);
    entry.year = readYear(json, where);
    entry.mark = readMark(json, where);
    entry.note = readOptionalText(json, "note", where);
    entry.subject = readOptionalText(json, "subject", where);
    entry.property = readOptionalText(json, "property", where);
    checkFigures(entry, where);
    return entry;
}

} // namespace halfcup::handbook
