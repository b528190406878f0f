// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "stage.h"

#include "place/scripted_position_source.h"

#include <QtQuickTest/quicktest.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QPointer>
#include <QTest>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace halfcup::screens {

Stage::Stage(Records records, QSize size, const QString& language)
    : m_device(device::makeFakePlatform()) {
    static const bool prepared = [] {
        touch::prepareQuick();
        return true;
    }();
    Q_UNUSED(prepared)
    touch::ProgramOptions options;
    options.databasePath = m_folder.filePath(QStringLiteral("halfcup.db"));
    options.windowSize = size;
    options.surroundings = &m_around.surroundings;
    if (!language.isEmpty())
        options.language = language;
    options.makeSource = [this](const QString&) {
        auto source = std::make_unique<place::ScriptedPositionSource>();
        source->setFixesOnStart(m_fixes);
        return source;
    };
    m_program = std::make_unique<touch::Program>(m_device.platform, options);
    if (records == Demo && !app().share()->loadDemo())
        throw std::runtime_error(app().share()->result().toStdString());
    if (records == Nothing)
        m_program->services().settings.setReadWhatThisIsNot(true);
    if (!m_program->show())
        throw std::runtime_error("The pages could not be loaded.");
    if (!QTest::qWaitForWindowExposed(window()))
        throw std::runtime_error("The window does not show itself.");
    settle();
}

void Stage::resize(QSize size) {
    window()->resize(size);
    settle();
}

void Stage::standAt(double latitudeDeg, double longitudeDeg) {
    const std::int64_t now = m_device.clock->now().utcMs;
    m_fixes.clear();
    for (int i = 0; i < 15; ++i) {
        place::Fix fix;
        fix.latitudeDeg = latitudeDeg;
        fix.longitudeDeg = longitudeDeg;
        fix.accuracyM = 6.0;
        fix.takenAtUtcMs = now;
        fix.receiverUtcMs = now - 15 + i;
        fix.source = "demo";
        m_fixes.push_back(fix);
    }
    m_program->services().position.useSource(
        QStringLiteral("place %1").arg(++m_places)); // another one each time
    app().here()->lookAgain();
    settle();
}

void Stage::setDusk(bool dusk) {
    app().setup()->setDusk(dusk);
    settle();
}

void Stage::setLeftHand(bool left) {
    app().setup()->setLeftHand(left);
    settle();
}

void Stage::setThickGloves(bool thick) {
    app().setup()->setThickGloves(thick);
    settle();
}

void Stage::setTextPercent(int percent) {
    m_program->services().settings.setTextPercent(percent);
    settle();
}

QList<QQuickItem*> visibleItems(QQuickItem* root) {
    QList<QQuickItem*> found;
    if (!root->isVisible() || root->opacity() <= 0)
        return found;
    found.append(root);
    for (QQuickItem* child : root->childItems())
        found.append(visibleItems(child));
    return found;
}

QQuickItem* Stage::find(const QString& name) const {
    for (QQuickItem* item : visibleItems(window()->contentItem()))
        if (item->objectName() == name)
            return item;
    return nullptr;
}

/// Scrolls what holds the item so that it stands in the middle; true when something had to move for it.
static bool scrollOnce(QQuickItem* item) {
    bool moved = false;
    for (QQuickItem* above = item->parentItem(); above; above = above->parentItem()) {
        if (!above->inherits("QQuickFlickable"))
            continue;
        const double top = item->mapToItem(above, QPointF(0, 0)).y();
        const double now = above->property("contentY").toDouble();
        const double wanted = now + top - (above->height() - item->height()) / 2;
        const double lowest = above->property("originY").toDouble();
        const double highest = lowest + above->property("contentHeight").toDouble() - above->height();
        const double next = std::max(lowest, std::min(wanted, highest));
        moved = moved || std::abs(next - now) >= 1;
        above->setProperty("contentY", next);
    }
    return moved;
}

/// More than once: rows of a list that come into sight have other heights than the list had guessed, and what
/// lies below them moves on.
void Stage::scrollTo(QQuickItem* item) {
    const QPointer<QQuickItem> still = item; // a row may be made anew on the way
    for (int i = 0; i < 10 && still && scrollOnce(still); ++i)
        settle();
    settle();
}

bool Stage::touch(const QString& name) {
    QQuickItem* item = find(name);
    if (!item || !item->isEnabled())
        return false;
    scrollTo(item);
    item = find(name);
    if (!item)
        return false;
    const QPointF middle = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
    QTest::mouseClick(window(), Qt::LeftButton, Qt::NoModifier, middle.toPoint());
    settle();
    return true;
}

/// On a fast machine a page that was just opened still moves when all
/// events are done, and a touch would miss. On a busy one a round ends with its time and not with the last
/// event: only those that ended early count. An animation leaves no round quiet, hence the bound.
void settle(QQuickWindow* window) {
    constexpr int roundMs = 20;
    constexpr int quietRounds = 3;
    constexpr int mostRounds = 30;
    int quiet = 0;
    for (int i = 0; i < mostRounds && quiet < quietRounds; ++i) {
        QElapsedTimer round;
        round.start();
        QCoreApplication::processEvents(QEventLoop::AllEvents, roundMs);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        if (!round.hasExpired(roundMs))
            ++quiet;
        if (window && QQuickTest::qIsPolishScheduled(window))
            static_cast<void>(QQuickTest::qWaitForPolish(window, 1000));
    }
}

void Stage::settle() {
    screens::settle(window());
}

void Stage::wait(std::int64_t ms) {
    m_device.clock->advance(ms);
    QTest::qWait(1100); // the slowest of the pages' own timers ticks once a second
    settle();
}

QImage Stage::picture() {
    settle();
    return window()->grabWindow();
}

bool press(Stage& stage, const QString& name) {
    stage.picture(); // what came up is laid out with the next frame
    if (stage.touch(name))
        return true;
    qWarning("not there: %s", qPrintable(name));
    return false;
}

bool press(Stage& stage, std::initializer_list<const char*> names) {
    return std::ranges::all_of(names, [&](const char* name) { return press(stage, QLatin1String(name)); });
}

} // namespace halfcup::screens
