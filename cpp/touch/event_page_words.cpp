// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What the page of an event says about itself.
#include "touch/event_controller.h"
#include "touch/story.h"
#include "touch/words.h"

namespace halfcup::touch {

using records::EventKind;

QString EventController::context() const {
    const QString yard = QString::fromStdString(m_yard.name);
    if (m_wholeYard)
        return tr("%1, %n colony(ies)", "yard and how many", static_cast<int>(m_colonies.size())).arg(yard);
    return tr("Colony %1, %2", "label, yard")
        .arg(m_colonies.empty() ? QString() : QString::fromStdString(m_colonies.front().label), yard);
}

QString EventController::title() const {
    return m_view == Picking ? tr("What happened?") : story::kindName(m_event.kind);
}

QString EventController::likely() const {
    const auto kind = records::eventKindFrom(m_likely.toStdString());
    return kind ? story::kindName(*kind) : QString();
}

QString EventController::asks() const {
    switch (m_event.kind) {
    case EventKind::Brood:
        return tr("What did you see?");
    case EventKind::Floor:
        return tr("Which floor?");
    case EventKind::Merged:
        return m_choices.count() > 0 ? tr("Into which colony?")
                                     : tr("There is no other colony in this yard.");
    case EventKind::Moved:
        return m_choices.count() > 0 ? tr("To which yard?")
                                     : tr("There is no other yard yet. Make one first.");
    default:
        return {};
    }
}

QString EventController::fieldLabel() const {
    switch (m_event.kind) {
    case EventKind::Strength:
        return tr("Frames covered with bees");
    case EventKind::Requeened:
        return tr("Stock of the queen");
    case EventKind::Split:
        return m_view == Kept ? QString() : tr("Number of the new colony");
    default:
        return {};
    }
}

QString EventController::fieldHint() const {
    switch (m_event.kind) {
    case EventKind::Strength:
        return tr("Both sides covered is one frame.");
    case EventKind::Requeened:
        return tr("Where she comes from, or nothing.");
    case EventKind::Split:
        return tr("It is made in this yard. Leave it empty where it went elsewhere.");
    default:
        return {};
    }
}

QString EventController::dayLine() const {
    const QString day = words::dayAndYear(m_event.day);
    return m_event.day == m_services.today() ? tr("Today, %1").arg(day) : day;
}

} // namespace halfcup::touch
