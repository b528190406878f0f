// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"

#include <string>
#include <string_view>

namespace halfcup::records {

/// The text as it may be shown: valid UTF-8, without control characters (line breaks and tabs stay) and
/// without the invisible marks that turn the direction of writing (U+061C, U+200E, U+200F, U+202A to U+202E,
/// U+2066 to U+2069), with which a name from a stranger's file could be made to read as another. Bytes that
/// are no UTF-8 become U+FFFD.
[[nodiscard]] std::string cleanText(std::string_view text);

/// The value with its text cleaned; any other value as it is.
[[nodiscard]] Value cleanValue(Value value);

} // namespace halfcup::records
