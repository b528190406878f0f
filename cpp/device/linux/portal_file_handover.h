// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/file_handover.h"
#include "device/linux/session_bus.h"

#include <QDBusMessage>
#include <QVariantMap>

namespace halfcup::device {

/// By the desktop portals of freedesktop.org (service org.freedesktop.portal.Desktop), which work inside and
/// outside of a sandbox: FileChooser.OpenFile asks for a file. No portal has a share sheet, so share() shows
/// the file in its folder (OpenURI.OpenDirectory, from version 3 of that interface on).
///
/// The portal answers on a Request object whose path follows from our name on the bus and a token of ours; we
/// listen there before we ask, so that no answer comes too early.
class PortalFileHandover final : public FileHandover {
    Q_OBJECT
public:
    explicit PortalFileHandover(std::shared_ptr<SessionBus> bus, QObject* parent = nullptr);

    [[nodiscard]] bool canShare() const override;
    [[nodiscard]] bool hasShareSheet() const override { return false; }
    void share(const QString& path, const QString& mimeType) override;
    [[nodiscard]] bool canChoose() const override;
    void chooseFile(const QString& title, const QStringList& endings) override;

private Q_SLOTS:
    void answered(uint response, const QVariantMap& results);

private:
    void askVersions();
    void askVersion(const QString& interface, uint& version);
    void listenAt(const QString& requestPath);
    void giveUp();
    [[nodiscard]] bool isThere() const;

    std::shared_ptr<SessionBus> m_bus;
    BusService m_service;
    uint m_chooserVersion = 0; // 0: not there
    uint m_openerVersion = 0;
    int m_token = 0;
    QString m_request; // where the answer comes; empty: nothing is asked
};

} // namespace halfcup::device
