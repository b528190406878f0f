// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "handbook/handbook.h"

#include <QString>

#include <string>

/// What a treatment's substance is called, and what was typed in place of one.
namespace halfcup::touch {

/// The handbook's name for what was given; the id itself where this version does not know it.
[[nodiscard]] QString substanceName(const std::string& id, const handbook::Handbook& handbook);
/// Not in the handbook: typed by the keeper, or not typed yet.
[[nodiscard]] bool isUnknownSubstance(const std::string& id, const handbook::Handbook& handbook);
/// The handbook's substance of that name, so that rotation knows it however it was typed; else the text
/// itself.
[[nodiscard]] std::string substanceId(const std::string& typed, const handbook::Handbook& handbook);
/// One sentence; empty where the handbook has none.
[[nodiscard]] std::string substanceHazard(const std::string& id, const handbook::Handbook& handbook);

} // namespace halfcup::touch
