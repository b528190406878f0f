// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/yard_plan_item.h"

namespace halfcup::touch {

namespace {

constexpr double aboveLegend = 10; // pixels

} // namespace

void YardPlanItem::setPicture(const YardPlanPicture& picture) {
    if (m_picture == picture)
        return;
    m_picture = picture;
    drawAnew();
    emit changed();
}

void YardPlanItem::setLegend(bool legend) {
    if (m_legend == legend)
        return;
    m_legend = legend;
    drawAnew();
    emit changed();
}

void YardPlanItem::touch(double x, double y, double reach) {
    const pictures::Type letters = type();
    const pictures::Sheet sheet{size(), letters};
    const bool onGround = pictures::areaOf(m_picture.plan, sheet).contains(x, y);
    const records::Stand stand =
        onGround ? pictures::frameOf(m_picture.plan, sheet).standAt({x, y}) : records::Stand{};
    emit touched(keyAt(x, y, reach), onGround, stand.eastM, stand.northM);
}

QPointF YardPlanItem::pointOf(const records::Stand& stand) const {
    const pictures::Type letters = type();
    return pictures::frameOf(m_picture.plan, {size(), letters}).at(stand);
}

pictures::Drawing YardPlanItem::draw(const pictures::Sheet& sheet) const {
    pictures::Drawing drawing = pictures::drawYardPlan(m_picture.plan, sheet);
    if (!m_legend)
        return drawing;
    const pictures::Drawing legend = pictures::drawLegend(pictures::legendOf(m_picture.plan), sheet);
    if (legend.size.height() > 0) {
        drawing.lay(legend, {0, drawing.size.height() + aboveLegend});
        drawing.size.rheight() += aboveLegend + legend.size.height();
    }
    return drawing;
}

} // namespace halfcup::touch
