// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/surroundings.h"

#include <utility>

namespace halfcup::touch {

Surroundings::Surroundings(device::Surroundings& device, PositionStamper& position, QObject* parent)
    : QObject(parent)
    , m_device(device)
    , m_position(position) {
    connect(m_device.insets.get(), &device::WindowInsets::changed, this, &Surroundings::insetsChanged);
    connect(m_device.state.get(), &device::AppState::wentAway, this, &Surroundings::goAway);
    connect(m_device.state.get(), &device::AppState::cameBack, this, &Surroundings::comeBack);
    connect(m_device.state.get(), &device::AppState::memoryIsShort, this, &Surroundings::memoryIsShort);
}

void Surroundings::watch(QWindow* window) {
    m_device.insets->watch(window);
}

void Surroundings::goAway() {
    m_wasLooking = m_position.isRunning();
    m_position.forget();
    emit inFrontChanged(false);
}

void Surroundings::comeBack() {
    if (std::exchange(m_wasLooking, false))
        m_position.wantAnew();
    emit inFrontChanged(true);
}

} // namespace halfcup::touch
