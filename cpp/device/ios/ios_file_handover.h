// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/file_handover.h"

#include <memory>

namespace halfcup::device {

/// The share sheet (UIActivityViewController) and the document picker (UIDocumentPickerViewController) of
/// iOS. What is chosen is a copy in the program's own temporary folder. A file that another program opens
/// with this one comes from Qt itself, as a QFileOpenEvent.
class IosFileHandover final : public FileHandover {
    Q_OBJECT
public:
    explicit IosFileHandover(QObject* parent = nullptr);
    ~IosFileHandover() override;
    [[nodiscard]] bool canShare() const override { return true; }
    [[nodiscard]] bool hasShareSheet() const override { return true; }
    void share(const QString& path, const QString& mimeType) override;
    [[nodiscard]] bool canChoose() const override { return true; }
    void chooseFile(const QString& title, const QStringList& endings) override;

private:
    struct Picker; // Objective-C stays out of this header
    std::unique_ptr<Picker> m_picker;
};

} // namespace halfcup::device
