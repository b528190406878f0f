// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/ios/feedback_generator_vibration.h"

#include <AudioToolbox/AudioToolbox.h>
#include <CoreHaptics/CoreHaptics.h>
#include <UIKit/UIKit.h>

namespace halfcup::device {

namespace {

// A mite counted is 15 to 40 ms, the end of a shake more than a second: anything between tells them apart
// [convention].
constexpr std::chrono::milliseconds kLong{100};

} // namespace

FeedbackGeneratorVibration::FeedbackGeneratorVibration(QObject* parent)
    : Vibration(parent)
    , m_hasMotor([CHHapticEngine capabilitiesForHardware].supportsHaptics) {}

void FeedbackGeneratorVibration::buzz(std::chrono::milliseconds length) {
    if (!m_on || !m_hasMotor || length.count() < 1)
        return;
    if (length >= kLong) {
        AudioServicesPlaySystemSound(kSystemSoundID_Vibrate);
        return;
    }
    UIImpactFeedbackGenerator* tap =
        [[UIImpactFeedbackGenerator alloc] initWithStyle:UIImpactFeedbackStyleHeavy];
    [tap impactOccurred];
}

} // namespace halfcup::device
