// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "handbook/handbook.h"

#include "handbook/read_entry.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace halfcup::handbook {

using nlohmann::json;

namespace {

json parse(std::string_view text, const std::string& file) {
    try {
        // The callback refuses a key given twice: the parser alone would keep the later value and say
        // nothing.
        std::vector<std::vector<std::string>> open;
        const auto noKeyTwice = [&](int, json::parse_event_t event, json& parsed) {
            if (event == json::parse_event_t::object_start)
                open.emplace_back();
            else if (event == json::parse_event_t::object_end)
                open.pop_back();
            else if (event == json::parse_event_t::key) {
                const auto key = parsed.get<std::string>();
                if (std::find(open.back().begin(), open.back().end(), key) != open.back().end())
                    throw HandbookError("In the handbook, " + file + " gives the field '" + key + "' twice.");
                open.back().push_back(key);
            }
            return true;
        };
        return json::parse(text, noKeyTwice);
    } catch (const json::exception& error) {
        throw HandbookError("In the handbook, " + file + " is not valid JSON: " + error.what());
    }
}

} // namespace

std::optional<double> Entry::figure() const {
    if (value)
        return value;
    if (low && high)
        return (*low + *high) / 2;
    return low ? low : high;
}

Handbook Handbook::fromTexts(std::span<const std::string_view> jsonTexts) {
    Handbook book;
    std::size_t count = 0;
    for (const std::string_view text : jsonTexts) {
        const std::string numbered = "file " + std::to_string(++count);
        const json file = parse(text, numbered);
        if (!file.is_object())
            throw HandbookError("In the handbook, " + numbered + " is not an object.");
        const Topic topic{readText(file, "topic", "In the handbook, " + numbered),
                          readText(file, "title", "In the handbook, " + numbered)};
        const std::string name = "the file \"" + topic.name + "\"";
        if (!book.topicTitle(topic.name).empty())
            throw HandbookError("In the handbook, the topic \"" + topic.name + "\" has two files.");
        const auto entries = file.find("entries");
        if (entries == file.end() || !entries->is_array() || entries->empty())
            throw HandbookError("In the handbook, " + name + " has no list of 'entries'.");
        book.m_topics.push_back(topic);
        std::size_t place = 0;
        for (const json& one : *entries) {
            Entry entry = readEntry(one, name, ++place, topic.name);
            if (!book.m_byId.emplace(entry.id, book.m_entries.size()).second)
                throw HandbookError("In the handbook, the id \"" + entry.id + "\" (entry " +
                                    std::to_string(place) + " of " + name + ") is given twice.");
            if (!entry.subject.empty() && book.find(entry.subject, entry.property))
                throw HandbookError("In the handbook, \"" + entry.id + "\" gives the 'property' \"" +
                                    entry.property + "\" of \"" + entry.subject + "\" a second time.");
            book.m_entries.push_back(std::move(entry));
        }
    }
    return book;
}

const Entry* Handbook::find(std::string_view id) const {
    const auto found = m_byId.find(id);
    return found == m_byId.end() ? nullptr : &m_entries[found->second];
}

const Entry& Handbook::at(std::string_view id) const {
    if (const Entry* entry = find(id))
        return *entry;
    throw HandbookError("The handbook has no entry \"" + std::string(id) + "\", which the program needs.");
}

double Handbook::figureAt(std::string_view id) const {
    if (const auto figure = at(id).figure())
        return *figure;
    throw HandbookError("The handbook's entry \"" + std::string(id) +
                        "\" has no figure, which the program needs.");
}

std::vector<const Entry*> Handbook::topic(std::string_view name) const {
    std::vector<const Entry*> found;
    for (const Entry& entry : m_entries)
        if (entry.topic == name)
            found.push_back(&entry);
    return found;
}

std::vector<const Entry*> Handbook::about(std::string_view subject) const {
    std::vector<const Entry*> found;
    for (const Entry& entry : m_entries)
        if (!subject.empty() && entry.subject == subject)
            found.push_back(&entry);
    return found;
}

const Entry* Handbook::find(std::string_view subject, std::string_view property) const {
    for (const Entry& entry : m_entries)
        if (!subject.empty() && entry.subject == subject && entry.property == property)
            return &entry;
    return nullptr;
}

std::vector<std::string> Handbook::topics() const {
    std::vector<std::string> names;
    for (const Topic& topic : m_topics)
        names.push_back(topic.name);
    return names;
}

std::string Handbook::topicTitle(std::string_view topic) const {
    for (const Topic& known : m_topics)
        if (known.name == topic)
            return known.title;
    return {};
}

void Handbook::sayIn(const std::function<std::string(const std::string&)>& said) {
    constexpr std::array<std::string_view, 6> read{"kind",      "supers",         "under-cappings",
                                                   "broodless", "mode-of-action", "resistance-weight"};
    for (Topic& topic : m_topics)
        topic.title = said(topic.title);
    for (Entry& entry : m_entries) {
        for (std::string* text : {&entry.title, &entry.source, &entry.note})
            if (!text->empty())
                *text = said(*text);
        if (!entry.words.empty() && std::ranges::find(read, entry.property) == read.end())
            entry.words = said(entry.words);
    }
}

std::vector<std::string> Handbook::subjects(std::string_view topic) const {
    std::vector<std::string> names;
    for (const Entry& entry : m_entries)
        if (entry.topic == topic && !entry.subject.empty() &&
            std::find(names.begin(), names.end(), entry.subject) == names.end())
            names.push_back(entry.subject);
    return names;
}

} // namespace halfcup::handbook
