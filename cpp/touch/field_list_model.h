// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractListModel>
#include <QQmlEngine>

namespace halfcup::touch {

/// The fields of a form, in order, each with its text as typed.
class FieldListModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a controller's")
public:
    enum Kind { Text, Day, Number };
    Q_ENUM(Kind)
    struct Entry {
        QString key;
        QString label;
        QString hint;
        int kind = Text;
        QString text = {}; // as typed
    };
    enum Role { KeyRole = Qt::UserRole, LabelRole, HintRole, KindRole, TextRole };

    using QAbstractListModel::QAbstractListModel;
    void setEntries(QList<Entry> entries);
    [[nodiscard]] QString text(const QString& key) const; // without blanks at its ends
    void setText(const QString& key, const QString& text);
    void setHint(const QString& key, const QString& hint);
    [[nodiscard]] bool has(const QString& key) const { return find(key) >= 0; }
    [[nodiscard]] QString label(const QString& key) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override; // key label hint kind text

private:
    [[nodiscard]] int find(const QString& key) const;

    QList<Entry> m_entries;
};

} // namespace halfcup::touch
