// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/exchange_line.h"
#include "exchange/line_sum.h"

#include "records/clean_text.h"
#include "records/moment.h"
#include "records/revision_stamp.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace halfcup::exchange {

using nlohmann::json;
using namespace records;

namespace {

constexpr int deepest = 4; // line, list of revisions, revision, its fields
constexpr std::string_view beforeSum = R"(,"sum":")";
constexpr std::size_t sumLength = beforeSum.size() + 8 + 2; // with the digits, the quote and the brace

/// Carried up to readLine().
struct Trouble {
    LineTrouble what;
    std::string field = {};
};

bool hasItsSum(std::string_view line) {
    if (line.size() < sumLength + 1 || !line.ends_with("\"}"))
        return false;
    const std::string_view body = line.substr(0, line.size() - sumLength);
    const std::string_view tail = line.substr(body.size());
    return tail.starts_with(beforeSum) && tail.substr(beforeSum.size(), 8) == lineSum(body);
}

/// Looked at before anything is built: what nests deeper than the format is not worth a parser's time.
bool isTooDeep(std::string_view line) {
    int depth = 0;
    bool inText = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (inText) {
            if (c == '\\')
                ++i;
            else if (c == '"')
                inText = false;
        } else if (c == '"') {
            inText = true;
        } else if (c == '{' || c == '[') {
            if (++depth > deepest)
                return true;
        } else if (c == '}' || c == ']') {
            --depth;
        }
    }
    return false;
}

const json* member(const json& object, const char* name) {
    const auto found = object.find(name);
    return found == object.end() ? nullptr : &*found;
}

std::string textMember(const json& object, const char* name) {
    const json* value = member(object, name);
    return value && value->is_string() ? value->get<std::string>() : std::string();
}

std::optional<std::int64_t> wholeIn(const json& value) {
    if (!value.is_number_integer() ||
        (value.is_number_unsigned() &&
         value.get<std::uint64_t>() > static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max())))
        return std::nullopt;
    return value.get<std::int64_t>();
}

std::int64_t wholeMember(const json& object, const char* name, std::int64_t low, std::int64_t high,
                         Trouble otherwise) {
    const json* value = member(object, name);
    const auto whole = value ? wholeIn(*value) : std::nullopt;
    if (!whole || *whole < low || *whole > high)
        throw otherwise;
    return *whole;
}

bool isWord(std::string_view text, std::size_t longest) {
    return !text.empty() && text.size() <= longest && std::ranges::all_of(text, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
    });
}

