// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"

#include <optional>

namespace halfcup::records {

/// Reading one field; nothing where it is absent or of another type. Whole numbers are read as reals too,
/// because other programs write 3.0 as 3.
[[nodiscard]] std::optional<std::int64_t> integerIn(const Fields& fields, std::string_view name);
[[nodiscard]] std::optional<double> realIn(const Fields& fields, std::string_view name);
[[nodiscard]] std::optional<std::string> textIn(const Fields& fields, std::string_view name);
[[nodiscard]] bool flagIn(const Fields& fields, std::string_view name);

template <typename T>
[[nodiscard]] Value valueOf(const std::optional<T>& value) {
    return value ? Value{*value} : Value{};
}

[[nodiscard]] inline Value valueOf(bool flag) {
    return Value{std::int64_t{flag ? 1 : 0}};
}

} // namespace halfcup::records
