// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The smallest phone with the largest letters and the thickest gloves: what no longer has a place of its own
// is still found and still does what it did.
#include "screens.h"

#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;

namespace {

constexpr QSize smallest{320, 568};

void makeTight(Stage& stage) {
    stage.setThickGloves(true);
    stage.setTextPercent(200);
}

QRectF onGlass(const QQuickItem* item) {
    return item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
}

/// The part of an item that nothing that scrolls cuts off.
QRectF seenPart(const QQuickItem* item) {
    QRectF seen = onGlass(item);
    for (QQuickItem* above = item->parentItem(); above; above = above->parentItem())
        if (above->clip())
            seen = seen.intersected(onGlass(above));
    return seen;
}

QString textOf(Stage& stage, const char* name) {
    const QQuickItem* item = stage.find(QLatin1String(name));
    return item ? item->property("text").toString() : QString();
}

} // namespace

class RoomTest : public QObject {
    Q_OBJECT
private slots:
    void theWholeWash() {
        Stage stage(Stage::Demo, smallest);
        makeTight(stage);
        QVERIFY(toTheAnswer(stage, 9));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void whatGivesWayIsFoundByScrolling() {
        Stage stage(Stage::Demo, smallest);
        makeTight(stage);
        QVERIFY(stage.touch(QStringLiteral("yards")));
        QVERIFY(stage.find(QStringLiteral("yardsPage")));
        QVERIFY(stage.touch(QStringLiteral("back")));
        QVERIFY(pressMain(stage, 1)); // a wash: where is the queen?
        QVERIFY(stage.touch(QStringLiteral("queenNotSeen")));
        QVERIFY(stage.find(QStringLiteral("scoopStep")));
    }

    void whatGoesWrongComesIntoSight() {
        Stage stage(Stage::Demo, smallest);
        makeTight(stage);
        QVERIFY(toTheChoices(stage) && pressMain(stage, 1));
        QVERIFY(type(stage, "highs", "24 200 26"));
        QVERIFY(pressMain(stage, 1));
        stage.settle();
        const QQuickItem* problem = stage.find(QStringLiteral("problem"));
        QVERIFY(problem);
        // Its first words at the least: four lines of the largest letters are higher than what is left of the
        // glass.
        QVERIFY2(seenPart(problem).height() > stage.look().bodySize(),
                 qPrintable(QString::number(seenPart(problem).height())));
    }

    void onANarrowGlassTypingHasTheCorner() {
        Stage stage(Stage::Demo, smallest);
        QVERIFY(toTheCount(stage));
        QVERIFY(stage.find(QStringLiteral("typeIt")));
        QCOMPARE(textOf(stage, "corner"), QStringLiteral("Leave"));
        stage.setThickGloves(true);
        QVERIFY(!stage.find(QStringLiteral("typeIt")));
        QCOMPARE(textOf(stage, "corner"), QStringLiteral("Type it"));
        QVERIFY(stage.touch(QStringLiteral("corner")));
        for (const char* key : {"key1", "key2", "keyKeep"})
            QVERIFY2(stage.touch(QLatin1String(key)), key);
        QCOMPARE(stage.app().wash()->count()->mites(), 12);
        // The way out is one step back.
        QVERIFY(stage.touch(QStringLiteral("back")));
        QCOMPARE(textOf(stage, "corner"), QStringLiteral("Leave"));
        QVERIFY(stage.touch(QStringLiteral("corner")));
        QVERIFY(stage.touch(QStringLiteral("leaveAndKeep")));
        QVERIFY(stage.find(QStringLiteral("herePage")));
    }

    void aPageComesBackWhereItWas() {
        Stage stage(Stage::Demo, smallest);
        makeTight(stage);
        QVERIFY(pressMain(stage, 2)); // to the scoop
        QQuickItem* change = stage.find(QStringLiteral("changeScoop"));
        QVERIFY(change);
        stage.scrollTo(change);
        const double before = onGlass(change).top();
        QVERIFY(before < stage.find(QStringLiteral("mainAction"))->mapToScene(QPointF()).y());
        QVERIFY(stage.touch(QStringLiteral("corner"))); // a sheet lies over the page
        QVERIFY(stage.touch(QStringLiteral("stay")));
        QCOMPARE(onGlass(stage.find(QStringLiteral("changeScoop"))).top(), before);
    }

    void theRingKeepsItsSizeAtHalfTime() {
        Stage stage(Stage::Demo, smallest);
        QVERIFY(pressMain(stage, 4) && stage.find(QStringLiteral("shakeStep")));
        const double whole = stage.find(QStringLiteral("ring"))->width();
        QVERIFY(whole > 15 * stage.look().pixelsPerMm());
        stage.wait(31'000);
        QCOMPARE(stage.find(QStringLiteral("ring"))->width(), whole);
        stage.wait(29'000);
        QCOMPARE(stage.find(QStringLiteral("ring"))->width(), whole);
    }
};

QTEST_MAIN(RoomTest)
#include "room_test.moc"
