// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The season as a strip of twelve months.
#include "patience.h"
#include "pictures/season_strip.h"
#include "pictures/season_strip_of_records.h"
#include "pictures_kit.h"

#include <QElapsedTimer>
#include <QTest>

#include <limits>

using namespace halfcup;
using namespace halfcup::picturetest;
using halfcup::records::Date;

namespace {

constexpr Date january{2026, 1, 1};

/// An invented year with so many washes.
SeasonStrip busyYear(int washes, const Date& first = january) {
    const auto day = [&](int days) { return records::plusDays(first, days); };
    SeasonStrip strip{.first = first, .today = day(165)};
    strip.flow = {{day(110), day(130)}, {day(140), day(200)}};
    strip.capped = {{day(60), day(280)}};
    strip.uncapped = {{day(0), day(40)}, {day(300), day(340)}};
    strip.turnDates = {day(226)};
    for (int i = 0; i < washes; ++i)
        strip.washed.push_back(day(70 + i * 290 / std::max(washes, 1)));
    strip.due = {day(160), day(190), day(238)};
    strip.treatments = {{day(20), day(20)}, {day(205), day(247)}, {day(225), day(235)}, {day(230), day(260)}};
    return strip;
}

/// Where the filled shapes of a tone and a fill lie.
std::vector<QRectF> areas(const Drawing& drawing, Tone tone, Fill fill = Fill::Solid) {
    std::vector<QRectF> found;
    for (const auto& thing : drawing.things)
        if (const auto* shape = std::get_if<Shape>(&thing);
            shape && shape->inside == tone && shape->fill == fill)
            found.push_back(shape->path.boundingRect());
    return found;
}

QStringList texts(const Drawing& drawing) {
    QStringList found;
    for (const Label& label : drawing.labels())
        found.append(label.text);
    return found;
}

QStringList wrong(const SeasonStrip& strip) {
    QStringList all;
    for (const double scale : {1.0, 1.5}) {
        const Type type = phoneType(scale);
        for (const double width : {288.0, 380.0}) {
            const Drawing drawing = drawSeasonStrip(strip, {{width, 100}, type});
            all += wrongLabels(drawing, type) + wrongShapes(drawing);
        }
    }
    for (const Palette* palette : {&Palette::day(), &Palette::dusk(), &Palette::paper()})
        all += alikeKeys(legendOf(strip), *palette, phoneType());
    return all;
}

records::ColonyEvent happened(const char* colony, records::EventKind kind, const Date& day) {
    records::ColonyEvent made;
    made.colonyId = colony;
    made.kind = kind;
    made.day = day;
    return made;
}

} // namespace

class PicturesSeasonStripTest : public QObject {
    Q_OBJECT

private slots:
    void nothingLiesOnAnotherHoweverFullTheYear() {
        for (const int washes : {0, 1, 2, 12, 200})
            for (const Date& first : {january, Date{2026, 7, 1}})
                QCOMPARE(wrong(busyYear(washes, first)), QStringList());
    }

    void pictures() {
        for (const double scale : {1.0, 1.5})
            for (const double width : {288.0, 380.0}) {
                const Type type = phoneType(scale);
                for (const auto& [palette, name] :
                     {std::pair(&Palette::day(), "day"), std::pair(&Palette::dusk(), "dusk")})
                    keep(drawSeasonStrip(busyYear(12), {{width, 100}, type}), *palette, type,
                         QStringLiteral("strip_%1_%2_%3").arg(QLatin1String(name)).arg(width).arg(scale));
                keep(drawSeasonStrip(busyYear(200), {{width, 100}, type}), Palette::paper(), type,
                     QStringLiteral("strip_200_%1_%2").arg(width).arg(scale));
                keep(drawLegend(legendOf(busyYear(12)), {{width, 100}, type}), Palette::day(), type,
                     QStringLiteral("strip_legend_%1_%2").arg(width).arg(scale));
            }
        const Type type = phoneType();
        keep(drawSeasonStrip({.first = january, .today = Date{2026, 6, 15}}, {{288, 100}, type}),
             Palette::day(), type, QStringLiteral("strip_empty"));
    }

