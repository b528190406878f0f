// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/linux/loaded_sound.h"

#include <QDebug>

#include <dlfcn.h>

#include <utility>

namespace halfcup::device {

SoundLibrary SoundLibrary::load(const char* name) {
    SoundLibrary library;
    // By dlopen() itself: it looks where the program was told to look, QLibrary where Qt was.
    void* handle = dlopen(name, RTLD_NOW | RTLD_LOCAL | RTLD_NODELETE);
    if (handle != nullptr) {
        library.makeTones =
            reinterpret_cast<decltype(library.makeTones)>(dlsym(handle, "halfcup_make_tones"));
        library.makeVoice =
            reinterpret_cast<decltype(library.makeVoice)>(dlsym(handle, "halfcup_make_voice"));
    }
    if (library.makeTones == nullptr || library.makeVoice == nullptr) {
        const char* reason = dlerror();
        qWarning("There are no sounds: %s", reason != nullptr ? reason : name);
        return {};
    }
    return library;
}

LoadedTones::LoadedTones(const char* library, QObject* parent)
    : Tones(parent)
    , m_library(library) {}

LoadedTones::~LoadedTones() = default;

bool LoadedTones::load() {
    if (!std::exchange(m_loaded, true)) {
        if (const auto library = SoundLibrary::load(m_library); library.makeTones != nullptr) {
            m_tones.reset(library.makeTones());
            m_tones->setOn(m_on);
            connect(m_tones.get(), &Tones::worksChanged, this, &Tones::worksChanged);
        }
    }
    return m_tones != nullptr;
}

void LoadedTones::prepare() {
    if (load())
        m_tones->prepare();
}

void LoadedTones::play(Tone tone) {
    if (m_on && load())
        m_tones->play(tone);
}

void LoadedTones::setOn(bool on) {
    m_on = on;
    if (m_tones)
        m_tones->setOn(on);
}

LoadedVoice::LoadedVoice(const QString& engine, const char* library, QObject* parent)
    : Voice(parent)
    , m_engine(engine)
    , m_library(library) {}

LoadedVoice::~LoadedVoice() = default;

void LoadedVoice::prepare() {
    if (!std::exchange(m_loaded, true)) {
        if (const auto library = SoundLibrary::load(m_library); library.makeVoice != nullptr) {
            m_voice.reset(library.makeVoice(m_engine));
            m_voice->setOn(m_on);
            connect(m_voice.get(), &Voice::worksChanged, this, &Voice::worksChanged);
        }
    }
    if (m_voice)
        m_voice->prepare();
}

void LoadedVoice::say(const QString& sentence) {
    if (m_voice)
        m_voice->say(sentence);
}

void LoadedVoice::setOn(bool on) {
    m_on = on;
    if (m_voice)
        m_voice->setOn(on);
}

} // namespace halfcup::device
