// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Where things lie in the strip of months and in the picture of the load ahead.
#include "touch/months_geometry.h"
#include "touch/outlook_geometry.h"

#include <QDate>
#include <QTest>

using namespace halfcup;
using namespace halfcup::touch;
using halfcup::records::Date;

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
    void monthsAreOfOneWidth() {
        const MonthsGeometry strip({2026, 1, 1}, {240, 60}, 20);
        for (int month = 0; month < 12; ++month) {
            QCOMPARE(strip.month(month).left(), month * 20.0);
            QCOMPARE(strip.x({2026, month + 1, 1}), month * 20.0);
        }
        QCOMPARE(strip.x({2026, 6, 16}), 110.0); // half of June, which has 30 days
        QCOMPARE(strip.band(), QRectF(0, 20, 240, 40));
    }

    void daysNeverGoBack() {
        const MonthsGeometry strip({2026, 7, 1}, {600, 60}, 20); // a southern year
        double before = -1;
        for (QDate day(2026, 7, 1); day < QDate(2027, 7, 1); day = day.addDays(1)) {
            const double x = strip.x({day.year(), day.month(), day.day()});
            QVERIFY(x > before);
            QVERIFY(strip.holds({day.year(), day.month(), day.day()}));
            before = x;
        }
        QVERIFY(before < 600);
        QVERIFY(!strip.holds({2026, 6, 30}));
        QVERIFY(!strip.holds({2027, 7, 1}));
        QCOMPARE(strip.x({2025, 1, 1}), 0.0);
        QCOMPARE(strip.x({2028, 1, 1}), 600.0);
    }

    void coursesThatOverlapLieApart() {
        const MonthsGeometry strip({2026, 1, 1}, {240, 80}, 20);
        const auto bars = strip.bars({{{2026, 5, 1}, {2026, 6, 10}},
                                      {{2026, 5, 20}, {2026, 7, 1}},
                                      {{2026, 7, 2}, {2026, 7, 2}},
                                      {{2024, 1, 1}, {2024, 2, 1}}});
        QCOMPARE(bars.size(), 4);
        QVERIFY(!bars[0].intersects(bars[1]));
        QVERIFY(!bars[1].intersects(bars[2]));
        QCOMPARE(bars[0].top(), bars[2].top()); // the first lane is free again
        QVERIFY(bars[2].width() >= 3);          // one day can still be seen
        QVERIFY(bars[3].isEmpty());
        for (int i = 0; i < 3; ++i)
            QVERIFY(strip.band().contains(bars[i]));
    }

    void aCourseFromLastYearIsCutAtTheEdge() {
        const MonthsGeometry strip({2026, 1, 1}, {240, 80}, 20);
        const auto bars = strip.bars({{{2025, 12, 1}, {2026, 1, 31}}});
        QCOMPARE(bars[0].left(), 0.0);
        QCOMPARE(bars[0].right(), 20.0);
    }

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
