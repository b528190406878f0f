// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "season/natural_order.h"

namespace halfcup::season {

namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

unsigned char folded(char c) {
    return static_cast<unsigned char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
}

/// Takes the run of digits at the front, without its leading zeros. Compared as text, not as a number: a
/// label may have more digits than any integer.
std::string_view takeNumber(std::string_view& text) {
    std::size_t end = 0;
    while (end < text.size() && isDigit(text[end]))
        ++end;
    std::string_view run = text.substr(0, end);
    text.remove_prefix(end);
    while (run.size() > 1 && run.front() == '0')
        run.remove_prefix(1);
    return run;
}

std::strong_ordering numberOrder(std::string_view left, std::string_view right) {
    const auto byLength = left.size() <=> right.size();
    return byLength != 0 ? byLength : left.compare(right) <=> 0;
}

} // namespace

std::strong_ordering naturalOrder(std::string_view left, std::string_view right) {
    std::string_view a = left;
    std::string_view b = right;
    while (!a.empty() && !b.empty()) {
        auto order = std::strong_ordering::equal;
        if (isDigit(a.front()) && isDigit(b.front())) {
            const std::string_view numberA = takeNumber(a);
            order = numberOrder(numberA, takeNumber(b));
        } else {
            order = folded(a.front()) <=> folded(b.front());
            a.remove_prefix(1);
            b.remove_prefix(1);
        }
        if (order != 0)
            return order;
    }
    if (a.empty() != b.empty())
        return a.empty() ? std::strong_ordering::less : std::strong_ordering::greater;
    // Alike to a reader: "02" and "2", "b" and "B". Any fixed order will do, but it must be one.
    const auto byLength = left.size() <=> right.size();
    return byLength != 0 ? byLength : left.compare(right) <=> 0;
}

} // namespace halfcup::season
