// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/web/browser_voice.h"

#include "device/web/browser.h"
#include "device/web/listeners.h"

#include <QLocale>

namespace halfcup::device {

namespace {

QByteArray language() {
    return QLocale().name().section(u'_', 0, 0).toUtf8();
}

} // namespace

void BrowserVoice::prepare() {
    if (!m_listens) {
        m_listens = true;
        listen(halfcupOnVoices, this, &BrowserVoice::look);
    }
    look();
}

void BrowserVoice::look() {
    const bool works = halfcupHasVoice(language().constData()) != 0;
    if (works == m_works)
        return;
    m_works = works;
    Q_EMIT worksChanged();
}

void BrowserVoice::say(const QString& sentence) {
    if (m_on && m_works)
        halfcupSay(sentence.toUtf8().constData(), language().constData());
}

void BrowserVoice::setOn(bool on) {
    m_on = on;
    if (!on)
        halfcupHush();
}

} // namespace halfcup::device
