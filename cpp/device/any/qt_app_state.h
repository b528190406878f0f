// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/app_state.h"

#include <QtCore/qnamespace.h>

namespace halfcup::device {

/// As Qt tells it (QGuiApplication::applicationStateChanged), wherever Qt runs. Qt tells nothing of memory:
/// a platform that hears of it calls tellMemoryIsShort().
class QtAppState final : public AppState {
    Q_OBJECT
public:
    explicit QtAppState(QObject* parent = nullptr);
    [[nodiscard]] bool isInFront() const override { return m_inFront; }
    void tellMemoryIsShort() { Q_EMIT memoryIsShort(); }

private:
    void take(Qt::ApplicationState state);

    bool m_inFront = true;
};

} // namespace halfcup::device
