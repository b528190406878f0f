// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "pictures/legend.h"

#include <QObject>
#include <QStringList>
#include <QtQmlIntegration/qqmlintegration.h>

namespace halfcup::touch {

/// What the marks of a picture mean, as a page hands it on.
class PictureLegend {
    Q_GADGET
    QML_VALUE_TYPE(pictureLegend)
    Q_PROPERTY(int count READ count)
    Q_PROPERTY(QString spoken READ spoken) // the meanings alone
public:
    pictures::Legend entries;

    int count() const { return static_cast<int>(entries.size()); }
    QString spoken() const {
        QStringList meanings;
        for (const pictures::LegendEntry& entry : entries)
            meanings.append(entry.meaning);
        return meanings.join(QStringLiteral(". "));
    }
};

} // namespace halfcup::touch
