// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/services.h"

#include "touch/phrases.h"
#include "touch/wide_registers.h"
#include "touch/words.h"

#include <stdexcept>

namespace halfcup::touch {

records::Moment Services::now() const {
    const std::int64_t utcMs = device.clock->now().utcMs;
    return {utcMs, device.clock->utcOffsetMinutes(utcMs)};
}

records::Date Services::today() const {
    return records::localDate(now());
}

QString Services::distance(double metres) const {
    return words::distance(metres, settings.units());
}

QString Services::say(const season::Phrase& phrase) const {
    return said(phrase, {settings.temperatureUnit(), today()});
}

records::ShakeReading Services::shakeReading() const {
    const device::ClockReading reading = device.clock->now();
    return {reading.bootMs, reading.utcMs, reading.bootId};
}

void Services::tell(const QString& spoken, device::Tone tone) const {
    if (device.voice->isOn() && device.voice->works())
        device.voice->say(spoken);
    else
        device.tones->play(tone);
}

void Services::applySound() const {
    device.tones->setOn(settings.sound());
    device.voice->setOn(settings.sound() && settings.voice());
}

bool Services::kept(const std::function<void()>& work) {
    freeWideRegisters();
    try {
        work();
        return true;
    } catch (const store::StoreError& error) {
        messages.say(words::trouble(error.kind(), QString::fromStdString(store.path())));
    } catch (
        const std::domain_error& error) { // figures no wash can have, said in a sentence by who found them
        messages.say(QString::fromUtf8(error.what()));
    }
    return false;
}

} // namespace halfcup::touch
