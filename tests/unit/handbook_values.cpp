// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "handbook_files.h"

#include "handbook/substance.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace halfcup::handbook;

class HandbookValues : public QObject {
    Q_OBJECT

    const Handbook m_book = wholeHandbook();

private slots:
    void allTopicsAreThere() {
        for (const char* topic :
             {"lines", "scoop", "sampling", "recovery", "growth", "substances", "efficacy", "turn-date",
              "records", "hazards", "standards", "statistics", "other-lines", "model"})
            QVERIFY2(!m_book.topic(topic).empty(), topic);
    }

    void everyValueHasASourceAMarkAndAUnit() {
        for (const std::string& topic : m_book.topics())
            for (const Entry* entry : m_book.topic(topic)) {
                QVERIFY2(entry->source.size() >= 4 && !entry->unit.empty(), entry->id.c_str());
                // What is called published or quoted has to be findable: an agency, a title or an author and
                // a year.
                if (entry->mark == Mark::CommonPractice || entry->mark == Mark::OwnChoice)
                    QVERIFY2(!entry->year, entry->id.c_str());
            }
    }

    // A line is what a load is held against, so all have one unit; other counts have their own topic.
    void linesAreLoads() {
        for (const Entry* line : m_book.topic("lines")) {
            QCOMPARE(line->unit, std::string("mites per 100 bees"));
            QVERIFY2(line->figure().value() > 0 && line->figure().value() < 20, line->id.c_str());
        }
        QCOMPARE(m_book.figureAt("trade-rule"), 3.0);
        QCOMPARE(m_book.at("trade-rule").mark, Mark::CommonPractice);
        QCOMPARE(m_book.figureAt("careful-line"), 1.7);
    }

    // Arithmetic between entries: a slip in one of them shows.
    void entriesAgreeWithEachOther() {
        const auto near = [](double a, double b, double digit) { return std::abs(a - b) <= digit / 2; };
        for (const int bees : {250, 300, 350, 400})
            QVERIFY(near(m_book.figureAt("nine-mites-" + std::to_string(bees)), 900.0 / bees, 0.01));
        QVERIFY(near(m_book.figureAt("bees-per-ml-half-cup"),
                     m_book.figureAt("half-cup-300") / m_book.figureAt("half-cup-ml"), 0.01));
        QVERIFY(near(m_book.figureAt("bees-per-ml-settled"), 300 / m_book.figureAt("settled-100-ml"), 0.1));
        QVERIFY(near(m_book.figureAt("half-cup-400") / m_book.figureAt("half-cup-ml"), 3.38, 0.01));
        QVERIFY(near(4 * m_book.figureAt("bees-per-fl-oz") / m_book.figureAt("half-cup-ml"), 3.38, 0.01));
        QVERIFY(near(m_book.figureAt("doubling-days"), std::log(2) / m_book.figureAt("growth-usual"), 0.1));
        QVERIFY(near(m_book.figureAt("growth-doubling-month"), std::log(2) / 30, 0.001));
        QVERIFY(near(*m_book.at("growth-fast").low, std::log(2) / 30, 0.001));
        QVERIFY(near(*m_book.at("growth-fast").high, std::log(3) / 30, 0.001));
        QVERIFY(near(m_book.figureAt("misprint-43-of-310"), 4300.0 / 310, 0.01));
        QVERIFY(near(m_book.figureAt("nothing-found-300"), std::pow(0.99, 300), 0.0001));
        QVERIFY(near(m_book.figureAt("nothing-found-100"), std::pow(0.99, 100), 0.001));
        QVERIFY(near(m_book.figureAt("recovery-three-of-five"), 100 * 2313.0 / 2343, 0.1));
        QVERIFY(near(m_book.figureAt("scoop-shared-sd"), std::sqrt(0.0048), 0.0001));
        QVERIFY(near(std::log(12), 5 * 30 * m_book.figureAt("growth-usual") * 0.79,
                     0.1)); // 0.017 over five months
    }

    void substancesCanBeComputedWith() {
        const auto all = substances(m_book);
        QCOMPARE(all.size(), std::size_t(9));
        const auto named = [&](const char* id) {
            const auto found =
                std::find_if(all.begin(), all.end(), [&](const Substance& s) { return s.id == id; });
            return found == all.end() ? Substance() : *found;
        };
        const Substance formic = named("formic-acid");
        QCOMPARE(formic.dailyHighLowC.value(), 10.0);
        QCOMPARE(formic.dailyHighHighC.value(), 29.5);
        QCOMPARE(formic.watchDays.value(), 3.0);
        QCOMPARE(formic.courseDaysLow.value(), 7.0);
        QCOMPARE(formic.courseDaysHigh.value(), 20.0);
        QCOMPARE(formic.leastBees.value(), 10000.0);
        QCOMPARE(formic.underCappings, UnderCappings::Yes);
        QCOMPARE(formic.supers, Allowed::ByLabel);
        QVERIFY(!formic.synthetic && formic.modeOfAction.empty());
        QCOMPARE(formic.efficacyHigh.value(), 0.97);

        const Substance oxalic = named("oxalic-acid");
        QVERIFY(oxalic.broodlessOnly && !oxalic.dailyHighLowC);
        QCOMPARE(oxalic.efficacyBroodLow.value(), 0.39);
        QCOMPARE(oxalic.efficacyLow.value(), 0.994);
        QCOMPARE(oxalic.rotationGroup(), named("oxalic-acid-carrier").rotationGroup());
        QVERIFY(!named("oxalic-acid-carrier").courseDaysHigh); // "four weeks and more" has no upper end

        QCOMPARE(named("amitraz").modeOfAction, std::string("IRAC 19"));
        QCOMPARE(named("tau-fluvalinate").rotationGroup(), named("flumethrin").rotationGroup());
        QVERIFY(named("coumaphos").rotationGroup() != named("flumethrin").rotationGroup());
        QCOMPARE(named("thymol").supers, Allowed::No);
        QCOMPARE(named("thymol").bestHighHighC.value(), 25.0);
        for (const Substance& one : all) {
            QVERIFY2(one.hazard.size() > 20 && !one.name.empty() && one.courseDaysLow, one.id.c_str());
            QVERIFY2(one.synthetic == one.modeOfAction.starts_with("IRAC"), one.id.c_str());
        }
    }

    void aSubstanceWithUnknownWordsIsRefused() {
        auto texts = handbookTexts();
        bool changed = false;
        for (std::string& text : texts) {
            const auto at = text.find("\"no, long contact\"");
            if (at != std::string::npos && text.find("\"topic\": \"substances\"") != std::string::npos) {
                text.replace(at, 18, "\"now and then\"");
                changed = true;
            }
        }
        QVERIFY(changed);
        const std::vector<std::string_view> views(texts.begin(), texts.end());
        const Handbook book = Handbook::fromTexts(views);
        QVERIFY_EXCEPTION_THROWN(substances(book), HandbookError);
    }
};

QTEST_APPLESS_MAIN(HandbookValues)
#include "handbook_values.moc"
