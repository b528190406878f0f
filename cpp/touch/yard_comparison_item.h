// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/yard_comparison.h"
#include "touch/picture_item.h"

namespace halfcup::touch {

class ComparisonPicture {
    Q_GADGET
    QML_VALUE_TYPE(comparisonPicture)
public:
    pictures::YardComparison shown;

    friend bool operator==(const ComparisonPicture&, const ComparisonPicture&) = default;
};

/// The colonies of a yard under each other, as high as they need (drawnHeight).
class YardComparisonItem : public PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::ComparisonPicture picture READ picture WRITE setPicture NOTIFY pictureChanged)
public:
    using PictureItem::PictureItem;

    ComparisonPicture picture() const { return m_picture; }
    void setPicture(const ComparisonPicture& picture);

signals:
    void pictureChanged();

protected:
    [[nodiscard]] pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    ComparisonPicture m_picture;
};

} // namespace halfcup::touch
