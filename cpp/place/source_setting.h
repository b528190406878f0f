// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

// What the position setting means. Kept apart from the source so that the setup page can check a setting
// before it is taken.

namespace halfcup::place {

struct SourceSetting {
    enum class Kind { PlatformDefault, None, File, Tcp, Serial, Gpsd, Bad };
    Kind kind = Kind::Bad;
    QString path; // File, Serial
    QString host; // Tcp, Gpsd
    quint16 port = 0;
    int baud = 0;    // Serial; 0 = find out
    QString problem; // Bad: a plain sentence
};

// Forms: see QtPositionSource. Never fails otherwise than with Bad and a sentence.
[[nodiscard]] SourceSetting readSourceSetting(const QString& setting);

} // namespace halfcup::place
