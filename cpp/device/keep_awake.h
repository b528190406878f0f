// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QString>

#include <memory>

namespace halfcup::device {

/// Keeps the screen on while a step of a wash runs.
///
/// The screen stays on for as long as at least one Hold lives, and not a moment longer: there is no "off" to
/// forget. A page keeps its Hold in a member and resets it when it pauses, hides or goes. A phone without the
/// service, or a desktop without a session bus, is no error: the Hold is then empty and works() is false.
/// Never blocks: requests are sent and answers taken later. GUI thread only.
class KeepAwake : public QObject {
    Q_OBJECT
public:
    /// Alive = the screen stays on. May outlive the KeepAwake it came from (it then does nothing).
    class Hold {
    public:
        Hold() = default;
        Hold(const Hold&) = delete;
        Hold& operator=(const Hold&) = delete;
        virtual ~Hold() = default;
    };

    using QObject::QObject;
    /// reason: a few words in the keeper's language, shown by systems that list who keeps the screen on.
    /// Never returns null.
    [[nodiscard]] virtual std::unique_ptr<Hold> hold(const QString& reason) = 0;
    /// Whether a Hold has any effect, as far as known now. Becomes known a moment after the start; see
    /// worksChanged.
    [[nodiscard]] virtual bool works() const = 0;

Q_SIGNALS:
    void worksChanged();
};

} // namespace halfcup::device
