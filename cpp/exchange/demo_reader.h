// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/colony_event.h"
#include "records/count.h"
#include "records/moment.h"
#include "records/sample.h"
#include "records/treatment.h"
#include "records/yard.h"

#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace halfcup::exchange {

/// A sample of the demo with the acts of counting behind it.
struct DemoSample {
    records::Sample sample;
    std::vector<records::CountEvent> counts; // numbered from 1, first rinse then second
};

/// The invented season of demo-data/season.json. Every record is flagged as demo.
struct Demo {
    records::Moment today; // when the scenario's story is told
    std::vector<records::Yard> yards;
    std::vector<records::Colony> colonies;
    std::vector<DemoSample> samples; // oldest first
    std::vector<records::ColonyEvent> events;
    std::vector<records::GivenTreatment> treatments;
    int shiftedYears = 0; // what was added to every date of the file
};

struct DemoOptions {
    /// Washes that ended later, and what was done on a later day, are left out. Nothing: all of them.
    std::optional<std::int64_t> untilUtcMs;
    /// Moves all dates by whole years, so that the scenario's today is the latest one not after this moment.
    /// 29 February becomes 28 February where the year has none. Nothing: the dates of the file.
    std::optional<records::Moment> fitTo;
};

/// The file cannot be used. what() says where and why in one sentence: "Line 12: ..." where it is no JSON,
/// "samples[3].mites: ..." where a field is missing or wrong.
class DemoError : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// The text of demo-data/season.json, compiled in.
[[nodiscard]] std::string_view builtInDemo();

/// Reads the text of a demo file (UTF-8 JSON; its fields are described in demo-data/README.md). Answers are
/// not in the file: each is computed here from the count, the scoop and the yard's lines, as the app does it.
/// Unknown fields are errors too: a slip in a field's name must not become a default. Throws DemoError.
[[nodiscard]] Demo readDemo(std::string_view json, const DemoOptions& options = {});

} // namespace halfcup::exchange
