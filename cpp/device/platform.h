// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/brightness.h"
#include "device/capabilities.h"
#include "device/clock.h"
#include "device/file_handover.h"
#include "device/folders.h"
#include "device/keep_awake.h"
#include "device/random_source.h"
#include "device/tones.h"
#include "device/vibration.h"
#include "device/voice.h"
#include "device/volume_keys.h"

#include <memory>

namespace halfcup::device {

/// Everything the program asks of the phone, in one hand. Made once in main.cpp, passed on by reference to
/// what needs a part of it; no part is ever null. May be moved: the parts stay where they are. The parts
/// below `capabilities` must not be exchanged (it watches them); clock, random and folders may be, before
/// they are handed out (the demo puts a ShiftedClock round the clock).
struct Platform {
    std::unique_ptr<Clock> clock;
    std::unique_ptr<RandomSource> random;
    std::unique_ptr<Folders> folders;
    std::unique_ptr<KeepAwake> keepAwake;
    std::unique_ptr<Brightness> brightness;
    std::unique_ptr<Tones> tones;
    std::unique_ptr<Voice> voice;
    std::unique_ptr<Vibration> vibration;
    std::unique_ptr<VolumeKeys> volumeKeys;
    std::unique_ptr<FileHandover> files;
    std::unique_ptr<CapabilityWatch> capabilities; // last: goes first
};

/// The phone or computer this runs on. Needs a QGuiApplication, with its application name set (the data
/// folder is named after it). Never fails: what is missing is silent and says so in `capabilities`.
[[nodiscard]] Platform makePlatform();

} // namespace halfcup::device
