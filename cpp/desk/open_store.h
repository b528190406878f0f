// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// The keeper's database for a program without a screen.
#include "desk/verb.h"
#include "store/store.h"

#include <memory>
#include <string>

namespace halfcup::desk {

// Opens a database that is there. Throws std::runtime_error with a sentence: not there, not ours, newer, held
// by another program.
std::unique_ptr<store::Store> openStore(const std::string& path);
// The same, but makes one where there is none, readable by its owner alone.
std::unique_ptr<store::Store> openOrMakeStore(const std::string& path);

// The system's clock, UTC milliseconds.
std::int64_t utcNowMs();

// A colony and where it stands.
struct FoundColony {
    records::YardRecords yard;
    records::Colony colony;
};

// By id, or by label; inYard (a name, may be empty) parts colonies of one label. Throws std::runtime_error:
// none, or several.
FoundColony findColony(store::Store& store, const std::string& colony, const std::string& inYard);

// All yards as they were kept at the end of the day: washes begun later are left out, and what else is dated
// later is told apart by its day.
std::vector<records::YardRecords> yardsOn(store::Store& store, const records::Date& day);

// "2026-05-18", or the system's local date where text is empty. Throws UsageError.
records::Date dayFrom(const std::string& option, const std::string& text);

// Noon of the day in the system's time zone, as the app on this machine would have it: whether a colony was
// made today or yesterday is a matter of the zone.
records::Moment noonOn(const records::Date& day);

} // namespace halfcup::desk
