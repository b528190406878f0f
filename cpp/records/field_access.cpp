// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/field_access.h"

namespace halfcup::records {

namespace {

const Value* find(const Fields& fields, std::string_view name) {
    const auto found = fields.find(name);
    return found == fields.end() ? nullptr : &found->second;
}

} // namespace

std::optional<std::int64_t> integerIn(const Fields& fields, std::string_view name) {
    const Value* value = find(fields, name);
    if (value && std::holds_alternative<std::int64_t>(*value))
        return std::get<std::int64_t>(*value);
    return std::nullopt;
}

std::optional<double> realIn(const Fields& fields, std::string_view name) {
    const Value* value = find(fields, name);
    if (value && std::holds_alternative<double>(*value))
        return std::get<double>(*value);
    if (value && std::holds_alternative<std::int64_t>(*value))
        return static_cast<double>(std::get<std::int64_t>(*value));
    return std::nullopt;
}

std::optional<std::string> textIn(const Fields& fields, std::string_view name) {
    const Value* value = find(fields, name);
    if (value && std::holds_alternative<std::string>(*value))
        return std::get<std::string>(*value);
    return std::nullopt;
}

bool flagIn(const Fields& fields, std::string_view name) {
    return integerIn(fields, name).value_or(0) != 0;
}

} // namespace halfcup::records
