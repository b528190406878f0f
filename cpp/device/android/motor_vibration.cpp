// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/android/motor_vibration.h"

#include "device/android/java.h"

#include <algorithm>

namespace halfcup::device {

MotorVibration::MotorVibration(QObject* parent)
    : Vibration(parent)
    // A phone does not grow a motor while the program runs: asked once.
    , m_hasMotor(QJniObject::callStaticMethod<jboolean>(java::kPhone, "canBuzz",
                                                        "(Landroid/content/Context;)Z",
                                                        java::context().object()) != JNI_FALSE) {}

void MotorVibration::buzz(std::chrono::milliseconds length) {
    if (!m_on || !m_hasMotor || length.count() < 1)
        return;
    QJniObject::callStaticMethod<void>(java::kPhone, "buzz", "(Landroid/content/Context;J)V",
                                       java::context().object(),
                                       static_cast<jlong>(std::min(length, kLongest).count()));
}

} // namespace halfcup::device
