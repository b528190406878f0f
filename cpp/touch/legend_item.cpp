// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/legend_item.h"

namespace halfcup::touch {

void LegendItem::setLegend(const PictureLegend& legend) {
    m_legend = legend;
    drawAnew();
    emit legendChanged();
}

pictures::Drawing LegendItem::draw(const pictures::Sheet& sheet) const {
    return pictures::drawLegend(m_legend.entries, sheet);
}

} // namespace halfcup::touch
