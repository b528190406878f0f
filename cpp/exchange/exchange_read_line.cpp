// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/exchange_line.h"
#include "exchange/line_sum.h"

#include "records/clean_text.h"
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
constexpr std::int64_t endOfTimeMs = std::int64_t{1} << 48; // as in a record's id

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

std::int64_t wholeMember(const json& object, const char* name, std::int64_t low, std::int64_t high) {
    const json* value = member(object, name);
    const auto whole = value ? wholeIn(*value) : std::nullopt;
    if (!whole || *whole < low || *whole > high)
        throw Trouble{LineTrouble::BadCount};
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

bool isStamp(const std::string& text) {
    const auto stamp = parseRevisionStamp(text);
    return stamp && stamp->utcMs < endOfTimeMs && isDevice(stamp->device);
}

std::string stampMember(const json& object) {
    std::string stamp = object.is_object() ? textMember(object, "at") : std::string();
    if (!isStamp(stamp))
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

void readRevisions(const json& list, RecordPart& part) {
    const auto kind = kindFrom(part.kind);
    if (!list.is_array())
        throw Trouble{LineTrouble::Damaged};
    for (const json& each : list) {
        const std::string stamp = stampMember(each);
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

void readCounts(const json& list, RecordPart& part) {
    if (!list.is_array() || part.kind != nameOf(Kind::Sample))
        throw Trouble{LineTrouble::BadCount};
    for (const json& each : list) {
        StampedCount count;
        count.stamp = stampMember(each);
        const auto change = changeFrom(textMember(each, "change"));
        if (!change)
            throw Trouble{LineTrouble::BadCount};
        count.event.change = *change;
        count.event.rinse = static_cast<int>(wholeMember(each, "rinse", 1, 2));
        count.event.atUtcMs = wholeMember(each, "ms", 0, endOfTimeMs);
        if (*change == CountEvent::Change::Typed)
            count.event.typed = wholeMember(each, "typed", 0, largestCount);
        part.counts.push_back(std::move(count));
    }
}

RecordPart partIn(const json& object) {
    RecordPart part;
    part.kind = textMember(object, "kind");
    part.id = textMember(object, "id");
    if (!isWord(part.kind, 40))
        throw Trouble{LineTrouble::Damaged};
    if (!isRecordId(part.id))
        throw Trouble{LineTrouble::BadId};
    if (const json* revisions = member(object, "revisions"))
        readRevisions(*revisions, part);
    if (const json* counts = member(object, "counts"))
        readCounts(*counts, part);
    return part;
}

ExchangeHeader headerIn(const json& object) {
    ExchangeHeader header;
    if (textMember(object, "halfcup") != "exchange")
        throw Trouble{LineTrouble::Damaged};
    header.format = static_cast<int>(wholeMember(object, "format", 1, 1'000'000));
    header.needs = static_cast<int>(wholeMember(object, "needs", 1, 1'000'000));
    header.device = textMember(object, "device");
    header.written = cleanText(textMember(object, "written")).substr(0, 40);
    if (const json* seen = member(object, "seen"); seen && seen->is_object())
        for (const auto& [device, stamp] : seen->items())
            if (stamp.is_string() && isStamp(stamp.get<std::string>()))
                header.seen[device] = stamp.get<std::string>();
    if (const json* counts = member(object, "counts"); counts && counts->is_object())
        for (const auto& [kind, count] : counts->items())
            if (const auto whole = wholeIn(count); whole && isWord(kind, 40))
                header.counts[kind] = *whole;
    return header;
}

} // namespace

ReadLine readLine(std::string_view line) {
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
            read.header = headerIn(object);
        else if (const json* end = member(object, "end"))
            read.end = ExchangeEnd{wholeMember(object, "lines", 1, std::numeric_limits<std::int64_t>::max()),
                                   end->is_string() ? end->get<std::string>() : std::string()};
        else
            read.part = partIn(object);
    } catch (const Trouble& trouble) {
        read.trouble = trouble.what;
        read.field = trouble.field;
    }
    return read;
}

} // namespace halfcup::exchange
