// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "place/position_source.h"

namespace halfcup::place {

PositionSource::PositionSource(QObject* parent)
    : QObject(parent) {
    // For queued connections and signal spies.
    qRegisterMetaType<halfcup::place::Fix>();
    qRegisterMetaType<halfcup::place::PositionSource::Problem>();
}

PositionSource::~PositionSource() = default;

} // namespace halfcup::place
