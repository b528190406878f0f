// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/voice.h"

#include <QStringList>

namespace halfcup::device {

/// Writes down what was said. Makes no sound.
class FakeVoice final : public Voice {
    Q_OBJECT
public:
    using Voice::Voice;
    void prepare() override { ++m_prepared; }
    void say(const QString& sentence) override {
        if (m_on && m_works)
            m_said.append(sentence);
    }
    void setOn(bool on) override { m_on = on; }
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_works; }
    void setWorks(bool works) {
        m_works = works;
        Q_EMIT worksChanged();
    }

    /// What a keeper would have heard: nothing is written down while off or without an engine.
    [[nodiscard]] const QStringList& said() const { return m_said; }
    [[nodiscard]] int timesPrepared() const { return m_prepared; }
    void forget() { m_said.clear(); }

private:
    QStringList m_said;
    int m_prepared = 0;
    bool m_on = true;
    bool m_works = false; // as most phones at the start
};

} // namespace halfcup::device
