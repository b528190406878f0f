// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/android/activity_volume_keys.h"

#include "device/android/java.h"

#include <utility>

namespace halfcup::device {

ActivityVolumeKeys::ActivityVolumeKeys(std::shared_ptr<CallsFromJava> calls, QObject* parent)
    : VolumeKeys(parent)
    , m_calls(std::move(calls)) {
    connect(m_calls.get(), &CallsFromJava::volumeKeyPressed, this, [this](bool up) {
        if (!m_grabbed) // let go while the press was on its way from Android's thread
            return;
        if (up)
            Q_EMIT volumeUpPressed();
        else
            Q_EMIT volumeDownPressed();
    });
}

ActivityVolumeKeys::~ActivityVolumeKeys() {
    setGrabbed(false);
}

void ActivityVolumeKeys::setGrabbed(bool grabbed) {
    if (grabbed == m_grabbed)
        return;
    m_grabbed = grabbed;
    QJniObject::callStaticMethod<void>(java::kVolumeKeys, "setGrabbed", "(Z)V",
                                       static_cast<jboolean>(grabbed));
}

} // namespace halfcup::device
