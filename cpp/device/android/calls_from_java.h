// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QString>

#include <memory>

namespace halfcup::device {

/// What Java tells C++ (the native methods of platform/android/src). Android calls on threads of its own; the
/// signals come on the GUI thread, in the order of the calls.
class CallsFromJava final : public QObject {
    Q_OBJECT
public:
    /// Registers the native methods the first time; the same object for all who hold one. GUI thread only.
    [[nodiscard]] static std::shared_ptr<CallsFromJava> open();
    ~CallsFromJava() override;

Q_SIGNALS:
    void documentChosen(const QString& path);
    void documentCancelled();
    void documentOpened(const QString& path); // by another program, with this one
    void volumeKeyPressed(bool up);
    void edgesChanged(int left, int top, int right, int bottom); // dots of the glass
    void memoryIsShort();

private:
    CallsFromJava();
};

} // namespace halfcup::device
