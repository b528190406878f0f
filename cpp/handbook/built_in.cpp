// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "handbook/built_in.h"

#include <span>
#include <string_view>

namespace halfcup::embedded {
std::span<const std::string_view> handbookTexts(); // written by cpp/embed.cmake
}

namespace halfcup::handbook {

Handbook builtIn() {
    return Handbook::fromTexts(embedded::handbookTexts());
}

} // namespace halfcup::handbook
