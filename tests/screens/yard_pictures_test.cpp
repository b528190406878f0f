// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The season's strip, the colonies compared, and before and after a treatment: that the pages show what the
// store holds, say it to a screen reader, and paint nothing twice.
#include "screens.h"

#include "pictures/picture_words.h"
#include "touch/legend_item.h"
#include "touch/season_strip_item.h"
#include "touch/slopes_item.h"
#include "touch/words.h"
#include "touch/yard_comparison_item.h"

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>
#include <set>

using namespace halfcup;
using namespace halfcup::screens;
using records::Date;
using touch::Navigator;

namespace {

template <class Item>
Item* itemOf(Stage& stage, const char* name) {
    return qobject_cast<Item*>(stage.find(QLatin1String(name)));
}

QString spoken(QQuickItem* item) {
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(item);
    return face ? face->text(QAccessible::Name) : QString();
}

bool toTheComparison(Stage& stage) {
    stage.app().here()->compareColonies();
    stage.settle();
    return stage.find(QStringLiteral("comparePage"));
}

records::Colony colonyOf(Stage& stage, const QString& label) {
    for (const records::Colony& each :
         stage.program().store().colonies(stage.app().here()->yardId().toStdString()))
        if (each.label == label.toStdString())
            return each;
    return {};
}

} // namespace

/// The stage's day is 15 June 2026.
class YardPicturesTest : public QObject {
    Q_OBJECT

private slots:
    void figuresReadAsOnThePages() {
        for (const double load : {0.0, 0.01, 0.3, 3.0, 9.94, 9.96, 40.4, 250.0})
            QCOMPARE(pictures::words::load(load), touch::words::load(load));
        for (const mites::Standing each : {mites::Standing::Under, mites::Standing::Close,
                                           mites::Standing::Over, mites::Standing::CannotTell})
            QCOMPARE(pictures::words::standing(each),
                     touch::words::standing(touch::StandingWord::from(each)));
        QCOMPARE(pictures::words::day({2026, 5, 18}), touch::words::day({2026, 5, 18}));
    }

