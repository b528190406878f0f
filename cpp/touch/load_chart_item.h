// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/load_chart.h"
#include "touch/picture_item.h"

namespace halfcup::touch {

/// The loads of a colony over time, and the wash that is stressed among them.
class LoadPicture {
    Q_GADGET
    QML_VALUE_TYPE(loadPicture)
public:
    pictures::LoadChart chart;
    QString chosen; // a key of its washes, or empty

    friend bool operator==(const LoadPicture&, const LoadPicture&) = default;
};

/// Its picture. keyAt() tells the wash at a point.
class LoadChartItem : public halfcup::touch::PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::LoadPicture picture READ picture WRITE setPicture NOTIFY pictureChanged)
public:
    using PictureItem::PictureItem;

    LoadPicture picture() const { return m_picture; }
    void setPicture(const LoadPicture& picture);

signals:
    void pictureChanged();

protected:
    [[nodiscard]] pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    LoadPicture m_picture;
};

} // namespace halfcup::touch
