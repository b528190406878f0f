// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/multimedia_tones.h"
#include "device/any/qt_app_state.h"
#include "device/any/speech_voice.h"
#include "device/any/standard_folders.h"
#include "device/any/system_brightness.h"
#include "device/any/system_random.h"
#include "device/ios/content_size_text_scale.h"
#include "device/ios/continuous_clock.h"
#include "device/ios/feedback_generator_vibration.h"
#include "device/ios/idle_timer_keep_awake.h"
#include "device/ios/ios_file_handover.h"
#include "device/ios/memory_warnings.h"
#include "device/ios/no_volume_keys.h"
#include "device/ios/safe_area_insets.h"
#include "device/platform.h"
#include "device/surroundings.h"

namespace halfcup::device {

Platform makePlatform() {
    Platform platform;
    platform.clock = std::make_unique<ContinuousClock>();
    platform.random = std::make_unique<SystemRandom>();
    platform.folders = std::make_unique<StandardFolders>();
    platform.keepAwake = std::make_unique<IdleTimerKeepAwake>();
    platform.brightness = std::make_unique<SystemBrightness>();
    platform.tones = std::make_unique<MultimediaTones>();
    platform.voice = std::make_unique<SpeechVoice>();
    platform.vibration = std::make_unique<FeedbackGeneratorVibration>();
    platform.volumeKeys = std::make_unique<NoVolumeKeys>();
    platform.files = std::make_unique<IosFileHandover>();
    platform.capabilities = std::make_unique<CapabilityWatch>(*platform.keepAwake, *platform.tones,
                                                              *platform.vibration, *platform.volumeKeys);
    return platform;
}

Surroundings makeSurroundings() {
    auto state = std::make_unique<QtAppState>();
    new MemoryWarnings(state.get()); // the state's child
    return {std::make_unique<SafeAreaInsets>(), std::move(state), std::make_unique<ContentSizeTextScale>()};
}

} // namespace halfcup::device
