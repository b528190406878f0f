// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/verb.h"

#include <algorithm>
#include <iostream>

int main(int argc, char** argv) {
    std::ios::sync_with_stdio(false);
    std::cin.tie(nullptr);
    halfcup::desk::Streams streams{std::cin, std::cout, std::cerr};
    return halfcup::desk::runProgram({argv + std::min(argc, 1), argv + argc}, streams);
}
