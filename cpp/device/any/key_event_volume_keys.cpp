// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/key_event_volume_keys.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QWindow>

namespace halfcup::device {

KeyEventVolumeKeys::KeyEventVolumeKeys(QObject* parent)
    : VolumeKeys(parent) {}

KeyEventVolumeKeys::~KeyEventVolumeKeys() {
    setGrabbed(false);
}

void KeyEventVolumeKeys::setGrabbed(bool grabbed) {
    QCoreApplication* app = QCoreApplication::instance();
    if (grabbed == m_grabbed || app == nullptr) {
        return;
    }
    m_grabbed = grabbed;
    // The filter is there only while it is needed: it sees every event of the program.
    if (grabbed) {
        app->installEventFilter(this);
    } else {
        app->removeEventFilter(this);
    }
}

bool KeyEventVolumeKeys::eventFilter(QObject* watched, QEvent* event) {
    const QEvent::Type type = event->type();
    if (type != QEvent::KeyPress && type != QEvent::KeyRelease && type != QEvent::ShortcutOverride) {
        return false;
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool up = key->key() == Qt::Key_VolumeUp;
    if (!up && key->key() != Qt::Key_VolumeDown) {
        return false;
    }
    // A key event reaches the window first and is then sent on to what has the focus; taken at the window, it
    // is counted once. Releases go too, lest the system act on them.
    if (type == QEvent::KeyPress && !key->isAutoRepeat() && qobject_cast<QWindow*>(watched) != nullptr) {
        if (up) {
            Q_EMIT volumeUpPressed();
        } else {
            Q_EMIT volumeDownPressed();
        }
    }
    return type != QEvent::ShortcutOverride;
}

} // namespace halfcup::device
