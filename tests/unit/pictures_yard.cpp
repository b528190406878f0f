// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The colonies of a yard under each other.
#include "patience.h"
#include "pictures/yard_comparison.h"
#include "pictures/yard_comparison_of_records.h"
#include "pictures_kit.h"

#include <QElapsedTimer>
#include <QTest>

#include <limits>

using namespace halfcup;
using namespace halfcup::picturetest;
using mites::Standing;

namespace {

constexpr double noNumber = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

ComparedColony colony(const QString& label, double load, Standing standing = Standing::Under, int age = 3) {
    return {label, label, ComparedLoad{load * 0.6, load, load * 1.6 + 0.3, load == 0, standing, age}};
}

/// An invented yard of so many colonies, every fifth not washed.
YardComparison yardOf(int colonies, double highest) {
    YardComparison yard{.treatLine = 3, .ownLine = 2};
    for (int i = 0; i < colonies; ++i) {
        const double load = colonies == 1 ? highest : highest * i / (colonies - 1);
        const auto standing = static_cast<Standing>(i % 4);
        yard.colonies.push_back(colony(QString::number(i + 1), load, standing, i % 3 == 0 ? 45 : 3));
        if (i % 5 == 4)
            yard.colonies.back().load.reset();
    }
    return yard;
}

QStringList texts(const Drawing& drawing) {
    QStringList found;
    for (const Label& label : drawing.labels())
        found.append(label.text);
    return found;
}

QStringList wrong(const YardComparison& yard) {
    QStringList all;
    for (const double scale : {1.0, 1.5}) {
        const Type type = phoneType(scale);
        for (const double width : {288.0, 380.0}) {
            const Drawing drawing = drawYardComparison(yard, {{width, 0}, type});
            all += wrongLabels(drawing, type) + wrongShapes(drawing);
        }
    }
    for (const Palette* palette : {&Palette::day(), &Palette::dusk(), &Palette::paper()})
        all += alikeKeys(legendOf(yard), *palette, phoneType());
    return all;
}

/// Middles of the points of washes, from the first row down.
std::vector<QPointF> points(const Drawing& drawing) {
    std::vector<QPointF> found;
    for (const auto& thing : drawing.things)
        if (const auto* shape = std::get_if<Shape>(&thing);
            shape && shape->outline == Tone::Action && shape->inside)
            found.push_back(shape->path.boundingRect().center());
    return found;
}

/// Where the treat line stands: the one whole upright line of its tone.
double treatLineAt(const Drawing& drawing) {
    for (const auto& thing : drawing.things)
        if (const auto* shape = std::get_if<Shape>(&thing);
            shape && shape->outline == Tone::Rust && shape->dash.empty() && !shape->inside)
            return shape->path.boundingRect().center().x();
    return noNumber;
}

} // namespace

class PicturesYardTest : public QObject {
    Q_OBJECT

private slots:
    void nothingLiesOnAnother() {
        for (const int colonies : {0, 1, 2, 12, 60, 200})
            for (const double load : {0.0, 0.3, 40.0, 250.0})
                QVERIFY2(wrong(yardOf(colonies, load)).isEmpty(),
                         qPrintable(wrong(yardOf(colonies, load)).join(u'\n')));
    }

    void pictures() {
        for (const double scale : {1.0, 1.5}) {
            const Type type = phoneType(scale);
            for (const auto& [palette, name] :
                 {std::pair(&Palette::day(), "day"), std::pair(&Palette::dusk(), "dusk")}) {
                keep(drawYardComparison(yardOf(12, 7), {{288, 0}, type}), *palette, type,
                     QStringLiteral("yard_%1_%2").arg(QLatin1String(name)).arg(scale));
                keep(drawYardComparison(yardOf(8, 250), {{380, 0}, type}), *palette, type,
                     QStringLiteral("yard_250_%1_%2").arg(QLatin1String(name)).arg(scale));
            }
            keep(drawLegend(legendOf(yardOf(12, 7)), {{288, 0}, type}), Palette::day(), type,
                 QStringLiteral("yard_legend_%1").arg(scale));
        }
        const Type type = phoneType();
        keep(drawYardComparison(yardOf(60, 12), {{288, 0}, type}), Palette::paper(), type,
             QStringLiteral("yard_60"));
        YardComparison named = yardOf(4, 3);
        named.colonies[0].label = QStringLiteral("nucleus by the garden gate, third from the left");
        named.colonies[1].load.reset();
        keep(drawYardComparison(named, {{288, 0}, type}), Palette::day(), type, QStringLiteral("yard_named"));
    }

