// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "touch/services.h"

#include <QString>

#include <string_view>

namespace halfcup::touch::plan {

/// What a field is called: "label", "treat line". A field that only a newer version knows: its own name.
[[nodiscard]] QString fieldName(std::string_view field);

/// Whether a keeper types or picks the field: what the app works out follows from those.
[[nodiscard]] bool isTyped(std::string_view field);

/// A kept value as a keeper reads it: "nothing" for none, the name of what an id stands for, a day for a
/// time; cleaned, and cut where it is long. Reads the store; throws store::StoreError.
[[nodiscard]] QString fieldValue(Services& services, records::Kind kind, std::string_view field,
                                 const records::Value& value);

} // namespace halfcup::touch::plan
