// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/picture_item.h"

#include "pictures/painter.h"

#include <algorithm>

namespace halfcup::touch {

PictureItem::PictureItem(QQuickItem* parent)
    : QQuickPaintedItem(parent) {
    setAntialiasing(true);
}

void PictureItem::setDusk(bool dusk) {
    if (m_dusk == dusk)
        return;
    m_dusk = dusk;
    update(); // the same drawing in other colours
    emit lookChanged();
}

void PictureItem::setFontFamily(const QString& family) {
    if (m_fontFamily == family)
        return;
    m_fontFamily = family;
    drawAnew();
    emit lookChanged();
}

void PictureItem::setNormalSize(int pixels) {
    if (m_normalSize == std::max(pixels, 1))
        return;
    m_normalSize = std::max(pixels, 1);
    drawAnew();
    emit lookChanged();
}

void PictureItem::setSmallSize(int pixels) {
    if (m_smallSize == std::max(pixels, 1))
        return;
    m_smallSize = std::max(pixels, 1);
    drawAnew();
    emit lookChanged();
}

pictures::Type PictureItem::type() const {
    return {m_fontFamily, static_cast<double>(m_normalSize), static_cast<double>(m_smallSize)};
}

const pictures::Drawing& PictureItem::drawing() const {
    if (!m_drawing)
        m_drawing = draw({size(), type()});
    return *m_drawing;
}

QString PictureItem::keyAt(double x, double y, double reach) const {
    return drawing().nearest({x, y}, reach);
}

void PictureItem::paint(QPainter* painter) {
    if (width() <= 0 || height() <= 0)
        return;
    pictures::paint(*painter, drawing(), m_dusk ? pictures::Palette::dusk() : pictures::Palette::day(),
                    type());
}

void PictureItem::drawAnew() {
    m_drawing.reset();
    update();
    polish();
    emit drawn();
}

// Not at once: the height that follows from a drawing would be set in the middle of what changed the drawing.
void PictureItem::updatePolish() {
    const double height = drawing().size.height();
    if (height == m_drawnHeight)
        return;
    m_drawnHeight = height;
    emit drawnHeightChanged();
}

void PictureItem::geometryChange(const QRectF& now, const QRectF& before) {
    QQuickPaintedItem::geometryChange(now, before);
    if (now.size() == before.size())
        return;
    // A picture that decides its own height has just been given it: it is that picture already.
    if (now.width() == before.width() && m_drawing && now.height() == m_drawing->size.height())
        update();
    else
        drawAnew();
}

} // namespace halfcup::touch
