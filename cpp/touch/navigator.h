// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QList>
#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// Which page is on the screen. Pages are named here and nowhere else; QML shows the one for page().
class Navigator : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(Page page READ page NOTIFY pageChanged)
    Q_PROPERTY(bool canGoBack READ canGoBack NOTIFY pageChanged)
public:
    enum Page {
        Here,
        Yards,
        YardEdit,
        YardLines,
        Wash,
        Answer,
        OtherAnswer,
        Methods,
        Tray,
        Colony,
        Event,
        OnDay,
        FirstStart,
        Season,
        Treat,
        Situation,
        Choice,
        Treatment,
        Check,
        CountBees,
        OwnScoops,
        Share,
        Plan,
        Export,
        Backup,
        Folder,
        Setup,
        Sources,
        Round,
        Compare,
        Same,
        History,
        ImportTable,
    };
    Q_ENUM(Page)

    using QObject::QObject;

    Page page() const { return m_trail.last(); }
    bool canGoBack() const { return m_trail.size() > 1; }

    Q_INVOKABLE void open(Page page);    // on top of the present one; opening the present page does nothing
    Q_INVOKABLE void replace(Page page); // instead of the present one
    Q_INVOKABLE void home();             // back to Here, whatever is on top
    Q_INVOKABLE void back();

signals:
    void pageChanged();

private:
    QList<Page> m_trail{Here};
};

} // namespace halfcup::touch
