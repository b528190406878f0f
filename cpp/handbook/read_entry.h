// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// From the JSON of one entry to an Entry, with everything checked that assets/handbook/schema.json asks for:
// the app reads its files without a schema validator, and must not take a hole for a value.
#include "handbook/handbook.h"

#include <nlohmann/json_fwd.hpp>

namespace halfcup::handbook {

// Throws HandbookError; `file` is what the sentence calls the file, `place` the entry's place in it from 1.
Entry readEntry(const nlohmann::json& json, const std::string& file, std::size_t place,
                const std::string& topic);

// A text field that has to be there and must not be blank; throws HandbookError.
std::string readText(const nlohmann::json& json, const char* field, const std::string& where);

} // namespace halfcup::handbook
