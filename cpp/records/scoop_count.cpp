// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/scoop_count.h"

#include "records/field_access.h"
#include "records/sample.h"

#include <cmath>
#include <vector>

namespace halfcup::records {

namespace {

constexpr double oddDeviations = 4;

bool isAlike(const ScoopCount& count, double volumeMl, Packing packing) {
    return !count.removed && count.bees > 0 && count.packing == packing &&
           std::abs(count.volumeMl / volumeMl - 1) <= alikeVolume;
}

std::vector<double> alike(std::span<const ScoopCount> counts, double volumeMl, Packing packing) {
    std::vector<double> bees;
    for (const ScoopCount& count : counts)
        if (isAlike(count, volumeMl, packing))
            bees.push_back(count.bees);
    return bees;
}

} // namespace

std::optional<mites::BeesInScoop> ownScoops(std::span<const ScoopCount> counts, double volumeMl,
                                            Packing packing, const BookDensity& book) {
    const std::vector<double> bees = alike(counts, volumeMl, packing);
    if (bees.empty())
        return std::nullopt;
    return mites::scoopFromCounts(volumeMl, bees, book.of(packing));
}

int scoopsAlike(std::span<const ScoopCount> counts, double volumeMl, Packing packing) {
    return static_cast<int>(alike(counts, volumeMl, packing).size());
}

bool isOdd(double bees, std::span<const ScoopCount> others, double volumeMl, Packing packing,
           const BookDensity& book) {
    if (!(bees > 0))
        return true;
    const mites::BeesInScoop expected =
        mites::scoopFromCounts(volumeMl, alike(others, volumeMl, packing), book.of(packing));
    const double sd = std::hypot(expected.ownSd, expected.sharedSd);
    return std::abs(std::log(bees / expected.median)) > oddDeviations * sd;
}

Fields toFields(const ScoopCount& count) {
    Fields f;
    f["sample_id"] = count.sampleId.empty() ? Value{} : Value{count.sampleId};
    f["volume_ml"] = count.volumeMl;
    f["packing"] = std::string(nameOf(count.packing));
    f["bees"] = count.bees;
    f["counted_at_ms"] = count.countedAtMs;
    f["odd"] = valueOf(count.odd);
    f["demo"] = valueOf(count.demo);
    f["removed"] = valueOf(count.removed);
    return f;
}

ScoopCount scoopCountFrom(const RecordId& id, const Fields& fields) {
    ScoopCount count;
    count.id = id;
    count.sampleId = textIn(fields, "sample_id").value_or("");
    count.volumeMl = realIn(fields, "volume_ml").value_or(count.volumeMl);
    count.packing = textIn(fields, "packing") == std::string(nameOf(Packing::Settled)) ? Packing::Settled
                                                                                       : Packing::Loose;
    count.bees = realIn(fields, "bees").value_or(0);
    count.countedAtMs = integerIn(fields, "counted_at_ms").value_or(0);
    count.odd = flagIn(fields, "odd");
    count.demo = flagIn(fields, "demo");
    count.removed = flagIn(fields, "removed");
    return count;
}

} // namespace halfcup::records
