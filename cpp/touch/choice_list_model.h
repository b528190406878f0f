// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractListModel>
#include <QQmlEngine>

namespace halfcup::touch {

/// A plain list to pick from or to read: yards, scoops, washes, sources.
class ChoiceListModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a controller's")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    struct Entry {
        QString key; // what to hand back when it is touched
        QString title;
        QString detail;   // may be empty
        QString note;     // a third line, may be empty
        int standing = 0; // StandingWord::Value, where it is a wash
        bool chosen = false;
        QString section; // heading under which it stands; empty: none
        friend bool operator==(const Entry&, const Entry&) = default;
    };
    enum Role {
        KeyRole = Qt::UserRole,
        TitleRole,
        DetailRole,
        NoteRole,
        StandingRole,
        ChosenRole,
        SectionRole
    };

    using QAbstractListModel::QAbstractListModel;
    void setEntries(QList<Entry> entries);
    const QList<Entry>& entries() const { return m_entries; }
    int count() const { return static_cast<int>(m_entries.size()); }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override; // key title detail note standing chosen section

signals:
    void countChanged();

private:
    QList<Entry> m_entries;
};

} // namespace halfcup::touch
