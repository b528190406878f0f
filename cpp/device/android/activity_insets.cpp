// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/android/activity_insets.h"

#include "device/android/java.h"

#include <utility>

namespace halfcup::device {

ActivityInsets::ActivityInsets(std::shared_ptr<CallsFromJava> calls, QObject* parent)
    : WindowInsets(parent)
    , m_calls(std::move(calls)) {
    connect(m_calls.get(), &CallsFromJava::edgesChanged, this, &ActivityInsets::take);
}

void ActivityInsets::watch(QWindow* window) {
    m_window = window;
    const QJniObject activity = java::activity();
    if (activity.isValid())
        QJniObject::callStaticMethod<void>(java::kEdges, "watch", "(Landroid/app/Activity;)V",
                                           activity.object());
}

void ActivityInsets::take(int left, int top, int right, int bottom) {
    const double dots = m_window ? m_window->devicePixelRatio() : 1.0; // in one device-independent pixel
    const Insets insets{left / dots, top / dots, right / dots, bottom / dots};
    if (insets == m_insets)
        return;
    m_insets = insets;
    Q_EMIT changed();
}

} // namespace halfcup::device
