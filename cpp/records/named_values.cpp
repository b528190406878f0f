// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/named_values.h"

#include <algorithm>

namespace halfcup::records {

NamedValues::NamedValues(std::initializer_list<value_type> values) {
    reserve(values.size());
    for (const auto& [name, value] : values)
        if (const auto place = placeOf(name); place == end() || place->first != name)
            m_values.emplace(place, name, value);
}

NamedValues::iterator NamedValues::placeOf(std::string_view name) {
    if (empty() || m_values.back().first < name) // records are read in the order of their names
        return end();
    return std::ranges::lower_bound(m_values, name, {}, &value_type::first);
}

Value& NamedValues::operator[](std::string_view name) {
    auto place = placeOf(name);
    if (place == end() || place->first != name)
        place = m_values.emplace(place, name, Value{});
    return place->second;
}

NamedValues::iterator NamedValues::find(std::string_view name) {
    const auto place = placeOf(name);
    return place != end() && place->first == name ? place : end();
}

NamedValues::const_iterator NamedValues::find(std::string_view name) const {
    const auto place = std::ranges::lower_bound(m_values, name, {}, &value_type::first);
    return place != end() && place->first == name ? place : end();
}

std::size_t NamedValues::erase(std::string_view name) {
    const auto found = find(name);
    if (found == end())
        return 0;
    m_values.erase(found);
    return 1;
}

} // namespace halfcup::records