    void anEmptyYearSaysSo() {
        const Type type = phoneType();
        const SeasonStrip empty{.first = january};
        const Drawing drawing = drawSeasonStrip(empty, {{288, 100}, type});
        QVERIFY(texts(drawing).contains(QStringLiteral("Nothing is recorded yet.")));
        QVERIFY(sentenceOf(empty).contains(QStringLiteral("Nothing is recorded yet.")));
        QVERIFY(legendOf(empty).empty());
        QCOMPARE(wrong(empty), QStringList());
    }

    void impossibleDaysAreLeftOut() {
        const Type type = phoneType();
        SeasonStrip strip{.first = january, .today = Date{2026, 2, 30}};
        strip.washed = {{2026, 13, 1}, {2025, 12, 31}, {2027, 1, 1}};
        strip.turnDates = {{2026, 0, 0}};
        strip.treatments = {
            {{2026, 5, 1}, {2026, 4, 1}}, {{2024, 1, 1}, {2024, 2, 1}}, {{1, 1, 1}, {0, 0, 0}}};
        strip.flow = {{{-5, 1, 1}, {2025, 12, 31}}};
        QVERIFY(texts(drawSeasonStrip(strip, {{288, 100}, type}))
                    .contains(QStringLiteral("Nothing is recorded yet.")));
        QVERIFY(legendOf(strip).empty());
        QCOMPARE(wrong(strip), QStringList());
        for (const Date& first : {Date{2026, 13, 1}, Date{2026, 1, 15}, Date{0, 0, 0}}) {
            const SeasonStrip none{.first = first};
            QVERIFY(drawSeasonStrip(none, {{288, 100}, type}).things.empty());
            QVERIFY(legendOf(none).empty() && !sentenceOf(none).isEmpty());
        }
        for (const double width : {0.0, 1.0, 60.0}) { // no room at all
            const Drawing drawing = drawSeasonStrip(busyYear(12), {{width, 0}, type});
            QVERIFY(std::isfinite(drawing.size.height()));
        }
    }

    void monthsAreNamedInTheOrderOfTheYear() {
        const Type type = phoneType();
        const auto months = [&](const Date& first, double width) {
            QStringList found;
            for (const Label& label : drawSeasonStrip({.first = first}, {{width, 100}, type}).labels())
                if (label.box.top() == 0)
                    found.append(label.text);
            return found.join(u' ');
        };
        QCOMPARE(months(january, 288), QStringLiteral("J F M A M J J A S O N D"));
        QCOMPARE(months({2026, 7, 1}, 288), QStringLiteral("J A S O N D J F M A M J")); // a southern year
        QCOMPARE(months(january, 150), QStringLiteral("Jan Apr Jul Oct"));
    }

    void daysNeverGoBack() { // a bar of each day lies right of the one before
        const Type type = phoneType();
        const Date first{2026, 7, 1};
        double before = -1;
        for (int i = 0; i < 365; ++i) {
            const Date day = records::plusDays(first, i);
            const SeasonStrip strip{.first = first, .washed = {day}};
            const auto found = areas(drawSeasonStrip(strip, {{600, 100}, type}), Tone::Ink);
            QCOMPARE(found.size(), std::size_t(1));
            QVERIFY(found[0].center().x() > before);
            QVERIFY(found[0].left() >= 0 && found[0].right() <= 600);
            before = found[0].center().x();
        }
        for (const Date& outside : {Date{2026, 6, 30}, Date{2027, 7, 1}})
            QVERIFY(
                areas(drawSeasonStrip({.first = first, .washed = {outside}}, {{600, 100}, type}), Tone::Ink)
                    .empty());
    }

