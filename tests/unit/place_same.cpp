// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Which yards and colonies the keeper is asked about. Places lie on a meridian, where a degree is
// 6 371 008.8 m x pi / 180 = 111 195.08 m on the sphere of the IUGG's mean radius: worked out here by hand.
#include "place/likely_same.h"

#include <QTest>

#include <algorithm>
#include <limits>
#include <random>

using namespace halfcup;
using place::comparableName;
using place::LikelyPair;
using place::likelySame;
using records::Colony;
using records::Kind;
using records::Yard;

namespace {

constexpr double metresOfADegree = 111'195.08;

Yard yardAt(const char* id, const char* name, std::optional<double> northM = {}, double reachM = 150) {
    Yard yard;
    yard.id = id;
    yard.name = name;
    if (northM)
        yard.position = records::Position{48.0 + *northM / metresOfADegree, 11.0, {}};
    yard.reachM = reachM;
    return yard;
}

Colony colonyOf(const char* id, const char* yardId, const char* label) {
    Colony colony;
    colony.id = id;
    colony.yardId = yardId;
    colony.label = label;
    return colony;
}

QStringList told(const std::vector<LikelyPair>& pairs) {
    QStringList lines;
    for (const LikelyPair& pair : pairs)
        lines.append(QString::fromStdString(pair.one + "=" + pair.other));
    return lines;
}

using Yards = std::vector<Yard>;
using Colonies = std::vector<Colony>;

} // namespace

class PlaceSameTest : public QObject {
    Q_OBJECT

private slots:
    void namesAlike_data() {
        QTest::addColumn<QString>("one");
        QTest::addColumn<QString>("other");
        QTest::addColumn<bool>("alike");
        QTest::newRow("case and blanks") << "By the Ford"
                                         << " by  the ford " << true;
        QTest::newRow("punctuation") << "Ford, lower"
                                     << "ford (lower)!" << true;
        QTest::newRow("another") << "Ford, lower"
                                 << "Ford, upper" << false;
        QTest::newRow("greek") << QString::fromUtf8("ΜΕΛΙΣΣΑ") << QString::fromUtf8("μελισσα") << true;
        QTest::newRow("sharp s") << QString::fromUtf8("Straße") << QString::fromUtf8("STRAßE") << true;
        QTest::newRow("composed and not")
            << QString::fromUtf8("Lom\u00E1") << QString::fromUtf8("Loma\u0301") << true;
        QTest::newRow("an accent is a letter's") << QString::fromUtf8("Lom\u00E1") << "Loma" << false;
        QTest::newRow("wide figures") << QString::fromUtf8("\uFF11\uFF12") << "12" << true;
        QTest::newRow("no gap in B 12") << "B 12"
                                        << "b12" << true;
        QTest::newRow("figures apart") << "1-2"
                                       << "12" << false;
        QTest::newRow("figures apart alike") << "1-2"
                                             << "1 / 2" << true;
        QTest::newRow("nothing left") << "!!"
                                      << "??" << true; // both empty; likelySame() asks of neither
        QTest::newRow("beyond 16 bits")
            << QString::fromUtf8("\U00010400") << QString::fromUtf8("\U00010428") << true;
    }
    void namesAlike() {
        QFETCH(const QString, one);
        QFETCH(const QString, other);
        QTEST(comparableName(one.toStdString()) == comparableName(other.toStdString()), "alike");
    }

