// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/likely_same.h"

#include "place/geometry.h"
#include "place/yards.h"

#include <QList>
#include <QString>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <tuple>

namespace halfcup::place {

using records::Colony;
using records::Kind;
using records::RecordId;
using records::Yard;

namespace {

std::pair<RecordId, RecordId> ordered(const RecordId& a, const RecordId& b) {
    return {std::min(a, b), std::max(a, b)};
}

template <typename Record>
std::vector<const Record*> eligible(std::span<const Record> records) {
    std::vector<const Record*> left;
    for (const Record& record : records)
        if (!record.removed && record.sameAs.empty() && !record.id.empty())
            left.push_back(&record);
    std::ranges::sort(left, {}, &Record::id);
    const auto sameId = [](const Record* a, const Record* b) { return a->id == b->id; };
    left.erase(std::unique(left.begin(), left.end(), sameId), left.end());
    return left;
}

std::optional<Place> placeOf(const Yard& yard) {
    if (!yard.position)
        return std::nullopt;
    const Place place{yard.position->latitudeDeg, yard.position->longitudeDeg};
    return isPlace(place) ? std::optional{place} : std::nullopt;
}

double reachOf(const Yard& yard) {
    return std::isfinite(yard.reachM) && yard.reachM > 0 ? yard.reachM : kYardReachM;
}

std::optional<LikelyPair> pairOf(const Yard& one, const std::u32string& oneName, const Yard& other,
                                 const std::u32string& otherName) {
    LikelyPair pair{Kind::Yard, one.id, other.id, {}, {}, {}, {}};
    pair.namedAlike = !oneName.empty() && oneName == otherName;
    const auto here = placeOf(one);
    const auto there = placeOf(other);
    if (here && there) {
        pair.distanceM = distanceM(*here, *there);
        pair.near = *pair.distanceM <= std::min({reachOf(one), reachOf(other), kLargestSameM});
    }
    return pair.namedAlike || pair.near ? std::optional{pair} : std::nullopt;
}

/// Small is sure.
int rankOf(const LikelyPair& pair) {
    if (pair.kind == Kind::Colony)
        return pair.oneYard ? 4 : 5;
    if (pair.namedAlike && pair.near)
        return 0;
    if (pair.near)
        return 2;
    return pair.distanceM ? 3 : 1;
}

constexpr double unknown = std::numeric_limits<double>::infinity();

bool surer(const LikelyPair& a, const LikelyPair& b) {
    const auto sureness = [](const LikelyPair& pair) {
        return std::pair(rankOf(pair), pair.distanceM.value_or(unknown));
    };
    if (sureness(a) != sureness(b))
        return sureness(a) < sureness(b);
    return std::tie(a.one, a.other) < std::tie(b.one, b.other);
}

struct Labelled {
    const Colony* colony;
    std::u32string label;
};

} // namespace

std::u32string comparableName(const std::string& name) {
    const auto letters =
        QString::fromStdString(name).normalized(QString::NormalizationForm_KC).toCaseFolded().toUcs4();
    std::u32string kept;
    bool gap = false;
    for (const auto letter : letters) {
        if (!QChar::isLetterOrNumber(letter) && !QChar::isMark(letter)) {
            gap = true;
            continue;
        }
        if (gap && !kept.empty() && QChar::isNumber(letter) && QChar::isNumber(kept.back()))
            kept.push_back(U' ');
        gap = false;
        kept.push_back(static_cast<char32_t>(letter));
    }
    return kept;
}

std::vector<LikelyPair> likelySame(std::span<const Yard> yards, std::span<const Colony> colonies,
                                   const ApartIds& apart) {
    std::vector<LikelyPair> pairs;
    const auto places = eligible(yards);
    std::vector<std::u32string> names;
    for (const Yard* yard : places)
        names.push_back(comparableName(yard->name));
    for (std::size_t i = 0; i < places.size(); ++i)
        for (std::size_t j = i + 1; j < places.size(); ++j) {
            if (places[i]->demo != places[j]->demo || apart.contains({places[i]->id, places[j]->id}))
                continue;
            if (const auto pair = pairOf(*places[i], names[i], *places[j], names[j]))
                pairs.push_back(*pair);
        }

    std::map<RecordId, std::vector<Labelled>> standing; // by yard
    for (const Yard* yard : places)
        standing[yard->id];
    for (const Colony* colony : eligible(colonies))
        if (const auto yard = standing.find(colony->yardId); yard != standing.end())
            if (auto label = comparableName(colony->label); !label.empty())
                yard->second.push_back({colony, std::move(label)});
    const auto ask = [&](const Labelled& a, const Labelled& b, bool oneYard) {
        const auto ids = ordered(a.colony->id, b.colony->id);
        if (a.label == b.label && a.colony->demo == b.colony->demo && !apart.contains(ids))
            pairs.push_back({Kind::Colony, ids.first, ids.second, true, false, {}, oneYard});
    };
    for (const auto& [yard, there] : standing)
        for (std::size_t i = 0; i < there.size(); ++i)
            for (std::size_t j = i + 1; j < there.size(); ++j)
                ask(there[i], there[j], true);
    const auto yardPairs = pairs.size();
    for (std::size_t k = 0; k < yardPairs; ++k)
        if (const auto [kind, one, other] = std::tuple(pairs[k].kind, pairs[k].one, pairs[k].other);
            kind == Kind::Yard)
            for (const Labelled& a : standing.at(one))
                for (const Labelled& b : standing.at(other))
                    ask(a, b, false);
    std::ranges::sort(pairs, surer);
    return pairs;
}

} // namespace halfcup::place
