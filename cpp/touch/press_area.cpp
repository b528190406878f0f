// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/press_area.h"

#include <QTouchEvent>

#include <algorithm>

namespace halfcup::touch {

namespace {

bool isFromKey(Qt::FocusReason reason) {
    return reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason ||
           reason == Qt::ShortcutFocusReason;
}

} // namespace

PressArea::PressArea(QQuickItem* parent)
    : QQuickItem(parent) {
    setAcceptTouchEvents(true);
    setAcceptedMouseButtons(Qt::LeftButton);
    setActiveFocusOnTab(true);
}

double PressArea::availableWidth() const {
    return std::max(0.0, width() - 2 * m_padding);
}

double PressArea::implicitContentHeight() const {
    return m_content ? m_content->implicitHeight() : 0;
}

void PressArea::setPadding(double padding) {
    if (padding == m_padding)
        return;
    m_padding = padding;
    place();
    emit paddingChanged();
    emit availableWidthChanged();
}

void PressArea::setContentItem(QQuickItem* item) {
    if (item == m_content)
        return;
    if (m_content) {
        m_content->disconnect(this);
        m_content->setParentItem(nullptr);
    }
    m_content = item;
    if (item) {
        item->setParentItem(this);
        connect(item, &QQuickItem::implicitHeightChanged, this, &PressArea::implicitContentHeightChanged);
    }
    place();
    emit contentItemChanged();
    emit implicitContentHeightChanged();
}

void PressArea::setBackground(QQuickItem* item) {
    if (item == m_background)
        return;
    if (m_background)
        m_background->setParentItem(nullptr);
    m_background = item;
    if (item) {
        item->setParentItem(this);
        item->setZ(-1);
    }
    place();
    emit backgroundChanged();
}

void PressArea::place() {
    if (m_background)
        m_background->setSize(size());
    if (m_content) {
        m_content->setPosition({m_padding, m_padding});
        m_content->setSize({availableWidth(), std::max(0.0, height() - 2 * m_padding)});
    }
}

void PressArea::geometryChange(const QRectF& geometry, const QRectF& before) {
    QQuickItem::geometryChange(geometry, before);
    if (geometry.size() == before.size())
        return;
    place();
    if (geometry.width() != before.width())
        emit availableWidthChanged();
}

void PressArea::itemChange(ItemChange change, const ItemChangeData& data) {
    QQuickItem::itemChange(change, data);
    if (change == ItemVisibleHasChanged &&
        !data.boolValue) // of one that is switched off Qt takes the finger away
        forget();
}

void PressArea::press() {
    // What was being typed is finished first, whatever the platform does with the focus on a touch.
    forceActiveFocus(Qt::OtherFocusReason);
    emit clicked(); // the last thing: it may end this button
}

void PressArea::setDown(bool down) {
    if (down == m_down)
        return;
    m_down = down;
    emit downChanged();
}

void PressArea::setVisualFocus(bool visual) {
    if (visual == m_visualFocus)
        return;
    m_visualFocus = visual;
    emit visualFocusChanged();
}

void PressArea::letGo() {
    const bool counts = m_down;
    forget();
    if (counts)
        press();
}

void PressArea::forget() {
    m_finger = -1;
    setDown(false);
}

void PressArea::touchEvent(QTouchEvent* event) {
    if (event->type() == QEvent::TouchCancel) {
        forget();
        return;
    }
    for (const QEventPoint& point : event->points()) {
        if (m_finger == -1 && point.state() == QEventPoint::Pressed)
            m_finger = point.id();
        if (point.id() != m_finger)
            continue;
        if (point.state() == QEventPoint::Released) {
            letGo();
            return;
        }
        if (point.state() != QEventPoint::Stationary) // of one that rests the event does not say where
            setDown(contains(point.position()));
    }
}

void PressArea::touchUngrabEvent() {
    forget();
}

void PressArea::mousePressEvent(QMouseEvent* event) {
    event->accept();
    setDown(true);
}

void PressArea::mouseMoveEvent(QMouseEvent* event) {
    setDown(contains(event->position()));
}

void PressArea::mouseReleaseEvent(QMouseEvent* event) {
    event->accept();
    letGo();
}

void PressArea::mouseUngrabEvent() {
    forget();
}

void PressArea::keyPressEvent(QKeyEvent* event) {
    const bool isReturn = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!isReturn && event->key() != Qt::Key_Space) {
        event->ignore();
        return;
    }
    if (event->isAutoRepeat()) // held: one press
        return;
    if (isReturn)
        press();
    else
        setDown(true);
}

void PressArea::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Space)
        event->ignore();
    else if (!event->isAutoRepeat())
        letGo();
}

void PressArea::focusInEvent(QFocusEvent* event) {
    QQuickItem::focusInEvent(event);
    setVisualFocus(isFromKey(event->reason()));
}

void PressArea::focusOutEvent(QFocusEvent* event) {
    QQuickItem::focusOutEvent(event);
    setVisualFocus(false);
    if (m_finger == -1)
        setDown(false); // the key's end goes elsewhere
}

} // namespace halfcup::touch
