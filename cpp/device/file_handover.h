// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>

namespace halfcup::device {

/// Gives a file out of the program's hands and takes one into them, by whatever this system has for that: the
/// share sheet and the document picker of a phone, the portals of a desktop.
///
/// Where the system has neither, both flags are false, nothing is said and the calls do nothing: files lie in
/// their folders all the same (folders.h). Never blocks: answers come as signals. GUI thread only.
class FileHandover : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    /// Whether share() has any effect, as far as known now. Becomes known a moment after the start; see
    /// worksChanged.
    [[nodiscard]] virtual bool canShare() const = 0;
    /// Whether what is shared leaves by a list of ways to send it (a share sheet). False: its folder is
    /// shown.
    [[nodiscard]] virtual bool hasShareSheet() const = 0;
    /// Hands on a file that is complete and closed. path: absolute. What becomes of it is the system's.
    virtual void share(const QString& path, const QString& mimeType) = 0;

    /// Whether chooseFile() has any effect, as far as known now.
    [[nodiscard]] virtual bool canChoose() const = 0;
    /// Asks the keeper for one file. title: a few words in the keeper's language; endings: with their dots
    /// (".halfcup"), to help and not to forbid. Asked again before the answer: the first question is
    /// forgotten.
    virtual void chooseFile(const QString& title, const QStringList& endings) = 0;

Q_SIGNALS:
    void worksChanged();
    void chosen(const QString& path); // absolute; it may be unreadable all the same
    void cancelled();                 // by the keeper, or because the system could not ask
};

} // namespace halfcup::device
