// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Before and after a treatment.
#include "patience.h"
#include "pictures/slopes.h"
#include "pictures_kit.h"

#include <QElapsedTimer>
#include <QTest>

#include <limits>

using namespace halfcup;
using namespace halfcup::picturetest;

namespace {

constexpr double noNumber = std::numeric_limits<double>::quiet_NaN();

SlopeEnd found(double load) {
    return {load * 0.6, load, load * 1.7 + 0.3, load == 0};
}

Slope slope(const QString& label, double before, double after, bool treated = true) {
    return {label, found(before), found(after), treated};
}

/// So many invented colonies, every fourth untreated.
Slopes slopesOf(int colonies, double highest) {
    Slopes slopes{.treatLine = 3};
    for (int i = 0; i < colonies; ++i) {
        const double before = highest * (i + 1) / colonies;
        const bool treated = i % 4 != 3;
        slopes.colonies.push_back(
            slope(QString::number(i + 1), before, treated ? before * (i % 3) * 0.06 : before * 0.9, treated));
    }
    return slopes;
}

QStringList texts(const Drawing& drawing) {
    QStringList all;
    for (const Label& label : drawing.labels())
        all.append(label.text);
    return all;
}

QStringList wrong(const Slopes& slopes) {
    QStringList all;
    for (const double scale : {1.0, 1.5}) {
        const Type type = phoneType(scale);
        for (const QSizeF& size : {QSizeF(288, 220), QSizeF(380, 260), QSizeF(288, 10)}) {
            const Drawing drawing = drawSlopes(slopes, {size, type});
            all += wrongLabels(drawing, type) + wrongShapes(drawing);
        }
    }
    for (const Palette* palette : {&Palette::day(), &Palette::dusk(), &Palette::paper()})
        all += alikeKeys(legendOf(slopes), *palette, phoneType());
    return all;
}

/// Lines that go from one side to the other, treat line and base left out.
std::vector<const Shape*> lines(const Drawing& drawing, bool dashed) {
    std::vector<const Shape*> all;
    for (const auto& thing : drawing.things)
        if (const auto* shape = std::get_if<Shape>(&thing);
            shape && !shape->inside && shape->path.boundingRect().width() > 40 &&
            (shape->outline == Tone::Action || (shape->outline == Tone::Quiet && !shape->dash.empty())) &&
            shape->dash.empty() != dashed)
            all.push_back(shape);
    return all;
}

} // namespace

class PicturesSlopesTest : public QObject {
    Q_OBJECT

private slots:
    void nothingLiesOnAnother() {
        for (const int colonies : {0, 1, 2, 12, 200})
            for (const double load : {0.0, 0.3, 40.0, 250.0})
                QCOMPARE(wrong(slopesOf(colonies, load)), QStringList());
    }

    void pictures() {
        for (const double scale : {1.0, 1.5}) {
            const Type type = phoneType(scale);
            for (const auto& [palette, name] :
                 {std::pair(&Palette::day(), "day"), std::pair(&Palette::dusk(), "dusk")})
                keep(drawSlopes(slopesOf(4, 6), {{288, 220}, type}), *palette, type,
                     QStringLiteral("slopes_4_%1_%2").arg(QLatin1String(name)).arg(scale));
            keep(drawSlopes(slopesOf(14, 9), {{380, 260}, type}), Palette::paper(), type,
                 QStringLiteral("slopes_14_%1").arg(scale));
            keep(drawSlopes(slopesOf(3, 250), {{288, 220}, type}), Palette::day(), type,
                 QStringLiteral("slopes_250_%1").arg(scale));
            keep(drawLegend(legendOf(slopesOf(4, 6)), {{288, 0}, type}), Palette::day(), type,
                 QStringLiteral("slopes_legend_%1").arg(scale));
        }
    }

    void hostileLabelsAreFittedAndTheLoadStays() {
        Slopes slopes{.treatLine = 3};
        slopes.colonies = {slope(QString(100, u'W'), 6, 1), slope(QStringLiteral("\u202Eten\nlines"), 2, 0.5),
                           slope({}, 4, 2)};
        QCOMPARE(wrong(slopes), QStringList());
        const Type type = phoneType();
        const QStringList all = texts(drawSlopes(slopes, {{288, 220}, type}));
        QVERIFY2(std::ranges::any_of(
                     all, [](const QString& text) { return text.endsWith(QStringLiteral("…: 6.0")); }),
                 qPrintable(all.join(u'|')));
        for (const double width : {0.0, 1.0, 60.0})
            QVERIFY(std::isfinite(drawSlopes(slopes, {{width, 0}, type}).size.height()));
    }

