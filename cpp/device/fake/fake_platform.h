// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/fake/fake_brightness.h"
#include "device/fake/fake_file_handover.h"
#include "device/fake/fake_folders.h"
#include "device/fake/fake_keep_awake.h"
#include "device/fake/fake_tones.h"
#include "device/fake/fake_vibration.h"
#include "device/fake/fake_voice.h"
#include "device/fake/fake_volume_keys.h"
#include "device/fake/seeded_random.h"
#include "device/fake/set_clock.h"
#include "device/platform.h"

namespace halfcup::device {

/// A Platform made of fakes, with a view of each. `platform` may be moved on into the program under test: the
/// views stay good for as long as the parts live, wherever the Platform went.
struct FakePlatform {
    Platform platform;
    SetClock* clock = nullptr;
    SeededRandom* random = nullptr;
    FakeFolders* folders = nullptr;
    FakeKeepAwake* keepAwake = nullptr;
    FakeBrightness* brightness = nullptr;
    FakeTones* tones = nullptr;
    FakeVoice* voice = nullptr;
    FakeVibration* vibration = nullptr;
    FakeVolumeKeys* volumeKeys = nullptr;
    FakeFileHandover* files = nullptr;
};

/// Same seed, same start: same run. The folders lie in a temporary folder that goes with the Platform.
[[nodiscard]] FakePlatform makeFakePlatform(std::int64_t utcMs = SetClock::kStartUtcMs,
                                            std::uint64_t seed = 1);

} // namespace halfcup::device
