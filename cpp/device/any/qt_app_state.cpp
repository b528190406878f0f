// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/qt_app_state.h"

#include <QGuiApplication>

namespace halfcup::device {

QtAppState::QtAppState(QObject* parent)
    : AppState(parent) {
    // A program that is only just starting is not "put away", though Qt calls it inactive or suspended then.
    connect(qApp, &QGuiApplication::applicationStateChanged, this, &QtAppState::take);
}

void QtAppState::take(Qt::ApplicationState state) {
    // Inactive is neither: on a desktop the keyboard is elsewhere, on a phone a call or the list of programs
    // lies over the page for a moment.
    if (state == Qt::ApplicationInactive)
        return;
    const bool inFront = state == Qt::ApplicationActive;
    if (inFront == m_inFront)
        return;
    m_inFront = inFront;
    if (inFront)
        Q_EMIT cameBack();
    else
        Q_EMIT wentAway();
}

} // namespace halfcup::device
