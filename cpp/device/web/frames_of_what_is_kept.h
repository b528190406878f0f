// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QPointer>
#include <QWindow>

#include <vector>

namespace halfcup::device {

/// Holds back the pictures of the window until all that was written is in the browser's storage.
///
/// A file is written in memory at once, and is there to stay only a few milliseconds later, which a page can
/// be told of but cannot wait for. A touch is acknowledged by what changes on the glass, so nothing changes
/// there meanwhile: no page has to know of it, and none can forget it. Touches are taken all the time.
class FramesOfWhatIsKept final : public QObject {
    Q_OBJECT
public:
    /// Watches all windows from now on. Needs a QCoreApplication.
    explicit FramesOfWhatIsKept(QObject* parent);
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void release();

    std::vector<QPointer<QWindow>> m_waiting;
};

} // namespace halfcup::device
