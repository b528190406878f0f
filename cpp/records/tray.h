// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/sample.h"

#include <optional>
#include <span>
#include <string>

/// The tray: jars scooped and not yet counted, told apart by what is written on them.
namespace halfcup::records {

/// More would not fit on a tailgate, and the first would be warm before the last is washed [convention].
inline constexpr int mostWaitingJars = 40;

/// Two labels a hurried hand cannot tell apart: blanks at the ends and the case of letters do not count.
[[nodiscard]] bool isSameLabel(std::string_view one, std::string_view other);

/// The jar in the tray that bears this label, other than the sample itself; nullptr where there is none.
[[nodiscard]] const Sample* jarWith(std::string_view label, std::span<const Sample> drafts,
                                    const RecordId& sampleId);

/// How many jars wait in the tray, the sample itself left out.
[[nodiscard]] int waitingJars(std::span<const Sample> drafts, const RecordId& sampleId = {});

/// A label that no jar in the tray bears: the colony's own, or the first free number from 1.
[[nodiscard]] std::string freeLabel(std::string_view colonyLabel, std::span<const Sample> drafts,
                                    const RecordId& sampleId);

} // namespace halfcup::records
