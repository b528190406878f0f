// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/tones.h"

#include <QUrl>

#include <memory>
#include <optional>

namespace halfcup::device {

/// Tones through Qt Multimedia: the one place in the program that knows it. Without a loudspeaker no player
/// is made, for one that cannot play says it is playing for ever; one that is plugged in later is taken up.
class MultimediaTones final : public Tones {
    Q_OBJECT
public:
    explicit MultimediaTones(QObject* parent = nullptr);
    ~MultimediaTones() override;
    void prepare() override;
    void play(Tone tone) override;
    void setOn(bool on) override;
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override;

    /// The sound of a tone, compiled in: 16-bit mono PCM in a wav file.
    [[nodiscard]] static QUrl soundOf(Tone tone);

private:
    struct Players;
    void lookForLoudspeakers();

    std::unique_ptr<Players> m_players; // null until prepare()
    std::optional<Tone> m_waiting;
    bool m_on = true;
};

} // namespace halfcup::device
