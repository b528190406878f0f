// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A keeper with gloves, and one with keys alone: what is touched is counted, keys reach everything, and a
// shake paints little.
#include "screens.h"

#include <QPointingDevice>
#include <QTest>

#include <qpa/qwindowsysteminterface.h>

#include <map>
#include <random>

using namespace halfcup;
using namespace halfcup::screens;

namespace {

/// Tab until the item of that name has the keys. False where it is not reached.
bool tabTo(Stage& stage, const QString& name) {
    for (int i = 0; i < 80; ++i) {
        if (const QQuickItem* item = stage.window()->activeFocusItem(); item && item->objectName() == name)
            return true;
        QTest::keyClick(stage.window(), Qt::Key_Tab);
        stage.settle();
    }
    return false;
}

bool pressByKey(Stage& stage, const QString& name) {
    if (!tabTo(stage, name))
        return false;
    QTest::keyClick(stage.window(), Qt::Key_Space);
    stage.settle();
    return true;
}

/// One contact of a finger with the glass: down, some slides, up.
struct Contact {
    int id = 0;
    std::int64_t downMs = 0;
    std::int64_t upMs = 0;
    QPointF downMm, upMm;
    double wideMm = 0;
    bool meant = true; // by the keeper; else water or a palm
};

/// A gloved finger that taps 60 times in an uneven rhythm (every 110 to 700 ms), wide (9 to 18 mm) and
/// slipping up to 6 mm while it is down; every fifth tap stutters once within 30 ms as through a drop of
/// water; a palm comes down on the edge now and then. An invented log, from a seed: no recording of a real
/// hand was at hand.
std::vector<Contact> gloveLog(unsigned seed) {
    std::mt19937 chance(seed);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(chance);
    };
    std::vector<Contact> log;
    std::int64_t at = 10'000;
    for (int tap = 0; tap < 60; ++tap) {
        at += static_cast<std::int64_t>(between(110, 700));
        Contact finger;
        finger.id = static_cast<int>(log.size()) + 1;
        finger.downMs = at;
        finger.upMs = at + static_cast<std::int64_t>(between(40, 100));
        finger.downMm = {between(12, 40), between(30, 50)};
        const double turn = between(0, 6.283);
        const double slip = between(0, 6);
        finger.upMm = finger.downMm + QPointF(std::cos(turn), std::sin(turn)) * slip;
        finger.wideMm = between(9, 18);
        log.push_back(finger);
        if (tap % 5 == 0) {
            Contact drop = finger;
            drop.id = static_cast<int>(log.size()) + 1;
            drop.downMs += static_cast<std::int64_t>(between(4, 30));
            drop.downMm += QPointF(between(-2, 2), between(-2, 2));
            drop.upMm = drop.downMm;
            drop.meant = false;
            log.push_back(drop);
        }
        if (tap % 9 == 4) {
            Contact palm;
            palm.id = static_cast<int>(log.size()) + 1;
            palm.downMs = at + 20;
            palm.upMs = at + 400;
            palm.downMm = palm.upMm = {between(0.2, 2.5), between(40, 60)};
            palm.wideMm = between(20, 40);
            palm.meant = false;
            log.push_back(palm);
        }
    }
    return log;
}

/// Plays the log to the window as the system would: one report a moment, with all fingers that are down.
void play(Stage& stage, const std::vector<Contact>& log) {
    static const QPointingDevice* glass = [] {
        auto* made =
            new QPointingDevice(QStringLiteral("a glass"), 1, QInputDevice::DeviceType::TouchScreen,
                                QPointingDevice::PointerType::Finger,
                                QInputDevice::Capability::Position | QInputDevice::Capability::Area, 10, 0);
        made->setParent(QCoreApplication::instance());
        QWindowSystemInterface::registerInputDevice(made);
        return made;
    }();
    const double px = stage.look().pixelsPerMm();
    struct Moment {
        std::int64_t atMs;
        int order; // of two at one time: what comes up first
        std::size_t contact;
        QEventPoint::State state;
    };
    std::vector<Moment> moments;
    for (std::size_t i = 0; i < log.size(); ++i) {
        moments.push_back({log[i].downMs, 2, i, QEventPoint::Pressed});
        for (int step = 1; step <= 3; ++step)
            moments.push_back(
                {log[i].downMs + (log[i].upMs - log[i].downMs) * step / 4, 1, i, QEventPoint::Updated});
        moments.push_back({log[i].upMs, 0, i, QEventPoint::Released});
    }
    std::ranges::stable_sort(moments, {},
                             [](const Moment& each) { return std::pair(each.atMs, each.order); });
    std::map<std::size_t, QPointF> down;
    for (const Moment& moment : moments) {
        const Contact& moved = log[moment.contact];
        const double done = moved.upMs > moved.downMs ? static_cast<double>(moment.atMs - moved.downMs) /
                                                            static_cast<double>(moved.upMs - moved.downMs)
                                                      : 0;
        down[moment.contact] = (moved.downMm + (moved.upMm - moved.downMm) * done) * px;
        QList<QWindowSystemInterface::TouchPoint> points;
        for (const auto& [contact, at] : down) {
            QWindowSystemInterface::TouchPoint point;
            point.id = log[contact].id;
            point.state = contact == moment.contact ? moment.state : QEventPoint::Stationary;
            point.area = QRectF(QPointF(), QSizeF(log[contact].wideMm, log[contact].wideMm) * px);
            point.area.moveCenter(stage.window()->mapToGlobal(at));
            points.append(point);
        }
        QWindowSystemInterface::handleTouchEvent<QWindowSystemInterface::SynchronousDelivery>(
            stage.window(), static_cast<ulong>(moment.atMs), glass, points);
        if (moment.state == QEventPoint::Released)
            down.erase(moment.contact);
    }
    stage.settle();
}

} // namespace

