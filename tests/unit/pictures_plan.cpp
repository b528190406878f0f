// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The plan of a yard: what lies where, whether anything lies on anything, and what it says in words.
#include "patience.h"
#include "pictures/plan_shapes.h"
#include "pictures/standing_shape.h"
#include "pictures/yard_plan.h"
#include "pictures_kit.h"

#include <QTest>

#include <cmath>
#include <ctime>
#include <limits>
#include <map>

using namespace halfcup;
using namespace halfcup::picturetest;
using mites::Standing;

namespace {

constexpr std::array<std::optional<Standing>, 5> standings{Standing::Under, Standing::Close, Standing::Over,
                                                           Standing::CannotTell, std::nullopt};

/// So many hives, each where it is put; the standings and the kind of place in turns.
template <class Place>
YardPlan planOf(int count, Place place) {
    YardPlan plan;
    for (int i = 0; i < count; ++i) {
        PlannedHive hive{.key = QStringLiteral("k%1").arg(i), .label = QString::number(i + 1)};
        hive.standing = standings[static_cast<std::size_t>(i) % standings.size()];
        hive.stand = place(i);
        hive.fromPositions = i % 3 == 2;
        plan.hives.push_back(hive);
    }
    return plan;
}

YardPlan atOnePoint(int count) {
    return planOf(count, [](int) { return records::Stand{3, -2}; });
}
YardPlan inRows(int count, double apartM) { // of ten, as hives stand
    return planOf(count, [=](int i) { return records::Stand{i % 10 * apartM, -(i / 10) * 3 * apartM}; });
}
YardPlan scattered(int count, double acrossM) {
    return planOf(count, [=](int i) { // not by chance, so that a failure comes again
        const double turn = i * 2.399963;
        const double away = acrossM / 2 * std::sqrt((i + 0.5) / count);
        return records::Stand{away * std::cos(turn), away * std::sin(turn)};
    });
}

QStringList wrong(const YardPlan& plan, double width, double letters, QString* name = nullptr) {
    const Type type = phoneType(letters);
    const Drawing drawing = drawYardPlan(plan, {{width, 0}, type});
    QStringList found = wrongLabels(drawing, type) + wrongShapes(drawing);
    if (!(drawing.size.height() > 0 && drawing.size.height() < 20 * width))
        found.append(QStringLiteral("height %1").arg(drawing.size.height()));
    const Drawing legend = drawLegend(legendOf(plan), {{width, 0}, type});
    found += wrongLabels(legend, type);
    for (const Palette* palette : {&Palette::day(), &Palette::dusk(), &Palette::paper()})
        found += alikeKeys(legendOf(plan), *palette, type);
    if (name && !found.isEmpty())
        found.prepend(*name);
    return found;
}

QPointF spotOf(const Drawing& drawing, const QString& key) {
    for (const Spot& spot : drawing.spots)
        if (spot.key == key)
            return spot.at;
    return {qQNaN(), qQNaN()};
}

double distance(QPointF a, QPointF b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y());
}

QStringList textsOf(const Drawing& drawing) {
    QStringList texts;
    for (const Label& label : drawing.labels())
        texts.append(label.text);
    return texts;
}

} // namespace

class PicturesPlanTest : public QObject {
    Q_OBJECT

private slots:
    void nothingLiesOnAnything_data() {
        QTest::addColumn<int>("count");
        QTest::addColumn<int>("where");
        for (const int count : {1, 2, 5, 12, 30, 60})
            for (int where = 0; where < 6; ++where)
                QTest::addRow("%d hives, %s", count,
                              std::array{"at one point", "rows 1 m", "rows 3 m", "scattered 2 km",
                                         "scattered 30 m", "none placed"}[static_cast<std::size_t>(where)])
                    << count << where;
    }

