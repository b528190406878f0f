// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/outlook_geometry.h"

#include <QColor>
#include <QQmlEngine>
#include <QQuickPaintedItem>

namespace halfcup::touch {

/// The load ahead as two bands over time: hatched with a broken middle if nothing is done, filled with a
/// whole middle with the choice. Painted again only when something changed.
class OutlookItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::OutlookPicture picture READ picture WRITE setPicture NOTIFY changed)
    Q_PROPERTY(QColor inkColor READ inkColor WRITE setInkColor NOTIFY changed)
    Q_PROPERTY(QColor nothingColor READ nothingColor WRITE setNothingColor NOTIFY changed)
    Q_PROPERTY(QColor withColor READ withColor WRITE setWithColor NOTIFY changed)
    Q_PROPERTY(QColor lineColor READ lineColor WRITE setLineColor NOTIFY changed) // frame and months
    Q_PROPERTY(QString fontFamily READ fontFamily WRITE setFontFamily NOTIFY changed)
    Q_PROPERTY(int fontSize READ fontSize WRITE setFontSize NOTIFY changed) // pixels
public:
    explicit OutlookItem(QQuickItem* parent = nullptr);

    OutlookPicture picture() const { return m_picture; }
    void setPicture(const OutlookPicture& picture);
    QColor inkColor() const { return m_inkColor; }
    void setInkColor(const QColor& color);
    QColor nothingColor() const { return m_nothingColor; }
    void setNothingColor(const QColor& color);
    QColor withColor() const { return m_withColor; }
    void setWithColor(const QColor& color);
    QColor lineColor() const { return m_lineColor; }
    void setLineColor(const QColor& color);
    QString fontFamily() const { return m_fontFamily; }
    void setFontFamily(const QString& family);
    int fontSize() const { return m_fontSize; }
    void setFontSize(int pixels);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    template <class T>
    void set(T& member, const T& value);
    void paintAxes(QPainter* painter, const OutlookGeometry& geometry) const;
    void paintBands(QPainter* painter, const OutlookGeometry& geometry) const;
    void paintDays(QPainter* painter, const OutlookGeometry& geometry) const;

    OutlookPicture m_picture;
    QColor m_inkColor = Qt::black, m_nothingColor = Qt::gray, m_withColor = Qt::blue, m_lineColor = Qt::gray;
    QString m_fontFamily;
    int m_fontSize = 14;
};

} // namespace halfcup::touch
