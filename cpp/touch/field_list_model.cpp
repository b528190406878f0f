// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/field_list_model.h"

namespace halfcup::touch {

void FieldListModel::setEntries(QList<Entry> entries) {
    beginResetModel();
    m_entries = std::move(entries);
    endResetModel();
}

int FieldListModel::find(const QString& key) const {
    for (qsizetype i = 0; i < m_entries.size(); ++i)
        if (m_entries[i].key == key)
            return static_cast<int>(i);
    return -1;
}

QString FieldListModel::text(const QString& key) const {
    const int row = find(key);
    return row < 0 ? QString() : m_entries[row].text.trimmed();
}

void FieldListModel::setText(const QString& key, const QString& text) {
    const int row = find(key);
    if (row < 0 || m_entries[row].text == text)
        return;
    m_entries[row].text = text;
    emit dataChanged(index(row), index(row), {TextRole});
}

void FieldListModel::setHint(const QString& key, const QString& hint) {
    const int row = find(key);
    if (row < 0 || m_entries[row].hint == hint)
        return;
    m_entries[row].hint = hint;
    emit dataChanged(index(row), index(row), {HintRole});
}

QString FieldListModel::label(const QString& key) const {
    const int row = find(key);
    return row < 0 ? QString() : m_entries[row].label;
}

int FieldListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

QVariant FieldListModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= m_entries.size())
        return {};
    const Entry& entry = m_entries[index.row()];
    switch (role) {
    case KeyRole:
        return entry.key;
    case LabelRole:
        return entry.label;
    case HintRole:
        return entry.hint;
    case KindRole:
        return entry.kind;
    case TextRole:
        return entry.text;
    default:
        return {};
    }
}

QHash<int, QByteArray> FieldListModel::roleNames() const {
    return {
        {KeyRole, "key"}, {LabelRole, "label"}, {HintRole, "hint"}, {KindRole, "kind"}, {TextRole, "text"}};
}

} // namespace halfcup::touch
