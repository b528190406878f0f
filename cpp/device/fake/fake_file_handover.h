// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/file_handover.h"

namespace halfcup::device {

/// Keeps what was shared and asked; the answer to a question is given by the test.
class FakeFileHandover final : public FileHandover {
    Q_OBJECT
public:
    explicit FakeFileHandover(QObject* parent = nullptr);

    [[nodiscard]] bool canShare() const override { return m_canShare; }
    [[nodiscard]] bool hasShareSheet() const override { return m_hasShareSheet; }
    void share(const QString& path, const QString& mimeType) override;
    [[nodiscard]] bool canChoose() const override { return m_canChoose; }
    void chooseFile(const QString& title, const QStringList& endings) override;

    void setCanShare(bool can, bool byASheet = true);
    void setCanChoose(bool can);
    void choose(const QString& path); // as the keeper does, where something was asked
    void cancel();

    [[nodiscard]] const QStringList& shared() const { return m_shared; } // paths
    [[nodiscard]] const QStringList& mimeTypes() const { return m_mimeTypes; }
    [[nodiscard]] const QStringList& endings() const { return m_endings; } // of the last question
    [[nodiscard]] bool isAsking() const { return m_asking; }

private:
    bool m_canShare = false;
    bool m_hasShareSheet = false;
    bool m_canChoose = false;
    bool m_asking = false;
    QStringList m_shared;
    QStringList m_mimeTypes;
    QStringList m_endings;
};

} // namespace halfcup::device
