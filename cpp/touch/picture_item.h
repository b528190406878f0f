// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/drawing.h"
#include "pictures/type.h"

#include <QQmlEngine>
#include <QQuickPaintedItem>

#include <optional>

namespace halfcup::touch {

/// A picture on a page: asks for a drawing when what it shows, its size, the letters or the theme changed,
/// and keeps it; painted again only then. Each picture is a class of its own with its data as a property.
///
/// Name it in full as a base, halfcup::touch::PictureItem: the tool that writes the types for qmllint looks
/// bases up by their full names, and does not know what such an item is otherwise (Qt 6.4).
class PictureItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(bool dusk READ isDusk WRITE setDusk NOTIFY lookChanged)
    Q_PROPERTY(QString fontFamily READ fontFamily WRITE setFontFamily NOTIFY lookChanged)
    Q_PROPERTY(int normalSize READ normalSize WRITE setNormalSize NOTIFY lookChanged) // pixels
    Q_PROPERTY(int smallSize READ smallSize WRITE setSmallSize NOTIFY lookChanged)    // pixels
    /// How high the drawing is that fits the width: for pictures that decide their own height.
    Q_PROPERTY(double drawnHeight READ drawnHeight NOTIFY drawnHeightChanged)
public:
    explicit PictureItem(QQuickItem* parent = nullptr);

    bool isDusk() const { return m_dusk; }
    void setDusk(bool dusk);
    QString fontFamily() const { return m_fontFamily; }
    void setFontFamily(const QString& family);
    int normalSize() const { return m_normalSize; }
    void setNormalSize(int pixels); // below 1 counts as 1
    int smallSize() const { return m_smallSize; }
    void setSmallSize(int pixels);
    double drawnHeight() const { return m_drawnHeight; } // 0 until the page was laid out

    const pictures::Drawing& drawing() const; // made where there is none
    /// The key of what was drawn nearest to the point of the item, within reach pixels; empty: nothing.
    Q_INVOKABLE QString keyAt(double x, double y, double reach) const;

    void paint(QPainter* painter) override;

signals:
    void lookChanged();
    void drawnHeightChanged();
    void drawn(); // another drawing is asked for

protected:
    [[nodiscard]] virtual pictures::Drawing draw(const pictures::Sheet& sheet) const = 0;
    void drawAnew(); // for the setters of what is shown
    pictures::Type type() const;
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void updatePolish() override;

private:
    bool m_dusk = false;
    QString m_fontFamily;
    int m_normalSize = 17;
    int m_smallSize = 14;
    double m_drawnHeight = 0;
    mutable std::optional<pictures::Drawing> m_drawing;
};

} // namespace halfcup::touch
