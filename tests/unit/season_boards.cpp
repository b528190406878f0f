// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Boards, drone brood and the sugar roll. Quantiles below were computed with R 4.2 (qgamma, qbeta, and 4e6
// draws for the roll), not with this program. Lines and factors: assets/handbook, with their sources there.
#include "handbook_files.h"
#include "records/judgement.h"
#include "season/board_reading.h"
#include "season/drone_reading.h"

#include <QTest>

#include <cmath>
#include <stdexcept>

using namespace halfcup;
using namespace halfcup::season;
using records::Brood;

namespace {

constexpr std::int64_t hourMs = 3'600'000;

records::Sample boardOf(double hours) {
    records::Sample sample;
    sample.method = "sticky_board";
    sample.board.laidAtMs = 1'000;
    sample.board.pulledAtMs = 1'000 + static_cast<std::int64_t>(hours * hourMs);
    return sample;
}

bool close(double a, double b, double relative = 1e-6) {
    return std::abs(a - b) <= relative * std::abs(b);
}

std::string sentence(const BoardContext& context) {
    return inEnglish(noLoadBecause(context));
}

records::Yard yardAt(double latitudeDeg) {
    records::Yard yard;
    yard.position = records::Position{latitudeDeg, 19.6, {}};
    return yard;
}

} // namespace

class SeasonBoardsTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { m_handbook = wholeHandbook(); }

    /// Jeffreys range of a Poisson rate: qgamma(c(.05, .5, .95), 12.5); 1 - pgamma(10, 12.5).
    void twelveInADayOfJuly() {
        const auto answer = boardAnswer(boardOf(24), 12, {7, Brood::NotKnown, {}}, m_handbook);
        QCOMPARE(answer.count, std::int64_t{12});
        QVERIFY(close(answer.q05, 7.30570382));
        QVERIFY(close(answer.q50, 12.16829335));
        QVERIFY(close(answer.q95, 18.82624207));
        // Germany, July: over 10 a day treat at once (quoted; handbook fall-germany-july-now).
        QCOMPARE(answer.line, std::optional{10.0});
        QCOMPARE(answer.lineSource, std::string("fall-germany-july-now"));
        QVERIFY(close(answer.chanceOver, 0.746825306));
        QVERIFY(!answer.loadQ50); // nobody said how strong it is, or whether there is brood
    }

    void noMiteOnTheBoard() {
        const auto answer = boardAnswer(boardOf(48), 0, {7, Brood::NotKnown, {}}, m_handbook);
        QVERIFY(close(answer.q95, 0.9603647052)); // qgamma(.95, .5)/2: two days
        QVERIFY(answer.chanceOver < 1e-6);
    }

    void aShareOfTheCellsIsWiderThanTheWhole() {
        records::Sample part = boardOf(24);
        part.board.cells = 51;
        part.board.cellsCounted = 17;
        const auto whole = boardAnswer(boardOf(24), 36, {7, Brood::NotKnown, {}}, m_handbook);
        const auto third = boardAnswer(part, 12, {7, Brood::NotKnown, {}}, m_handbook);
        QVERIFY(close(third.q50, whole.q50, 0.03));
        QVERIFY(third.q95 / third.q05 > 1.5 * whole.q95 / whole.q05);
    }

    /// By hand from the parts: fall x 30 (15 to 60) x .5 (.25 to .75) / 11,200 bees (8,400 to 14,933).
    void loadOnlyWithBroodAndStrength() {
        const BoardContext known{7, Brood::Capped, 8.0};
        const auto answer = boardAnswer(boardOf(24), 12, known, m_handbook);
        QVERIFY(answer.loadQ05 && answer.loadQ50 && answer.loadQ95);
        QVERIFY(close(*answer.loadQ50, 1.629682145));
        QVERIFY(close(*answer.loadQ05, 0.1858429178));
        QVERIFY(close(*answer.loadQ95, 10.04178305));
        QVERIFY(*answer.loadQ95 / *answer.loadQ05 > 20); // honest: far wider than any wash
        QVERIFY(sentence(known).empty());
    }

    void whyNoLoad() {
        QVERIFY(sentence({7, Brood::NotKnown, 8.0}).find("capped brood is not written down") !=
                std::string::npos);
        QVERIFY(sentence({7, Brood::None, 8.0}).find("no capped brood") != std::string::npos);
        QVERIFY(sentence({7, Brood::OpenOnly, 8.0}).find("no capped brood") != std::string::npos);
        QVERIFY(sentence({7, Brood::Capped, {}}).find("how strong") != std::string::npos);
        QVERIFY(sentence({7, Brood::Capped, 0.0}).find("how strong") != std::string::npos);
        for (const BoardContext& context :
             {BoardContext{7, Brood::NotKnown, 8.0}, BoardContext{7, Brood::Capped, {}}})
            QVERIFY(!boardAnswer(boardOf(24), 12, context, m_handbook).loadQ50);
    }

    void linesOfEachMonth() {
        const auto line = [&](int month) { return boardLine(month, m_handbook)->id; };
        QCOMPARE(line(1), std::string("fall-uk-winter"));
        QCOMPARE(line(3), std::string("fall-usda")); // any time
        QCOMPARE(line(5), std::string("fall-uk-may"));
        QCOMPARE(line(7), std::string("fall-germany-july-now"));
        QCOMPARE(line(8), std::string("fall-usda"));
        QCOMPARE(line(9), std::string("fall-uk-september"));
        QCOMPARE(line(12), std::string("fall-uk-winter"));
        QCOMPARE(boardLines(7, m_handbook).size(),
                 std::size_t{5}); // three of Germany, one of the UK, one any time
        QCOMPARE(boardLines(7, m_handbook).back()->id, std::string("fall-usda"));
        for (int month = 1; month <= 12; ++month)
            QVERIFY(boardLine(month, m_handbook));
    }

    void factorsOfEachMonth() { // handbook fall-factor-*, from memory; half to double is our own choice
        for (int month = 1; month <= 12; ++month) {
            const mites::FallFactor factor = fallFactor(month, m_handbook);
            const bool summer = month >= 5 && month <= 8;
            const bool winter = month >= 11 || month <= 2;
            QCOMPARE(factor.usual, summer ? 30.0 : winter ? 400.0 : 100.0);
            QCOMPARE(factor.low, factor.usual / 2);
            QCOMPARE(factor.high, factor.usual * 2);
        }
    }

    void januaryIsHighSummerInTheSouth() {
        const records::Colony colony{"c", "y", "4", "", {}, false, false};
        const auto month = [&](double latitude, int m) {
            return boardContext(yardAt(latitude), colony, {}, {2026, m, 15}).month;
        };
        QCOMPARE(month(-38, 1), 7);
        QCOMPARE(month(-38, 7), 1);
        QCOMPARE(month(-38, 12), 6);
        QCOMPARE(month(48, 1), 1);
        QCOMPARE(boardContext(records::Yard{}, colony, {}, {2026, 8, 1}).month, 8);
    }

    void contextIsReadFromEvents() {
        const records::Colony colony{"c", "y", "4", "", {}, false, false};
        records::ColonyEvent brood;
        brood.id = std::string("b");
        brood.colonyId = std::string("c");
        brood.kind = records::EventKind::Brood;
        brood.brood = Brood::Capped;
        brood.day = {2026, 7, 1};
        records::ColonyEvent strength = brood;
        strength.id = std::string("s");
        strength.kind = records::EventKind::Strength;
        strength.frames = 8;
        const std::vector events{brood, strength};
        const BoardContext july = boardContext(yardAt(48), colony, events, {2026, 7, 20});
        QCOMPARE(july.brood, Brood::Capped);
        QCOMPARE(july.frames, std::optional{8.0});
        QVERIFY(!boardContext(yardAt(48), colony, events, {2026, 9, 20}).frames); // too long ago
    }

    void whatCannotBeIsRefused() {
        records::Sample before = boardOf(24);
        before.board.pulledAtMs = 500; // pulled before it was laid
        QVERIFY_THROWS_EXCEPTION(std::domain_error, (void)boardAnswer(before, 3, {}, m_handbook));
        records::Sample brood;
        brood.method = "drone_brood";
        QVERIFY_THROWS_EXCEPTION(std::domain_error, (void)droneAnswer(brood, 3, m_handbook));
        brood.openedCells = 2;
        QVERIFY_THROWS_EXCEPTION(std::domain_error, (void)droneAnswer(brood, 3, m_handbook));
        brood.openedCells = 0;
        QVERIFY_THROWS_EXCEPTION(std::domain_error, (void)droneAnswer(brood, 0, m_handbook));
    }

    /// Jeffreys range of a share: qbeta(c(.05, .5, .95), 16.5, 84.5); 1 - pbeta(.1, 16.5, 84.5).
    void sixteenOfAHundredDroneCells() {
        records::Sample brood;
        brood.method = "drone_brood";
        brood.openedCells = 100;
        const auto answer = droneAnswer(brood, 16, m_handbook);
        QVERIFY(close(answer.q05, 10.71515894));
        QVERIFY(close(answer.q50, 16.11400887));
        QVERIFY(close(answer.q95, 22.71864787));
        QCOMPARE(answer.line, std::optional{10.0}); // over 10 % of opened cells: quoted
        QVERIFY(close(answer.chanceOver, 0.9711126229));
        QVERIFY(!answer.loadQ50);
    }

    /// 43 mites on 310 bees: 13.9 per 100 before recovery. With the roll's recovery (.90, sd .08) and a scoop
    /// of CV .1, by 4e6 draws in R: 8.383, 16.398, 35.81; the draws' own error is under 0.2 %.
    void sugarRollOf43MitesOn310Bees() {
        records::Sample roll;
        roll.method = "sugar_roll";
        roll.scoop.beesMean = 310;
        roll.scoop.beesCv = 0.1;
        const records::Answer answer = records::answerOf(roll, 43, {}, records::Lines{});
        QCOMPARE(std::round(10 * 100.0 * 43 / 310) / 10, 13.9);
        QVERIFY2(close(answer.loadQ05, 8.383337827, 5e-3), qPrintable(QString::number(answer.loadQ05)));
        QVERIFY2(close(answer.loadQ50, 16.398285187, 5e-3), qPrintable(QString::number(answer.loadQ50)));
        QVERIFY2(close(answer.loadQ95, 35.807811202, 5e-3), qPrintable(QString::number(answer.loadQ95)));
        records::Sample wash = roll;
        wash.method = "alcohol_wash";
        const records::Answer washed = records::answerOf(wash, 43, {}, records::Lines{});
        QVERIFY(answer.loadQ95 / answer.loadQ05 > washed.loadQ95 / washed.loadQ05); // wider than a wash
        wash.method = "soapy_wash";
        const records::Answer soapy = records::answerOf(wash, 43, {}, records::Lines{});
        QCOMPARE(soapy.loadQ50, washed.loadQ50);
    }

private:
    handbook::Handbook m_handbook;
};

QTEST_GUILESS_MAIN(SeasonBoardsTest)
#include "season_boards.moc"
