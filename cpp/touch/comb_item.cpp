// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/comb_item.h"

#include "pictures/comb_geometry.h"

namespace halfcup::touch {

void CombItem::setPicture(const CombPicture& picture) {
    if (m_picture == picture)
        return;
    m_picture = picture;
    drawAnew();
    emit changed();
}

double CombItem::aspect() const {
    return pictures::CombGeometry::aspect();
}

pictures::Drawing CombItem::draw(const pictures::Sheet& sheet) const {
    return pictures::drawComb(m_picture.comb, sheet);
}

void CombCell::setFull(bool full) {
    if (m_full == full)
        return;
    m_full = full;
    drawAnew();
    emit changed();
}

pictures::Drawing CombCell::draw(const pictures::Sheet& sheet) const {
    return pictures::drawCombCell(m_full, sheet.size);
}

} // namespace halfcup::touch
