// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/load_chart_item.h"

namespace halfcup::touch {

void LoadChartItem::setPicture(const LoadPicture& picture) {
    if (m_picture == picture)
        return;
    m_picture = picture;
    drawAnew();
    emit pictureChanged();
}

pictures::Drawing LoadChartItem::draw(const pictures::Sheet& sheet) const {
    return pictures::drawLoadChart(m_picture.chart, sheet, m_picture.chosen);
}

} // namespace halfcup::touch
