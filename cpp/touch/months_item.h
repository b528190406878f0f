// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/months_geometry.h"

#include <QColor>
#include <QQmlEngine>
#include <QQuickPaintedItem>

namespace halfcup::touch {

/// The season as a strip of twelve months: courses as bars, washes due as dots, turn dates as an upright line
/// with a flag, today as a pointer under the letters. Told apart by shape. Painted again only when something
/// changed.
class MonthsItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::MonthsPicture picture READ picture WRITE setPicture NOTIFY changed)
    Q_PROPERTY(QColor inkColor READ inkColor WRITE setInkColor NOTIFY changed)
    Q_PROPERTY(QColor lineColor READ lineColor WRITE setLineColor NOTIFY changed)       // between months
    Q_PROPERTY(QColor courseColor READ courseColor WRITE setCourseColor NOTIFY changed) // bars
    Q_PROPERTY(QColor todayColor READ todayColor WRITE setTodayColor NOTIFY changed)
    Q_PROPERTY(QString fontFamily READ fontFamily WRITE setFontFamily NOTIFY changed)
    Q_PROPERTY(int fontSize READ fontSize WRITE setFontSize NOTIFY changed) // pixels
public:
    explicit MonthsItem(QQuickItem* parent = nullptr);

    MonthsPicture picture() const { return m_picture; }
    void setPicture(const MonthsPicture& picture);
    QColor inkColor() const { return m_inkColor; }
    void setInkColor(const QColor& color);
    QColor lineColor() const { return m_lineColor; }
    void setLineColor(const QColor& color);
    QColor courseColor() const { return m_courseColor; }
    void setCourseColor(const QColor& color);
    QColor todayColor() const { return m_todayColor; }
    void setTodayColor(const QColor& color);
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
    void paintMonths(QPainter* painter, const MonthsGeometry& geometry, double letterHeight) const;
    void paintMarks(QPainter* painter, const MonthsGeometry& geometry) const;

    MonthsPicture m_picture;
    QColor m_inkColor = Qt::black, m_lineColor = Qt::gray, m_courseColor = Qt::darkYellow,
           m_todayColor = Qt::blue;
    QString m_fontFamily;
    int m_fontSize = 14;
};

} // namespace halfcup::touch
