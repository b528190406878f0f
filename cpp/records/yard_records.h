// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_event.h"
#include "records/sample.h"
#include "records/treatment.h"
#include "records/yard.h"

#include <vector>

namespace halfcup::records {

/// What is kept of one yard, as far as it decides what is due there and what fits.
struct YardRecords {
    Yard yard;
    std::vector<Colony> colonies;           // that stand in it and are not removed
    std::vector<ColonyEvent> events;        // of these colonies, and of others merged into them
    std::vector<GivenTreatment> treatments; // given in the yard or to a colony that stands there now
    std::vector<Sample> latestWashes;       // the newest finished one of each colony
};

} // namespace halfcup::records
