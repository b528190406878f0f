// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractListModel>
#include <QQmlEngine>

namespace halfcup::touch {

/// Colonies of a yard with finished texts, most urgent first.
class ColonyListModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a controller's")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    struct Entry {
        QString colonyId;
        QString label;      // "4"
        QString headline;   // "Over your line", "Not washed this year"
        QString loadLine;   // "4.1 per 100 on 12 April", empty where never washed
        QString dueLine;    // "Due: monthly wash, 6 days late"
        int standing = 0;   // StandingWord::Value
        bool isDue = false; // due today or late
        QString jar;        // what is on its jar in the tray; empty where none waits
        QString spoken;     // all of it in one sentence, for a screen reader
        friend bool operator==(const Entry&, const Entry&) = default;
    };
    enum Role {
        ColonyIdRole = Qt::UserRole,
        LabelRole,
        HeadlineRole,
        LoadLineRole,
        DueLineRole,
        StandingRole,
        IsDueRole,
        SpokenRole
    };

    using QAbstractListModel::QAbstractListModel;
    void setEntries(QList<Entry> entries);
    const QList<Entry>& entries() const { return m_entries; }
    int count() const { return static_cast<int>(m_entries.size()); }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray>
    roleNames() const override; // colonyId label headline loadLine dueLine standing isDue spoken

signals:
    void countChanged();

private:
    QList<Entry> m_entries;
};

} // namespace halfcup::touch
