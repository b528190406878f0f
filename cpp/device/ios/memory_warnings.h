// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/any/qt_app_state.h"

#include <memory>

namespace halfcup::device {

/// Passes the warnings of iOS (UIApplicationDidReceiveMemoryWarningNotification) on to the app state, for as
/// long as this lives; state owns it.
class MemoryWarnings final : public QObject {
    Q_OBJECT
public:
    explicit MemoryWarnings(QtAppState* state);
    ~MemoryWarnings() override;

private:
    struct Observer; // Objective-C stays out of this header
    std::unique_ptr<Observer> m_observer;
};

} // namespace halfcup::device
