// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/side_by_side.h"

#include <algorithm>
#include <cmath>

namespace halfcup::touch {

SideBySide::SideBySide(QQuickItem* parent)
    : QQuickItem(parent) {}

void SideBySide::setSpacing(double spacing) {
    if (m_spacing == spacing)
        return;
    m_spacing = spacing;
    emit spacingChanged();
    layOut();
}

void SideBySide::setColumns(int columns) {
    if (m_columns == columns)
        return;
    m_columns = columns;
    emit columnsChanged();
    layOut();
}

void SideBySide::setMirrored(bool mirrored) {
    if (m_mirrored == mirrored)
        return;
    m_mirrored = mirrored;
    emit mirroredChanged();
    layOut();
}

void SideBySide::setLastShare(double share) {
    if (m_lastShare == share)
        return;
    m_lastShare = share;
    emit lastShareChanged();
    layOut();
}

void SideBySide::componentComplete() {
    QQuickItem::componentComplete();
    layOut();
}

void SideBySide::updatePolish() {
    layOut();
}

void SideBySide::geometryChange(const QRectF& geometry, const QRectF& before) {
    QQuickItem::geometryChange(geometry, before);
    if (geometry.size() != before.size())
        layOut();
}

void SideBySide::itemChange(ItemChange change, const ItemChangeData& data) {
    QQuickItem::itemChange(change, data);
    if (change == ItemChildAddedChange) {
        // Not at once: it may be reckoning its height out of the width it would get.
        connect(data.item, &QQuickItem::visibleChanged, this, &SideBySide::polish);
        connect(data.item, &QQuickItem::implicitHeightChanged, this, &SideBySide::polish);
        polish();
    } else if (change == ItemChildRemovedChange) {
        disconnect(data.item, nullptr, this, nullptr);
        polish();
    }
}

QList<QQuickItem*> SideBySide::shown() const {
    QList<QQuickItem*> items = childItems();
    items.removeIf([](const QQuickItem* each) { return !each->isVisible() || each->implicitHeight() <= 0; });
    return items;
}

void SideBySide::layOut() {
    // While the page is hidden nobody can tell which of the items would be visible on it; they tell it when
    // it comes up. And an item that gets its width may want another height: it is asked for that below.
    if (m_layingOut || !isComponentComplete() || !isVisible())
        return;
    m_layingOut = true;
    const QList<QQuickItem*> items = shown();
    const qsizetype inRow =
        std::clamp<qsizetype>(items.size(), 1, m_columns > 0 ? m_columns : items.size() + 1);
    double bottom = 0;
    for (qsizetype first = 0; first < items.size(); first += inRow)
        bottom = placeRow(items.mid(first, inRow), inRow, first > 0 ? bottom + m_spacing : 0);
    setImplicitHeight(bottom);
    m_layingOut = false;
}

double SideBySide::placeRow(const QList<QQuickItem*>& row, qsizetype cells, double top) {
    const double lastShare = m_columns > 0 ? 1 : m_lastShare;
    const double room = width() - m_spacing * (cells - 1.0);
    double share = room / (cells - 1.0 + lastShare);
    if (lastShare > 1) // not at the cost of the others' own width
        for (qsizetype i = 0; i + 1 < row.size(); ++i)
            share = std::max(share, std::min(row[i]->implicitWidth(), room / cells));
    double wanted = 0;
    for (qsizetype i = 0; i < row.size(); ++i) {
        // On whole pixels, or edges are blurred.
        const double left = std::round(i * (share + m_spacing));
        const double right = std::round(i + 1 < cells ? i * (share + m_spacing) + share : width());
        row[i]->setWidth(std::max(0.0, right - left));
        row[i]->setX(m_mirrored ? width() - right : left);
        wanted = std::max(wanted, row[i]->implicitHeight());
    }
    const double height = m_columns == 0 && heightValid() ? this->height() : wanted;
    for (QQuickItem* each : row) {
        each->setY(top);
        each->setHeight(height);
    }
    return top + wanted;
}

} // namespace halfcup::touch