    void hostileLabelsAreFitted() {
        YardComparison yard = yardOf(3, 5);
        yard.colonies[0].label = QString(100, u'W');
        yard.colonies[1].label = QStringLiteral("\u202Eten\u202C\nlines");
        yard.colonies[2].label.clear();
        QCOMPARE(wrong(yard), QStringList());
        const Type type = phoneType();
        const QStringList all = texts(drawYardComparison(yard, {{288, 0}, type}));
        QVERIFY(all.contains(QStringLiteral("ten lines")));
        QVERIFY(std::ranges::any_of(
            all, [](const QString& text) { return text.startsWith(u"WWW") && text.endsWith(u'…'); }));
        for (const double width : {0.0, 1.0, 60.0})
            QVERIFY(std::isfinite(drawYardComparison(yard, {{width, 0}, type}).size.height()));
    }

    void whatIsNoLoadIsAsNotWashed() {
        YardComparison yard{.treatLine = noNumber, .ownLine = -2};
        yard.colonies = {colony("a", noNumber), colony("b", infinite), colony("c", -1), colony("d", 2)};
        yard.colonies[3].load->low = infinite;
        yard.colonies[3].load->high = noNumber;
        QCOMPARE(wrong(yard), QStringList());
        QCOMPARE(rowsInWords(yard),
                 QStringList({"Colony d: 2.0 per 100 bees, 2.0 to 2.0 in 9 of 10 cases. Under your line.",
                              "Colony a: not washed.", "Colony b: not washed.", "Colony c: not washed."}));
        const Type type = phoneType();
        QVERIFY(std::isnan(treatLineAt(drawYardComparison(yard, {{288, 0}, type}))));
        yard.colonies[3].load = ComparedLoad{0, 1e300, 1e308, false, std::nullopt, 0};
        QCOMPARE(wrong(yard), QStringList());
    }

    void theHighestLoadComesFirstAndTheUnwashedLast() {
        YardComparison yard{.treatLine = 3};
        yard.colonies = {colony("none", 0),
                         {"new", "new", std::nullopt},
                         colony("high", 6),
                         colony("low", 1),
                         colony("alike", 1)};
        const Type type = phoneType();
        const Drawing drawing = drawYardComparison(yard, {{380, 0}, type});
        QStringList keys;
        double above = 0;
        for (const Spot& spot : drawing.spots) {
            keys.append(spot.key);
            QVERIFY(spot.at.y() > above);
            above = spot.at.y();
        }
        QCOMPARE(keys, QStringList({"high", "low", "alike", "none", "new"}));
        QVERIFY(texts(drawing).contains(QStringLiteral("not washed")));
    }

    void loadsLieOnOneAxisWithTheLine() {
        YardComparison yard{.treatLine = 3};
        yard.colonies = {colony("over", 3.2), colony("on", 3), colony("half", 1.5), colony("none", 0)};
        const Type type = phoneType();
        const Drawing drawing = drawYardComparison(yard, {{380, 0}, type});
        const auto at = points(drawing);
        const double line = treatLineAt(drawing);
        QCOMPARE(at.size(), std::size_t(4));
        QVERIFY(at[0].x() > line);
        QVERIFY(std::abs(at[1].x() - line) < 1e-6);
        QVERIFY(std::abs(at[2].x() - (at[3].x() + line) / 2) < 1e-6); // a plain scale from zero
        for (std::size_t i = 0; i < 4; ++i)
            QVERIFY(std::abs(at[i].y() - drawing.spots[i].at.y()) < 1e-6);
    }

    void anOldWashSaysItsAge() {
        YardComparison yard{.treatLine = 3};
        yard.colonies = {colony("1", 2, Standing::Under, 31), colony("2", 1, Standing::Under, 30)};
        const Type type = phoneType();
        const QStringList all = texts(drawYardComparison(yard, {{288, 0}, type}));
        QCOMPARE(all.filter(QStringLiteral("ago")).size(), 1);
        QVERIFY(all.contains(QStringLiteral("washed 31 day(s) ago"))); // the untranslated text
        QVERIFY(rowsInWords(yard)[0].contains(QStringLiteral("31")) &&
                !rowsInWords(yard)[1].contains(u"ago"));
    }