    void whatIsNoLoadIsLeftOut() {
        Slopes slopes{.treatLine = -noNumber};
        slopes.colonies = {slope("a", noNumber, 1), slope("b", 1, -1),
                           slope("c", std::numeric_limits<double>::infinity(), 1)};
        QCOMPARE(sentenceOf(slopes), QStringLiteral("No colony was washed both before and after it."));
        QVERIFY(legendOf(slopes).empty());
        slopes.colonies.push_back({"d", {noNumber, 2, -5, false}, {3, 1, noNumber, false}, true});
        QCOMPARE(wrong(slopes), QStringList());
        slopes.colonies.push_back({"e", {0, 1e300, 1e308, false}, {0, 0, 0, true}, true});
        QCOMPARE(wrong(slopes), QStringList());
    }

    void anEmptyPictureSaysSo() {
        const Type type = phoneType();
        QCOMPARE(texts(drawSlopes({}, {{380, 220}, type})),
                 QStringList("No colony was washed both before and after it."));
    }

    void treatedAreWholeAndUntreatedDashed() {
        const Type type = phoneType();
        Slopes slopes{.treatLine = 3};
        slopes.colonies = {slope("1", 6, 1), slope("2", 4, 4.5, false), slope("3", 5, 0.5)};
        const Drawing drawing = drawSlopes(slopes, {{288, 220}, type});
        QCOMPARE(lines(drawing, false).size(), std::size_t(2));
        QCOMPARE(lines(drawing, true).size(), std::size_t(1));
        for (const Shape* fallen : lines(drawing, false)) // y grows downwards
            QVERIFY(fallen->path.elementAt(1).y > fallen->path.elementAt(0).y);
        const Shape* risen = lines(drawing, true).front();
        QVERIFY(risen->path.elementAt(1).y < risen->path.elementAt(0).y);
        QCOMPARE(legendOf(slopes).size(), std::size_t(4)); // treated, untreated, range, treat line
    }

    void aLineGoesFromItsLoadToItsLoad() {
        const Type type = phoneType();
        Slopes slopes{.treatLine = 3};
        slopes.colonies = {slope("1", 3, 1.5)};
        const Drawing drawing = drawSlopes(slopes, {{288, 220}, type});
        double treat = noNumber, base = noNumber;
        for (const auto& thing : drawing.things)
            if (const auto* shape = std::get_if<Shape>(&thing)) {
                if (shape->outline == Tone::Rust)
                    treat = shape->path.elementAt(0).y;
                else if (shape->outline == Tone::Quiet && shape->path.boundingRect().height() == 0)
                    base = shape->path.elementAt(0).y;
            }
        const QPainterPath& line = lines(drawing, false).at(0)->path;
        QVERIFY(std::abs(line.elementAt(0).y - treat) < 1e-6);
        QVERIFY(std::abs(line.elementAt(1).y - (treat + base) / 2) < 1e-6); // half the load on a plain scale
        QVERIFY(line.elementAt(0).x < line.elementAt(1).x);
    }

    void theHighestLoadsKeepTheirLabels() {
        const Type type = phoneType();
        Slopes slopes{.treatLine = 3};
        for (int i = 0; i < 40; ++i)
            slopes.colonies.push_back(slope(QStringLiteral("h%1").arg(i), 4 + i * 0.001, 0.5));
        slopes.colonies.push_back(slope(QStringLiteral("top"), 4.2, 0.5));
        const QStringList all = texts(drawSlopes(slopes, {{288, 220}, type}));
        QVERIFY(all.contains(QStringLiteral("top: 4.2")));
        QVERIFY(all.size() < 16); // the rest is left out, not crammed
    }

    void theSentenceSaysEachColony() {
        Slopes slopes{.treatLine = 3};
        slopes.colonies = {slope("7", 2, 2.4, false), slope("4", 6.2, 0)};
        QCOMPARE(sentenceOf(slopes),
                 QStringLiteral("Colony 4: 6.2 mites per 100 bees before, 0 after. "
                                "Colony 7, not treated: 2.0 mites per 100 bees before, 2.4 after."));
    }

    void itIsDrawnAtOnce() {
        const Type type = phoneType();
        const Slopes slopes = slopesOf(200, 40);
        qint64 fastest = std::numeric_limits<qint64>::max(); // of some: others may use the machine too
        for (int i = 0; i < 30; ++i) {
            QElapsedTimer timer;
            timer.start();
            QVERIFY(!drawSlopes(slopes, {{288, 220}, type}).things.empty());
            fastest = std::min(fastest, timer.nsecsElapsed());
        }
        QVERIFY2(static_cast<double>(fastest) < 2'000'000 * patience(), qPrintable(QString::number(fastest)));
        if (qEnvironmentVariableIsSet("HALFCUP_PICTURES"))
            qInfo("drawn in %lld us", fastest / 1000);
    }
};

QTEST_MAIN(PicturesSlopesTest)
#include "pictures_slopes.moc"