    void theStripShowsTheSeasonsRecords() {
        Stage stage(Stage::Demo);
        QVERIFY(stage.touch(QStringLiteral("season")));
        auto* strip = itemOf<touch::SeasonStripItem>(stage, "strip");
        QVERIFY(strip);
        const pictures::SeasonStrip shown = strip->picture().shown;
        QCOMPARE(shown.first, (Date{2026, 1, 1}));
        QCOMPARE(shown.today, std::optional(Date{2026, 6, 15}));
        std::size_t washes = 0, treatments = 0;
        std::set<std::string> yards;
        store::Store& store = stage.program().store();
        store.forEachSample([&](const records::Sample& sample) {
            const Date day = records::localDate(
                {sample.scoopedAtMs.value_or(sample.startedAtMs), sample.utcOffsetMinutes});
            washes +=
                sample.state == records::SampleState::Finished && sample.answer && day >= shown.first ? 1 : 0;
        });
        for (const records::GivenTreatment& each : store.allTreatments())
            treatments += each.treatment.removed ? 0 : 1;
        QVERIFY(washes > 5 && treatments > 0);
        QCOMPARE(shown.washed.size(), washes);
        QCOMPARE(shown.treatments.size(), treatments);
        QVERIFY(std::ranges::count(shown.turnDates, Date{2026, 8, 15}) > 0); // handbook, turn-date-north
        QVERIFY(!shown.flow.empty() && !shown.capped.empty() && !shown.due.empty());
        QVERIFY(spoken(strip).contains(QStringLiteral("Turn date 15 August.")));
        QVERIFY(strip->height() > 60 && strip->height() == strip->drawnHeight());
        QVERIFY(!stage.find(QStringLiteral("marks")));
        QVERIFY(stage.touch(QStringLiteral("marksMeaning")));
        auto* marks = itemOf<touch::LegendItem>(stage, "marks");
        QVERIFY(marks && marks->height() > 60);
        QVERIFY(spoken(marks).contains(QStringLiteral("Wash due")));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void nothingIsDrawnAnewWhenNothingChanged() {
        Stage stage(Stage::Demo);
        QVERIFY(stage.touch(QStringLiteral("season")));
        auto* strip = itemOf<touch::SeasonStripItem>(stage, "strip");
        QVERIFY(strip);
        QSignalSpy drawn(strip, &touch::PictureItem::drawn);
        stage.app().season()->refresh();
        stage.settle();
        QCOMPARE(drawn.size(), 0);
        const Date day{2026, 5, 1};
        records::ColonyEvent event;
        event.id = stage.program().store().newId();
        event.colonyId = colonyOf(stage, QStringLiteral("4")).id;
        event.yardId = stage.app().here()->yardId().toStdString();
        event.kind = records::EventKind::Brood;
        event.brood = records::Brood::None;
        event.day = {2026, 1, 2};
        stage.program().store().save(event);
        stage.app().season()->refresh();
        stage.settle();
        QVERIFY(drawn.size() > 0);
        QCOMPARE(strip->picture().shown.uncapped.at(0).from, (Date{2026, 1, 2}));
        QVERIFY(day > strip->picture().shown.uncapped.at(0).from);
    }

    void theComparisonHoldsTheColoniesOfTheYard() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheComparison(stage));
        auto* item = itemOf<touch::YardComparisonItem>(stage, "comparison");
        QVERIFY(item);
        store::Store& store = stage.program().store();
        const std::string yardId = stage.app().here()->yardId().toStdString();
        const auto latest = store.latestFinished(yardId);
        const auto& shown = item->picture().shown;
        QCOMPARE(shown.colonies.size(), store.colonies(yardId).size());
        double above = 1e9;
        std::size_t washed = 0;
        for (const pictures::Spot& spot : item->drawing().spots) {
            const auto colony = std::ranges::find(shown.colonies, spot.key, &pictures::ComparedColony::key);
            QVERIFY(colony != shown.colonies.end());
            const auto wash = std::ranges::find(latest, spot.key.toStdString(), &records::Sample::colonyId);
            QCOMPARE(colony->load.has_value(), wash != latest.end());
            if (!colony->load)
                continue;
            ++washed;
            QCOMPARE(colony->load->middle, wash->answer->loadQ50);
            QCOMPARE(colony->load->high, wash->answer->loadQ95);
            QVERIFY(colony->load->middle <= above);
            above = colony->load->middle;
        }
        QCOMPARE(washed, latest.size());
        QVERIFY(washed > 3);
        QCOMPARE(item->height(), item->drawnHeight());
        QVERIFY(spoken(item).contains(QStringLiteral("colonies, the highest load first.")));
        const QStringList rows = stage.app().compare()->rows();
        QCOMPARE(std::size_t(rows.size()), shown.colonies.size());
        QVERIFY(stage.touch(QStringLiteral("inWords")));
        const auto items = visibleItems(stage.window()->contentItem());
        for (const QString& row : rows)
            QVERIFY2(
                std::ranges::any_of(items, [&](QQuickItem* each) { return each->property("text") == row; }),
                qPrintable(row));
        QSignalSpy drawn(item, &touch::PictureItem::drawn);
        stage.app().compare()->refresh();
        QCOMPARE(drawn.size(), 0);
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void sixtyColoniesCanBeRead() {
        Stage stage(Stage::Nothing);
        store::Store& store = stage.program().store();
        records::Yard yard;
        yard.id = store.newId();
        yard.name = "The long meadow by the brook";
        store.save(yard);
        for (int i = 1; i <= 60; ++i) {
            records::Colony colony;
            colony.id = store.newId();
            colony.yardId = yard.id;
            colony.label = std::to_string(i);
            store.save(colony);
        }
        QVERIFY(stage.app().compare()->show(QString::fromStdString(yard.id)));
        QVERIFY(!stage.app().compare()->show(QStringLiteral("no such yard")));
        QVERIFY(stage.app().compare()->show(QString::fromStdString(yard.id)));
        stage.app().navigator()->open(Navigator::Compare);
        stage.resize({320, 568});
        auto* item = itemOf<touch::YardComparisonItem>(stage, "comparison");
        QVERIFY(item);
        QVERIFY(item->height() >= 60 * 20 && item->height() == item->drawnHeight());
        QCOMPARE(stage.app().compare()->rows().first(), QStringLiteral("Colony 1: not washed."));
        QCOMPARE(stage.app().compare()->rows().last(), QStringLiteral("Colony 60: not washed."));
    }

    void beforeAndAfterAreTheWashesThatCount() {
        Stage stage(Stage::Demo);
        int told = 0;
        for (const records::GivenTreatment& each : stage.program().store().allTreatments()) {
            QVERIFY(stage.app().check()->show(QString::fromStdString(each.treatment.id)));
            const season::TreatmentCheck& check = stage.app().check()->found();
            const auto& shown = stage.app().check()->picture().shown;
            QCOMPARE(std::ranges::count_if(shown.colonies, &pictures::Slope::treated), check.colonies);
            QCOMPARE(std::ranges::count_if(shown.colonies, [](const auto& slope) { return !slope.treated; }),
                     check.colonies > 0 ? check.controls
                                        : std::ranges::count_if(shown.colonies, [](const auto& slope) {
                                              return !slope.treated;
                                          }));
            QCOMPARE(stage.app().check()->hasPicture(), !shown.colonies.empty());
            if (check.colonies == 0)
                continue;
            ++told;
            stage.app().navigator()->open(Navigator::Check);
            stage.settle();
            auto* slopes = itemOf<touch::SlopesItem>(stage, "slopes");
            QVERIFY(slopes);
            QVERIFY(spoken(slopes).contains(QStringLiteral("mites per 100 bees before")));
            stage.app().navigator()->home();
            stage.settle();
        }
        QVERIFY(told > 0);
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }

    void aPictureFollowsTheLook() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheComparison(stage));
        const QImage day = stage.picture();
        stage.setDusk(true);
        QVERIFY(itemOf<touch::YardComparisonItem>(stage, "comparison")->isDusk());
        QVERIFY(stage.picture() != day);
    }
};

QTEST_MAIN(YardPicturesTest)
#include "yard_pictures_test.moc"
