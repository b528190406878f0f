// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QColor>
#include <QQmlEngine>
#include <QQuickPaintedItem>

namespace halfcup::touch {

/// The comb of a hundred: a load as cells. A full cell is a mite per 100 bees that is there at the least, a
/// cell with a small core one that perhaps is. Shape alone tells them apart; the fill only repeats it.
/// Painted again only when a value or the size changed.
class CombItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int atLeast READ atLeast WRITE setAtLeast NOTIFY changed) // full cells, 0 to 100
    Q_PROPERTY(int perhaps READ perhaps WRITE setPerhaps NOTIFY changed) // cells with a core, after those
    // The range goes past a hundred: the last cell gets a plus.
    Q_PROPERTY(bool overflows READ overflows WRITE setOverflows NOTIFY changed)
    Q_PROPERTY(QColor fillColor READ fillColor WRITE setFillColor NOTIFY changed)    // fill and cores
    Q_PROPERTY(QColor wallColor READ wallColor WRITE setWallColor NOTIFY changed)    // walls of such cells
    Q_PROPERTY(QColor emptyColor READ emptyColor WRITE setEmptyColor NOTIFY changed) // walls of empty cells
    Q_PROPERTY(double aspect READ aspect CONSTANT) // width by height, to lay the item out
public:
    explicit CombItem(QQuickItem* parent = nullptr);

    int atLeast() const { return m_atLeast; }
    void setAtLeast(int cells); // what is out of range becomes the nearest that is in it
    int perhaps() const { return m_perhaps; }
    void setPerhaps(int cells);
    bool overflows() const { return m_overflows; }
    void setOverflows(bool overflows);
    QColor fillColor() const { return m_fillColor; }
    void setFillColor(const QColor& color);
    QColor wallColor() const { return m_wallColor; }
    void setWallColor(const QColor& color);
    QColor emptyColor() const { return m_emptyColor; }
    void setEmptyColor(const QColor& color);
    double aspect() const;

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    template <class T>
    void set(T& member, const T& value);

    int m_atLeast = 0;
    int m_perhaps = 0;
    bool m_overflows = false;
    QColor m_fillColor = Qt::black;
    QColor m_wallColor = Qt::black;
    QColor m_emptyColor = Qt::gray;
};

} // namespace halfcup::touch
