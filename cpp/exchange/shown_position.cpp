// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/shown_position.h"

#include "records/plain_number.h"

#include <array>
#include <charconv>
#include <cmath>
#include <numbers>

namespace halfcup::exchange {

namespace {

constexpr int blurDecimals = 2;
constexpr int exactDecimals = 6;

/// Rounding moves a place by up to half a step each way; a degree of latitude is at most 111.7 km (at the
/// poles), one of longitude 111.4 km times the cosine of the latitude (WGS 84).
double blurM(double latitudeDeg) {
    const double half = 0.5 * std::pow(10.0, -blurDecimals);
    return std::hypot(111'700.0 * half, 111'400.0 * half * std::cos(latitudeDeg * std::numbers::pi / 180.0));
}

/// As the decimal text of so many digits reads back, so that all formats show the same place.
double rounded(double value, int decimals) {
    std::array<char, 400> text; // the largest double has 309 digits before the point
    const auto written =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, decimals);
    const double back = records::readPlainNumber({text.data(), written.ptr}).value;
    return back == 0 ? 0.0 : back; // never -0
}

} // namespace

ShownPosition shownPosition(const records::Position& position, PositionDetail detail) {
    const bool exact = detail == PositionDetail::Exact;
    ShownPosition shown;
    shown.exact = exact;
    shown.decimals = exact ? exactDecimals : blurDecimals;
    shown.latitudeDeg = rounded(position.latitudeDeg, shown.decimals);
    shown.longitudeDeg = rounded(position.longitudeDeg, shown.decimals);
    shown.accuracyM = position.accuracyM;
    if (!exact)
        shown.accuracyM = std::ceil(blurM(shown.latitudeDeg) + position.accuracyM.value_or(0));
    return shown;
}

std::optional<ShownPosition> shownPosition(const records::PositionStamp& stamp,
                                           const std::optional<records::Position>& yardPosition,
                                           PositionDetail detail) {
    if (stamp.state != records::PositionState::Stamped)
        return std::nullopt;
    if (detail == PositionDetail::Blurred && yardPosition)
        return shownPosition(*yardPosition, detail);
    return shownPosition(stamp.position, detail);
}

} // namespace halfcup::exchange
