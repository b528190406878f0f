// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/picture_legend.h"
#include "touch/services.h"
#include "touch/yard_comparison_item.h"

#include <QObject>
#include <QQmlEngine>
#include <QStringList>

namespace halfcup::touch {

/// The colonies of a yard held against each other: what the latest wash of each found, the highest first.
class CompareController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString yardName READ yardName NOTIFY changed)
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ComparisonPicture picture READ picture NOTIFY changed)
    Q_PROPERTY(halfcup::touch::PictureLegend legend READ legend NOTIFY changed)
    Q_PROPERTY(QString summary READ summary NOTIFY changed) // in a few sentences
    Q_PROPERTY(QStringList rows READ rows NOTIFY changed)   // each colony in words, as in the picture
public:
    CompareController(Services& services, QObject* parent = nullptr);

    QString yardName() const { return m_yardName; }
    bool isDemo() const { return m_demo; }
    ComparisonPicture picture() const { return m_picture; }
    PictureLegend legend() const;
    QString summary() const;
    QStringList rows() const;

    /// False where there is no such yard.
    bool show(const QString& yardId);
    void refresh(); // reads the store again

signals:
    void changed();

private:
    Services& m_services;
    QString m_yardId;
    QString m_yardName;
    bool m_demo = false;
    ComparisonPicture m_picture;
};

} // namespace halfcup::touch
