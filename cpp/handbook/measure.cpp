// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "handbook/measure.h"

namespace halfcup::handbook {

std::vector<Measure> measures(const Handbook& handbook) {
    std::vector<Measure> all;
    for (const std::string& id : handbook.subjects("measures")) {
        Measure one;
        one.id = id;
        one.name = handbook.at(id + "/name").words;
        one.does = handbook.at(id + "/does").words;
        one.needs = handbook.at(id + "/needs").words;
        if (const Entry* caution = handbook.find(id, "caution"))
            one.caution = caution->words;
        all.push_back(std::move(one));
    }
    return all;
}

} // namespace halfcup::handbook
