// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/slopes_item.h"

namespace halfcup::touch {

void SlopesItem::setPicture(const SlopesPicture& picture) {
    if (m_picture == picture)
        return;
    m_picture = picture;
    drawAnew();
    emit pictureChanged();
}

pictures::Drawing SlopesItem::draw(const pictures::Sheet& sheet) const {
    return pictures::drawSlopes(m_picture.shown, sheet);
}

} // namespace halfcup::touch
