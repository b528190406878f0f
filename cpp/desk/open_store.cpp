// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/open_store.h"

#include "desk/table.h"

#include <chrono>
#include <ctime>
#include <filesystem>
#include <map>
#include <random>
#include <stdexcept>

namespace halfcup::desk {

namespace {

std::string sentenceFor(store::StoreError::Kind kind) {
    using Kind = store::StoreError::Kind;
    switch (kind) {
    case Kind::FolderMissing:
        return "its folder cannot be looked into.";
    case Kind::NotAllowed:
        return "there is no permission to open or write it.";
    case Kind::NotOurs:
        return "it is not a database of Halfcup.";
    case Kind::Newer:
        return "it was written by a newer Halfcup.";
    case Kind::Damaged:
        return "it is damaged.";
    case Kind::DiskFull:
        return "the disk is full.";
    case Kind::Busy:
        return "another program holds it.";
    case Kind::CopyFailed:
        return "it is of an older version, and no copy could be made before bringing it up to date.";
    case Kind::Failed:
        break;
    }
    return "SQLite cannot use it.";
}

store::StoreHost host() {
    return {utcNowMs, [] {
                static std::random_device device;
                return (std::uint64_t{device()} << 32) | device();
            }};
}

} // namespace

std::int64_t utcNowMs() {
    using namespace std::chrono;
    return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
}

std::unique_ptr<store::Store> openStore(const std::string& path) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(path, error))
        throw std::runtime_error("There is no database " + shown(path) + ".");
    return openOrMakeStore(path);
}

std::unique_ptr<store::Store> openOrMakeStore(const std::string& path) {
    std::error_code error;
    if (std::filesystem::exists(path, error) && !std::filesystem::is_regular_file(path, error))
        throw std::runtime_error("There is no database " + shown(path) +
                                 ", but something else of that name.");
    try {
        return std::make_unique<store::Store>(path, host());
    } catch (const store::StoreError& trouble) {
        throw std::runtime_error("The database " + shown(path) +
                                 " cannot be used: " + sentenceFor(trouble.kind()));
    }
}

FoundColony findColony(store::Store& store, const std::string& colony, const std::string& inYard) {
    std::vector<FoundColony> found;
    bool yardSeen = false;
    for (const records::Yard& yard : store.yards()) {
        if (!inYard.empty() && yard.name != inYard)
            continue;
        yardSeen = true;
        for (const records::Colony& each : store.colonies(yard.id))
            if (each.id == colony || each.label == colony)
                found.push_back({*store.yardRecords(yard.id), each});
    }
    if (!yardSeen)
        throw std::runtime_error(inYard.empty() ? "There is no yard in this database."
                                                : "There is no yard " + shown(inYard) + ".");
    if (found.empty())
        throw std::runtime_error("There is no colony " + shown(colony) + ".");
    if (found.size() > 1)
        throw std::runtime_error("There are " + std::to_string(found.size()) + " colonies " + shown(colony) +
                                 ": name the yard with --in, or give the id.");
    return found.front();
}

std::vector<records::YardRecords> yardsOn(store::Store& store, const records::Date& day) {
    std::vector<records::YardRecords> all;
    for (const records::Yard& yard : store.yards()) {
        records::YardRecords kept = *store.yardRecords(yard.id);
        std::map<records::RecordId, records::Sample> latest;
        for (records::Sample& wash : store.samplesOfYard(yard.id, 0)) // oldest first
            if (records::localDate({wash.startedAtMs, wash.utcOffsetMinutes}) <= day)
                latest.insert_or_assign(wash.colonyId, std::move(wash));
        kept.latestWashes.clear();
        for (auto& [colonyId, wash] : latest)
            kept.latestWashes.push_back(std::move(wash));
        all.push_back(std::move(kept));
    }
    return all;
}

records::Date dayFrom(const std::string& option, const std::string& text) {
    if (text.empty()) {
        const std::time_t now = std::time(nullptr);
        std::tm local{};
        localtime_r(&now, &local);
        return {local.tm_year + 1900, local.tm_mon + 1, local.tm_mday};
    }
    const auto day = records::parseIsoDate(text);
    if (!day)
        throw UsageError(option + " " + shown(text) + " is not a day like 2026-05-18.");
    return *day;
}

records::Moment noonOn(const records::Date& day) {
    std::tm local{};
    local.tm_year = day.year - 1900;
    local.tm_mon = day.month - 1;
    local.tm_mday = day.day;
    local.tm_hour = 12;
    local.tm_isdst = -1; // the zone knows
    const std::time_t seconds = std::mktime(&local);
    return {std::int64_t{seconds} * 1000, static_cast<int>(local.tm_gmtoff / 60)};
}

} // namespace halfcup::desk
