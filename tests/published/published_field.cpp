// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "../unit/handbook_files.h"
#include "published_checks.h"

#include "mites/colony_mites.h"
#include "mites/efficacy.h"
#include "mites/growth.h"
#include "mites/mite_fall.h"
#include "mites/season_model.h"
#include "mites/second_rinse.h"

#include <array>

using namespace halfcup::mites;

class PublishedField : public QObject {
    Q_OBJECT

    const halfcup::handbook::Handbook m_book = wholeHandbook();

private slots:
    // Growth 0.021 a day (from memory, after Calatayud & Verdu 1993; Martin 1998): ln 2/0.021 = 33.0 days to
    // double.
    void doublingTime() {
        COMPARE_PRINTED(std::log(2.0) / kGrowthMean, 33.0, 1);
        // The program's own outlook of a colony whose growth is all but given: twice the load after 33.0
        // days.
        const std::array<DatedWash, 1> wash{DatedWash{.day = 0, .mites = 1000, .beesMean = 30000}};
        GrowthModel model;
        model.prior.sd = 1e-5;
        const GrowthPosterior growth(wash, model);
        const double twice =
            growth.loadQuantile(std::log(2.0) / kGrowthMean, 0.5) / growth.loadQuantile(0, 0.5);
        QCOMPARE_LE(std::abs(twice - 2), 0.002);
    }

    // Lee, Moon, Burkness, Hutchison & Spivak 2010, J Econ Entomol 103:1039-1050: double the adult figure for
    // adults plus capped brood.
    void adultsPlusBroodIsDouble() {
        const Wash wash{50, 300, 0, 1, 0, 1e6};
        const double adults = LoadPosterior(wash).estimate().q50;
        QCOMPARE_LE(std::abs(adultsPlusBrood(wash, {0.5, 0}).q50 / adults - 2), 1e-9);
        QCOMPARE(kShareOnBees, 0.5);
    }

    // Natural fall to mites in the colony: x30 May to August, x100 March, April, September and October, x400
    // November to February (National Bee Unit, United Kingdom, after Martin 1998; from memory).
    void fallFactors() {
        const std::array<std::pair<const char*, double>, 3> factors{
            {{"fall-factor-summer", 30}, {"fall-factor-spring-autumn", 100}, {"fall-factor-winter", 400}}};
        for (const auto& [id, factor] : factors) {
            const double figure = m_book.figureAt(id);
            QCOMPARE(figure, factor);
            const LoadEstimate fall = FallPosterior(boardCount(70, 7)).estimate();
            const LoadEstimate mites = mitesFromFall(fall, {figure, figure, figure});
            QCOMPARE_LE(std::abs(mites.q50 - factor * fall.q50), 1e-9 * mites.q50);
            QCOMPARE_LE(std::abs(fall.q50 / 10 - 1), 0.01); // 70 mites in a week are ten a day
        }
    }

    // Ostiguy & Sammataro 2000, Apidologie 31: a third of a board's cells, error 0.4 +/- 9.5 %.
    void thirdOfABoard() {
        QCOMPARE(kBoardPartCv, 0.095);
        const double whole = FallPosterior(boardCount(3000, 1)).estimate().q50;
        const double third = FallPosterior(boardCount(1000, 1, 1.0 / 3)).estimate().q50;
        QCOMPARE_LE(std::abs(third / whole - 1), 0.01);
        // Spread of ln: sqrt(0.095^2 + 1/1000) = 0.1; 90 % within 1.645 of it.
        const LoadEstimate range = FallPosterior(boardCount(1000, 1, 1.0 / 3)).estimate();
        QCOMPARE_LE(std::abs(std::log(range.q95 / range.q05) / 2 / 1.645 - 0.1), 0.002);
    }

    // Burgett & Burikam 1985, J Econ Entomol 78:1154-1156: 1,400 bees on an average deep frame.
    void framesOfBees() { QCOMPARE(beesOnFrames(10), 14000.0); }

    // Gregorc & Planinc 2001, Apidologie 32:333-340: oxalic acid with brood took 39 to 52 % of all mites. A
    // one-day kill of 90 % on the bees in mid-July takes 0.485 in the model, inside that range.
    void oxalicWithBrood() {
        const auto left = [](std::vector<SeasonTreatment> treatments) {
            SeasonRun run{.startDay = 166, .load = 1, .days = 60, .treatments = std::move(treatments)};
            return runSeason(run).at(31).total; // the day after 15 July (day 196)
        };
        const double killed = 1 - left({{TreatmentReach::OnBees, 0.90, 196, 1}}) / left({});
        QCOMPARE_GE(100 * killed, *m_book.at("oxalic-acid/efficacy-brood").low);
        QCOMPARE_LE(100 * killed, *m_book.at("oxalic-acid/efficacy-brood").high);
        COMPARE_PRINTED(killed, 0.485, 3);
    }

    // The model's usual growth is calibrated to 0.021 a day from 1 May to 1 September (from memory, as
    // above), its band to 0.011 and 0.031.
    void seasonGrowth() {
        const auto rate = [](GrowthBand band) {
            SeasonRun run{.startDay = 121, .load = 1, .days = 123, .band = band};
            const auto days = runSeason(run);
            return std::log(days.back().total / days.front().total) / 123;
        };
        COMPARE_PRINTED(rate(GrowthBand::Base), 0.021, 3);
        COMPARE_PRINTED(rate(GrowthBand::Low), 0.011, 3);
        COMPARE_PRINTED(rate(GrowthBand::High), 0.031, 3);
    }

    // Front Ecol Evol 2023, 11:1102457: from 0.25 to 3 per 100 in 4 to 5 months in Florida, that is 0.017 to
    // 0.021 a day.
    void floridaGrowth() {
        const double months = 365.25 / 12;
        COMPARE_PRINTED(std::log(3 / 0.25) / (5 * months), 0.016, 3);
        COMPARE_PRINTED(std::log(3 / 0.25) / (4 * months), 0.020, 3);
        // Both lie within one spread of the usual growth before any wash was seen.
        QCOMPARE_LE(std::abs(kGrowthMean - std::log(12.0) / (4.5 * months)), kGrowthSd);
    }

    // Aurell et al. 2024, J Insect Sci (data CC-BY-4.0): three of five washes found 2,313 of 2,343
    // mites, 98.7 %.
    void threeWashesOfFive() {
        COMPARE_PRINTED(100 * 2313.0 / 2343, 98.7, 1);
        // Second rinses that add 5 to 10 % (from memory) mean a first rinse of 90 to 95 %: 1 - k2/k1.
        const std::array<Rinses, 1> rinses{Rinses{1000, 50}};
        QCOMPARE_LE(std::abs(recoveryFromRinses(rinses, 0.95, 0.03).mostLikely - 0.95), 1e-12);
    }
};

QTEST_APPLESS_MAIN(PublishedField)
#include "published_field.moc"
