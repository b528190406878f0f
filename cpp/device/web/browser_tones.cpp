// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/web/browser_tones.h"

#include "device/web/browser.h"

#include <QFile>

namespace halfcup::device {

namespace {

// By their number in the enumeration.
constexpr const char* fileNames[] = {"half_time", "ten_seconds", "end", "count_tick", "trouble"};

} // namespace

void BrowserTones::prepare() {
    if (m_works || !halfcupHasSounds())
        return;
    int number = 0;
    for (const char* name : fileNames) {
        QFile file(QStringLiteral(":/halfcup/sounds/%1.wav").arg(QLatin1String(name)));
        if (file.open(QIODevice::ReadOnly)) {
            const QByteArray wav = file.readAll();
            halfcupLoadSound(number, wav.constData(), static_cast<int>(wav.size()));
        }
        ++number;
    }
    m_works = true;
    Q_EMIT worksChanged();
}

void BrowserTones::play(Tone tone) {
    if (!m_on)
        return;
    prepare();
    if (m_works)
        halfcupPlaySound(static_cast<int>(tone));
}

void BrowserTones::setOn(bool on) {
    m_on = on;
    if (!on)
        halfcupStopSounds();
}

} // namespace halfcup::device
