// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPointer>
#include <QQuickItem>

namespace halfcup::touch {

/// What can be pressed, by a finger, a mouse or a key. A press counts when it is let go inside, however long
/// it was held and however it wobbled in a glove; what scrolls under it may take it over. A finger counts on
/// its own, whatever other fingers do. It shows contentItem on background. Qt's own button does the same, but
/// reading its module is a tenth of all the work of the app's start.
class PressArea : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool down READ isDown NOTIFY downChanged)
    Q_PROPERTY(bool visualFocus READ hasVisualFocus NOTIFY visualFocusChanged)
    Q_PROPERTY(double padding READ padding WRITE setPadding NOTIFY paddingChanged)
    Q_PROPERTY(double availableWidth READ availableWidth NOTIFY availableWidthChanged)
    Q_PROPERTY(double implicitContentHeight READ implicitContentHeight NOTIFY implicitContentHeightChanged)
    Q_PROPERTY(QQuickItem* contentItem READ contentItem WRITE setContentItem NOTIFY contentItemChanged)
    Q_PROPERTY(QQuickItem* background READ background WRITE setBackground NOTIFY backgroundChanged)
public:
    explicit PressArea(QQuickItem* parent = nullptr);

    /// Whether it would count if it were let go now.
    bool isDown() const { return m_down; }
    /// Whether it has the focus from a key, so that one must see where the focus is.
    bool hasVisualFocus() const { return m_visualFocus; }

    /// Between the edge and contentItem, on all four sides.
    double padding() const { return m_padding; }
    void setPadding(double padding);
    double availableWidth() const;
    /// As high as contentItem would like to be; 0 without one.
    double implicitContentHeight() const;

    QQuickItem* contentItem() const { return m_content; }
    void setContentItem(QQuickItem* item);
    QQuickItem* background() const { return m_background; }
    void setBackground(QQuickItem* item);

    /// As if it had been pressed and let go.
    Q_INVOKABLE void press();

signals:
    void clicked();
    void downChanged();
    void visualFocusChanged();
    void paddingChanged();
    void availableWidthChanged();
    void implicitContentHeightChanged();
    void contentItemChanged();
    void backgroundChanged();

protected:
    void geometryChange(const QRectF& geometry, const QRectF& before) override;
    void itemChange(ItemChange change, const ItemChangeData& data) override;
    void touchEvent(QTouchEvent* event) override;
    void touchUngrabEvent() override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void setDown(bool down);
    void setVisualFocus(bool visual);
    void letGo();
    void forget();
    void place();

    QPointer<QQuickItem> m_content;
    QPointer<QQuickItem> m_background;
    double m_padding = 0;
    int m_finger = -1; // the one that pressed
    bool m_down = false;
    bool m_visualFocus = false;
};

} // namespace halfcup::touch