    void aDayLiesAtItsShareOfTheYear() { // 2 July 2026 is the middle of it: 182 days before, 182 after
        const Type type = phoneType();
        SeasonStrip strip{
            .first = january, .washed = {{2026, 7, 2}}, .treatments = {{{2026, 1, 1}, {2026, 12, 31}}}};
        const Drawing drawing = drawSeasonStrip(strip, {{380, 100}, type});
        const auto dot = areas(drawing, Tone::Ink);
        const auto year = areas(drawing, Tone::Green, Fill::HatchUp);
        QCOMPARE(dot.size(), std::size_t(1));
        QCOMPARE(year.size(), std::size_t(1));
        QVERIFY(std::abs(dot[0].center().x() - year[0].center().x()) < 1e-6);
    }

    void treatmentsThatOverlapLieApart() {
        const Type type = phoneType();
        SeasonStrip strip{.first = january};
        strip.treatments = {{{2026, 5, 1}, {2026, 6, 10}},
                            {{2026, 5, 20}, {2026, 7, 1}},
                            {{2026, 7, 2}, {2026, 7, 2}},
                            {{2024, 1, 1}, {2024, 2, 1}}};
        const Drawing drawing = drawSeasonStrip(strip, {{288, 100}, type});
        const auto bars = areas(drawing, Tone::Green, Fill::HatchUp);
        QCOMPARE(bars.size(), std::size_t(3));
        QVERIFY(!bars[0].intersects(bars[1]));
        QVERIFY(!bars[1].intersects(bars[2]));
        QCOMPARE(bars[0].top(), bars[2].top()); // the first lane is free again
        QVERIFY(bars[2].width() >= 2);          // one day can still be seen
        for (const QRectF& bar : bars)
            QVERIFY(areas(drawing, Tone::Field).at(0).contains(bar));
        strip.treatments.assign(6, {{2026, 5, 1}, {2026, 6, 1}}); // more than there are lanes
        QCOMPARE(wrong(strip), QStringList());
    }

    void aTreatmentFromLastYearIsCutAtTheEdge() {
        const Type type = phoneType();
        const auto barOf = [&](const DaySpan& span) {
            const SeasonStrip strip{.first = january, .treatments = {span}};
            return areas(drawSeasonStrip(strip, {{288, 100}, type}), Tone::Green, Fill::HatchUp).at(0);
        };
        QCOMPARE(barOf({{2025, 12, 1}, {2026, 1, 31}}), barOf({{2026, 1, 1}, {2026, 1, 31}}));
        QCOMPARE(barOf({{2020, 1, 1}, {2030, 1, 1}}), barOf({{2026, 1, 1}, {2026, 12, 31}}));
    }

    void doneAndDueAreTwoShapes() {
        const Type type = phoneType();
        const Date day{2026, 5, 18};
        const SeasonStrip strip{.first = january, .washed = {day, day}, .due = {day}};
        const Drawing drawing = drawSeasonStrip(strip, {{288, 100}, type});
        const auto done = areas(drawing, Tone::Ink), due = areas(drawing, Tone::Page);
        QCOMPARE(done.size(), std::size_t(1)); // two jars of one day are one mark
        QCOMPARE(due.size(), std::size_t(1));
        QVERIFY(!done[0].intersects(due[0]));
        QCOMPARE(legendOf(strip).size(), std::size_t(2));
    }

    void theTurnDateComesBeforeToday() { // where there is room for one word only
        const Type type = phoneType();
        const SeasonStrip strip{.first = january, .today = Date{2026, 8, 15}, .turnDates = {{2026, 8, 15}}};
        const QStringList narrow = texts(drawSeasonStrip(strip, {{150, 100}, type}));
        QVERIFY2(narrow.contains(QStringLiteral("turn date 15 August")), qPrintable(narrow.join(u'|')));
        QVERIFY(!narrow.contains(QStringLiteral("today")));
        const QStringList wide = texts(drawSeasonStrip(strip, {{380, 100}, type}));
        QVERIFY(wide.contains(QStringLiteral("turn date 15 August")) &&
                wide.contains(QStringLiteral("today")));
    }

