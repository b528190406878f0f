// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/key_event_volume_keys.h"
#include "device/any/no_insets.h"
#include "device/any/qt_app_state.h"
#include "device/any/standard_folders.h"
#include "device/any/system_random.h"
#include "device/linux/boot_clock.h"
#include "device/linux/feedback_vibration.h"
#include "device/linux/loaded_sound.h"
#include "device/linux/logind_brightness.h"
#include "device/linux/portal_file_handover.h"
#include "device/linux/portal_text_scale.h"
#include "device/linux/screen_saver_keep_awake.h"
#include "device/linux/session_bus.h"
#include "device/platform.h"
#include "device/surroundings.h"

namespace halfcup::device {

Platform makePlatform() {
    Platform platform;
    const std::shared_ptr<SessionBus> bus = SessionBus::open();
    platform.clock = std::make_unique<BootClock>();
    platform.random = std::make_unique<SystemRandom>();
    platform.folders = std::make_unique<StandardFolders>();
    platform.keepAwake = std::make_unique<ScreenSaverKeepAwake>(bus);
    platform.brightness = std::make_unique<LogindBrightness>(SessionBus::openSystems());
    platform.tones = std::make_unique<LoadedTones>();
    platform.voice = std::make_unique<LoadedVoice>();
    platform.vibration = std::make_unique<FeedbackVibration>(bus);
    platform.volumeKeys = std::make_unique<KeyEventVolumeKeys>();
    platform.files = std::make_unique<PortalFileHandover>(bus);
    platform.capabilities = std::make_unique<CapabilityWatch>(*platform.keepAwake, *platform.tones,
                                                              *platform.vibration, *platform.volumeKeys);
    return platform;
}

Surroundings makeSurroundings() {
    return {std::make_unique<NoInsets>(), std::make_unique<QtAppState>(),
            std::make_unique<PortalTextScale>(SessionBus::open())};
}

} // namespace halfcup::device
