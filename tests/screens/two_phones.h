// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "screens.h"
#include "store/store.h"

#include <QTemporaryDir>

namespace halfcup::screens {

/// A second phone: a database of its own, with another clock and other chance. Both phones make the yard by
/// the ford with a colony 4, before they meet: this one on 5 June 2026, the other one a day later, 40 m off.
class TwoPhones {
public:
    explicit TwoPhones(Stage& stage);

    store::Store& here() { return m_stage.program().store(); }
    store::Store& there() { return *m_there; }
    /// The clock of the other phone goes on.
    void wait(std::int64_t ms) { m_thereMs += ms; }
    /// What one holds is taken in by the other.
    void bringHere();
    void bringThere();

    records::Yard ourYard, theirYard;
    records::Colony ourColony, theirColony;
    records::Sample ourWash, theirWash;

private:
    Stage& m_stage;
    QTemporaryDir m_folder;
    std::int64_t m_thereMs = 0;
    std::uint64_t m_chance = 99;
    std::unique_ptr<store::Store> m_there;
};

} // namespace halfcup::screens
