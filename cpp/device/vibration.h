// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>

#include <chrono>

namespace halfcup::device {

/// A buzz of the phone in the hand. Only ever adds, so there is no error: without a motor, or when off,
/// buzz() does nothing. Never blocks. GUI thread only.
class Vibration : public QObject {
    Q_OBJECT
public:
    /// The longest buzz asked of any phone; longer ones are cut to this, shorter than 1 ms are none.
    static constexpr std::chrono::milliseconds kLongest{2000};

    using QObject::QObject;
    virtual void buzz(std::chrono::milliseconds length) = 0;
    /// The keeper's setting; on to begin with.
    virtual void setOn(bool on) = 0;
    [[nodiscard]] virtual bool isOn() const = 0;
    /// Whether a buzz has any effect, as far as known now; does not look at isOn().
    [[nodiscard]] virtual bool works() const = 0;

Q_SIGNALS:
    void worksChanged();
};

} // namespace halfcup::device
