// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/keep_folder.h"
#include "store/merge_plan.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>
#include <QStringList>

namespace halfcup::touch {

/// The exchange folder: which one it is, and what came through it last. Exchanging happens when the program
/// starts, comes back to the front or goes home to Here, at most once a minute, and when it is asked for;
/// never in the background.
class FolderController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(bool on READ isOn NOTIFY changed)
    Q_PROPERTY(QString folder READ folder NOTIFY changed)       // its path, or the one that is proposed
    Q_PROPERTY(QString stateLine READ stateLine NOTIFY changed) // "Exchanged at 09:41", or why not
    Q_PROPERTY(QString problem READ problem NOTIFY changed)     // in a sentence; else empty
    Q_PROPERTY(QStringList lines READ lines NOTIFY changed)     // what the last exchange brought
public:
    explicit FolderController(Services& services, QObject* parent = nullptr);

    bool isOn() const { return !m_folder.isEmpty(); }
    QString folder() const;
    QString stateLine() const;
    QString problem() const { return m_problem; }
    QStringList lines() const { return m_lines; }

    void refresh();
    /// Where it is on and not looked into for a minute. Says nothing where nothing came.
    void exchangeQuietly();

    Q_INVOKABLE bool
    use(const QString& path); // from now on; made where it is missing and its parent is there
    Q_INVOKABLE void exchangeNow();
    Q_INVOKABLE void stop(); // the folder and all files in it stay as they are

signals:
    void changed();
    void recordsChanged();

private:
    using Look = exchange::FolderLook<store::MergePlan>;

    [[nodiscard]] bool isPaused();
    void exchangeThroughFolder(bool again);
    void tell(const Look& look);

    Services& m_services;
    QString m_folder;
    QString m_problem;
    QStringList m_lines;
    bool m_paused = false;
    std::int64_t m_lookedAtMs = 0; // 0: not yet in this run
};

} // namespace halfcup::touch
