// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/slopes.h"
#include "touch/picture_item.h"

namespace halfcup::touch {

class SlopesPicture {
    Q_GADGET
    QML_VALUE_TYPE(slopesPicture)
public:
    pictures::Slopes shown;

    friend bool operator==(const SlopesPicture&, const SlopesPicture&) = default;
};

/// Before and after a treatment, a line for each colony.
class SlopesItem : public PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::SlopesPicture picture READ picture WRITE setPicture NOTIFY pictureChanged)
public:
    using PictureItem::PictureItem;

    SlopesPicture picture() const { return m_picture; }
    void setPicture(const SlopesPicture& picture);

signals:
    void pictureChanged();

protected:
    [[nodiscard]] pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    SlopesPicture m_picture;
};

} // namespace halfcup::touch
