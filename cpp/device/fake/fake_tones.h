// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/clock.h"
#include "device/tones.h"

#include <vector>

namespace halfcup::device {

/// Writes down what was played and when. Makes no sound.
class FakeTones final : public Tones {
    Q_OBJECT
public:
    struct Played {
        Tone tone = Tone::End;
        std::int64_t bootMs = 0; ///< on the clock given
        bool operator==(const Played&) const = default;
    };

    /// clock must outlive this.
    explicit FakeTones(const Clock& clock, QObject* parent = nullptr);
    void prepare() override { ++m_prepared; }
    void play(Tone tone) override;
    void setOn(bool on) override { m_on = on; }
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_works; }
    void setWorks(bool works);

    /// What a keeper would have heard: nothing is written down while off or without a loudspeaker.
    [[nodiscard]] const std::vector<Played>& played() const { return m_played; }
    [[nodiscard]] int count(Tone tone) const;
    [[nodiscard]] int timesPrepared() const { return m_prepared; }
    void forget() { m_played.clear(); }

private:
    const Clock& m_clock;
    std::vector<Played> m_played;
    int m_prepared = 0;
    bool m_on = true;
    bool m_works = true;
};

} // namespace halfcup::device
