// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The dates ahead as a calendar, as the Season page writes it, in English.
#include "records/moment.h"
#include "records/yard_records.h"

#include <span>
#include <string>

namespace halfcup::desk {

// on: the moment from whose day the year ahead is told, and the stamp of the entries.
std::string calendarOf(std::span<const records::YardRecords> yards, const records::Moment& on);

} // namespace halfcup::desk