class HandsTest : public QObject {
    Q_OBJECT

private slots:
    void everyTapOfAGlovedFingerIsCountedAndNoOther_data() {
        QTest::addColumn<unsigned>("seed");
        for (unsigned seed = 1; seed <= 8; ++seed)
            QTest::newRow(qPrintable(QString::number(seed))) << seed;
    }

    void everyTapOfAGlovedFingerIsCountedAndNoOther() {
        QFETCH(const unsigned, seed);
        Stage stage(Stage::Demo, {320, 568});
        QVERIFY(toTheCount(stage));
        const std::vector<Contact> log = gloveLog(seed);
        play(stage, log);
        const auto meant = std::ranges::count_if(log, &Contact::meant);
        QVERIFY(meant < static_cast<std::ptrdiff_t>(log.size())); // there was something to keep out
        QCOMPARE(stage.app().wash()->count()->mites(), static_cast<int>(meant));
        QVERIFY(stage.find(QStringLiteral("countStep"))); // and nothing else was touched
    }

    void theWholeWashByKeysAlone() {
        Stage stage(Stage::Demo);
        const QString main = QStringLiteral("mainAction");
        for (int i = 0; i < 4; ++i) // wash, queen found, scooped, lid on
            QVERIFY(pressByKey(stage, main));
        QVERIFY(stage.find(QStringLiteral("shakeStep")));
        stage.wait(60'000);
        QVERIFY(pressByKey(stage, main)); // set down
        QVERIFY(pressByKey(stage, main)); // settled
        QVERIFY(tabTo(stage, QStringLiteral("countField")));
        for (int i = 0; i < 9; ++i)
            QTest::keyClick(stage.window(), Qt::Key_Space);
        QTest::keyPress(stage.window(), Qt::Key_Space);
        QTest::keyRelease(stage.window(), Qt::Key_Space);
        QCOMPARE(stage.app().wash()->count()->mites(), 10);
        QVERIFY(pressByKey(stage, QStringLiteral("undo")));
        QCOMPARE(stage.app().wash()->count()->mites(), 9);
        QVERIFY(pressByKey(stage, main));
        QVERIFY(pressByKey(stage, QStringLiteral("skipRinse")));
        QVERIFY(stage.find(QStringLiteral("answerPage")));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void aMinuteOfShakingPaintsLittleBesidesTheRing() {
        Stage stage(Stage::Demo);
        QVERIFY(pressMain(stage, 4) && stage.find(QStringLiteral("shakeStep")));
        const QQuickItem* ring = stage.find(QStringLiteral("ring"));
        QVERIFY(ring);
        QImage before = stage.picture().convertToFormat(QImage::Format_RGB32);
        const double ratio = before.width() / static_cast<double>(stage.window()->width());
        // As it is now: it grows where the sentence below takes one line less. And its smooth edge.
        const auto ringNow = [&] {
            const QRectF scene = ring->mapRectToScene(QRectF(0, 0, ring->width(), ring->height()));
            return QRectF(scene.topLeft() * ratio, scene.size() * ratio)
                .toAlignedRect()
                .adjusted(-2, -2, 2, 2);
        };
        int repaints = 0, outside = 0;
        for (int quarter = 0; quarter < 240; ++quarter) {
            stage.device().clock->advance(250);
            QTest::qWait(255); // the timer of the page looks four times a second
            const QImage now = stage.picture().convertToFormat(QImage::Format_RGB32);
            if (now == before)
                continue;
            ++repaints;
            const QRect inside = ringNow();
            bool beside = false;
            for (int y = 0; y < now.height() && !beside; ++y)
                for (int x = 0; x < now.width() && !beside; ++x)
                    beside = !inside.contains(x, y) && now.pixel(x, y) != before.pixel(x, y);
            outside += beside;
            before = now;
        }
        qInfo("%d repaints in a minute of shaking, %d of them of more than the ring", repaints, outside);
        QVERIFY(repaints > 100); // it moves at all
        QVERIFY(outside <= 70);
    }
};

QTEST_MAIN(HandsTest)
#include "hands_test.moc"
