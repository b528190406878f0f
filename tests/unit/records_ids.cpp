// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Record ids and revision stamps: what all phones must agree on.
#include "records/record_id.h"
#include "records/revision_stamp.h"

#include <QTest>

#include <array>
#include <limits>
#include <random>
#include <set>

using namespace halfcup::records;

class RecordsIdsTest : public QObject {
    Q_OBJECT

private slots:
    // RFC 9562, appendix A.6: the example value of version 7 and its parts.
    void idAgreesWithTheExampleOfRfc9562() {
        const RecordId id = makeRecordId(1645557742000, 0xCC3, 0x18C4DC0C0C07398F);
        QCOMPARE(id, RecordId("017f22e2-79b0-7cc3-98c4-dc0c0c07398f"));
        QVERIFY(isRecordId(id));
        QCOMPARE(madeAtUtcMs(id), 1645557742000);
    }

    void idIsItselfWhateverTheChance() {
        for (const std::uint64_t chance : {std::uint64_t{0}, ~std::uint64_t{0}, std::uint64_t{1} << 63})
            for (const std::int64_t time : {std::int64_t{0}, std::int64_t{1}, (std::int64_t{1} << 48) - 1}) {
                const RecordId id = makeRecordId(time, chance, chance);
                QVERIFY2(isRecordId(id), id.c_str());
                QCOMPARE(madeAtUtcMs(id), time);
            }
        // RFC 9562, section 5.7: the time has 48 bits.
        QCOMPARE(madeAtUtcMs(makeRecordId((std::int64_t{1} << 48) + 5, 1, 2)), 5);
    }

