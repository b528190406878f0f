// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A finger, and what only looks like one.
#include "touch/touch_guard.h"

#include <QTest>

using halfcup::touch::TouchGuard;

class TouchGuardTest : public QObject {
    Q_OBJECT

    static constexpr double glassMm = 65;

private slots:
    void twentyASecondAreAllCounted() {
        TouchGuard guard;
        for (int i = 0; i < 100; ++i)
            QVERIFY(guard.counts({i * 50, {30, 40}}, glassMm));
    }

    void aDropThatStuttersIsOne() {
        TouchGuard guard;
        QVERIFY(guard.counts({1000, {30, 40}}, glassMm));
        QVERIFY(!guard.counts({1012, {31, 41}}, glassMm));
        QVERIFY(!guard.counts({1040, {30, 38}}, glassMm));
        QVERIFY(!guard.counts({1070, {30, 40}}, glassMm)); // 30 ms after the last stutter
        QVERIFY(guard.counts({1111, {30, 40}}, glassMm));
    }

    void twoFingersAtOnceAreTwo() {
        TouchGuard guard;
        QVERIFY(guard.counts({1000, {20, 40}}, glassMm));
        QVERIFY(guard.counts({1000, {40, 40}}, glassMm));
    }

    void palmsDoNotCount() {
        TouchGuard guard;
        QVERIFY(!guard.counts({0, {2, 40}}, glassMm));
        QVERIFY(!guard.counts({100, {64, 40}}, glassMm));
        QVERIFY(!guard.counts({200, {30, 40}, 34.0}, glassMm));
        QVERIFY(guard.counts({300, {30, 40}, 20.0}, glassMm)); // a thick glove
        QVERIFY(guard.counts({400, {4, 40}, {}}, glassMm));
    }

    void aClockThatWasSetBackStopsNothing() {
        TouchGuard guard;
        QVERIFY(guard.counts({100'000, {30, 40}}, glassMm));
        QVERIFY(guard.counts({5, {30, 40}}, glassMm));
    }
};

QTEST_GUILESS_MAIN(TouchGuardTest)
#include "touch_guard.moc"
