// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QQmlEngine>
#include <QQuickPaintedItem>

namespace halfcup::touch {

/// How much of a time is over, as a ring that fills clockwise from the top.
class ShakeRing : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double fraction READ fraction WRITE setFraction NOTIFY
                   changed) // 0 to 1; anything else is brought there
    Q_PROPERTY(double thickness READ thickness WRITE setThickness NOTIFY changed) // in the item's pixels
    Q_PROPERTY(QColor ringColor READ ringColor WRITE setRingColor NOTIFY changed) // the part that is over
    Q_PROPERTY(QColor restColor READ restColor WRITE setRestColor NOTIFY changed) // the part still ahead
public:
    explicit ShakeRing(QQuickItem* parent = nullptr);

    double fraction() const { return m_fraction; }
    void setFraction(double fraction);
    double thickness() const { return m_thickness; }
    void setThickness(double thickness);
    QColor ringColor() const { return m_ringColor; }
    void setRingColor(const QColor& color);
    QColor restColor() const { return m_restColor; }
    void setRestColor(const QColor& color);

    /// What Qt's arcs are measured in: sixteenths of a degree, negative for clockwise.
    static int span(double fraction);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    template <class T>
    void set(T& member, const T& value);

    double m_fraction = 0;
    double m_thickness = 20;
    QColor m_ringColor = Qt::black;
    QColor m_restColor = Qt::gray;
};

} // namespace halfcup::touch
