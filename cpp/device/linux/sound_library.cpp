// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// All that the library of sounds shows of itself; loaded_sound.cpp asks for the two by these names. What they
// give belongs to the caller. The library has its own copy of what Tones and Voice are as Qt objects, so
// qobject_cast to them fails; signals go by their number in the class, which is the same.
#include "device/any/multimedia_tones.h"
#include "device/any/speech_voice.h"

extern "C" {

Q_DECL_EXPORT halfcup::device::Tones* halfcup_make_tones() {
    return new halfcup::device::MultimediaTones;
}

Q_DECL_EXPORT halfcup::device::Voice* halfcup_make_voice(const QString& engine) {
    return new halfcup::device::SpeechVoice(engine);
}

} // extern "C"
