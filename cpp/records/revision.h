// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/count.h"
#include "records/fields.h"
#include "records/record_id.h"

#include <string>
#include <vector>

namespace halfcup::records {

/// One value that a field was given. Stamps are kept as text (toText of a RevisionStamp): the texts sort as
/// the stamps do.
struct Revision {
    std::string field;
    std::string stamp;
    Value value;

    friend bool operator==(const Revision&, const Revision&) = default;
};

/// One act of counting with the stamp that tells it from all others, on whatever phone it was made. The
/// event's number is not part of it: acts are numbered by their stamps, wherever they come together.
struct StampedCount {
    std::string stamp;
    CountEvent event;

    friend bool operator==(const StampedCount&, const StampedCount&) = default;
};

/// Some or all of what has happened to one record: what travels from phone to phone. All phones that hold the
/// same parts hold the same records, whatever the order in which the parts came.
struct RecordPart {
    RecordId id;
    std::string kind; // nameOf(Kind), or a word that only a newer version knows
    std::vector<Revision> revisions;
    std::vector<StampedCount> counts; // of a sample

    friend bool operator==(const RecordPart&, const RecordPart&) = default;
};

} // namespace halfcup::records
