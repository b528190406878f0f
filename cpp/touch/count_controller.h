// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/count.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The count of one rinse. A touch is written to disk first and shown after.
class CountController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("the wash's")
    Q_PROPERTY(int mites READ mites NOTIFY changed)
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed) // "9 mites", for a screen reader
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
    Q_PROPERTY(bool touched READ isTouched NOTIFY changed)  // something was counted or typed
    Q_PROPERTY(QString problem READ problem NOTIFY changed) // what is wrong with what was typed; else empty
    Q_PROPERTY(bool keysWork READ keysWork CONSTANT)        // volume keys may be there: say so on the page
public:
    CountController(Services& services, int rinse, QObject* parent = nullptr);

    int mites() const { return static_cast<int>(m_tally.mites()); }
    QString spoken() const;
    bool canUndo() const { return m_tally.canUndo(); }
    bool isTouched() const { return m_tally.touched(); }
    QString problem() const { return m_problem; }
    bool keysWork() const;

    /// The sample to count for; reads what was counted before.
    void setSample(const QString& sampleId);
    /// While true the volume keys count: up one more, down takes back.
    void setListening(bool listening);

    Q_INVOKABLE bool tap();
    Q_INVOKABLE bool undo();
    /// True where the text is a count and it is on disk; else problem() says why not.
    Q_INVOKABLE bool type(const QString& text);
    Q_INVOKABLE void clearProblem();

signals:
    void changed();

private:
    bool add(records::CountEvent::Change change, std::int64_t typed);

    Services& m_services;
    int m_rinse;
    QString m_sampleId;
    records::CountTally m_tally;
    QString m_problem;
    bool m_listening = false;
};

} // namespace halfcup::touch
