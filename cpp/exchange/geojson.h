// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/samples_csv.h"

#include <optional>

namespace halfcup::exchange {

/// A yard for a map, with the newest wash of any of its colonies.
struct YardRow {
    records::Yard yard;
    int colonies = 0; // that live in it
    std::optional<records::Sample> lastWash;
};

/// Writes yards and samples as one FeatureCollection of points by RFC 7946: longitude before latitude, WGS
/// 84, UTF-8, no "crs" member (the RFC has none). What has no position has the geometry null.
///
/// Properties of all: kind ("yard", "sample"), demo, position_is ("exact", "blurred", "none"),
/// position_accuracy_m. Of yards: name, colonies, last_wash_on, last_load_q05_per_100, _q50_, _q95_,
/// last_standing. Of samples: yard, colony, method, sampled_on, mites, load_*_per_100, standing.
/// Figures that are not there are null. The id of a feature is that of its record.
///
/// Holds one feature in memory. Write yards first, then samples, then end(). Bytes that are no UTF-8 become
/// replacement characters; control characters are escaped as JSON has it.
class GeoJsonWriter {
public:
    GeoJsonWriter(ByteSink sink, PositionDetail detail);

    void yard(const YardRow& row);
    void sample(const SampleRow& row);
    void end();

private:
    void feature(const std::string& text);

    ByteSink m_sink;
    PositionDetail m_detail;
    bool m_any = false;
};

} // namespace halfcup::exchange
