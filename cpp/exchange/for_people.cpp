// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/for_people.h"

namespace halfcup::exchange {

records::Yard Names::yard(const records::RecordId& id) const {
    const auto found = yards.find(id);
    if (found != yards.end())
        return found->second;
    records::Yard unknown;
    unknown.id = id;
    return unknown;
}

std::string Names::label(const records::RecordId& colonyId) const {
    const auto found = colonies.find(colonyId);
    return found == colonies.end() ? std::string() : found->second.label;
}

SampleRow Names::row(const records::Sample& sample) const {
    const records::Yard where = yard(sample.yardId);
    return {sample, label(sample.colonyId), where.name, where.position};
}

std::string substanceName(const handbook::Handbook& handbook, const std::string& id) {
    const handbook::Entry* entry = handbook.find(id, "name");
    return entry && !entry->words.empty() ? entry->words : id;
}

} // namespace halfcup::exchange
