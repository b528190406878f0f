// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/yard_comparison_item.h"

namespace halfcup::touch {

void YardComparisonItem::setPicture(const ComparisonPicture& picture) {
    if (m_picture == picture)
        return;
    m_picture = picture;
    drawAnew();
    emit pictureChanged();
}

pictures::Drawing YardComparisonItem::draw(const pictures::Sheet& sheet) const {
    return pictures::drawYardComparison(m_picture.shown, sheet);
}

} // namespace halfcup::touch
