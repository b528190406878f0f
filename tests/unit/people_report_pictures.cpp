// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Pictures in a report: where they stand on paper, and which ones there are.
#include "exchange/report_content.h"
#include "exchange/report_layout.h"
#include "handbook/built_in.h"
#include "people_keeper.h"

#include <QBuffer>
#include <QPdfWriter>
#include <QRegularExpression>
#include <QTest>

using namespace halfcup;
using namespace halfcup::exchange;
using peopletest::Keeper;
using peopletest::someRecords;

namespace {

constexpr int dotsPerInch = 300;
constexpr double perMm = dotsPerInch / 25.4;

ReportPicture square(const QString& caption, double heightMm) {
    ReportPicture picture;
    picture.draw = [](const pictures::Sheet& sheet) {
        pictures::Drawing drawing{.size = sheet.size, .things = {}, .spots = {}};
        drawing.add(pictures::box({{}, sheet.size}, pictures::Tone::Field));
        return drawing;
    };
    picture.heightMm = heightMm;
    picture.caption = caption;
    picture.sentence = QStringLiteral("The same in words: ") + caption;
    return picture;
}

/// Paper whose printable area is as large as asked, and what was laid on it.
struct Laid {
    explicit Laid(const Report& report, double widthMm = 180, double heightMm = 267)
        : width(widthMm * perMm)
        , height(heightMm * perMm) {
        buffer.open(QIODevice::WriteOnly);
        QPdfWriter paper(&buffer);
        paper.setResolution(dotsPerInch);
        report::Typefaces faces(paper);
        pages = report::Layout(faces, width, height, perMm).pages(report);
    }

    /// Page and place of the thing with that text; of the n-th picture where there is no text.
    std::pair<std::size_t, QRectF> find(const QString& text, std::size_t number = 0) const {
        for (std::size_t page = 0; page < pages.size(); ++page)
            for (const report::Placed& each : pages[page])
                if ((text.isEmpty() ? each.drawing != nullptr : each.text == text) && number-- == 0)
                    return {page, each.place};
        return {pages.size(), {}};
    }

    double width, height;
    QBuffer buffer;
    std::vector<report::Page> pages;
};

Report reportWith(std::vector<ReportBlock> blocks) {
    Report report;
    report.title = QStringLiteral("Title");
    report.subtitle = QStringLiteral("Subtitle");
    report.blocks = std::move(blocks);
    return report;
}

Report reportOf(const Keeper& keeper, ReportRequest request = {}) {
    request.writtenAt = *records::parseRfc3339("2026-06-01T12:00:00+02:00");
    return buildReport(readForReport(keeper, request.selection), request, handbook::builtIn());
}

/// Captions and sentences of all pictures in their order.
QStringList told(const Report& report) {
    QStringList all;
    for (const ReportBlock& block : report.blocks) {
        if (const auto* picture = std::get_if<ReportPicture>(&block))
            all << picture->caption << picture->sentence;
        if (const auto* several = std::get_if<ReportPictures>(&block))
            for (const ReportPicture& each : several->pictures)
                all << each.caption << each.sentence;
    }
    return all;
}

bool has(const QStringList& texts, const char* part) {
    return !texts.filter(QLatin1String(part)).isEmpty();
}

} // namespace

class PeopleReportPicturesTest : public QObject {
    Q_OBJECT

private slots:
    void pictureStaysWithItsHeadingAndWords() {
        std::vector<ReportBlock> blocks;
        for (int i = 0; i < 7; ++i) {
            blocks.emplace_back(ReportHeading{QStringLiteral("Heading %1").arg(i)});
            blocks.emplace_back(square(QStringLiteral("Caption %1").arg(i), 70 + i));
        }
        const Laid laid(reportWith(blocks));
        QVERIFY(laid.pages.size() > 2);
        for (std::size_t i = 0; i < 7; ++i) {
            const auto [page, place] = laid.find({}, i);
            QCOMPARE(qRound(place.width()), qRound(laid.width));
            QCOMPARE(qRound(place.height() / perMm), 70 + static_cast<int>(i));
            for (const char* words : {"Heading %1", "Caption %1", "The same in words: Caption %1"}) {
                const auto [where, box] = laid.find(QString::fromLatin1(words).arg(i));
                QCOMPARE(where, page);
                QVERIFY(box.bottom() <= place.top() + 1 || box.top() + 1 >= place.bottom());
            }
            QVERIFY(place.bottom() < laid.height - 7 * perMm);
        }
    }

