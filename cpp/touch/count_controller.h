// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/count.h"
#include "records/method.h"
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
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed)       // "9 mites", for a screen reader
    Q_PROPERTY(QString announced READ announced NOTIFY changed) // the same after every fifth, or a change
    Q_PROPERTY(QString oneMore READ oneMore NOTIFY changed)     // "Count one mite", what a touch does
    Q_PROPERTY(QString hint READ hint NOTIFY changed)           // "Touch anywhere for each mite"
    Q_PROPERTY(QString noneFound READ noneFound NOTIFY changed) // asked before a count of 0 is kept
    Q_PROPERTY(QString whatIsCounted READ whatIsCounted NOTIFY changed) // "Mites counted", over typed digits
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)
    Q_PROPERTY(bool touched READ isTouched NOTIFY changed)  // something was counted or typed
    Q_PROPERTY(QString problem READ problem NOTIFY changed) // what is wrong with what was typed; else empty
    Q_PROPERTY(bool keysWork READ keysWork CONSTANT)        // volume keys may be there: say so on the page
public:
    CountController(Services& services, int rinse, QObject* parent = nullptr);

    int mites() const { return static_cast<int>(m_tally.mites()); }
    QString spoken() const;
    QString announced() const { return m_announced; }
    QString oneMore() const;
    QString hint() const { return m_hint; }
    QString noneFound() const { return m_noneFound; }
    QString whatIsCounted() const;
    bool canUndo() const { return m_tally.canUndo(); }
    bool isTouched() const { return m_tally.touched(); }
    QString problem() const { return m_problem; }
    bool keysWork() const;

    /// The sample to count for, by which method; reads what was counted before.
    void setSample(const QString& sampleId, const records::Method& method);
    /// While true the volume keys count, up one more, down takes back; and the screen is bright.
    void setListening(bool listening);
    void setInFront(bool inFront); // while the program is put away, the screen is the keeper's own

    Q_INVOKABLE bool tap();
    Q_INVOKABLE bool undo();
    /// True where the text is a count and it is on disk; else problem() says why not.
    Q_INVOKABLE bool type(const QString& text);
    /// All cells opened, of brood: as many at the least as were counted. False: problem() says why not.
    Q_INVOKABLE bool typeOpened(const QString& text);
    Q_INVOKABLE void clearProblem();

signals:
    void changed();
    void openedTyped(std::int64_t cells);

private:
    bool add(records::CountEvent::Change change, std::int64_t typed);
    void light(); // bright or as it was

    Services& m_services;
    int m_rinse;
    QString m_sampleId;
    bool m_countsCells = false;
    QString m_announced;
    QString m_hint;
    QString m_noneFound;
    records::CountTally m_tally;
    QString m_problem;
    bool m_listening = false;
    bool m_inFront = true;
    std::shared_ptr<device::Brightness::Hold> m_light;
};

} // namespace halfcup::touch