    void nothingLiesOnAnything() {
        QFETCH(int, count);
        QFETCH(int, where);
        const YardPlan plan = where == 0   ? atOnePoint(count)
                              : where == 1 ? inRows(count, 1)
                              : where == 2 ? inRows(count, 3)
                              : where == 3 ? scattered(count, 2000)
                              : where == 4
                                  ? scattered(count, 30)
                                  : planOf(count, [](int) -> std::optional<records::Stand> { return {}; });
        for (const double width : {288.0, 380.0})
            for (const double letters : {1.0, 1.5})
                QCOMPARE(wrong(plan, width, letters), QStringList());
        const Type type = phoneType();
        const Drawing drawing = drawYardPlan(plan, {{288, 0}, type});
        QCOMPARE(drawing.spots.size(), static_cast<std::size_t>(count)); // each can be touched
        const double side = type.height() * (count > 24 ? 1.2 : 1.5);
        for (std::size_t i = 0; i < drawing.spots.size(); ++i)
            for (std::size_t k = 0; k < i; ++k) {
                const QPointF way = drawing.spots[i].at - drawing.spots[k].at;
                QVERIFY(std::max(std::abs(way.x()), std::abs(way.y())) >= side); // no mark on another
            }
        const QStringList texts = textsOf(drawing);
        for (const PlannedHive& hive : plan.hives)
            QVERIFY2(texts.contains(hive.label), qPrintable(hive.label)); // each is named
        keep(drawing, Palette::day(), type,
             QStringLiteral("plan-%1-%2").arg(QLatin1String(QTest::currentDataTag())).arg(288));
    }

    void northIsUpAndEastIsRight() {
        const Type type = phoneType();
        YardPlan plan = planOf(4, [](int i) {
            return std::array{records::Stand{0, 0}, records::Stand{40, 0}, records::Stand{0, 30},
                              records::Stand{-40, -30}}[static_cast<std::size_t>(i)];
        });
        const Drawing drawing = drawYardPlan(plan, {{380, 0}, type});
        const PlanFrame frame = frameOf(plan, {{380, 0}, type});
        const QPointF origin = spotOf(drawing, "k0"), east = spotOf(drawing, "k1"),
                      north = spotOf(drawing, "k2"), southWest = spotOf(drawing, "k3");
        QVERIFY(east.x() > origin.x() + 100 && std::abs(east.y() - origin.y()) < 1e-6);
        QVERIFY(north.y() < origin.y() - 80 && std::abs(north.x() - origin.x()) < 1e-6);
        QVERIFY(southWest.x() < origin.x() - 100 && southWest.y() > origin.y() + 80);
        // 40 m and 30 m on one scale.
        QVERIFY(std::abs((east.x() - origin.x()) / 40 - (origin.y() - north.y()) / 30) < 1e-6);
        QVERIFY(std::abs(frame.unitsPerM() - (east.x() - origin.x()) / 40) < 1e-6);
        // Signs swapped: the same picture, turned by half a circle.
        for (PlannedHive& hive : plan.hives)
            hive.stand = records::Stand{-hive.stand->eastM, -hive.stand->northM};
        const Drawing turned = drawYardPlan(plan, {{380, 0}, type});
        QVERIFY(spotOf(turned, "k1").x() < spotOf(turned, "k0").x());
        QVERIFY(spotOf(turned, "k2").y() > spotOf(turned, "k0").y());
    }

    void aTouchedPointIsAPlaceOnTheGround() {
        const Type type = phoneType();
        const YardPlan plan = scattered(12, 60);
        const Drawing drawing = drawYardPlan(plan, {{288, 0}, type});
        const PlanFrame frame = frameOf(plan, {{288, 0}, type});
        for (const PlannedHive& hive : plan.hives) {
            const records::Stand back = frame.standAt(frame.at(*hive.stand));
            QVERIFY(std::abs(back.eastM - hive.stand->eastM) <= 0.005 + 1e-9);
            QVERIFY(std::abs(back.northM - hive.stand->northM) <= 0.005 + 1e-9);
        }
        QVERIFY(drawing.size.height() > 0);
    }

