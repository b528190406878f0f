// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>

namespace halfcup::device {

/// The five things the program says with a sound. They differ in pitch AND in rhythm, so that they are told
/// apart with the phone in a pocket (assets/sounds/make.py holds the notes):
enum class Tone {
    HalfTime,   ///< half of a shake or settle is over: two even notes, the second higher
    TenSeconds, ///< ten seconds left: three quick notes of one pitch
    End,        ///< time is up: three rising notes, the last one long
    CountTick,  ///< one mite counted: a very short click
    Trouble     ///< something needs a look: two low, falling notes
};

/// Plays them. A sound only ever adds (nothing may depend on it having been heard), so there is no error:
/// without a loudspeaker, or when off, play() does nothing. Never blocks. GUI thread only.
class Tones : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;
    /// Opens what is needed for playing. Call once after the first frame is on the screen: looking for
    /// loudspeakers can take a while. A play() before that does it too, but on its next turn of the event
    /// loop.
    virtual void prepare() = 0;
    /// Starts the tone and returns at once. A tone still playing is started anew.
    virtual void play(Tone tone) = 0;
    /// The keeper's setting; on to begin with. Off also cuts off what is playing.
    virtual void setOn(bool on) = 0;
    [[nodiscard]] virtual bool isOn() const = 0;
    /// Whether there is a loudspeaker, as far as known now (false before prepare()); does not look at isOn().
    [[nodiscard]] virtual bool works() const = 0;

Q_SIGNALS:
    void worksChanged();
};

} // namespace halfcup::device
