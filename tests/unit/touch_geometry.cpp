// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Where things lie in the picture of the load ahead.
#include "touch/outlook_geometry.h"

#include <QTest>

using namespace halfcup;
using namespace halfcup::touch;

class TouchGeometryTest : public QObject {
    Q_OBJECT

    static OutlookPicture rising(double last) {
        OutlookPicture picture;
        for (int day = 0; day <= 100; ++day) {
            const double load = last * day / 100;
            picture.nothing.low.append(load / 2);
            picture.nothing.middle.append(load);
            picture.nothing.high.append(load * 2);
        }
        picture.line = 3;
        return picture;
    }

private slots:
    void theTopIsOverTheLineAndTheMiddle() {
        QCOMPARE(OutlookGeometry(rising(1), {200, 100}, 20, 10).top(), 4.0); // the line at 3 decides
        QCOMPARE(OutlookGeometry(rising(8), {200, 100}, 20, 10).top(), 10.0);
        QCOMPARE(OutlookGeometry(rising(500), {200, 100}, 20, 10).top(), 30.0); // cut off
    }

    void loadsAndDaysLieWhereTheyShould() {
        const OutlookGeometry picture(rising(8), {220, 110}, 20, 10);
        QCOMPARE(picture.plot(), QRectF(20, 0, 200, 100));
        QCOMPARE(picture.y(0), 100.0);
        QCOMPARE(picture.y(5), 50.0);
        QCOMPARE(picture.y(1000), 0.0);
        QCOMPARE(picture.x(0), 20.0);
        QCOMPARE(picture.x(50), 120.0);
        QCOMPARE(picture.x(100), 220.0);
        QCOMPARE(picture.area(rising(8).nothing).size(), 202);
        QCOMPARE(picture.middle(rising(8).nothing).last(), QPointF(220, 20));
        QVERIFY(picture.area({}).isEmpty());
    }

    void anEmptyPictureIsHarmless() {
        const OutlookGeometry picture({}, {0, 0}, 20, 10);
        QVERIFY(picture.plot().isEmpty());
        QCOMPARE(picture.x(5), 20.0);
    }
};

QTEST_GUILESS_MAIN(TouchGeometryTest)
#include "touch_geometry.moc"
