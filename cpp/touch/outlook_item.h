// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/outlook_chart.h"
#include "touch/picture_item.h"

namespace halfcup::touch {

/// What the picture of a "what if" shows.
class OutlookPicture {
    Q_GADGET
    QML_VALUE_TYPE(outlookPicture)
public:
    pictures::OutlookChart chart;
    friend bool operator==(const OutlookPicture&, const OutlookPicture&) = default;
};

/// The load ahead, with and without a treatment.
class OutlookItem : public halfcup::touch::PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::OutlookPicture picture READ picture WRITE setPicture NOTIFY pictureChanged)
public:
    using PictureItem::PictureItem;

    OutlookPicture picture() const { return m_picture; }
    void setPicture(const OutlookPicture& picture);

signals:
    void pictureChanged();

protected:
    [[nodiscard]] pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    OutlookPicture m_picture;
};

} // namespace halfcup::touch
