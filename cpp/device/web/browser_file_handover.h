// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/file_handover.h"

namespace halfcup::device {

/// The browser's share sheet, or its downloads where it has none; its file chooser. A chosen file is copied
/// into a folder that is gone with the page.
class BrowserFileHandover final : public FileHandover {
    Q_OBJECT
public:
    using FileHandover::FileHandover;
    [[nodiscard]] bool canShare() const override { return true; }
    // There is no folder to show: what is not sent is downloaded.
    [[nodiscard]] bool hasShareSheet() const override { return true; }
    void share(const QString& path, const QString& mimeType) override;
    [[nodiscard]] bool canChoose() const override { return true; }
    void chooseFile(const QString& title, const QStringList& endings) override;
};

} // namespace halfcup::device
