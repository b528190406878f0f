// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/standing_mark.h"

#include "pictures/standing_shape.h"
#include "touch/standing_word.h"

namespace halfcup::touch {

void StandingMark::setStanding(int standing) {
    if (m_standing == standing)
        return;
    m_standing = standing;
    drawAnew();
    emit changed();
}

pictures::Drawing StandingMark::draw(const pictures::Sheet& sheet) const {
    pictures::Drawing drawing{.size = sheet.size};
    pictures::addStanding(drawing, StandingWord::standingOf(m_standing), QRectF(QPointF(), sheet.size));
    return drawing;
}

} // namespace halfcup::touch
