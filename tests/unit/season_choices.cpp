// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Which treatment fits, and that every answer says why and by whom.
#include "handbook_files.h"
#include "season/choices.h"

#include <QTest>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace halfcup;
using namespace halfcup::season;
using halfcup::records::Brood;
using halfcup::records::Date;

namespace {

const handbook::Handbook& book() {
    static const handbook::Handbook read = wholeHandbook();
    return read;
}

/// The handbook with one piece of its text replaced.
handbook::Handbook changedBook(const std::string& from, const std::string& to) {
    auto texts = handbookTexts();
    int found = 0;
    for (std::string& text : texts)
        if (const auto at = text.find(from); at != std::string::npos) {
            text.replace(at, from.size(), to);
            ++found;
        }
    if (found != 1)
        throw std::logic_error("not once in the handbook: " + from);
    const std::vector<std::string_view> views(texts.begin(), texts.end());
    return handbook::Handbook::fromTexts(views);
}

/// Everything known and nothing in the way.
Situation calm() {
    Situation s;
    s.from = {2026, 5, 18};
    s.dailyHighsC = {24, 26, 27};
    s.dailyLowsC = {11, 12, 12};
    s.supersOn = false;
    s.brood = Brood::Capped;
    s.adultBees = 30000;
    s.turnDate = Date{2026, 8, 15};
    s.floor = records::Floor::Screened;
    return s;
}

Choice choiceIn(const Situation& situation, const std::string& id,
                const handbook::Handbook& handbook = book()) {
    for (const Choice& choice : choices(situation, handbook))
        if (choice.id == id)
            return choice;
    throw std::logic_error("no such choice: " + id);
}

Verdict verdictOf(const Situation& situation, const std::string& id) {
    return choiceIn(situation, id).verdict;
}

/// The first reason with this verdict whose English text holds the part; nothing where there is none.
std::optional<Reason> reasonIn(const Choice& choice, Verdict verdict, const std::string& part) {
    for (const Reason& reason : choice.reasons)
        if (reason.verdict == verdict && inEnglish(reason.phrase).find(part) != std::string::npos)
            return reason;
    return std::nullopt;
}

std::size_t placeOf(const std::vector<Choice>& list, const std::string& id) {
    return static_cast<std::size_t>(std::ranges::find(list, id, &Choice::id) - list.begin());
}

QString problemIn(const Situation& situation) {
    const auto problems = problemsOf(situation);
    return problems.empty() ? QString() : QString::fromStdString(inEnglish(problems.front()));
}

} // namespace

