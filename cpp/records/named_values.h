// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace halfcup::records {

/// One kept value. Nothing (monostate) means "not known" and is never written as 0.
using Value = std::variant<std::monostate, std::int64_t, double, std::string>;

/// Values by their names, each name once, sorted by name. All in one piece of memory: a page reads a thousand
/// records of some thirty values, and a tree of them was two thirds of that reading. Looks and behaves as
/// std::map as far as it goes. (Boost's flat_map would do; GCC 12 warns of its operator[] with a variant.)
class NamedValues {
public:
    using value_type = std::pair<std::string, Value>;
    using iterator = std::vector<value_type>::iterator;
    using const_iterator = std::vector<value_type>::const_iterator;

    NamedValues() = default;
    /// Of several values with one name the first counts.
    NamedValues(std::initializer_list<value_type> values);

    /// Holds nothing where it is new.
    Value& operator[](std::string_view name);
    /// end() where there is none.
    [[nodiscard]] iterator find(std::string_view name);
    [[nodiscard]] const_iterator find(std::string_view name) const;
    [[nodiscard]] bool contains(std::string_view name) const { return find(name) != end(); }
    std::size_t erase(std::string_view name); // how many there were: 0 or 1

    [[nodiscard]] iterator begin() { return m_values.begin(); }
    [[nodiscard]] iterator end() { return m_values.end(); }
    [[nodiscard]] const_iterator begin() const { return m_values.begin(); }
    [[nodiscard]] const_iterator end() const { return m_values.end(); }
    [[nodiscard]] std::size_t size() const { return m_values.size(); }
    [[nodiscard]] bool empty() const { return m_values.empty(); }
    void reserve(std::size_t size) { m_values.reserve(size); }
    void clear() { m_values.clear(); } // the memory is kept for the next values

    friend bool operator==(const NamedValues&, const NamedValues&) = default;

private:
    [[nodiscard]] iterator placeOf(std::string_view name); // where it is, or belongs

    std::vector<value_type> m_values;
};

} // namespace halfcup::records