    void whatIsCrowdedIsMovedAsideAndLedBack() {
        const Type type = phoneType();
        const YardPlan plan = planOf(2, [](int) { return records::Stand{3, -2}; });
        const Drawing drawing = drawYardPlan(plan, {{288, 0}, type});
        const QPointF truly = frameOf(plan, {{288, 0}, type}).at({3, -2});
        QVERIFY(distance(spotOf(drawing, "k0"), truly) < 1e-6); // the first stands there
        const double moved = distance(spotOf(drawing, "k1"), truly);
        QVERIFY(moved >= type.height() * 1.5 && moved < 90);
        int leaders = 0;
        for (const auto& thing : drawing.things)
            if (const auto* shape = std::get_if<Shape>(&thing))
                if (shape->path.elementCount() == 2 &&
                    distance(shape->path.elementAt(0), spotOf(drawing, "k1")) < 1e-6 &&
                    distance(shape->path.elementAt(1), truly) < 1e-6)
                    ++leaders;
        QCOMPARE(leaders, 1);
        // A metre apart at a plan of six metres: nothing is crowded, nothing is moved.
        const YardPlan apart = planOf(2, [](int i) { return records::Stand{i * 1.0, 0}; });
        const Drawing roomy = drawYardPlan(apart, {{288, 0}, type});
        const PlanFrame frame = frameOf(apart, {{288, 0}, type});
        QVERIFY(distance(spotOf(roomy, "k0"), frame.at({0, 0})) < 1e-6);
        QVERIFY(distance(spotOf(roomy, "k1"), frame.at({1, 0})) < 1e-6);
    }

    void theScaleBarIsRound() {
        struct Case {
            double acrossM;
            bool feet;
            const char* text;
            double lengthM;
        };
        // A foot is 0.3048 m exactly (international yard and pound agreement of 1959).
        for (const Case& each :
             {Case{1, false, "2 m", 2}, Case{20, false, "5 m", 5}, Case{200, false, "50 m", 50},
              Case{2000, false, "500 m", 500}, Case{19000, false, "5 km", 5000},
              Case{20, true, "20 ft", 6.096}, Case{2000, true, "2,000 ft", 609.6}}) {
            const Type type = phoneType();
            YardPlan plan = planOf(2, [&](int i) { return records::Stand{i * each.acrossM, 0}; });
            plan.feet = each.feet;
            const PlanFrame frame = frameOf(plan, {{288, 0}, type});
            const auto bar = scaleBarOf(frame, 288 * 0.35, each.feet);
            QVERIFY(bar);
            QCOMPARE(bar->text, QLatin1String(each.text));
            QVERIFY(std::abs(bar->units - each.lengthM * frame.unitsPerM()) < 1e-6);
            QVERIFY(bar->units <= 288 * 0.35 && bar->units >= 288 * 0.35 / 2.6);
            QVERIFY(textsOf(drawYardPlan(plan, {{288, 0}, type})).contains(QLatin1String(each.text)));
        }
        QVERIFY(!scaleBarOf(PlanFrame(), 0, false));
        QVERIFY(!scaleBarOf(PlanFrame(), std::numeric_limits<double>::quiet_NaN(), false));
    }

    void whatIsNoPlaceIsListedUnderThePlan() {
        const double nan = std::numeric_limits<double>::quiet_NaN();
        const double infinite = std::numeric_limits<double>::infinity();
        YardPlan plan = scattered(7, 30);
        plan.hives[1].stand = records::Stand{nan, 3};
        plan.hives[2].stand = records::Stand{3, -infinite};
        plan.hives[3].stand = records::Stand{1e12, 0};
        plan.hives[4].stand.reset();
        const Type type = phoneType();
        const Drawing drawing = drawYardPlan(plan, {{288, 0}, type});
        const auto ground = groundOf(plan);
        QVERIFY(ground && ground->widthM() <= 30 && ground->heightM() <= 30);
        QCOMPARE(drawing.spots.size(), std::size_t{7});
        double head = 0;
        for (const Label& label : drawing.labels())
            if (label.text == QLatin1String("Not on the plan:"))
                head = label.box.top();
        QVERIFY(head > 100);
        for (std::size_t i = 0; i < plan.hives.size(); ++i)
            QCOMPARE(spotOf(drawing, plan.hives[i].key).y() > head, i >= 1 && i <= 4);
        QCOMPARE(wrong(plan, 288, 1), QStringList());
        keep(drawing, Palette::dusk(), type, QStringLiteral("plan-not-placed"));
    }