    void byNameByPlaceAndByBoth() {
        const Yards yards{yardAt("a", "Ford", 0), yardAt("b", "ford", 100), yardAt("c", "Mill", 120),
                          yardAt("d", "FORD"), yardAt("e", "Ford", 40'000)};
        const auto pairs = likelySame(yards, {});
        // Both, by name with no place known, near alone (20 m before 120 m), named alike far apart.
        QCOMPARE(told(pairs), (QStringList{"a=b", "a=d", "b=d", "d=e", "b=c", "a=c", "b=e", "a=e"}));
        QVERIFY(pairs[0].namedAlike && pairs[0].near);
        QVERIFY(std::abs(pairs[0].distanceM.value() - 100) < 0.01);
        QVERIFY(pairs[1].namedAlike && !pairs[1].near && !pairs[1].distanceM);
        QVERIFY(!pairs[4].namedAlike && pairs[4].near);
        QVERIFY(std::abs(pairs[4].distanceM.value() - 20) < 0.01);
        QVERIFY(pairs[7].namedAlike && !pairs[7].near);
        QVERIFY(std::abs(pairs[7].distanceM.value() - 40'000) < 1);
    }

    void howNearIsNear_data() {
        QTest::addColumn<double>("apartM");
        QTest::addColumn<double>("reachM");
        QTest::addColumn<double>("otherReachM");
        QTest::addColumn<bool>("near");
        QTest::newRow("within both") << 149.0 << 150.0 << 150.0 << true;
        QTest::newRow("beyond both") << 151.0 << 150.0 << 150.0 << false;
        QTest::newRow("the smaller counts") << 60.0 << 50.0 << 150.0 << false;
        QTest::newRow("the smaller is enough") << 49.0 << 50.0 << 1000.0 << true;
        QTest::newRow("never beyond the largest") << 301.0 << 5000.0 << 5000.0 << false;
        QTest::newRow("up to the largest") << 299.0 << 5000.0 << 5000.0 << true;
        QTest::newRow("no reach is the usual one")
            << 149.0 << std::numeric_limits<double>::quiet_NaN() << 0.0 << true;
        QTest::newRow("negative is the usual one") << 151.0 << -1.0 << 150.0 << false;
        QTest::newRow("one spot") << 0.0 << 150.0 << 150.0 << true;
    }
    void howNearIsNear() {
        QFETCH(const double, apartM);
        QFETCH(const double, reachM);
        QFETCH(const double, otherReachM);
        QFETCH(const bool, near);
        const Yards yards{yardAt("a", "Ford", 0, reachM), yardAt("b", "Mill", apartM, otherReachM)};
        QCOMPARE(likelySame(yards, {}).size(), near ? std::size_t{1} : std::size_t{0});
    }

    void aPlaceThatIsNoneCountsAsNone() {
        Yard nowhere = yardAt("b", "Mill", 0);
        nowhere.position = records::Position{0, 0, {}};
        Yard broken = yardAt("c", "Ford", 0);
        broken.position->latitudeDeg = std::numeric_limits<double>::quiet_NaN();
        const Yards yards{yardAt("a", "Ford", 0), nowhere, broken};
        const auto pairs = likelySame(yards, {});
        QCOMPARE(told(pairs), QStringList{"a=c"});
        QVERIFY(!pairs[0].distanceM && !pairs[0].near);
    }

    void coloniesOfOneYardAndOfTwoThatMayBeOne() {
        const Yards yards{yardAt("a", "Ford"), yardAt("b", "ford"), yardAt("c", "Mill")};
        const Colonies colonies{colonyOf("1", "a", "4"),   colonyOf("2", "b", "4"),
                                colonyOf("3", "c", "4"),   colonyOf("4", "a", "B 12"),
                                colonyOf("5", "a", "b12"), colonyOf("6", "a", ""),
                                colonyOf("7", "a", "-"),   colonyOf("8", "z", "4")};
        const auto pairs = likelySame(yards, colonies);
        QCOMPARE(told(pairs), (QStringList{"a=b", "4=5", "1=2"}));
        QCOMPARE(pairs[1].kind, Kind::Colony);
        QVERIFY(pairs[1].oneYard && pairs[1].namedAlike && !pairs[2].oneYard);
    }

    void whoSaidNoIsNotAskedAgain() {
        const Yards yards{yardAt("a", "Ford"), yardAt("b", "ford")};
        const Colonies colonies{colonyOf("1", "a", "4"), colonyOf("2", "b", "4"), colonyOf("3", "a", "4")};
        QCOMPARE(told(likelySame(yards, colonies)), (QStringList{"a=b", "1=3", "1=2", "2=3"}));
        QCOMPARE(told(likelySame(yards, colonies, {{"1", "2"}})), (QStringList{"a=b", "1=3", "2=3"}));
        // Two yards that are two have no colonies in common.
        QCOMPARE(told(likelySame(yards, colonies, {{"a", "b"}})), QStringList{"1=3"});
    }

    void removedJoinedAndDemoBesideRealAreLeftOut() {
        Yards yards{yardAt("a", "Ford"), yardAt("b", "Ford")};
        Colonies colonies{colonyOf("1", "a", "4"), colonyOf("2", "a", "4")};
        QCOMPARE(likelySame(yards, colonies).size(), std::size_t{2});
        yards[1].removed = colonies[1].removed = true;
        QVERIFY(likelySame(yards, colonies).empty());
        yards[1].removed = colonies[1].removed = false;
        yards[1].sameAs = "a";
        colonies[1].sameAs = "1";
        QVERIFY(likelySame(yards, colonies).empty());
        yards[1].sameAs = colonies[1].sameAs = {};
        yards[1].demo = colonies[1].demo = true;
        QVERIFY(likelySame(yards, colonies).empty());
        yards[0].demo = colonies[0].demo = true; // two demos may be
        QCOMPARE(likelySame(yards, colonies).size(), std::size_t{2});
        // A colony of a yard that was removed is asked about no more.
        yards[0].removed = true;
        QVERIFY(likelySame(yards, colonies).empty());
    }

    void theOrderInWhichTheyComeIsNothing() {
        Yards yards;
        Colonies colonies;
        std::vector<std::string> ids;
        for (int i = 0; i < 12; ++i)
            ids.push_back("y" + std::to_string(10 + i));
        for (int i = 0; i < 12; ++i) {
            yards.push_back(yardAt(ids[i].c_str(), i % 3 ? "Ford" : "Mill", 40.0 * i));
            colonies.push_back(colonyOf(("c" + ids[i]).c_str(), ids[i].c_str(), i % 2 ? "4" : "5"));
        }
        yards.push_back(yards.front()); // handed over twice is no pair with itself
        const auto first = likelySame(yards, colonies);
        QVERIFY(first.size() > 20);
        std::mt19937 chance(7);
        for (int i = 0; i < 20; ++i) {
            std::shuffle(yards.begin(), yards.end(), chance);
            std::shuffle(colonies.begin(), colonies.end(), chance);
            QVERIFY(likelySame(yards, colonies) == first);
        }
        for (const LikelyPair& pair : first)
            QVERIFY(pair.one < pair.other);
    }
};

QTEST_GUILESS_MAIN(PlaceSameTest)
#include "place_same.moc"
