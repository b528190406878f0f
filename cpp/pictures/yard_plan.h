// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "mites/standing.h"
#include "pictures/legend.h"
#include "pictures/plan_frame.h"

#include <QString>

#include <optional>
#include <vector>

namespace halfcup::pictures {

/// A hive on the plan of its yard.
struct PlannedHive {
    QString key;                                  // whose; the spot's key, "" never
    QString label;                                // what is painted on it
    std::optional<mites::Standing> standing = {}; // nothing: not washed
    std::optional<records::Stand> stand = {};     // nothing, or what canStand() refuses: not placed
    bool fromPositions = false;                   // not put there by the keeper

    friend bool operator==(const PlannedHive&, const PlannedHive&) = default;
};

/// The hives of a yard where they stand, north up: a square with the mark of its standing for each. No map,
/// no network.
struct YardPlan {
    std::vector<PlannedHive> hives = {}; // in the order in which they are listed
    bool feet = false;                   // the scale bar's unit; else metres
    QString picked = {};                 // key of the hive that is told of, or moved
    /// The ground that is shown; nothing: that of the hives. While hives are moved it is kept, so that the
    /// plan does not slide away under the finger. Hives outside of it are left out.
    std::optional<PlanBounds> ground = {};

    friend bool operator==(const YardPlan&, const YardPlan&) = default;
};

/// The ground that the placed hives take; nothing where none is placed.
[[nodiscard]] std::optional<PlanBounds> groundOf(const YardPlan& plan);

/// As wide as the sheet and as high as the plan needs: the drawing's size says how high, the sheet's own
/// height does not matter. Hives that stand closer than their marks are moved a little apart, with a line to
/// a dot where they stand. What is not placed is listed in a row under the plan. Spots: the hives' marks, in
/// the row too.
[[nodiscard]] Drawing drawYardPlan(const YardPlan& plan, const Sheet& sheet);
/// Where things lie in that drawing: metres as units, and the piece of it that is the ground (empty where
/// none is shown).
[[nodiscard]] PlanFrame frameOf(const YardPlan& plan, const Sheet& sheet);
[[nodiscard]] QRectF areaOf(const YardPlan& plan, const Sheet& sheet);

/// Only what this plan shows.
[[nodiscard]] Legend legendOf(const YardPlan& plan);
/// How far the yard reaches, which hives have which standing, and which are not on the plan.
[[nodiscard]] QString sentenceOf(const YardPlan& plan);
/// "over", "close", "under", "can't tell", "not washed".
[[nodiscard]] QString wordOf(std::optional<mites::Standing> standing);

} // namespace halfcup::pictures
