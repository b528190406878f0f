// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/touch_guard.h"

#include <QQuickItem>

namespace halfcup::touch {

/// An area that tells of each finger the moment it comes down, several at once too, and of nothing else: a
/// slide or a lift is no news, and touch_guard.h keeps water and palms out. A mouse counts as a finger,
/// unguarded.
class TouchField : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double pixelsPerMm READ pixelsPerMm WRITE setPixelsPerMm NOTIFY pixelsPerMmChanged)
public:
    explicit TouchField(QQuickItem* parent = nullptr);

    double pixelsPerMm() const { return m_pixelsPerMm; }
    void setPixelsPerMm(double pixels); // above 0; anything else is not taken

signals:
    void pixelsPerMmChanged();
    void fingerDown();

protected:
    void touchEvent(QTouchEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    double m_pixelsPerMm = 160 / 25.4;
    TouchGuard m_guard;
};

} // namespace halfcup::touch
