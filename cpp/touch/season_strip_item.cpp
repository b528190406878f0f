// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/season_strip_item.h"

namespace halfcup::touch {

void SeasonStripItem::setPicture(const StripPicture& picture) {
    if (m_picture == picture)
        return;
    m_picture = picture;
    drawAnew();
    emit pictureChanged();
}

pictures::Drawing SeasonStripItem::draw(const pictures::Sheet& sheet) const {
    return pictures::drawSeasonStrip(m_picture.shown, sheet);
}

} // namespace halfcup::touch
