// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/yard_plan.h"
#include "touch/picture_item.h"

namespace halfcup::touch {

/// What the plan of a yard shows, on its way from a controller to a page.
class YardPlanPicture {
    Q_GADGET
    QML_VALUE_TYPE(yardPlanPicture)
public:
    pictures::YardPlan plan;
    friend bool operator==(const YardPlanPicture&, const YardPlanPicture&) = default;
};

/// The plan of a yard on a page, as high as it needs, with its legend under it.
class YardPlanItem : public halfcup::touch::PictureItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(halfcup::touch::YardPlanPicture picture READ picture WRITE setPicture NOTIFY changed)
    Q_PROPERTY(bool legend READ hasLegend WRITE setLegend NOTIFY changed)
public:
    using PictureItem::PictureItem;

    YardPlanPicture picture() const { return m_picture; }
    void setPicture(const YardPlanPicture& picture);
    bool hasLegend() const { return m_legend; }
    void setLegend(bool legend);

    /// Tells what lies at a point of the item: touched() follows. reach: how far from a hive's middle a
    /// finger still means it, pixels.
    Q_INVOKABLE void touch(double x, double y, double reach);
    /// Where a stand is drawn, the point of the item; for tests.
    QPointF pointOf(const records::Stand& stand) const;

signals:
    void changed();
    /// key: of the hive; empty where none is near. onGround: whether the point is a place of the yard, and
    /// then where: metres east and north.
    void touched(const QString& key, bool onGround, double eastM, double northM);

protected:
    pictures::Drawing draw(const pictures::Sheet& sheet) const override;

private:
    YardPlanPicture m_picture;
    bool m_legend = true;
};

} // namespace halfcup::touch
