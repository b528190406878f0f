// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/exchange_line.h"
#include "exchange/line_sum.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <functional>
#include <nlohmann/json.hpp>
#include <utility>
#include <vector>

namespace halfcup::exchange {

using nlohmann::json;
using records::Value;

namespace {

/// Written by hand, because millions of values go through here; what needs escaping goes to the library.
void appendText(std::string& line, std::string_view text) {
    const bool plain = std::ranges::all_of(text, [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte >= 0x20 && byte < 0x7F && c != '"' && c != '\\';
    });
    if (plain)
        line.append(1, '"').append(text).append(1, '"');
    else
        line += json(std::string(text)).dump(-1, ' ', false, json::error_handler_t::replace);
}

template <typename Number>
void appendNumber(std::string& line, Number number) {
    char digits[32];
    const auto [end, error] = std::to_chars(digits, digits + sizeof digits, number);
    line.append(digits, end);
}

void appendReal(std::string& line, double number) {
    if (!std::isfinite(number)) { // no such number in JSON, and none is kept
        line += "null";
        return;
    }
    const std::size_t from = line.size();
    appendNumber(line, number);
    if (line.find_first_of(".e", from) == std::string::npos)
        line += ".0"; // so that it is read back as a real
}

void appendValue(std::string& line, const Value& value) {
    if (const auto* whole = std::get_if<std::int64_t>(&value))
        appendNumber(line, *whole);
    else if (const auto* real = std::get_if<double>(&value))
        appendReal(line, *real);
    else if (const auto* text = std::get_if<std::string>(&value))
        appendText(line, *text);
    else
        line += "null";
}

void appendSum(std::string& line) {
    const std::string sum = lineSum(line);
    line.append(R"(,"sum":")").append(sum).append("\"}");
}

void appendRevisions(std::string& line, std::span<const records::Revision> revisions) {
    line += R"(,"revisions":[)";
    for (std::size_t i = 0; i < revisions.size();) {
        const std::string& stamp = revisions[i].stamp;
        line += i == 0 ? R"({"at":)" : R"(,{"at":)";
        appendText(line, stamp);
        line += R"(,"fields":{)";
        for (bool first = true; i < revisions.size() && revisions[i].stamp == stamp; ++i, first = false) {
            if (!first)
                line += ',';
            appendText(line, revisions[i].field);
            line += ':';
            appendValue(line, revisions[i].value);
        }
        line += "}}";
    }
    line += ']';
}

void appendCounts(std::string& line, std::span<const records::StampedCount> counts) {
    line += R"(,"counts":[)";
    for (const records::StampedCount& count : counts) {
        line += line.back() == '[' ? R"({"at":)" : R"(,{"at":)";
        appendText(line, count.stamp);
        line += R"(,"rinse":)";
        appendNumber(line, count.event.rinse);
        line += R"(,"change":)";
        appendText(line, nameOf(count.event.change));
        line += R"(,"ms":)";
        appendNumber(line, count.event.atUtcMs);
        if (count.event.change == records::CountEvent::Change::Typed) {
            line += R"(,"typed":)";
            appendNumber(line, count.event.typed);
        }
        line += '}';
    }
    line += ']';
}

std::map<std::string, std::string> latestSeen(const std::map<std::string, std::string>& seen) {
    if (seen.size() <= mostSeen)
        return seen;
    std::vector<std::pair<std::string, std::string>> all; // stamp, device
    for (const auto& [device, stamp] : seen)
        all.emplace_back(stamp, device);
    std::ranges::sort(all, std::greater<>());
    std::map<std::string, std::string> latest;
    for (std::size_t i = 0; i < mostSeen; ++i)
        latest[all[i].second] = all[i].first;
    return latest;
}

} // namespace

std::string headerLine(const ExchangeHeader& header) {
    std::string line(exchangeMagic);
    line += R"(,"format":)";
    appendNumber(line, header.format);
    line += R"(,"needs":)";
    appendNumber(line, header.needs);
    line += R"(,"device":)";
    appendText(line, header.device);
    line += R"(,"written":)";
    appendText(line, header.written);
    line += R"(,"counts":)" + json(header.counts).dump();
    line += R"(,"seen":)" + json(latestSeen(header.seen)).dump();
    appendSum(line);
    return line;
}

std::string endLine(const ExchangeEnd& end) {
    std::string line = json{{"end", end.sha256}, {"lines", end.lines}}.dump();
    line.pop_back();
    appendSum(line);
    return line;
}

std::string partLine(const records::RecordId& id, std::string_view kind,
                     std::span<const records::Revision> revisions,
                     std::span<const records::StampedCount> counts) {
    std::string line = R"({"kind":)";
    appendText(line, kind);
    line += R"(,"id":)";
    appendText(line, id);
    if (!revisions.empty())
        appendRevisions(line, revisions);
    if (!counts.empty())
        appendCounts(line, counts);
    appendSum(line);
    return line;
}

} // namespace halfcup::exchange
