// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/tones.h"

namespace halfcup::device {

/// The Web Audio API with our own sounds. A browser is silent until the page was touched once.
class BrowserTones final : public Tones {
    Q_OBJECT
public:
    using Tones::Tones;
    void prepare() override;
    void play(Tone tone) override;
    void setOn(bool on) override;
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_works; }

private:
    bool m_on = true;
    bool m_works = false;
};

} // namespace halfcup::device
