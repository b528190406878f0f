// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/android/configuration_text_scale.h"

#include "device/android/java.h"

#include <QGuiApplication>

namespace halfcup::device {

ConfigurationTextScale::ConfigurationTextScale(QObject* parent)
    : TextScale(parent) {
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive)
            look();
    });
    look();
}

void ConfigurationTextScale::look() {
    const QJniObject resources =
        java::context().callObjectMethod("getResources", "()Landroid/content/res/Resources;");
    if (!resources.isValid())
        return;
    const QJniObject configuration =
        resources.callObjectMethod("getConfiguration", "()Landroid/content/res/Configuration;");
    if (!configuration.isValid())
        return;
    const double scale = configuration.getField<jfloat>("fontScale");
    if (!(scale > 0) || scale == m_scale)
        return;
    m_scale = scale;
    Q_EMIT changed();
}

} // namespace halfcup::device
