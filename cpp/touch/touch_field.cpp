// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/touch_field.h"

#include <QQuickWindow>
#include <QTouchEvent>

#include <algorithm>

namespace halfcup::touch {

TouchField::TouchField(QQuickItem* parent)
    : QQuickItem(parent) {
    setAcceptTouchEvents(true);
    setAcceptedMouseButtons(Qt::LeftButton);
}

void TouchField::setPixelsPerMm(double pixels) {
    if (!(pixels > 0) || pixels == m_pixelsPerMm)
        return;
    m_pixelsPerMm = pixels;
    emit pixelsPerMmChanged();
}

void TouchField::touchEvent(QTouchEvent* event) {
    event->accept(); // each point of it, so that its slide and its lift go nowhere else
    if (!window())
        return;
    const double glassWidthMm = window()->width() / m_pixelsPerMm;
    for (const QEventPoint& point : event->points()) {
        if (point.state() != QEventPoint::Pressed)
            continue;
        TouchGuard::Press press;
        press.atMs = static_cast<std::int64_t>(event->timestamp());
        press.atMm = point.scenePosition() / m_pixelsPerMm;
        if (!point.ellipseDiameters().isEmpty())
            press.wideMm =
                std::max(point.ellipseDiameters().width(), point.ellipseDiameters().height()) / m_pixelsPerMm;
        if (m_guard.counts(press, glassWidthMm))
            emit fingerDown();
    }
}

void TouchField::mousePressEvent(QMouseEvent* event) {
    event->accept();
    // A finger that is also sent as a mouse was counted as a finger.
    if (event->source() == Qt::MouseEventNotSynthesized)
        emit fingerDown();
}

} // namespace halfcup::touch
