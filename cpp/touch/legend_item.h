// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/picture_item.h"
#include "touch/picture_legend.h"

namespace halfcup::touch {

/// What the marks of a picture mean, as wide as the page and as high as it needs.
class LegendItem : public PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::PictureLegend legend READ legend WRITE setLegend NOTIFY legendChanged)
public:
    using PictureItem::PictureItem;

    PictureLegend legend() const { return m_legend; }
    void setLegend(const PictureLegend& legend);

signals:
    void legendChanged();

protected:
    [[nodiscard]] pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    PictureLegend m_legend;
};

} // namespace halfcup::touch
