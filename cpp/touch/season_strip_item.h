// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/season_strip.h"
#include "touch/picture_item.h"

namespace halfcup::touch {

class StripPicture {
    Q_GADGET
    QML_VALUE_TYPE(stripPicture)
public:
    pictures::SeasonStrip shown;

    friend bool operator==(const StripPicture&, const StripPicture&) = default;
};

/// A bee year as a strip of twelve months, as high as its rows need (drawnHeight).
class SeasonStripItem : public PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::StripPicture picture READ picture WRITE setPicture NOTIFY pictureChanged)
public:
    using PictureItem::PictureItem;

    StripPicture picture() const { return m_picture; }
    void setPicture(const StripPicture& picture);

signals:
    void pictureChanged();

protected:
    [[nodiscard]] pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    StripPicture m_picture;
};

} // namespace halfcup::touch