bool isDevice(std::string_view text) {
    return !text.empty() && text.size() <= 64 && std::ranges::all_of(text, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
}

bool isStamp(const std::string& text, std::int64_t latestMs) {
    const auto stamp = parseRevisionStamp(text);
    return stamp && stamp->utcMs <= latestMs && isDevice(stamp->device);
}

std::string stampMember(const json& object, std::int64_t latestMs) {
    std::string stamp = object.is_object() ? textMember(object, "at") : std::string();
    if (!isStamp(stamp, latestMs))
        throw Trouble{LineTrouble::BadStamp};
    return stamp;
}

Value valueOf(const json& value, const std::string& field) {
    switch (value.type()) {
    case json::value_t::null:
        return {};
    case json::value_t::string:
        return value.get<std::string>();
    case json::value_t::number_float:
        return value.get<double>();
    case json::value_t::number_integer:
    case json::value_t::number_unsigned:
        if (const auto whole = wholeIn(value))
            return *whole;
        break;
    default:
        break;
    }
    throw Trouble{LineTrouble::BadField, field};
}

void readRevisions(const json& list, std::int64_t latestMs, RecordPart& part) {
    const auto kind = kindFrom(part.kind);
    if (!list.is_array())
        throw Trouble{LineTrouble::Damaged};
    for (const json& each : list) {
        const std::string stamp = stampMember(each, latestMs);
        const json* fields = member(each, "fields");
        if (!fields || !fields->is_object())
            throw Trouble{LineTrouble::Damaged};
        for (const auto& [name, value] : fields->items()) {
            if (!isWord(name, 64))
                throw Trouble{LineTrouble::BadField, cleanText(name.substr(0, 64))};
            Revision revision{name, stamp, valueOf(value, name)};
            const bool known = kind && typeOf(*kind, name);
            if (known && !fits(revision.value, *kind, name))
                throw Trouble{LineTrouble::BadField, name};
            part.revisions.push_back(std::move(revision));
        }
    }
}

void readCounts(const json& list, std::int64_t latestMs, RecordPart& part) {
    if (!list.is_array() || part.kind != nameOf(Kind::Sample))
        throw Trouble{LineTrouble::BadCount};
    for (const json& each : list) {
        StampedCount count;
        count.stamp = stampMember(each, latestMs);
        const auto change = changeFrom(textMember(each, "change"));
        if (!change)
            throw Trouble{LineTrouble::BadCount};
        count.event.change = *change;
        count.event.rinse = static_cast<int>(wholeMember(each, "rinse", 1, 2, {LineTrouble::BadCount}));
        count.event.atUtcMs = wholeMember(each, "ms", 0, endOfTimeMs, {LineTrouble::BadCount});
        if (*change == CountEvent::Change::Typed)
            count.event.typed = wholeMember(each, "typed", 0, largestCount, {LineTrouble::BadCount});
        part.counts.push_back(std::move(count));
    }
}

RecordPart partIn(const json& object, std::int64_t latestMs) {
    RecordPart part;
    part.kind = textMember(object, "kind");
    part.id = textMember(object, "id");
    if (!isWord(part.kind, 40))
        throw Trouble{LineTrouble::Damaged};
    if (!isRecordId(part.id))
        throw Trouble{LineTrouble::BadId};
    if (const json* revisions = member(object, "revisions"))
        readRevisions(*revisions, latestMs, part);
    if (const json* counts = member(object, "counts"))
        readCounts(*counts, latestMs, part);
    return part;
}

int versionMember(const json& object, const char* name) {
    return static_cast<int>(wholeMember(object, name, 1, 1'000'000, {LineTrouble::BadField, name}));
}

ExchangeHeader headerIn(const json& object, std::int64_t latestMs) {
    ExchangeHeader header;
    if (textMember(object, "halfcup") != "exchange")
        throw Trouble{LineTrouble::BadField, "halfcup"};
    header.format = versionMember(object, "format");
    header.needs = versionMember(object, "needs");
    header.device = textMember(object, "device");
    if (!isDevice(header.device)) // it may come to name a file: no path, no dots
        throw Trouble{LineTrouble::BadField, "device"};
    // The rest only helps; what makes no sense in it is left out.
    header.written = textMember(object, "written");
    if (!parseRfc3339(header.written))
        header.written.clear();
    if (const json* seen = member(object, "seen"); seen && seen->is_object())
        for (const auto& [device, stamp] : seen->items())
            if (isDevice(device) && stamp.is_string() && isStamp(stamp.get<std::string>(), latestMs))
                header.seen[device] = stamp.get<std::string>();
    if (const json* counts = member(object, "counts"); counts && counts->is_object())
        for (const auto& [kind, count] : counts->items())
            if (const auto whole = wholeIn(count); whole && *whole >= 0 && isWord(kind, 40))
                header.counts[kind] = *whole;
    return header;
}

ExchangeEnd endIn(const json& object) {
    ExchangeEnd end;
    end.lines =
        wholeMember(object, "lines", 1, std::numeric_limits<std::int64_t>::max(), {LineTrouble::Damaged});
    end.sha256 = textMember(object, "end");
    return end;
}

} // namespace

std::int64_t latestStampMs(std::int64_t nowUtcMs) {
    constexpr std::int64_t newYear2026Ms = 1'767'225'600'000;
    constexpr std::int64_t ahead = std::int64_t{25} * 366 * 24 * 3'600'000;
    return std::min(std::max(nowUtcMs, newYear2026Ms), endOfTimeMs - ahead) + ahead;
}

ReadLine readLine(std::string_view line, std::int64_t latestMs) {
    ReadLine read;
    if (line.size() > longestLine) {
        read.trouble = LineTrouble::TooLong;
        return read;
    }
    if (isTooDeep(line)) {
        read.trouble = LineTrouble::TooDeep;
        return read;
    }
    if (!hasItsSum(line))
        return read;
    const json object = json::parse(line.begin(), line.end(), nullptr, false);
    if (!object.is_object())
        return read;
    try {
        if (object.contains("halfcup"))
            read.header = headerIn(object, latestMs);
        else if (object.contains("end"))
            read.end = endIn(object);
        else
            read.part = partIn(object, latestMs);
    } catch (const Trouble& trouble) {
        read.trouble = trouble.what;
        read.field = trouble.field;
    }
    return read;
}

} // namespace halfcup::exchange
