// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/ios/content_size_text_scale.h"

#include <QGuiApplication>

#include <UIKit/UIKit.h>

namespace halfcup::device {

ContentSizeTextScale::ContentSizeTextScale(QObject* parent)
    : TextScale(parent) {
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive)
            look();
    });
    look();
}

void ContentSizeTextScale::look() {
    constexpr double points = 17; // of the style at its usual size
    const double scale =
        [[UIFontMetrics metricsForTextStyle:UIFontTextStyleBody] scaledValueForValue:points] / points;
    if (!(scale > 0) || scale == m_scale)
        return;
    m_scale = scale;
    Q_EMIT changed();
}

} // namespace halfcup::device
