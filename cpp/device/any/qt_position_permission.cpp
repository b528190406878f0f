// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/position_permission.h"

#include <QtGlobal>

// One condition in the other: before 6.5 the second one cannot be read. A browser asks by itself, when it is
// first asked where it is.
#if QT_VERSION >= QT_VERSION_CHECK(6, 5, 0) && !defined(Q_OS_WASM)
#if QT_CONFIG(permissions)
#define HALFCUP_ASKS_QT
#include <QCoreApplication>
#include <QPermissions>
#endif
#endif

namespace halfcup::device {

namespace {

class QtPositionPermission final : public PositionPermission {
public:
    void ask(QObject* context, std::function<void(bool)> answer) override {
#ifdef HALFCUP_ASKS_QT
        QLocationPermission wanted;
        wanted.setAccuracy(QLocationPermission::Precise); // a yard is told from the next by metres
        wanted.setAvailability(QLocationPermission::WhenInUse);
        switch (qApp->checkPermission(wanted)) {
        case Qt::PermissionStatus::Granted:
            return answer(true);
        case Qt::PermissionStatus::Denied:
            return answer(false);
        case Qt::PermissionStatus::Undetermined:
            break;
        }
        qApp->requestPermission(wanted, context, [answer = std::move(answer)](const QPermission& got) {
            answer(got.status() == Qt::PermissionStatus::Granted);
        });
#else
        Q_UNUSED(context)
        answer(true);
#endif
    }
};

} // namespace

std::unique_ptr<PositionPermission> makePositionPermission() {
    return std::make_unique<QtPositionPermission>();
}

} // namespace halfcup::device
