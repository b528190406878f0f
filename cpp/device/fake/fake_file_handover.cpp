// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/fake/fake_file_handover.h"

#include <utility>

namespace halfcup::device {

FakeFileHandover::FakeFileHandover(QObject* parent)
    : FileHandover(parent) {}

void FakeFileHandover::share(const QString& path, const QString& mimeType) {
    if (!m_canShare)
        return;
    m_shared.append(path);
    m_mimeTypes.append(mimeType);
}

void FakeFileHandover::chooseFile(const QString&, const QStringList& endings) {
    m_endings = endings;
    m_asking = m_canChoose;
    if (!m_canChoose)
        Q_EMIT cancelled();
}

void FakeFileHandover::setCanShare(bool can, bool byASheet) {
    m_canShare = can;
    m_hasShareSheet = can && byASheet;
    Q_EMIT worksChanged();
}

void FakeFileHandover::setCanChoose(bool can) {
    m_canChoose = can;
    Q_EMIT worksChanged();
}

void FakeFileHandover::choose(const QString& path) {
    if (std::exchange(m_asking, false))
        Q_EMIT chosen(path);
}

void FakeFileHandover::cancel() {
    if (std::exchange(m_asking, false))
        Q_EMIT cancelled();
}

} // namespace halfcup::device
