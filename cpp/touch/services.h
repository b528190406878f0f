// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/platform.h"
#include "records/moment.h"
#include "season/phrase.h"
#include "store/store.h"
#include "touch/keepers_handbook.h"
#include "touch/messages.h"
#include "touch/position_stamper.h"
#include "touch/settings.h"

#include <functional>

namespace halfcup::touch {

/// What every controller works with, made and owned where the program is put together.
struct Services {
    store::Store& store;
    device::Platform& device;
    PositionStamper& position;
    Settings& settings;
    Messages& messages;
    const KeepersHandbook& keepersHandbook;

    [[nodiscard]] const handbook::Handbook& handbook() const { return keepersHandbook.read(); }
    [[nodiscard]] records::Moment now() const;
    [[nodiscard]] records::Date today() const; // the keeper's local date
    /// "6 m" or "20 ft", as the keeper wants lengths.
    [[nodiscard]] QString distance(double metres) const;
    /// A phrase in the keeper's language and units.
    [[nodiscard]] QString say(const season::Phrase& phrase) const;
    [[nodiscard]] records::ShakeReading shakeReading() const;

    /// Says it aloud where this phone has a voice, else plays the tone; neither where the keeper wants
    /// silence.
    void tell(const QString& spoken, device::Tone tone) const;
    /// Sound and voice as the settings have them.
    void applySound() const;

    /// Runs what writes to the store. False, and a sentence for the keeper, where it cannot be written.
    bool kept(const std::function<void()>& work);
};

} // namespace halfcup::touch
