// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/picture_item.h"

namespace halfcup::touch {

/// The mark beside a standing (pictures/standing_shape.h).
class StandingMark : public halfcup::touch::PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int standing READ standing WRITE setStanding NOTIFY changed) // a StandingWord::Value
public:
    using PictureItem::PictureItem;

    int standing() const { return m_standing; }
    void setStanding(int standing); // a value that is none shows as Unknown

signals:
    void changed();

protected:
    pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    int m_standing = 0;
};

} // namespace halfcup::touch
