// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QQuickItem>

namespace halfcup::touch {

/// Items side by side that share the whole width, all of a row as high as the highest of them would like to
/// be. Without columns all stand in one row, and fill its height where it was given one. What is not visible
/// has no place, nor what wants no height. Qt's own layouts do the same, but reading their module holds up
/// the app's start.
class SideBySide : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double spacing READ spacing WRITE setSpacing NOTIFY spacingChanged)
    Q_PROPERTY(int columns READ columns WRITE setColumns NOTIFY columnsChanged)
    Q_PROPERTY(bool mirrored READ isMirrored WRITE setMirrored NOTIFY mirroredChanged)
    Q_PROPERTY(double lastShare READ lastShare WRITE setLastShare NOTIFY lastShareChanged)
public:
    explicit SideBySide(QQuickItem* parent = nullptr);

    /// Between two columns, and between two rows.
    double spacing() const { return m_spacing; }
    void setSpacing(double spacing);
    /// Of equal width, in every row, no more than there are items; 0: as many as there are items.
    int columns() const { return m_columns; }
    void setColumns(int columns);
    /// Whether the first stands on the right.
    bool isMirrored() const { return m_mirrored; }
    void setMirrored(bool mirrored);
    /// In a single row: how many times as wide as each other item the last one is, at least 1; less where the
    /// others would be narrower than they want to be.
    double lastShare() const { return m_lastShare; }
    void setLastShare(double share);

signals:
    void spacingChanged();
    void columnsChanged();
    void mirroredChanged();
    void lastShareChanged();

protected:
    void componentComplete() override;
    void updatePolish() override;
    void geometryChange(const QRectF& geometry, const QRectF& before) override;
    void itemChange(ItemChange change, const ItemChangeData& data) override;

private:
    void layOut();
    QList<QQuickItem*> shown() const;                                            // those that have a place
    double placeRow(const QList<QQuickItem*>& row, qsizetype cells, double top); // where it would like to end

    double m_spacing = 0;
    int m_columns = 0;
    bool m_mirrored = false;
    double m_lastShare = 1;
    bool m_layingOut = false;
};

} // namespace halfcup::touch
