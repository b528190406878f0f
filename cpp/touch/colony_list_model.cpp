// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/colony_list_model.h"

namespace halfcup::touch {

void ColonyListModel::setEntries(QList<Entry> entries) {
    if (entries == m_entries)
        return; // nothing to repaint
    beginResetModel();
    m_entries = std::move(entries);
    endResetModel();
    emit countChanged();
}

int ColonyListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant ColonyListModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Entry& entry = m_entries[index.row()];
    switch (role) {
    case ColonyIdRole:
        return entry.colonyId;
    case LabelRole:
        return entry.label;
    case HeadlineRole:
        return entry.headline;
    case LoadLineRole:
        return entry.loadLine;
    case DueLineRole:
        return entry.dueLine;
    case StandingRole:
        return entry.standing;
    case IsDueRole:
        return entry.isDue;
    case Qt::DisplayRole:
    case SpokenRole:
        return entry.spoken;
    default:
        return {};
    }
}

QHash<int, QByteArray> ColonyListModel::roleNames() const {
    return {{ColonyIdRole, "colonyId"}, {LabelRole, "label"},     {HeadlineRole, "headline"},
            {LoadLineRole, "loadLine"}, {DueLineRole, "dueLine"}, {StandingRole, "standing"},
            {IsDueRole, "isDue"},       {SpokenRole, "spoken"}};
}

} // namespace halfcup::touch
