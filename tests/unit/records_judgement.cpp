// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What a counted sample says, as the screen, the files and the demo all get it.
#include "records/judgement.h"

#include <QTest>

#include <cmath>
#include <stdexcept>

using namespace halfcup::records;
using halfcup::mites::Standing;

namespace {

constexpr double scoopMean = 302.17; // the book's half cup: median 300, and its spread
constexpr double scoopCv = 0.1204;

Sample counted(std::int64_t mites, std::optional<double> ownLine = {}, double bees = scoopMean) {
    Sample sample;
    sample.scoop.beesMean = bees;
    sample.scoop.beesCv = scoopCv;
    Lines lines;
    lines.own = ownLine;
    sample.answer = answerOf(sample, mites, {}, lines);
    return sample;
}

} // namespace

class RecordsJudgementTest : public QObject {
    Q_OBJECT

private slots:
    // Reference: the same posterior integrated adaptively in R, six digits, for a scoop of mean 302.17 and cv
    // 0.1204 and jar shape 7. The scoop's figures are rounded, hence the tolerance of 2e-4.
    void answersAgreeWithIntegrationInR_data() {
        QTest::addColumn<int>("mites");
        QTest::addColumn<double>("q05");
        QTest::addColumn<double>("q50");
        QTest::addColumn<double>("q95");
        QTest::addColumn<double>("overThree");
        QTest::newRow("0") << 0 << .00068 << .07976 << .77418 << .00091;
        QTest::newRow("3") << 3 << .32541 << 1.10932 << 3.28506 << .06618;
        QTest::newRow("5") << 5 << .65660 << 1.80842 << 4.80002 << .19605;
        QTest::newRow("8") << 8 << 1.18933 << 2.85850 << 7.03197 << .46391;
        QTest::newRow("9") << 9 << 1.37140 << 3.20871 << 7.77088 << .55148;
        QTest::newRow("20") << 20 << 3.42333 << 7.06310 << 15.8429 << .97487;
    }
    void answersAgreeWithIntegrationInR() {
        QFETCH(const int, mites);
        const Answer answer = *counted(mites).answer;
        const auto near = [](double is, double should) {
            return std::abs(is - should) <= 2e-4 * should + 6e-6; // the table has five decimals
        };
        QFETCH(const double, q05);
        QFETCH(const double, q50);
        QFETCH(const double, q95);
        QFETCH(const double, overThree);
        QVERIFY2(near(answer.loadQ05, q05), QByteArray::number(answer.loadQ05));
        QVERIFY2(near(answer.loadQ50, q50), QByteArray::number(answer.loadQ50));
        QVERIFY2(near(answer.loadQ95, q95), QByteArray::number(answer.loadQ95));
        QVERIFY2(near(answer.chanceOver, overThree), QByteArray::number(answer.chanceOver));
        QCOMPARE(answer.mites, mites);
        QVERIFY(!answer.chanceOverOwn);
    }

    void standingsFollow() {
        QCOMPARE(standingAgainstTreatLine(counted(9)), std::optional{Standing::Over});
        QCOMPARE(standingAgainstTreatLine(counted(8)), std::optional{Standing::Close});
        QCOMPARE(standingAgainstTreatLine(counted(5)), std::optional{Standing::Under}); // just: 19.6 %
        QCOMPARE(standingAgainstTreatLine(counted(0)), std::optional{Standing::Under});
        QCOMPARE(standingAgainstTreatLine(counted(3, {}, 150)), std::optional{Standing::CannotTell});
        QVERIFY(!standingAgainstOwnLine(counted(9)));
    }

    void graverOfTwoLinesIsSeenFirst() {
        const Sample between = counted(5, 1.7); // over the own line (54 %), under the treat line
        QCOMPARE(standingAgainstOwnLine(between), std::optional{Standing::Over});
        QCOMPARE(standingAgainstTreatLine(between), std::optional{Standing::Under});
        QCOMPARE(graverStanding(between), std::optional{Standing::Over});
        QCOMPARE(graverStanding(counted(9, 5.0)),
                 std::optional{Standing::Over}); // own line above the treat line
        QCOMPARE(graverStanding(counted(0)), std::optional{Standing::Under});
    }

    void secondRinseIsKeptAndNotCounted() { // lines are set on what one rinse finds
        Sample sample = counted(9);
        const Answer with = answerOf(sample, 9, 4, Lines{});
        QCOMPARE(with.mitesSecondRinse, std::optional<std::int64_t>{4});
        QCOMPARE(with.loadQ50, sample.answer->loadQ50);
    }

    void noAnswerHasNoStanding() {
        const Sample sample;
        QVERIFY(!standingAgainstTreatLine(sample));
        QVERIFY(!standingAgainstOwnLine(sample));
        QVERIFY(!graverStanding(sample));
    }

    void damagedFiguresHaveNoStanding() {
        Sample sample = counted(9);
        sample.scoop.beesMean = 0;
        QVERIFY(!graverStanding(sample));
        sample = counted(9);
        sample.answer->chanceOver = std::nan("");
        QVERIFY(!graverStanding(sample));
        sample = counted(9);
        sample.answer->loadQ95 = sample.answer->loadQ05 / 2;
        QVERIFY(!graverStanding(sample));
    }

    void whatNoWashCanBeIsRefused() {
        Sample sample;
        sample.scoop.beesMean = 0;
        QVERIFY_EXCEPTION_THROWN(static_cast<void>(answerOf(sample, 3, {}, Lines{})), std::domain_error);
        sample.scoop.beesMean = 300;
        QVERIFY_EXCEPTION_THROWN(static_cast<void>(answerOf(sample, -1, {}, Lines{})), std::domain_error);
        sample.scoop.beesCv = std::nan("");
        QVERIFY_EXCEPTION_THROWN(static_cast<void>(answerOf(sample, 3, {}, Lines{})), std::domain_error);
        sample.scoop.beesCv = 0.1;
        sample.method = "from a newer version";
        QVERIFY_EXCEPTION_THROWN(static_cast<void>(answerOf(sample, 3, {}, Lines{})), std::domain_error);
    }
};

QTEST_GUILESS_MAIN(RecordsJudgementTest)
#include "records_judgement.moc"