    void theHeightGrowsWithTheColonies() {
        const Type type = phoneType();
        double before = 0;
        for (int colonies = 0; colonies <= 60; colonies += 6) {
            const Drawing drawing = drawYardComparison(yardOf(colonies, 4), {{288, 0}, type});
            QVERIFY(drawing.size.height() > before);
            before = drawing.size.height();
            QCOMPARE(drawing.spots.size(), std::size_t(colonies));
        }
    }

    void anEmptyYardSaysSo() {
        const Type type = phoneType();
        QVERIFY(!texts(drawYardComparison({}, {{400, 0}, type})).isEmpty());
        QCOMPARE(sentenceOf(YardComparison{}), QStringLiteral("No colony is kept in this yard yet."));
        QVERIFY(legendOf(YardComparison{}).empty());
        const YardComparison unwashed{.colonies = {{"1", "1", std::nullopt}}, .treatLine = 3};
        const Drawing drawing = drawYardComparison(unwashed, {{288, 0}, type});
        QCOMPARE(texts(drawing), QStringList({"1", "not washed"}));
        QCOMPARE(legendOf(unwashed).size(), std::size_t(1));
    }

    void theSentenceNamesTheHighest() {
        YardComparison yard{.treatLine = 3};
        yard.colonies = {colony("7", 1), colony("4", 6.2, Standing::Over), {"9", "9", std::nullopt}};
        const QString said = sentenceOf(yard);
        QVERIFY2(said.contains(QStringLiteral(
                     "Colony 4: 6.2 per 100 bees, 3.7 to 10 in 9 of 10 cases. Over your line.")),
                 qPrintable(said));
    }

    void recordsGiveTheLatestAnswer() {
        records::YardRecords kept;
        for (const char* id : {"a", "b"}) {
            records::Colony made;
            made.id = id;
            made.label = std::string("hive ") += id;
            kept.colonies.push_back(made);
        }
        records::Sample wash;
        wash.colonyId = "a";
        wash.state = records::SampleState::Finished;
        wash.scoop.beesMean = 300;
        wash.startedAtMs = records::daysSinceEpoch({2026, 5, 1}) * 86'400'000;
        wash.answer.emplace();
        wash.answer->mites = 0;
        wash.answer->loadQ05 = 0.1;
        wash.answer->loadQ50 = 0.4;
        wash.answer->loadQ95 = 1.2;
        records::Sample older = wash, board = wash;
        older.startedAtMs -= 86'400'000;
        older.answer->mites = 9;
        board.startedAtMs += 86'400'000;
        board.answer.reset();
        kept.latestWashes = {older, board, wash};
        records::Lines lines;
        lines.own = 1.5;
        const YardComparison yard = yardComparisonOf(kept, lines, {2026, 6, 15});
        QCOMPARE(yard.treatLine, 3.0);
        QCOMPARE(yard.ownLine, std::optional(1.5));
        QCOMPARE(yard.colonies.size(), std::size_t(2));
        QCOMPARE(yard.colonies[0].label, QStringLiteral("hive a"));
        QVERIFY(yard.colonies[0].load && yard.colonies[0].load->noneFound && !yard.colonies[1].load);
        QCOMPARE(yard.colonies[0].load->ageDays, 45);
        QCOMPARE(yard.colonies[0].load->high, 1.2);
    }

    void itIsDrawnAtOnce() {
        const Type type = phoneType();
        const YardComparison yard = yardOf(60, 40);
        qint64 fastest = std::numeric_limits<qint64>::max(); // of some: others may use the machine too
        for (int i = 0; i < 30; ++i) {
            QElapsedTimer timer;
            timer.start();
            QVERIFY(!drawYardComparison(yard, {{288, 0}, type}).things.empty());
            fastest = std::min(fastest, timer.nsecsElapsed());
        }
        QVERIFY2(static_cast<double>(fastest) < 2'000'000 * patience(), qPrintable(QString::number(fastest)));
        if (qEnvironmentVariableIsSet("HALFCUP_PICTURES"))
            qInfo("drawn in %lld us", fastest / 1000);
    }
};

QTEST_MAIN(PicturesYardTest)
#include "pictures_yard.moc"
