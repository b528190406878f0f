// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/wash_load.h"
#include "records/method.h"
#include "records/other_count.h"
#include "records/sample.h"

#include <QTest>

#include <algorithm>
#include <array>
#include <cstring>
#include <set>

using namespace halfcup::records;
namespace mites = halfcup::mites;

namespace {

constexpr std::int64_t hourMs = 3'600'000;

const Method& methodOf(const char* id) {
    const Method* method = findMethod(id);
    if (!method)
        qFatal("no method %s", id);
    return *method;
}

std::vector<Step> stepsOf(const Method& method) {
    std::vector<Step> steps;
    for (const MethodStep& each : method.steps)
        steps.push_back(each.step);
    return steps;
}

} // namespace

class RecordsMethodsTest : public QObject {
    Q_OBJECT

private slots:
    void eachMethodIsWhole() {
        std::set<std::string_view> ids;
        for (const Method* method : allMethods()) {
            QVERIFY(ids.insert(method->id).second);
            QCOMPARE(findMethod(method->id), method);
            QVERIFY(*method->name && *method->summary && *method->noneFound);
            QVERIFY(std::strstr(method->begin, "%1"));
            QVERIFY(!method->cautions.empty());
            QCOMPARE(method->steps.front().step, Step::Colony);
            QCOMPARE(method->steps.back().step, Step::Answer);
            QVERIFY(hasStep(*method, Step::Count));
            QVERIFY(hasStep(*method, method->momentAt));
            const auto steps = stepsOf(*method);
            QCOMPARE(std::set<Step>(steps.begin(), steps.end()).size(), steps.size()); // none twice
            for (const MethodStep& step : method->steps)
                QVERIFY2(step.step == Step::Answer || *step.title, nameOf(step.step).data());
            QCOMPARE(hasStep(*method, Step::Scoop), method->measure == Measure::MitesPer100Bees);
            QCOMPARE(*method->noun != '\0', hasStep(*method, Step::Scoop));
            QVERIFY(!method->jarMayWait || hasStep(*method, Step::Pour));
            if (hasStep(*method, Step::Settle))
                QVERIFY(method->settleS > 0);
        }
        QCOMPARE(allMethods().size(), std::size_t{5});
        QCOMPARE(findMethod("from a newer version"), nullptr);
        QCOMPARE(findMethod(""), nullptr);
    }

    void stepsOfTheAlcoholWash() {
        const Method& wash = alcoholWash();
        QCOMPARE(findMethod("alcohol_wash"), &wash);
        QCOMPARE(wash.recovery, 1.0); // lines are set on what an alcohol wash finds
        QCOMPARE(wash.recoverySd, 0.0);
        QCOMPARE(stepCount(wash), 8);
        const auto steps = stepsOf(wash);
        for (std::size_t i = 0; i < steps.size(); ++i) {
            QCOMPARE(stepNumber(wash, steps[i]), std::min(static_cast<int>(i) + 1, 8));
            QCOMPARE(stepAfter(wash, steps[i]), steps[std::min(i + 1, steps.size() - 1)]);
            QCOMPARE(stepBefore(wash, steps[i]), steps[i == 0 ? 0 : i - 1]);
        }
    }

    void recoveriesAreThoseOfTheMathematics() {
        const std::array<std::pair<const char*, mites::WashMethod>, 3> pairs{
            {{"alcohol_wash", mites::WashMethod::Alcohol},
             {"soapy_wash", mites::WashMethod::Soap},
             {"sugar_roll", mites::WashMethod::Sugar}}};
        for (const auto& [id, method] : pairs) {
            QCOMPARE(methodOf(id).recovery, mites::washedRecovery(method).mean);
            QCOMPARE(methodOf(id).recoverySd, mites::washedRecovery(method).sd);
            QCOMPARE(methodOf(id).fullRecovery, mites::fullRecovery(method).mean);
            QCOMPARE(methodOf(id).fullRecoverySd, mites::fullRecovery(method).sd);
        }
    }

    void sugarIsRestedBeforeItIsShakenOutAndNeverWaits() {
        const Method& roll = methodOf("sugar_roll");
        QCOMPARE(stepAfter(roll, Step::Pour), Step::Settle);
        QCOMPARE(stepAfter(roll, Step::Settle), Step::Shake);
        QCOMPARE(stepAfter(roll, Step::Count), Step::Answer);
        QVERIFY(!roll.jarMayWait); // the bees are to live
        QVERIFY(roll.settleS >= 60 &&
                roll.settleS <= 120); // 1 to 2 minutes: University of Minnesota, poster 155
    }

    void stepThatAMethodDoesNotHaveStartsAnew() {
        static constexpr std::array shortSteps{MethodStep{Step::Colony}, MethodStep{Step::Count},
                                               MethodStep{Step::Answer}};
        Method quick;
        quick.steps = shortSteps;
        QCOMPARE(stepNumber(quick, Step::Shake), 1);
        QCOMPARE(stepAfter(quick, Step::Shake), Step::Count);
        QCOMPARE(stepBefore(quick, Step::Shake), Step::Colony);
        QCOMPARE(stepNumber(quick, Step::Count), 2);
        QCOMPARE(stepCount(quick), 2);
    }

    void hoursOfABoard() {
        BoardStay board;
        QVERIFY(!isUnderColony(board) && !hoursOf(board));
        board.laidAtMs = 1'000;
        QVERIFY(isUnderColony(board) && !hoursOf(board));
        board.pulledAtMs = 1'000 + 24 * hourMs;
        QVERIFY(!isUnderColony(board));
        QCOMPARE(hoursOf(board), std::optional{24.0});
        board.typedHours = 23.5; // the keeper knows better
        QCOMPARE(hoursOf(board), std::optional{23.5});
        board.typedHours.reset();
        board.pulledAtMs = 500; // before it was laid: no hours rather than wrong ones
        QVERIFY(!hoursOf(board));
    }

    void shareOfABoard() {
        BoardStay board;
        QCOMPARE(shareCounted(board), 1.0);
        board.cells = 51;
        board.cellsCounted = 17;
        QCOMPARE(shareCounted(board), 1.0 / 3);
        board.cellsCounted = 51;
        QCOMPARE(shareCounted(board), 1.0);
    }

    void trayHoldsJarsNotYetCountedAndBoardsNotYetPulled() {
        Sample sample;
        QVERIFY(!isInTray(sample) && !waits(sample));
        sample.jar = std::string("4");
        sample.step = Step::Pour;
        QVERIFY(isInTray(sample) && waits(sample));
        sample.step = Step::Count;
        QVERIFY(isInTray(sample) && !waits(sample));
        sample.state = SampleState::Finished;
        QVERIFY(!isInTray(sample));
        Sample board;
        board.method = "sticky_board";
        board.step = Step::PullBoard;
        board.board.laidAtMs = 1;
        QVERIFY(isInTray(board) && waits(board));
        board.board.pulledAtMs = 2;
        QVERIFY(!isInTray(board));
    }
};

QTEST_GUILESS_MAIN(RecordsMethodsTest)
#include "records_methods.moc"
