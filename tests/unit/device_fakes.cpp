// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/system_random.h"
#include "device/fake/fake_platform.h"

#include <QFileInfo>
#include <QSignalSpy>
#include <QTest>

#include <array>
#include <cstdlib>
#include <set>

using namespace halfcup::device;
using namespace std::chrono_literals;

class DeviceFakes : public QObject {
    Q_OBJECT
private slots:
    void aHoldLastsAsLongAsItsObject() {
        FakePlatform fake = makeFakePlatform();
        auto first = fake.platform.keepAwake->hold(QStringLiteral("shake"));
        auto second = fake.platform.keepAwake->hold(QStringLiteral("settle"));
        QVERIFY(fake.keepAwake->isHeld());
        first.reset();
        QVERIFY(fake.keepAwake->isHeld());
        second.reset();
        QVERIFY(!fake.keepAwake->isHeld());
        QCOMPARE(fake.keepAwake->acquired(), 2);
        QCOMPARE(fake.keepAwake->released(), 2);
        QCOMPARE(fake.keepAwake->reasons(), (QStringList{QStringLiteral("shake"), QStringLiteral("settle")}));
    }

    void aHoldMayOutliveItsSource() {
        auto awake = std::make_unique<FakeKeepAwake>();
        const auto hold = awake->hold(QStringLiteral("x"));
        awake.reset();
    }

    void tonesAreWrittenDownWithTheirTime() {
        FakePlatform fake = makeFakePlatform();
        const std::int64_t start = fake.clock->now().bootMs;
        fake.platform.tones->play(Tone::HalfTime);
        fake.clock->advance(20s);
        fake.platform.tones->play(Tone::TenSeconds);
        fake.platform.tones->setOn(false);
        fake.platform.tones->play(Tone::End);
        QCOMPARE(fake.tones->played().size(), 2U);
        QVERIFY((fake.tones->played()[1] == FakeTones::Played{Tone::TenSeconds, start + 20'000}));
        QCOMPARE(fake.tones->count(Tone::End), 0);
    }

    void buzzesAreCutToTheLongest() {
        FakePlatform fake = makeFakePlatform();
        fake.platform.vibration->buzz(30ms);
        fake.platform.vibration->buzz(0ms);
        fake.platform.vibration->buzz(-5ms);
        fake.platform.vibration->buzz(1h);
        QCOMPARE(fake.vibration->count(), 2);
        QVERIFY(fake.vibration->buzzes().back() == Vibration::kLongest);
    }

    void volumeKeysSpeakOnlyWhileGrabbed() {
        FakePlatform fake = makeFakePlatform();
        QSignalSpy up(fake.platform.volumeKeys.get(), &VolumeKeys::volumeUpPressed);
        fake.volumeKeys->pressUp();
        fake.platform.volumeKeys->setGrabbed(true);
        fake.volumeKeys->pressUp();
        fake.platform.volumeKeys->setGrabbed(false);
        fake.volumeKeys->pressUp();
        QCOMPARE(up.count(), 1);
        QCOMPARE(fake.volumeKeys->timesGrabbed(), 1);
    }

    void capabilitiesFollowTheParts() {
        FakePlatform fake = makeFakePlatform();
        CapabilityWatch& watch = *fake.platform.capabilities;
        QSignalSpy changed(&watch, &CapabilityWatch::changed);
        QVERIFY((watch.now() == Capabilities{true, true, true, true}));
        fake.tones->setWorks(false);
        fake.tones->setWorks(false);
        fake.vibration->setWorks(false);
        fake.keepAwake->setWorks(false);
        QVERIFY((watch.now() == Capabilities{false, false, false, true}));
        QCOMPARE(changed.count(), 3);
        Q_EMIT fake.tones->worksChanged(); // says so, but nothing is different
        QCOMPARE(changed.count(), 3);
    }

    void viewsStayGoodWhenThePlatformMovesOn() {
        FakePlatform fake = makeFakePlatform();
        const Platform moved = std::move(fake.platform);
        fake.clock->advance(5);
        QCOMPARE(moved.clock->now().bootMs, fake.clock->now().bootMs);
        QVERIFY(QFileInfo(moved.folders->data().path).isDir());
        fake.folders->setExportsTrouble(FolderTrouble::CannotWrite);
        QVERIFY(!moved.folders->exports().ok());
        QVERIFY(moved.folders->data().ok());
    }

    // Source: C++20 [rand.predef]: the 10000th value of a default-seeded (5489) mt19937_64 is
    // 9981545732273789042.
    void seededRandomIsTheStandardsOwn() {
        SeededRandom random(5489);
        std::uint64_t value = 0;
        for (int i = 0; i < 10'000; ++i) {
            value = random.next();
        }
        QCOMPARE(value, std::uint64_t(9981545732273789042ULL));
    }

    void systemRandomDoesNotRepeatAndUsesEveryBit() {
        SystemRandom random;
        std::set<std::uint64_t> seen;
        std::array<int, 64> ones{};
        constexpr int kDraws = 10'000;
        for (int i = 0; i < kDraws; ++i) {
            const std::uint64_t value = random.next();
            seen.insert(value);
            for (unsigned bit = 0; bit < 64; ++bit) {
                ones[bit] += static_cast<int>((value >> bit) & 1U);
            }
        }
        QCOMPARE(seen.size(), std::size_t(kDraws));
        // Each bit is set 5000 times give or take 50 (binomial); 8 of those are beyond any chance.
        for (const int count : ones) {
            QVERIFY(std::abs(count - kDraws / 2) < 400);
        }
    }
};

QTEST_GUILESS_MAIN(DeviceFakes)
#include "device_fakes.moc"