    void longAndHostileLabelsAreHeld() {
        YardPlan plan = scattered(9, 30);
        plan.hives[0].label = QString(100, QLatin1Char('W'));
        plan.hives[1].label = QStringLiteral("\u202Egate\u202C");
        plan.hives[2].label.clear();
        plan.hives[3].label = QStringLiteral("\u05DB\u05D5\u05D5\u05E8\u05EA 4");
        plan.hives[4].label = QStringLiteral("a\u0301\u0301\u0301\u0301 \u200F by the old mill");
        plan.hives[5].label = plan.hives[6].label;
        plan.hives[7].stand.reset();
        plan.hives[7].label = QString(100, QLatin1Char('M'));
        for (const double width : {288.0, 380.0})
            for (const double letters : {1.0, 1.5})
                QCOMPARE(wrong(plan, width, letters), QStringList());
        for (const double width : {0.0, -10.0, 20.0, 60.0, 110.0}) { // no room: nothing is cut, nothing hangs
            const Type type = phoneType();
            const Drawing narrow = drawYardPlan(plan, {{width, 0}, type});
            QCOMPARE(wrongLabels(narrow, type), QStringList());
        }
        const Type type = phoneType();
        keep(drawYardPlan(plan, {{288, 0}, type}), Palette::day(), type, QStringLiteral("plan-labels"));
    }

    void anEmptyYardSaysSo() {
        const Type type = phoneType();
        const Drawing none = drawYardPlan({}, {{288, 0}, type});
        QCOMPARE(textsOf(none), QStringList{QStringLiteral("No hive in this yard yet.")});
        QCOMPARE(sentenceOf({}), QStringLiteral("Plan of the yard: no hive in it yet."));
        QVERIFY(legendOf({}).empty());
        QVERIFY(!groundOf({}));
        // Being put there: a ground without a hive is shown.
        const YardPlan first{.hives = {{.key = "a", .label = "1"}}, .ground = PlanBounds{-10, 10, -10, 10}};
        const Drawing ground = drawYardPlan(first, {{288, 0}, type});
        QVERIFY(ground.size.height() > 200);
        QCOMPARE(wrong(first, 288, 1), QStringList());
    }

    void aKeptGroundDoesNotSlideAway() {
        const Type type = phoneType();
        YardPlan plan = inRows(4, 3);
        plan.ground = groundOf(plan)->grown(10);
        const PlanFrame before = frameOf(plan, {{288, 0}, type});
        plan.hives[1].stand = records::Stand{-8, 8};
        const PlanFrame after = frameOf(plan, {{288, 0}, type});
        QCOMPARE(after.at({0, 0}), before.at({0, 0}));
        QCOMPARE(after.unitsPerM(), before.unitsPerM());
    }

    void theSentenceSaysWhatIsSeen() {
        YardPlan plan = planOf(5, [](int i) { return records::Stand{i * 6.0, i == 4 ? -12.0 : 0}; });
        QCOMPARE(
            sentenceOf(plan),
            QStringLiteral("Plan of the yard, north up: 24 m from west to east, 12 m from south to north. "
                           "Over the line: 3. Close to the line: 2. Can't tell yet: 4. Under the line: 1. "
                           "Not washed: 5."));
        plan.feet = true;
        plan.hives[0].stand.reset();
        const QString feet = sentenceOf(plan);
        QVERIFY(feet.contains(QLatin1String("59 ft from west to east, 39 ft"))); // 18 and 12 by 0.3048
        QVERIFY(feet.endsWith(QLatin1String("Not on the plan: 1.")));
        for (PlannedHive& hive : plan.hives)
            hive.stand.reset();
        QVERIFY(
            sentenceOf(plan).startsWith(QLatin1String("Plan of the yard: no hive has its place yet. Over")));
    }

