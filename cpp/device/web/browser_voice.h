// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/voice.h"

namespace halfcup::device {

/// The Web Speech API, with voices that are on the phone alone: what is said at the hive goes to nobody's
/// server.
class BrowserVoice final : public Voice {
    Q_OBJECT
public:
    using Voice::Voice;
    void prepare() override;
    void say(const QString& sentence) override;
    void setOn(bool on) override;
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_works; }

private:
    void look();

    bool m_listens = false;
    bool m_on = true;
    bool m_works = false;
};

} // namespace halfcup::device
