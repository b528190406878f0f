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

double PictureItem::drawnHeight() const {
    return drawing().size.height();
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
    emit drawn();
}

void PictureItem::geometryChange(const QRectF& now, const QRectF& before) {
    QQuickPaintedItem::geometryChange(now, before);
    // A picture that decides its own height is given just that one by its page: it is drawn already.
    const bool fits = m_drawing && now.width() == before.width() && now.height() == m_drawing->size.height();
    if (now.size() != before.size() && !fits)
        drawAnew();
}

} // namespace halfcup::touch
