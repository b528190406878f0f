// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/web/frames_of_what_is_kept.h"

#include "device/web/browser.h"
#include "device/web/listeners.h"

#include <QCoreApplication>
#include <QEvent>

#include <algorithm>
#include <utility>

namespace halfcup::device {

FramesOfWhatIsKept::FramesOfWhatIsKept(QObject* parent)
    : QObject(parent) {
    qApp->installEventFilter(this);
    listen(halfcupOnKept, this, &FramesOfWhatIsKept::release);
}

bool FramesOfWhatIsKept::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::UpdateRequest || halfcupIsAllKept())
        return false;
    auto* window = qobject_cast<QWindow*>(watched);
    if (!window)
        return false;
    if (std::find(m_waiting.begin(), m_waiting.end(), window) == m_waiting.end())
        m_waiting.emplace_back(window);
    return true;
}

void FramesOfWhatIsKept::release() {
    for (const QPointer<QWindow>& window : std::exchange(m_waiting, {}))
        if (window)
            window->requestUpdate();
}

} // namespace halfcup::device
