// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/web/browser_file_handover.h"

#include "device/web/browser.h"

namespace halfcup::device {

namespace {

// One file handover in a page's life; it is asked one question at a time.
BrowserFileHandover* g_asking = nullptr;

} // namespace

void BrowserFileHandover::share(const QString& path, const QString& mimeType) {
    halfcupShare(path.toUtf8().constData(), mimeType.toUtf8().constData());
}

void BrowserFileHandover::chooseFile(const QString&, const QStringList& endings) {
    g_asking = this;
    halfcupChoose(
        endings.join(u',').toUtf8().constData(), "/tmp/chosen",
        [](void* self, const char* path) {
            if (self == g_asking)
                Q_EMIT static_cast<BrowserFileHandover*>(self)->chosen(QString::fromUtf8(path));
        },
        [](void* self) {
            if (self == g_asking)
                Q_EMIT static_cast<BrowserFileHandover*>(self)->cancelled();
        },
        this);
}

} // namespace halfcup::device
