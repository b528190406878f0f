// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/comb.h"
#include "touch/picture_item.h"

namespace halfcup::touch {

/// What the comb of a hundred shows, on its way from a controller to a page.
class CombPicture {
    Q_GADGET
    QML_VALUE_TYPE(combPicture)
    Q_PROPERTY(bool hasPerhaps READ hasPerhaps)
    Q_PROPERTY(bool overflows READ overflows)
    Q_PROPERTY(QString spoken READ spoken)
    // What a full cell, a cell with a core and the plus mean.
    Q_PROPERTY(QString fullMeaning READ fullMeaning)
    Q_PROPERTY(QString coreMeaning READ coreMeaning)
    Q_PROPERTY(QString plusMeaning READ plusMeaning)
public:
    pictures::Comb comb;

    bool hasPerhaps() const { return comb.perhaps > 0; }
    bool overflows() const { return comb.overflows; }
    QString spoken() const { return pictures::sentenceOf(comb); }
    QString fullMeaning() const { return pictures::meaningOf(pictures::CombPart::Full); }
    QString coreMeaning() const { return pictures::meaningOf(pictures::CombPart::Core); }
    QString plusMeaning() const { return pictures::meaningOf(pictures::CombPart::Plus); }
    friend bool operator==(const CombPicture&, const CombPicture&) = default;
};

/// The comb of a hundred on a page.
class CombItem : public halfcup::touch::PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::CombPicture picture READ picture WRITE setPicture NOTIFY changed)
    Q_PROPERTY(double aspect READ aspect CONSTANT) // width by height, to lay the item out
public:
    using PictureItem::PictureItem;

    CombPicture picture() const { return m_picture; }
    void setPicture(const CombPicture& picture);
    double aspect() const;

signals:
    void changed();

protected:
    pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    CombPicture m_picture;
};

/// One cell of it, for saying what it means.
class CombCell : public halfcup::touch::PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool full READ isFull WRITE setFull NOTIFY changed) // else with a core
public:
    using PictureItem::PictureItem;

    bool isFull() const { return m_full; }
    void setFull(bool full);

signals:
    void changed();

protected:
    pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    bool m_full = true;
};

} // namespace halfcup::touch