    void theWordStandsWhereThereIsRoom() {
        const Type type = phoneType();
        const QStringList roomy = textsOf(drawYardPlan(scattered(5, 40), {{380, 0}, type}));
        for (const auto& standing : standings)
            QVERIFY2(roomy.contains(wordOf(standing)), qPrintable(wordOf(standing)));
        // In a heap there is not, and the gravest are told first.
        const QStringList heap = textsOf(drawYardPlan(atOnePoint(60), {{288, 0}, type}));
        QVERIFY(heap.count(wordOf(Standing::Over)) >= heap.count(wordOf(std::nullopt)));
    }

    void theLegendHoldsWhatIsShown() {
        YardPlan plan = planOf(2, [](int i) { return records::Stand{i * 5.0, 0}; }); // under and close
        QCOMPARE(legendOf(plan).size(), std::size_t{2}); // all by hand: nothing to tell apart
        plan.hives[1].fromPositions = true;
        QCOMPARE(legendOf(plan).size(), std::size_t{4});
        plan.hives[0].stand.reset();
        QCOMPARE(legendOf(plan).size(), std::size_t{3}); // all from positions is worth saying
    }

    void theMarksOfTheStandingsAreToldApart() {
        const Type type = phoneType();
        Legend marks;
        for (const auto& standing : standings) {
            Drawing key{.size = legendKeySize};
            addStanding(key, standing, QRectF(QPointF(), legendKeySize));
            QCOMPARE(wrongShapes(key), QStringList());
            marks.push_back({key, wordOf(standing)});
        }
        for (const Palette* palette : {&Palette::day(), &Palette::dusk(), &Palette::paper()})
            QCOMPARE(alikeKeys(marks, *palette, type), QStringList());
        Drawing nothing;
        addStanding(nothing, Standing::Over, {});
        QVERIFY(nothing.things.empty());
    }

    void itIsQuick() {
        const Type type = phoneType();
        for (const YardPlan& plan : {atOnePoint(60), inRows(60, 1), scattered(60, 2000), atOnePoint(300)}) {
            double best = 1e9; // time of the processor, whatever else it does
            for (int i = 0; i < 5; ++i) {
                const std::clock_t start = std::clock();
                QVERIFY(!drawYardPlan(plan, {{288, 0}, type}).things.empty());
                best = std::min(best, 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
            }
            qInfo("%d hives: %.2f ms", static_cast<int>(plan.hives.size()), best);
            QVERIFY(best <
                    (plan.hives.size() > 100 ? 200 : 20) * patience()); // a tenth of a second would be seen
        }
    }

    void picturesForPeople() {
        const Type type = phoneType(), large = phoneType(1.5);
        YardPlan plan = scattered(9, 24);
        plan.picked = QStringLiteral("k3");
        plan.hives[8].stand.reset();
        keep(drawYardPlan(plan, {{288, 0}, type}), Palette::day(), type, QStringLiteral("plan-nine"));
        keep(drawYardPlan(plan, {{288, 0}, large}), Palette::dusk(), large,
             QStringLiteral("plan-nine-large"));
        keep(drawYardPlan(inRows(20, 2), {{600, 0}, type}), Palette::paper(), type,
             QStringLiteral("plan-paper"));
        keep(drawLegend(legendOf(plan), {{288, 0}, type}), Palette::paper(), type,
             QStringLiteral("plan-legend"));
    }
};

QTEST_MAIN(PicturesPlanTest)
#include "pictures_plan.moc"
