// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/choice_list_model.h"

#include <algorithm>

namespace halfcup::touch {

void ChoiceListModel::setEntries(QList<Entry> entries) {
    if (entries == m_entries)
        return; // nothing to repaint
    const auto sameKeys = [&] {
        return std::ranges::equal(entries, m_entries, {}, &Entry::key, &Entry::key);
    };
    if (!entries.isEmpty() && sameKeys()) { // the rows stay, so that nothing jumps under the finger
        m_entries = std::move(entries);
        emit dataChanged(index(0), index(count() - 1));
        return;
    }
    beginResetModel();
    m_entries = std::move(entries);
    endResetModel();
    emit countChanged();
}

int ChoiceListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant ChoiceListModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Entry& entry = m_entries[index.row()];
    switch (role) {
    case KeyRole:
        return entry.key;
    case Qt::DisplayRole:
    case TitleRole:
        return entry.title;
    case DetailRole:
        return entry.detail;
    case NoteRole:
        return entry.note;
    case StandingRole:
        return entry.standing;
    case ChosenRole:
        return entry.chosen;
    case SectionRole:
        return entry.section;
    default:
        return {};
    }
}

QHash<int, QByteArray> ChoiceListModel::roleNames() const {
    return {{KeyRole, "key"},           {TitleRole, "title"},   {DetailRole, "detail"},  {NoteRole, "note"},
            {StandingRole, "standing"}, {ChosenRole, "chosen"}, {SectionRole, "section"}};
}

} // namespace halfcup::touch
