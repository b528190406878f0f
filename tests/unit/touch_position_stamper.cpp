// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// No receiver is made or switched on before the program says go.
#include "device/fake/set_clock.h"
#include "place/scripted_position_source.h"
#include "touch/position_stamper.h"

#include <QTest>

using namespace halfcup;

class PositionStamperTest : public QObject {
    Q_OBJECT

    device::SetClock m_clock;
    place::ScriptedPositionSource* m_source = nullptr; // null until it is made
    std::unique_ptr<touch::PositionStamper> m_stamper;

private slots:
    void init() {
        m_source = nullptr;
        m_stamper = std::make_unique<touch::PositionStamper>(m_clock, [this](const QString&) {
            auto source = std::make_unique<place::ScriptedPositionSource>();
            m_source = source.get();
            return source;
        });
    }

    void withoutAHoldItIsSwitchedOnAtOnce() {
        m_stamper->want();
        QVERIFY(m_source && m_source->isRunning());
    }

    void whatIsWantedMeanwhileIsSwitchedOnWithGo() {
        m_stamper->hold();
        m_stamper->want();
        QVERIFY(m_stamper->isRunning()); // the page says that the position is looked for
        QVERIFY(!m_source);
        m_stamper->go();
        QVERIFY(m_source && m_source->isRunning());
        QCOMPARE(m_source->starts(), 1);
    }

    void whatIsNoLongerWantedIsNotSwitchedOn() {
        m_stamper->hold();
        m_stamper->want();
        m_stamper->forget();
        m_stamper->go();
        QVERIFY(!m_source && !m_stamper->isRunning());
        m_stamper->want();
        QVERIFY(m_source && m_source->isRunning());
    }

    void anotherReceiverMeanwhileIsTheOneThatIsMade() {
        m_stamper->hold();
        m_stamper->want();
        m_stamper->useSource(QStringLiteral("another"));
        QVERIFY(!m_source && !m_stamper->isRunning());
        m_stamper->want();
        m_stamper->go();
        QVERIFY(m_source && m_source->isRunning());
    }
};

QTEST_GUILESS_MAIN(PositionStamperTest)
#include "touch_position_stamper.moc"
