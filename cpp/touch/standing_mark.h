// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QPainterPath>
#include <QQmlEngine>
#include <QQuickPaintedItem>

namespace halfcup::touch {

/// The mark beside a standing: a drop that hangs under a line, lies on it or stands over it; a question mark
/// where nobody can tell yet, a short dash where nothing is known. Told apart by shape; the fill only repeats
/// it.
class StandingMark : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int standing READ standing WRITE setStanding NOTIFY changed)    // a StandingWord::Value
    Q_PROPERTY(QColor inkColor READ inkColor WRITE setInkColor NOTIFY changed) // line and outlines
    Q_PROPERTY(
        QColor closeColor READ closeColor WRITE setCloseColor NOTIFY changed) // inside the drop on the line
    Q_PROPERTY(QColor overColor READ overColor WRITE setOverColor NOTIFY changed) // inside the drop over it
public:
    explicit StandingMark(QQuickItem* parent = nullptr);

    int standing() const { return m_standing; }
    void setStanding(int standing); // a value that is none shows as Unknown
    QColor inkColor() const { return m_inkColor; }
    void setInkColor(const QColor& color);
    QColor closeColor() const { return m_closeColor; }
    void setCloseColor(const QColor& color);
    QColor overColor() const { return m_overColor; }
    void setOverColor(const QColor& color);

    /// A falling drop in a square of side 1: its round belly has the radius given, its tip is twice that
    /// above the belly's centre.
    static QPainterPath drop(QPointF centre, double radius);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    template <class T>
    void set(T& member, const T& value);

    int m_standing = 0;
    QColor m_inkColor = Qt::black;
    QColor m_closeColor = Qt::black;
    QColor m_overColor = Qt::black;
};

} // namespace halfcup::touch
