// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Positions flow only with the keeper's leave, and a wash goes on without.
#include "place/qt_position_source.h"
#include "place/scripted_position_source.h"
#include "touch/asking_source.h"

#include <QSignalSpy>
#include <QTest>

#include <vector>

using namespace halfcup;
using place::PositionSource;

namespace {

/// Answers when the test says so.
class FakePermission final : public device::PositionPermission {
public:
    void ask(QObject*, std::function<void(bool)> answer) override { asked.push_back(std::move(answer)); }
    std::vector<std::function<void(bool)>> asked;
};

} // namespace

class TouchAskingSource : public QObject {
    Q_OBJECT

    place::ScriptedPositionSource* m_inner = nullptr;
    FakePermission* m_permission = nullptr;
    std::unique_ptr<touch::AskingSource> m_source;

private slots:
    void init() {
        auto inner = std::make_unique<place::ScriptedPositionSource>();
        auto permission = std::make_unique<FakePermission>();
        m_inner = inner.get();
        m_permission = permission.get();
        place::Fix fix;
        fix.latitudeDeg = 51.5;
        inner->setFixesOnStart({fix});
        m_source = std::make_unique<touch::AskingSource>(std::move(inner), std::move(permission));
    }

    void nothingFlowsBeforeTheAnswer() {
        QSignalSpy fixes(m_source.get(), &PositionSource::fixReceived);
        QCOMPARE(m_permission->asked.size(), std::size_t(0)); // at the hive, not at the start
        m_source->start();
        QVERIFY(m_source->isRunning());
        QTest::qWait(20);
        QCOMPARE(m_inner->starts(), 0);
        QCOMPARE(m_permission->asked.size(), std::size_t(1));
        m_permission->asked[0](true);
        QVERIFY(fixes.count() == 1 || fixes.wait(1000));
        QCOMPARE(m_inner->starts(), 1);
    }

    void aNoIsToldAndStopsNothing() {
        QSignalSpy problems(m_source.get(), &PositionSource::problem);
        m_source->start();
        m_permission->asked[0](false);
        QCOMPARE(problems.count(), 0); // always after start() has returned
        QVERIFY(problems.wait(1000));
        QCOMPARE(problems.count(), 1);
        QCOMPARE(problems[0][0].value<PositionSource::Problem>(), PositionSource::Problem::Denied);
        QCOMPARE(problems[0][1].toString(), place::positionDeniedSentence());
        QCOMPARE(m_inner->starts(), 0);
        m_source->stop();
        m_source->start(); // the keeper may have changed the mind
        m_permission->asked[1](true);
        QCOMPARE(m_inner->starts(), 1);
    }

    void anAnswerThatComesTooLateStartsNothing() {
        m_source->start();
        m_source->stop();
        m_permission->asked[0](true);
        QCOMPARE(m_inner->starts(), 0);
        m_source->start();
        m_permission->asked[0](true); // still the old one
        QCOMPARE(m_inner->starts(), 0);
        m_permission->asked[1](true);
        QCOMPARE(m_inner->starts(), 1);
    }

    void theSystemHereLets() {
        // Linux has no such question: asked by Qt 6.5 and later, or not at all, the answer is yes.
        int yes = 0;
        device::makePositionPermission()->ask(this, [&yes](bool allowed) { yes += allowed ? 1 : 10; });
        QTRY_COMPARE(yes, 1);
    }
};

QTEST_GUILESS_MAIN(TouchAskingSource)
#include "touch_asking_source.moc"