    void twoStandBesideEachOtherWhereThereIsRoom() {
        ReportPictures several{.pictures = {square(QStringLiteral("a"), 50), square(QStringLiteral("b"), 50),
                                            square(QStringLiteral("c"), 50)},
                               .legend = {}};
        const Laid wide(reportWith({several}));
        const QRectF a = wide.find({}, 0).second, b = wide.find({}, 1).second, c = wide.find({}, 2).second;
        QCOMPARE(a.top(), b.top());
        QVERIFY(b.left() > a.right() + 4 * perMm);
        QVERIFY(b.right() <= wide.width + 1);
        QVERIFY(c.top() > a.bottom() && c.left() == a.left());
        const Laid narrow(reportWith({several}), 120); // two of 70 mm do not fit
        QVERIFY(narrow.find({}, 1).second.top() > narrow.find({}, 0).second.bottom());
        QCOMPARE(qRound(narrow.find({}, 0).second.width()), qRound(narrow.width));
    }

    void narrowPictureHasItsWordsBesideIt() {
        ReportPicture small = square(QStringLiteral("Caption"), 30);
        small.widthMm = 40;
        const Laid laid(reportWith({small}));
        const QRectF place = laid.find({}).second;
        QCOMPARE(qRound(place.width() / perMm), 40);
        for (const char* words : {"Caption", "The same in words: Caption"}) {
            const QRectF box = laid.find(QLatin1String(words)).second;
            QVERIFY(box.left() > place.right() && box.top() < place.bottom() &&
                    box.right() <= laid.width + 1);
        }
    }

    void higherThanThePageIsMadeSmaller() {
        const Laid laid(reportWith({square(QStringLiteral("Caption"), 900)}));
        const QRectF place = laid.find({}).second;
        QVERIFY(place.bottom() <= laid.height - 7 * perMm);
        QVERIFY(place.height() > 200 * perMm);
        QCOMPARE(qRound(100 * place.height() / place.width()), 500); // as it was drawn: 900 to 180
    }

    void emptyPictureTakesNoHarm() {
        ReportPicture nothing;
        nothing.draw = [](const pictures::Sheet&) { return pictures::Drawing{}; };
        const Laid laid(
            reportWith({nothing, ReportPictures{}, ReportParagraph{QStringLiteral("after"), {}}}));
        QCOMPARE(laid.pages.size(), std::size_t(1));
        QCOMPARE(laid.find({}).first, laid.pages.size());
        QVERIFY(!laid.find(QStringLiteral("after")).second.isEmpty());
    }

    // 9 mites with the default scoop: 3.21 (1.37 to 7.77), tables of the project's reference figures,
    // computed by adaptive integration in R.
    void oneColonyHasItsChartAndTheCombOfItsLastWash() {
        ReportRequest request;
        request.selection.colonyId = "colony-4";
        const QStringList all = told(reportOf(someRecords(), request));
        QVERIFY2(has(all, "18 May 2026: 3.2 mites per 100 bees, between 1.4 and 7.8."),
                 qPrintable(all.join(u'\n')));
        QVERIFY(has(all, "The last wash as a comb of a hundred cells, 18 May 2026"));
        QVERIFY(has(all,
                    "3.2 (1.4 to 7.8) per 100 bees. Comb of a hundred cells: 1 filled, 7 more half filled."));
    }

