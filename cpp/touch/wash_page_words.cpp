// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/wash_controller.h"

#include "touch/story.h"
#include "touch/words.h"

// What the pages of a wash say: mostly the method's own words.
namespace halfcup::touch {

static_assert(static_cast<int>(WashController::OpenedCells) == static_cast<int>(records::Step::OpenedCells));

WashController::Step WashController::step() const {
    const records::Step step =
        isAt(records::Step::Answer) ? records::stepBefore(method(), records::Step::Answer) : m_sample.step;
    return static_cast<Step>(step);
}

const records::Method& WashController::method() const {
    const records::Method* known = records::findMethod(m_sample.method);
    return known ? *known : records::alcoholWash();
}

const records::MethodStep& WashController::page() const {
    return records::stepOf(method(), static_cast<records::Step>(step()));
}

QString WashController::title() const {
    return words::ofMethod(page().title);
}

QStringList WashController::lines() const {
    return words::ofMethod(page().text).split(u'\n', Qt::SkipEmptyParts);
}

QString WashController::action() const {
    return words::ofMethod(page().action);
}

bool WashController::maySetAside() const {
    return method().jarMayWait && isAt(records::Step::Pour);
}

QString WashController::header() const {
    const QString place = tr("step %1 of %2")
                              .arg(records::stepNumber(method(), m_sample.step))
                              .arg(records::stepCount(method()));
    if (!m_sample.jar.empty())
        return tr("Jar %1, colony %2 · %3", "label, colony, step").arg(jar(), m_colonyLabel, place);
    if (m_colonyLabel.isEmpty())
        return story::capitalised(tr("%1 · %2", "method and step").arg(words::method(methodId()), place));
    return tr("Colony %1 · %2").arg(m_colonyLabel, place);
}

QStringList WashController::cautions() const {
    QStringList cautions;
    for (const char* caution : method().cautions)
        cautions.append(words::ofMethod(caution));
    return cautions;
}

QString WashController::queenAnswer() const {
    switch (m_sample.queen) {
    case records::Queen::SeenAndSafe:
        return tr("Queen seen and safe.");
    case records::Queen::NotSeen:
        return tr("Queen not seen: look at every bee on the frame before you scoop.");
    case records::Queen::NotAsked:
        break;
    }
    return {};
}

int WashController::settleSecondsLeft() const {
    if (!m_sample.settleStartedMs)
        return method().settleS;
    const std::int64_t since = m_services.now().utcMs - *m_sample.settleStartedMs;
    if (since < 0) // the clock was set back: no reason to make the keeper wait
        return 0;
    return static_cast<int>(std::max<std::int64_t>(0, method().settleS - since / 1000));
}

QString WashController::settleLine() const {
    return words::ofMethod(settleSecondsLeft() > 0 ? page().text : page().then);
}

} // namespace halfcup::touch
