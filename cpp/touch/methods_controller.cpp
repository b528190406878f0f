// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/methods_controller.h"

#include "records/method.h"
#include "touch/story.h"
#include "touch/words.h"

namespace halfcup::touch {

MethodsController::MethodsController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

bool MethodsController::show(const QString& colonyId) {
    std::optional<records::Colony> colony;
    std::optional<records::Yard> yard;
    m_services.kept([&] {
        colony = m_services.store.colony(colonyId.toStdString());
        yard = colony ? m_services.store.yard(colony->yardId) : std::nullopt;
    });
    if (!colony || !yard)
        return false;
    m_colonyId = colonyId;
    m_context = tr("Colony %1, %2", "colony, yard")
                    .arg(QString::fromStdString(colony->label), QString::fromStdString(yard->name));
    m_demo = colony->demo;
    QList<ChoiceListModel::Entry> entries;
    for (const records::Method* method : records::allMethods()) {
        ChoiceListModel::Entry entry;
        entry.key = QString::fromLatin1(method->id.data(), static_cast<qsizetype>(method->id.size()));
        entry.title = story::capitalised(words::ofMethod(method->name));
        entry.detail = words::ofMethod(method->summary);
        if (method->id == m_services.settings.usualMethod())
            entry.note = tr("your usual one");
        entries.append(entry);
    }
    m_methods.setEntries(entries);
    emit changed();
    return true;
}

void MethodsController::pick(const QString& methodId) {
    emit picked(m_colonyId, methodId);
}

} // namespace halfcup::touch