    void oneYardHasItsColoniesBesideEachOtherAndEachOne() {
        ReportRequest request;
        request.seasons["yard"] = {{2026, 1, 1}, records::Date{2026, 8, 15}};
        const QStringList all = told(reportOf(someRecords(), request));
        QVERIFY2(has(all, "Alder Bend: the last wash of each colony"), qPrintable(all.join(u'\n')));
        QVERIFY(has(all, "Colony 4: 3.2 per 100 bees, 1.4 to 7.8 in 9 of 10 cases. Over your line."));
        QVERIFY(has(all, "Alder Bend: twelve months from 1 Jan 2026"));
        QVERIFY(all.contains(QStringLiteral("Colony 4")) && all.contains(QStringLiteral("Colony 10")));
        QVERIFY(!has(all, "If nothing is done")); // what was, not what may come
        request.seasons.clear();
        QVERIFY(!has(told(reportOf(someRecords(), request)), "twelve months"));
    }

    void severalYardsHaveAComparisonEach() {
        Keeper keeper = someRecords();
        records::Yard second = keeper.keptYards[0];
        second.id = "second";
        second.name = "Long Furrow";
        keeper.keptYards.push_back(second);
        keeper.keptColonies[0].yardId = "second";
        keeper.samples[2].yardId = "second";
        const QStringList all = told(reportOf(keeper));
        QCOMPARE(all.filter(QStringLiteral("the last wash of each colony")).size(), 2);
        QVERIFY(!all.contains(QStringLiteral("Colony 4, Alder Bend")));
    }

    void planOnlyWithExactPositions() {
        Keeper keeper = someRecords();
        keeper.keptColonies[0].stand = records::Stand{0, 0};
        keeper.keptColonies[1].stand = records::Stand{3, 1};
        QVERIFY(!has(told(reportOf(keeper)), "where the hives stand"));
        ReportRequest request;
        request.detail = PositionDetail::Exact;
        QVERIFY(has(told(reportOf(keeper, request)), "where the hives stand"));
        QVERIFY(!has(told(reportOf(someRecords(), request)), "where the hives stand")); // none was placed
    }

    void largeYardIsDrawnInPieces() {
        Keeper keeper = someRecords();
        for (int i = 0; i < 198; ++i) {
            records::Colony colony = keeper.keptColonies[0];
            colony.id = "more-" + std::to_string(i);
            colony.label = std::to_string(100 + i);
            keeper.keptColonies.push_back(colony);
            keeper.samples.push_back(peopletest::wash(100 + i, colony.id, "2026-05-20T09:00:00Z", i % 40));
        }
        const Report report = reportOf(keeper);
        const QStringList all = told(report);
        QCOMPARE(all.filter(QStringLiteral("the highest loads first")).size(), 7); // of 30 each
        QVERIFY(has(all, "Colonies 181 to 200 of 200"));
        QCOMPARE(all.filter(QRegularExpression(QStringLiteral("^Colony \\d+$"))).size(), 40);
        const Laid laid(report);
        for (std::size_t i = 0; i < 47; ++i)
            QVERIFY(laid.find({}, i).second.bottom() <= laid.height - 7 * perMm);
    }

    void whatEndedIsNamedApart() {
        Keeper keeper = someRecords();
        records::ColonyEvent dead;
        dead.id = "dead";
        dead.colonyId = "colony-10";
        dead.yardId = "yard";
        dead.kind = records::EventKind::Dead;
        dead.day = {2026, 5, 30};
        keeper.events = {dead};
        const auto facts = [&] {
            const Report report = reportOf(keeper);
            QStringList all;
            for (const auto& [label, value] : std::get<ReportFacts>(report.blocks.front()).facts)
                all.append(label + u'=' + value);
            return all;
        };
        QVERIFY(facts().contains(QStringLiteral("Colonies kept=4")));
        QVERIFY(facts().contains(QStringLiteral("No longer kept=10 (dead, 30 May 2026)")));
        QVERIFY(facts().contains(QStringLiteral("At their last washes=Over your line: 4.")));
        keeper.events[0].day = {2026, 7, 1}; // after the day of the report
        QVERIFY(facts().contains(QStringLiteral("Colonies kept=4; 10")));
    }
};

QTEST_MAIN(PeopleReportPicturesTest)
#include "people_report_pictures.moc"
