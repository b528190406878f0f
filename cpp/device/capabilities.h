// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>

namespace halfcup::device {

class KeepAwake;
class Tones;
class Vibration;
class VolumeKeys;

/// What this phone can do, as far as known now. A page hides a setting whose flag is false.
struct Capabilities {
    bool keepAwake = false;
    bool sounds = false;
    bool vibration = false;
    bool volumeKeys = false; ///< may work; see VolumeKeys::works()
    bool operator==(const Capabilities&) const = default;
};

/// Watches the flags: services and loudspeakers come and go, and most are known only a moment after the
/// start.
class CapabilityWatch final : public QObject {
    Q_OBJECT
public:
    /// All four must outlive this.
    CapabilityWatch(const KeepAwake& awake, const Tones& tones, const Vibration& vibration,
                    const VolumeKeys& keys, QObject* parent = nullptr);
    [[nodiscard]] Capabilities now() const;

Q_SIGNALS:
    /// Sent when at least one flag differs from before.
    void changed();

private:
    void look();

    const KeepAwake& m_awake;
    const Tones& m_tones;
    const Vibration& m_vibration;
    const VolumeKeys& m_keys;
    Capabilities m_last;
};

} // namespace halfcup::device