    void theSentenceSaysWhatIsShown() {
        const QString said = sentenceOf(busyYear(12));
        for (const char* part : {"Twelve months from January 2026.", "Supers on from 21 April to 11 May.",
                                 "Capped brood from 2 March to 8 October.", "Turn date 15 August.",
                                 "Treated from 21 January to 21 January.", "Today is 15 June."})
            QVERIFY2(said.contains(QLatin1String(part)), qPrintable(said));
    }

    void recordsBecomeSpans() {
        using records::EventKind;
        records::YardRecords kept;
        kept.yard.id = "yard";
        for (const char* id : {"a", "b"}) {
            records::Colony colony;
            colony.id = id;
            kept.colonies.push_back(colony);
        }
        kept.events = {happened("a", EventKind::SupersOn, {2026, 4, 20}),
                       happened("a", EventKind::SupersOff, {2026, 5, 10}),
                       happened("b", EventKind::SupersOn, {2026, 5, 1}),
                       happened("b", EventKind::Dead, {2026, 5, 20}),
                       happened("a", EventKind::Brood, {2025, 12, 1}),
                       happened("a", EventKind::Brood, {2026, 2, 1}),
                       happened("other", EventKind::SupersOn, {2026, 1, 1})};
        kept.events[4].brood = records::Brood::None; // last year's state goes on
        kept.events[5].brood = records::Brood::Capped;
        records::GivenTreatment given;
        given.treatment.yardId = "yard";
        given.treatment.firstDay = given.treatment.lastDay = {2026, 1, 5};
        kept.treatments = {given, given};
        kept.treatments[1].treatment.removed = true;
        std::vector<records::Sample> washes(3);
        for (records::Sample& wash : washes) {
            wash.state = records::SampleState::Finished;
            wash.answer.emplace();
            wash.startedAtMs = records::daysSinceEpoch({2026, 5, 18}) * 86'400'000 + 82'800'000; // 23:00 UTC
            wash.utcOffsetMinutes = 120;
        }
        washes[1].removed = true;
        washes[2].answer.reset();
        const SeasonStrip strip =
            seasonStripOf(std::span(&kept, 1), washDaysOf(washes), january, {2026, 6, 15});
        QCOMPARE(strip.flow, (std::vector<DaySpan>{{{2026, 4, 20}, {2026, 5, 19}}}));
        QCOMPARE(strip.uncapped, (std::vector<DaySpan>{{{2026, 1, 1}, {2026, 1, 31}}}));
        QCOMPARE(strip.capped, (std::vector<DaySpan>{{{2026, 2, 1}, {2026, 6, 15}}}));
        QCOMPARE(strip.treatments, (std::vector<DaySpan>{{{2026, 1, 5}, {2026, 1, 5}}}));
        QCOMPARE(strip.washed, (std::vector<Date>{{2026, 5, 19}})); // the local day
        QVERIFY(seasonStripOf(std::span(&kept, 1), washDaysOf(washes), january, {2025, 1, 1}).flow.empty());
        QVERIFY(seasonStripOf(std::span(&kept, 1), washDaysOf(washes), {2026, 2, 31}, {2026, 6, 15})
                    .flow.empty());
    }

    void itIsDrawnAtOnce() {
        const Type type = phoneType();
        const SeasonStrip strip = busyYear(200);
        qint64 fastest = std::numeric_limits<qint64>::max(); // of some: others may use the machine too
        for (int i = 0; i < 30; ++i) {
            QElapsedTimer timer;
            timer.start();
            QVERIFY(!drawSeasonStrip(strip, {{288, 100}, type}).things.empty());
            fastest = std::min(fastest, timer.nsecsElapsed());
        }
        QVERIFY2(static_cast<double>(fastest) < 2'000'000 * patience(), qPrintable(QString::number(fastest)));
        if (qEnvironmentVariableIsSet("HALFCUP_PICTURES"))
            qInfo("drawn in %lld us", fastest / 1000);
    }
};

QTEST_MAIN(PicturesSeasonStripTest)
#include "pictures_season_strip.moc"
