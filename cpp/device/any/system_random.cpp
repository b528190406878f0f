// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/system_random.h"

#include <QRandomGenerator>

namespace halfcup::device {

std::uint64_t SystemRandom::next() {
    return QRandomGenerator::system()->generate64();
}

} // namespace halfcup::device
