// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/plain_number.h"

#include <cerrno>
#include <charconv>
#include <cstdlib>
#include <string>

namespace halfcup::records {

PlainNumber readPlainNumber(std::string_view text) {
    PlainNumber number;
    const std::string_view digits = text.substr(text.starts_with('-') ? 1 : 0);
    if (digits.find_first_of("0123456789") == std::string_view::npos ||
        digits.find_first_not_of("0123456789.") != std::string_view::npos) {
        number.error = std::errc::invalid_argument;
        return number;
    }
    // libc++ reads no doubles yet (19), and what is compiled for a browser has it; strtod's locale is always
    // "C" there.
#ifdef __cpp_lib_to_chars
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number.value);
    number.error = error;
    const bool isWhole = end == text.data() + text.size();
#else
    const std::string ended(text);
    char* end = nullptr;
    errno = 0;
    number.value = std::strtod(ended.c_str(), &end);
    if (errno == ERANGE)
        number.error = std::errc::result_out_of_range;
    const bool isWhole = end == ended.c_str() + ended.size();
#endif
    if (!isWhole)
        number.error = std::errc::invalid_argument;
    return number;
}

} // namespace halfcup::records
