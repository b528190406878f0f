// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/methods/methods.h"

#include <array>

namespace halfcup::records::methods {

std::span<const Method* const> all() {
    static constexpr std::array methods{&alcoholWash, &soapyWash, &sugarRoll, &stickyBoard, &droneBrood};
    return methods;
}

} // namespace halfcup::records::methods
