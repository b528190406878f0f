// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/tones.h"
#include "device/voice.h"

#include <memory>

namespace halfcup::device {

/// Makers of tones and voice, in a library of the program's own: Qt's modules for them, and the libraries of
/// sound they bring, are loaded with it, after the first picture instead of before it.
struct SoundLibrary {
    Tones* (*makeTones)() = nullptr;
    Voice* (*makeVoice)(const QString& engine) = nullptr; // engine: see SpeechVoice

    /// The file's name; it lies where the program's own search path for libraries leads.
    static constexpr auto usual = "libhalfcup_sound.so";

    /// Loads it, and never lets go of it. Where it cannot be loaded: a warning with the reason, and no
    /// makers.
    [[nodiscard]] static SoundLibrary load(const char* name = usual);
};

/// Tones of the library, which is loaded by prepare() or by the first tone. Without it: silent.
class LoadedTones final : public Tones {
    Q_OBJECT
public:
    explicit LoadedTones(const char* library = SoundLibrary::usual, QObject* parent = nullptr);
    ~LoadedTones() override;
    void prepare() override;
    void play(Tone tone) override;
    void setOn(bool on) override;
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_tones && m_tones->works(); }

private:
    bool load();

    const char* m_library;
    bool m_loaded = false; // tried once
    std::unique_ptr<Tones> m_tones;
    bool m_on = true;
};

/// The library's voice; it is loaded by prepare(). Without it: silent.
class LoadedVoice final : public Voice {
    Q_OBJECT
public:
    explicit LoadedVoice(const QString& engine = {}, const char* library = SoundLibrary::usual,
                         QObject* parent = nullptr);
    ~LoadedVoice() override;
    void prepare() override;
    void say(const QString& sentence) override;
    void setOn(bool on) override;
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_voice && m_voice->works(); }

private:
    QString m_engine;
    const char* m_library;
    bool m_loaded = false; // tried once
    std::unique_ptr<Voice> m_voice;
    bool m_on = true;
};

} // namespace halfcup::device
