// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/android/calls_from_java.h"
#include "device/file_handover.h"

namespace halfcup::device {

/// Android's share sheet and document picker (ShareSheet.java, Documents.java). What is chosen or opened is a
/// copy in the cache, which goes after a day. A file that another program opens with this one is passed on as
/// a QFileOpenEvent, as Qt does by itself elsewhere.
class AndroidFileHandover final : public FileHandover {
    Q_OBJECT
public:
    explicit AndroidFileHandover(std::shared_ptr<CallsFromJava> calls, QObject* parent = nullptr);
    [[nodiscard]] bool canShare() const override;
    [[nodiscard]] bool hasShareSheet() const override { return true; }
    void share(const QString& path, const QString& mimeType) override;
    [[nodiscard]] bool canChoose() const override;
    void chooseFile(const QString& title, const QStringList& endings) override;

private:
    std::shared_ptr<CallsFromJava> m_calls;
};

} // namespace halfcup::device