class SeasonChoicesTest : public QObject {
    Q_OBJECT

private slots:
    // Limits of formic acid: 10 to 29.5 C (50 to 85 F) by the label of one product, the first three days
    // above all (handbook section on active substances, marked published).
    void formicByTheForecast() {
        Situation s = calm();
        QVERIFY(verdictOf(s, "formic-acid") != Verdict::NotNow);
        QVERIFY(reasonIn(choiceIn(s, "formic-acid"), Verdict::Fits, "within its limits"));
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::Fits);
        s.dailyHighsC = {24, 32, 27};
        const Choice hot = choiceIn(s, "formic-acid");
        QCOMPARE(hot.verdict, Verdict::NotNow);
        const auto reason =
            reasonIn(hot, Verdict::NotNow, "Too hot: 32 C on 2026-05-19, the limit is 29.5 C.");
        QVERIFY(reason);
        QCOMPARE(reason->entry, std::string("formic-acid/daily-high"));
        QCOMPARE(book().at(reason->entry).source, std::string("Label of one product"));
        s.dailyHighsC = {8, 8, 8};
        s.dailyLowsC.clear();
        QVERIFY(reasonIn(choiceIn(s, "formic-acid"), Verdict::NotNow, "Too cold: 8 C"));
    }

    void hotDayAfterTheFirstThreeAsksForCare() {
        Situation s = calm();
        s.dailyLowsC.clear();
        s.dailyHighsC = {24, 26, 27, 28, 31};
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::WithCare);
        QVERIFY(reasonIn(choiceIn(s, "formic-acid"), Verdict::WithCare,
                         "The first 3 days fit; later too hot: 31 C on 2026-05-22, the limit is 29.5 C."));
        s.dailyHighsC = {24, 26, 27, 9};
        QVERIFY(reasonIn(choiceIn(s, "formic-acid"), Verdict::WithCare, "later too cold: 9 C"));
        s.dailyHighsC = {24, 26, 27, 28, 28, 28, 28, 31}; // the eighth day is after the shortest course
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::Fits);
    }

    void limitsThemselvesAreWithin() {
        Situation s = calm();
        s.dailyLowsC.clear();
        s.dailyHighsC = {10, 29.5, 20};
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::Fits);
        s.dailyHighsC = {10, 29.6, 20};
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::NotNow);
    }

    void forecastShorterThanTheDaysToWatch() {
        const auto longer = changedBook("\"title\": \"First days whose highs matter most\",\n"
                                        "      \"subject\": \"formic-acid\",\n"
                                        "      \"property\": \"watch-days\",\n      \"value\": 3",
                                        "\"title\": \"First days whose highs matter most\",\n"
                                        "      \"subject\": \"formic-acid\",\n"
                                        "      \"property\": \"watch-days\",\n      \"value\": 5");
        Situation s = calm();
        const auto reason =
            reasonIn(choiceIn(s, "formic-acid", longer), Verdict::WithCare,
                     "The first 5 days have to be within its limits; the forecast has 3 days.");
        QVERIFY(reason);
        QCOMPARE(reason->entry, std::string("formic-acid/watch-days"));
        s.dailyLowsC.clear();
        s.dailyHighsC = {24, 26, 27, 24, 24};
        QCOMPARE(choiceIn(s, "formic-acid", longer).verdict, Verdict::Fits);
    }

    /// Hop acids, about four weeks, outlast brood that is capped for 15 days at most (handbook, from memory).
    void courseHasToOutlastCappedBrood() {
        QVERIFY(reasonIn(choiceIn(calm(), "hop-acids"), Verdict::Fits, "outlasts the capped brood"));
        const auto slower = changedBook("\"value\": 14,\n      \"low\": 14,\n      \"high\": 15",
                                        "\"value\": 14,\n      \"low\": 14,\n      \"high\": 28");
        QVERIFY(reasonIn(choiceIn(calm(), "hop-acids", slower), Verdict::WithCare, "there is capped brood"));
    }

    /// Thymol: best from 20 to 25 C, limits 15 and 30 C (labels and reviews, from memory).
    void outsideTheBestRangeAsksForCare() {
        Situation s = calm();
        s.dailyLowsC.clear();
        s.dailyHighsC = {20, 22, 25};
        QCOMPARE(verdictOf(s, "thymol"), Verdict::Fits);
        for (const double highC : {16.0, 28.0}) {
            s.dailyHighsC = {22, highC, 22};
            const Choice thymol = choiceIn(s, "thymol");
            QCOMPARE(thymol.verdict, Verdict::WithCare);
            QCOMPARE(thymol.reasons.front().entry, std::string("thymol/best-high"));
        }
        for (const double highC : {14.0, 31.0}) {
            s.dailyHighsC = {22, highC, 22};
            QCOMPARE(verdictOf(s, "thymol"), Verdict::NotNow);
        }
    }

    void withoutForecastNothingFitsUnseen() {
        Situation s = calm();
        s.dailyHighsC.clear();
        s.dailyLowsC.clear();
        for (const char* id : {"formic-acid", "thymol", "amitraz", "hop-acids"})
            QCOMPARE(verdictOf(s, id), Verdict::WithCare);
        QVERIFY(reasonIn(choiceIn(s, "formic-acid"), Verdict::WithCare, "10 C to 29.5 C"));
        QVERIFY(reasonIn(choiceIn(s, "amitraz"), Verdict::WithCare, "over 10 C"));
    }

    // Supers on: thymol, amitraz and fluvalinate never, formic acid by the label (labels, from memory).
    void supersOn() {
        Situation s = calm();
        s.supersOn = true;
        for (const char* id : {"thymol", "amitraz", "tau-fluvalinate", "flumethrin", "coumaphos"}) {
            const Choice choice = choiceIn(s, id);
            QCOMPARE(choice.verdict, Verdict::NotNow);
            const auto reason = reasonIn(choice, Verdict::NotNow, "supers");
            QVERIFY(reason);
            QCOMPARE(reason->entry, std::string(id) + "/supers");
        }
        QVERIFY(reasonIn(choiceIn(s, "formic-acid"), Verdict::WithCare, "label"));
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::WithCare);
        s.supersOn.reset(); // not written down is not "off"
        QCOMPARE(verdictOf(s, "thymol"), Verdict::WithCare);
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::WithCare);
    }

    // With capped brood 39 to 52 %, broodless 99.4 % (Gregorc & Planinc 2001, Apidologie 32:333-340).
    void oxalicByBrood() {
        Situation s = calm();
        const Choice brood = choiceIn(s, "oxalic-acid");
        QCOMPARE(brood.verdict, Verdict::WithCare);
        const auto seen = reasonIn(brood, Verdict::WithCare, "39 to 52 %");
        QVERIFY(seen);
        QVERIFY(book().at(seen->entry).source.find("Gregorc") != std::string::npos);
        s.brood = Brood::None;
        const Choice broodless = choiceIn(s, "oxalic-acid");
        QCOMPARE(broodless.verdict, Verdict::Fits);
        QVERIFY(reasonIn(broodless, Verdict::Fits, "99.4"));
        s.brood = Brood::OpenOnly; // mites hide under cappings only
        QCOMPARE(verdictOf(s, "oxalic-acid"), Verdict::Fits);
        s.brood = Brood::NotKnown;
        QCOMPARE(verdictOf(s, "oxalic-acid"), Verdict::WithCare);
    }

    void amitrazUsedLast() {
        Situation s = calm();
        QCOMPARE(verdictOf(s, "amitraz"), Verdict::Fits);
        s.past = {{"formic-acid", {2025, 8, 1}, {2025, 8, 8}}, {"amitraz", {2025, 9, 1}, {2025, 10, 20}}};
        const auto list = choices(s, book());
        const Choice& amitraz = list[placeOf(list, "amitraz")];
        QCOMPARE(amitraz.verdict, Verdict::WithCare);
        const auto reason = reasonIn(amitraz, Verdict::WithCare, "Same class as last time");
        QVERIFY(reason);
        QCOMPARE(reason->entry, std::string("rotation"));
        bool above = false;
        for (std::size_t i = 0; i < placeOf(list, "amitraz"); ++i)
            above = above || (list[i].kind == ChoiceKind::Substance && list[i].rotationGroup != "IRAC 19");
        QVERIFY(above);
        QVERIFY(reasonIn(list[placeOf(list, "formic-acid")], Verdict::Fits, "Another class"));
    }

    void rotationGoesByClassAndWhereThereIsNoneBySubstance() {
        Situation s = calm();
        s.past = {{"tau-fluvalinate", {2025, 9, 1}, {2025, 10, 20}}};
        QVERIFY(reasonIn(choiceIn(s, "flumethrin"), Verdict::WithCare, "Same class")); // both IRAC 3A
        s.past = {{"oxalic-acid", {2025, 12, 20}, {2025, 12, 20}}};
        QVERIFY(reasonIn(choiceIn(s, "oxalic-acid-carrier"), Verdict::WithCare, "Same substance"));
        QVERIFY(!reasonIn(choiceIn(s, "thymol"), Verdict::WithCare, "Same"));
        s.past.push_back({"drone-brood-removal", {2026, 5, 1}, {2026, 5, 1}}); // no substance, no rotation
        QVERIFY(reasonIn(choiceIn(s, "oxalic-acid"), Verdict::WithCare, "Same substance"));
    }

    void amongEqualsAnotherClassStandsFirst() {
        Situation s = calm();
        s.dailyHighsC.clear(); // nothing fits outright
        s.dailyLowsC.clear();
        s.past = {{"formic-acid", {2025, 9, 1}, {2025, 9, 8}}};
        const auto list = choices(s, book());
        QVERIFY(placeOf(list, "formic-acid") > placeOf(list, "amitraz"));
    }

    void amongEqualsThatInTimeStandsFirst() {
        Situation s = calm();
        s.from = {2026, 8,
                  12}; // formic acid, 7 days, is late; oxalic acid, once, is not, and asks for care too
        const auto list = choices(s, book());
        QCOMPARE(list[placeOf(list, "formic-acid")].verdict, Verdict::WithCare);
        QCOMPARE(list[placeOf(list, "oxalic-acid")].verdict, Verdict::WithCare);
        QVERIFY(placeOf(list, "oxalic-acid") < placeOf(list, "formic-acid"));
    }

    void widespreadResistanceAsksForCare() {
        for (const char* id : {"tau-fluvalinate", "flumethrin", "coumaphos"})
            QVERIFY(reasonIn(choiceIn(calm(), id), Verdict::WithCare, "resist"));
        QVERIFY(reasonIn(choiceIn(calm(), "amitraz"), Verdict::Fits, "resist")); // said, and does not decide
    }

    // At least about 10,000 bees (label of one product, published).
    void weakColony() {
        Situation s = calm();
        s.adultBees = beesOnFrames(7, book()); // 9,800 by the average deep frame
        const auto weak = reasonIn(choiceIn(s, "formic-acid"), Verdict::NotNow, "Too few bees");
        QVERIFY(weak);
        QCOMPARE(weak->entry, std::string("formic-acid/least-bees"));
        s.adultBees = beesOnFrames(8, book());
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::Fits);
        s.adultBees.reset();
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::WithCare);
    }

    void courseThatRunsPastTheTurnDate() {
        Situation s = calm();
        s.from = {2026, 8, 1}; // amitraz, 6 weeks: until 11 September
        const auto late = reasonIn(choiceIn(s, "amitraz"), Verdict::WithCare, "27 days after the turn date");
        QVERIFY(late);
        QVERIFY(reasonIn(choiceIn(s, "formic-acid"), Verdict::Fits, "in time"));
        s.from = {2026, 8, 15};
        QVERIFY(reasonIn(choiceIn(s, "oxalic-acid"), Verdict::Fits, "in time")); // on the day itself
        s.from = {2026, 8, 16};
        s.turnDate = Date{2027, 8, 15}; // next year's: no business of this course
        for (const Verdict verdict : {Verdict::Fits, Verdict::WithCare})
            QVERIFY(!reasonIn(choiceIn(s, "amitraz"), verdict, "turn date"));
        s.turnDate.reset(); // the tropics
        QVERIFY(!choices(s, book()).empty());
    }

    void coursesThatStillRun() {
        Situation s = calm();
        s.past = {{"amitraz", {2026, 5, 1}, {2026, 6, 12}}};
        QVERIFY(reasonIn(choiceIn(s, "amitraz"), Verdict::NotNow, "runs until 2026-06-12"));
        QVERIFY(reasonIn(choiceIn(s, "formic-acid"), Verdict::WithCare, "runs until"));
        s.past = {{"amitraz", {2026, 5, 1}, {2026, 5, 17}}};
        QVERIFY(!reasonIn(choiceIn(s, "amitraz"), Verdict::NotNow, "runs"));
        s.past = {{"oxalic-acid", {2026, 5, 18}, {2026, 6, 15}}};
        QVERIFY(reasonIn(choiceIn(s, "oxalic-acid-carrier"), Verdict::NotNow,
                         "runs until")); // one substance, two ways
    }

    void coursesThatAreWrittenDownAhead() {
        Situation s = calm();
        s.past = {{"amitraz", {2026, 6, 1}, {2026, 7, 13}}};
        QVERIFY(reasonIn(choiceIn(s, "amitraz"), Verdict::NotNow, "begins on 2026-06-01"));
        QVERIFY(reasonIn(choiceIn(s, "tau-fluvalinate"), Verdict::WithCare, "begins on 2026-06-01"));
        QCOMPARE(verdictOf(s, "formic-acid"), Verdict::Fits);                        // 7 days: over before
        QVERIFY(!reasonIn(choiceIn(s, "amitraz"), Verdict::WithCare, "Same class")); // not given yet
    }

    void measures() {
        Situation s = calm();
        QCOMPARE(verdictOf(s, "screened-floor"), Verdict::NotNow); // has one
        s.floor = records::Floor::Solid;
        QCOMPARE(verdictOf(s, "screened-floor"), Verdict::Fits);
        s.floor = records::Floor::NotKnown;
        QCOMPARE(verdictOf(s, "screened-floor"), Verdict::WithCare);
        QCOMPARE(verdictOf(s, "drone-brood-removal"), Verdict::Fits);
        s.droneSeason = false;
        QCOMPARE(verdictOf(s, "drone-brood-removal"), Verdict::NotNow);
        QCOMPARE(verdictOf(s, "brood-break"), Verdict::Fits);
        s.brood = Brood::NotKnown;
        QVERIFY(reasonIn(choiceIn(s, "brood-break"), Verdict::WithCare, "is not known"));
        s.brood = Brood::Capped;
        s.from = {2026, 8, 1};
        QCOMPARE(verdictOf(s, "brood-break"), Verdict::WithCare); // winter bees
        s.from = {2026, 9, 20};
        s.turnDate = Date{2027, 8, 15}; // they are raised for two months after the last one too
        QCOMPARE(verdictOf(s, "brood-break"), Verdict::WithCare);
        s.from = {2026, 11, 1};
        QCOMPARE(verdictOf(s, "brood-break"), Verdict::Fits);
        s.brood = Brood::None;
        QCOMPARE(verdictOf(s, "brood-break"), Verdict::NotNow);
        QCOMPARE(verdictOf(s, "requeening"), Verdict::Fits);
        for (const char* id : {"screened-floor", "drone-brood-removal", "brood-break", "requeening"})
            QVERIFY(reasonIn(choiceIn(s, id), Verdict::Fits, "By itself it seldom"));
    }

    /// All substances and measures in every situation that the rules tell apart.
    void everyAnswerHoldsTogether() {
        const auto known = handbook::substances(book()).size() + 4;
        for (const auto& highs : {std::vector<double>{}, {24, 26, 27}, {32, 33, 34}, {5, 6, 7}, {22, 22, 22}})
            for (const std::optional<bool> supers : {std::optional<bool>{}, {true}, {false}})
                for (const Brood brood : {Brood::NotKnown, Brood::None, Brood::OpenOnly, Brood::Capped})
                    for (const std::optional<double> bees : {std::optional<double>{}, {4000.0}, {30000.0}})
                        for (const Date& from : {Date{2026, 5, 18}, Date{2026, 8, 10}, Date{2026, 12, 20}})
                            check(highs, supers, brood, bees, from, known);
    }

    void check(const std::vector<double>& highs, const std::optional<bool>& supers, Brood brood,
               const std::optional<double>& bees, const Date& from, std::size_t known) {
        if (QTest::currentTestFailed())
            return; // one of hundreds is enough
        Situation s = calm();
        s.from = from;
        s.turnDate = records::onOrAfter({8, 15}, from);
        s.dailyHighsC = highs;
        s.dailyLowsC.clear();
        s.supersOn = supers;
        s.brood = brood;
        s.adultBees = bees;
        const auto list = choices(s, book());
        QCOMPARE(list.size(), known);
        std::pair before{Verdict::Fits, ChoiceKind::Substance};
        for (const Choice& choice : list) {
            QVERIFY(!choice.name.empty() && !choice.reasons.empty());
            const std::pair now{choice.verdict, choice.kind};
            QVERIFY(now >= before); // those that fit first, and substances before measures
            before = now;
            QCOMPARE(choice.verdict, std::ranges::max(choice.reasons, {}, &Reason::verdict).verdict);
            QCOMPARE(choice.reasons.front().verdict, choice.verdict);
            for (const Reason& reason : choice.reasons) {
                QVERIFY2(reason.entry.empty() != reason.sourceNote.empty(), choice.id.c_str());
                if (!reason.entry.empty())
                    QVERIFY2(!book().at(reason.entry).source.empty(), reason.entry.c_str());
                const std::string text = inEnglish(reason.phrase);
                QVERIFY2(text.size() > 8 && text.find("%1") == std::string::npos, text.c_str());
            }
            if (choice.kind == ChoiceKind::Substance)
                QVERIFY(inEnglish(choice.reasons.back().phrase).find("outrank") != std::string::npos);
        }
    }

    void theSameQuestionTheSameAnswer() {
        const auto once = choices(calm(), book());
        const auto again = choices(calm(), book());
        for (std::size_t i = 0; i < once.size(); ++i)
            QCOMPARE(once[i].id, again[i].id);
    }

    void noDoseAnywhere() { // the label gives it
        for (const Choice& choice : choices(calm(), book()))
            for (const Reason& reason : choice.reasons)
                for (const char* unit : {" ml", " gram", " mg", " strips", "per hive"})
                    QVERIFY2(inEnglish(reason.phrase).find(unit) == std::string::npos, choice.id.c_str());
    }

    void badInput() {
        QVERIFY(problemIn(calm()).isEmpty());
        Situation s = calm();
        s.dailyHighsC = {24, 200, 27};
        QVERIFY(problemIn(s).contains("200 C"));
        QVERIFY_EXCEPTION_THROWN((void)choices(s, book()), std::invalid_argument);
        s = calm();
        s.dailyHighsC = {24, std::nan(""), 27};
        QVERIFY(!problemIn(s).isEmpty());
        s = calm();
        s.dailyHighsC = {24, 26};
        QVERIFY(problemIn(s).contains("at least 3 days"));
        s = calm();
        s.dailyHighsC.assign(15, 20);
        QVERIFY(problemIn(s).contains("14 days"));
        s = calm();
        s.dailyLowsC = {11, 12};
        QVERIFY(problemIn(s).contains("3 highs and 2 lows"));
        s = calm();
        s.dailyLowsC = {11, 30, 12};
        QVERIFY(problemIn(s).contains("above its high"));
        s = calm();
        s.from = {2027, 2, 29};
        QVERIFY(problemIn(s).contains("no such day"));
        s = calm();
        s.turnDate = Date{2027, 2, 29};
        QVERIFY(problemIn(s).contains("no such day"));
        s = calm();
        s.past = {{"amitraz", {2025, 2, 29}, {2025, 4, 1}}};
        QVERIFY(problemIn(s).contains("no such day"));
        s = calm();
        s.adultBees = -1;
        QVERIFY(!problemIn(s).isEmpty());
        s.adultBees = std::numeric_limits<double>::infinity();
        QVERIFY(!problemIn(s).isEmpty());
        s = calm();
        s.turnDate = Date{2026, 5, 17};
        QVERIFY(problemIn(s).contains("turn date"));
        s = calm();
        s.past = {{"amitraz", {2026, 5, 1}, {2026, 4, 1}}};
        QVERIFY(problemIn(s).contains("before it begins"));
    }
};

QTEST_APPLESS_MAIN(SeasonChoicesTest)
#include "season_choices.moc"
