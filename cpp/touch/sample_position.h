// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/sample.h"
#include "touch/services.h"

#include <vector>

namespace halfcup::touch {

/// Where samples were taken: asks the receiver about the moment of the scoop, goes on without it, and keeps
/// positions apart when the next jar is scooped before the last one's position came.
class SamplePosition {
public:
    explicit SamplePosition(Services& services)
        : m_services(services) {}

    /// "Position within 6 m, 8 fixes", "No position: ...".
    [[nodiscard]] QString line(const records::PositionStamp& stamp) const;

    /// The receiver should run now: for a fix that is there at the moment of the sample, or shortly after it.
    [[nodiscard]] bool isWanted(const records::Sample& sample, const records::Method& method) const;

    /// True where the sample now has its position, or a reason why it has none. lastChance: no waiting any
    /// more.
    bool resolve(records::Sample& sample, bool lastChance);

    /// The sample is left before its position came. What is known by now is the place: the keeper stood there
    /// a moment ago. Where nothing is known yet, a position that comes soon is its. True where it changed.
    bool park(records::Sample& sample);

    /// A position came, or will not come: it is kept with the samples left behind. current: the sample at
    /// hand, which is seen to by itself. lastChance: the keeper goes to another hive, whose position is not
    /// theirs; where none came by now, they have none.
    void stampParked(const records::RecordId& current, bool lastChance = false);

private:
    Services& m_services;
    std::vector<records::RecordId> m_parked;
};

} // namespace halfcup::touch