    void idsSortByTimeAndDoNotRepeat() {
        std::mt19937_64 random(20260518); // a fixed seed: the same ids on each run
        std::set<RecordId> seen;
        RecordId before;
        for (std::int64_t ms = 1'779'090'000'000; ms < 1'779'090'020'000; ++ms) {
            const RecordId id = makeRecordId(ms, random(), random());
            QVERIFY(before < id);
            before = id;
            seen.insert(id);
        }
        for (int i = 0; i < 20'000; ++i) // within one millisecond only the 74 bits of chance tell them apart
            seen.insert(makeRecordId(1'779'090'020'000, random(), random()));
        QCOMPARE(seen.size(), std::size_t{40'000});
    }

    void otherTextsAreNoIds_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("empty") << QByteArray();
        QTest::newRow("capitals") << QByteArray("017F22E2-79B0-7CC3-98C4-DC0C0C07398F");
        QTest::newRow("version 4") << QByteArray("017f22e2-79b0-4cc3-98c4-dc0c0c07398f");
        QTest::newRow("wrong variant") << QByteArray("017f22e2-79b0-7cc3-c8c4-dc0c0c07398f");
        QTest::newRow("no dashes") << QByteArray("017f22e279b07cc398c4dc0c0c07398f0000");
        QTest::newRow("one short") << QByteArray("017f22e2-79b0-7cc3-98c4-dc0c0c07398");
        QTest::newRow("one long") << QByteArray("017f22e2-79b0-7cc3-98c4-dc0c0c07398f0");
        QTest::newRow("no hexadecimal") << QByteArray("017f22e2-79b0-7cc3-98c4-dc0c0c07398g");
        QTest::newRow("braces") << QByteArray("{17f22e2-79b0-7cc3-98c4-dc0c0c07398}");
        QTest::newRow("nul inside") << QByteArray("017f22e2-79b0-7cc3-98c4-dc0c0c07398\0", 36);
    }
    void otherTextsAreNoIds() {
        QFETCH(const QByteArray, text);
        QVERIFY(!isRecordId(text.toStdString()));
        QCOMPARE(madeAtUtcMs(text.toStdString()), -1);
    }

    void stampTextReadsBack() {
        const RevisionStamp stamp{1'755'555'555'555, 42, "phone-a"};
        QCOMPARE(toText(stamp), std::string("00000198bf43e8e3-0000002a-phone-a"));
        QCOMPARE(parseRevisionStamp(toText(stamp)), std::optional{stamp});
        const RevisionStamp largest{std::numeric_limits<std::int64_t>::max(), 0xFFFFFFFF, "a-b-c"};
        QCOMPARE(parseRevisionStamp(toText(largest)), std::optional{largest});
    }

    void otherTextsAreNoStamps_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("empty") << QByteArray();
        QTest::newRow("no device") << QByteArray("00000198c7b3e323-0000002a-");
        QTest::newRow("words") << QByteArray("yesterday, some time in the evening");
        QTest::newRow("no hexadecimal") << QByteArray("00000198c7b3e32g-0000002a-phone");
        QTest::newRow("shifted") << QByteArray("0000198c7b3e323-0000002a-phone-a");
        QTest::newRow("before 1970") << QByteArray("ffffffffffffffff-0000002a-phone");
        QTest::newRow("a sign") << QByteArray("-00000000000000f-0000002a-phone");
        // Two texts for one stamp would sort differently from the stamp itself.
        QTest::newRow("minus zero") << QByteArray("-000000000000000-0000002a-phone");
        QTest::newRow("capitals") << QByteArray("00000198C7B3E323-0000002A-phone");
    }
    void otherTextsAreNoStamps() {
        QFETCH(const QByteArray, text);
        QVERIFY(!parseRevisionStamp(text.toStdString()));
    }

    void stampTextsSortAsTheStampsDo() {
        std::mt19937_64 random(7);
        const std::array devices{"a", "ab", "b", "phone-1", "phone-10"};
        const auto any = [&] {
            return RevisionStamp{static_cast<std::int64_t>(random() >> (1 + random() % 62)),
                                 static_cast<std::uint32_t>(random() >> (32 + random() % 32)),
                                 devices[random() % devices.size()]};
        };
        for (int i = 0; i < 20'000; ++i) {
            const RevisionStamp a = any();
            RevisionStamp b = any();
            if (i % 3 == 0) // near ones, that random ones hardly ever are
                b.utcMs = a.utcMs;
            if (i % 6 == 0)
                b.counter = a.counter;
            QCOMPARE(a < b, toText(a) < toText(b));
            QCOMPARE(a == b, toText(a) == toText(b));
        }
    }

    void clockGrowsWhateverThePhoneSays() {
        RevisionClock clock("here", {});
        std::mt19937_64 random(11);
        RevisionStamp before;
        std::int64_t wall = 1'779'090'000'000;
        for (int i = 0; i < 20'000; ++i) {
            switch (random() % 5) {
            case 0: // set back, by up to a year
                wall -= static_cast<std::int64_t>(random() % 31'536'000'000ULL);
                break;
            case 1:
                wall += static_cast<std::int64_t>(random() % 100'000);
                break;
            case 2: // read from another phone that is ahead
                clock.see({before.utcMs + static_cast<std::int64_t>(random() % 3), 9, "zz-there"});
                break;
            default: // the same millisecond again
                break;
            }
            const RevisionStamp stamp = clock.next(wall);
            QVERIFY(before < stamp);
            QVERIFY(toText(before) < toText(stamp));
            QVERIFY(stamp.utcMs >= wall);
            QCOMPARE(stamp.device, std::string("here"));
            before = stamp;
        }
    }

    void clockGoesOnAfterTheLatestInTheDatabase() {
        const RevisionStamp latest{2'000'000'000'000, 7, "zz-there"};
        RevisionClock clock("here", latest);
        QVERIFY(latest < clock.next(1'779'090'000'000));
    }

    void whatIsWrittenAfterReadingSortsAfterIt() {
        RevisionClock clock("a-here", {});
        static_cast<void>(clock.next(1000));
        const RevisionStamp theirs{5000, 3, "z-there"};
        clock.see(theirs);
        QVERIFY(theirs < clock.next(1001));
        const RevisionStamp old{10, 0, "z-there"};
        clock.see(old); // nothing goes back
        QVERIFY(theirs < clock.next(1002));
    }

    void clockGrowsPastAFullCounter() {
        RevisionClock clock("here", {5000, 0xFFFFFFFF, "zz-there"});
        const RevisionStamp stamp = clock.next(1000);
        QVERIFY((RevisionStamp{5000, 0xFFFFFFFF, "zz-there"}) < stamp);
    }

    void clockBefore1970StillGrows() {
        RevisionClock clock("here", {});
        const RevisionStamp first = clock.next(-86'400'000);
        QVERIFY(first.utcMs >= 0);
        QVERIFY(first < clock.next(-86'400'001));
    }
};

QTEST_GUILESS_MAIN(RecordsIdsTest)
#include "records_ids.moc"
