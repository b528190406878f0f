// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/capabilities.h"

#include "device/keep_awake.h"
#include "device/tones.h"
#include "device/vibration.h"
#include "device/volume_keys.h"

namespace halfcup::device {

CapabilityWatch::CapabilityWatch(const KeepAwake& awake, const Tones& tones, const Vibration& vibration,
                                 const VolumeKeys& keys, QObject* parent)
    : QObject(parent)
    , m_awake(awake)
    , m_tones(tones)
    , m_vibration(vibration)
    , m_keys(keys)
    , m_last(now()) {
    connect(&awake, &KeepAwake::worksChanged, this, &CapabilityWatch::look);
    connect(&tones, &Tones::worksChanged, this, &CapabilityWatch::look);
    connect(&vibration, &Vibration::worksChanged, this, &CapabilityWatch::look);
}

Capabilities CapabilityWatch::now() const {
    return {m_awake.works(), m_tones.works(), m_vibration.works(), m_keys.works()};
}

void CapabilityWatch::look() {
    const Capabilities current = now();
    if (current != m_last) {
        m_last = current;
        Q_EMIT changed();
    }
}

} // namespace halfcup::device
