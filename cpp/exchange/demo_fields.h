// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/moment.h"

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <string_view>

namespace halfcup::exchange {

/// One JSON object being read field by field, with its place in the file for messages ("samples[3].scoop").
/// Each get... throws DemoError with that place where the field is missing, of the wrong type or out of
/// range; done() throws where a field was never asked for.
class DemoFields {
public:
    DemoFields(const nlohmann::json& object, std::string place);

    [[nodiscard]] bool has(const std::string& name) const;
    [[nodiscard]] std::string text(const std::string& name);
    [[nodiscard]] std::string textOr(const std::string& name, const std::string& otherwise);
    [[nodiscard]] double real(const std::string& name, double smallest, double largest);
    [[nodiscard]] std::int64_t integer(const std::string& name, std::int64_t smallest, std::int64_t largest);
    [[nodiscard]] std::optional<std::int64_t> optionalInteger(const std::string& name, std::int64_t smallest,
                                                              std::int64_t largest);
    [[nodiscard]] records::Moment moment(const std::string& name); // RFC 3339
    [[nodiscard]] records::Date date(const std::string& name);     // "2026-05-20"
    [[nodiscard]] std::string id(const std::string& name);         // a record id
    [[nodiscard]] const nlohmann::json& array(const std::string& name);
    [[nodiscard]] DemoFields object(const std::string& name);
    void done() const;

    /// Throws DemoError: "<place>.<name>: <sentence>".
    [[noreturn]] void fail(const std::string& name, const std::string& sentence) const;

private:
    const nlohmann::json& field(const std::string& name);
    [[nodiscard]] std::string placeOf(const std::string& name) const;

    const nlohmann::json& m_object;
    std::string m_place;
    std::set<std::string> m_read;
};

/// One of an enum's values by the word it is kept under.
template <typename E, std::size_t N>
E wordField(DemoFields& fields, const std::string& name, const E (&values)[N]) {
    const std::string word = fields.text(name);
    for (const E value : values)
        if (nameOf(value) == word)
            return value;
    fields.fail(name, "\"" + word + "\" is not one of the words for it.");
}

} // namespace halfcup::exchange
