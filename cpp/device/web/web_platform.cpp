// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/standard_folders.h"
#include "device/any/system_brightness.h"
#include "device/any/system_random.h"
#include "device/ios/no_volume_keys.h"
#include "device/platform.h"
#include "device/surroundings.h"
#include "device/web/browser_app_state.h"
#include "device/web/browser_clock.h"
#include "device/web/browser_file_handover.h"
#include "device/web/browser_insets.h"
#include "device/web/browser_keep_awake.h"
#include "device/web/browser_tones.h"
#include "device/web/browser_vibration.h"
#include "device/web/browser_voice.h"
#include "device/web/frames_of_what_is_kept.h"

#include <QCoreApplication>

namespace halfcup::device {

Platform makePlatform() {
    Platform platform;
    new FramesOfWhatIsKept(qApp);
    platform.clock = std::make_unique<BrowserClock>();
    platform.random = std::make_unique<SystemRandom>();
    // What is below /kept stays (platform/web/kept_files.js); all else is gone with the page.
    platform.folders = std::make_unique<StandardFolders>(QStringLiteral("/kept/records"),
                                                         QStringLiteral("/kept/Halfcup"), false);
    platform.keepAwake = std::make_unique<BrowserKeepAwake>();
    platform.brightness = std::make_unique<SystemBrightness>();
    platform.tones = std::make_unique<BrowserTones>();
    platform.voice = std::make_unique<BrowserVoice>();
    platform.vibration = std::make_unique<BrowserVibration>();
    platform.volumeKeys = std::make_unique<NoVolumeKeys>();
    platform.files = std::make_unique<BrowserFileHandover>();
    platform.capabilities = std::make_unique<CapabilityWatch>(*platform.keepAwake, *platform.tones,
                                                              *platform.vibration, *platform.volumeKeys);
    return platform;
}

Surroundings makeSurroundings() {
    return {std::make_unique<BrowserInsets>(), std::make_unique<BrowserAppState>()};
}

} // namespace halfcup::device
