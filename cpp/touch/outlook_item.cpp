// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/outlook_item.h"

namespace halfcup::touch {

void OutlookItem::setPicture(const OutlookPicture& picture) {
    if (m_picture == picture)
        return;
    m_picture = picture;
    drawAnew();
    emit pictureChanged();
}

pictures::Drawing OutlookItem::draw(const pictures::Sheet& sheet) const {
    return pictures::drawOutlook(m_picture.chart, sheet);
}

} // namespace halfcup::touch
