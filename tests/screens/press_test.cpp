// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What all buttons have in common: when a press counts, by finger, mouse and key.
#include "touch/press_area.h"
#include "touch/program.h"

#include <QAccessible>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QTest>

using namespace halfcup::touch;

namespace {

/// Two buttons of 100 by 60, one over the other, in something that scrolls.
constexpr auto page = R"(
import QtQuick
import Halfcup

Window {
    width: 200
    height: 300
    visible: true

    Flickable {
        anchors.fill: parent
        contentHeight: 1000

        PressButton {
            objectName: "upper"
            width: 100
            height: 60
            padding: 10
            text: "Wash"
            detail: "half a cup"
            background: Rectangle { objectName: "background" }
            contentItem: Item { objectName: "content"; implicitHeight: 33 }
        }

        PressButton {
            objectName: "lower"
            y: 100
            width: 100
            height: 60
        }
    }
}
)";

constexpr QPoint onUpper(50, 30), onLower(50, 130), beside(150, 200);

} // namespace

class PressTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        prepareQuick();
        m_glass = QTest::createTouchDevice();
    }

    void init() {
        m_look = std::make_unique<Look>(160 / 25.4, 1.0);
        Look::setInstance(m_look.get());
        m_engine = std::make_unique<QQmlApplicationEngine>();
        m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_engine->loadData(page);
        QVERIFY(!m_engine->rootObjects().isEmpty());
        m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().first());
        QVERIFY(QTest::qWaitForWindowActive(m_window));
        m_upper = m_window->findChild<PressArea*>(QStringLiteral("upper"));
        m_lower = m_window->findChild<PressArea*>(QStringLiteral("lower"));
        QVERIFY(m_upper && m_lower);
    }

    void cleanup() { m_engine.reset(); }

    void aMouseCountsWhereItIsLetGoInside() {
        QSignalSpy clicked(m_upper, &PressArea::clicked);
        QTest::mousePress(m_window, Qt::LeftButton, {}, onUpper);
        QVERIFY(m_upper->isDown());
        QCOMPARE(clicked.count(), 0);
        QTest::mouseRelease(m_window, Qt::LeftButton, {}, onUpper);
        QVERIFY(!m_upper->isDown());
        QCOMPARE(clicked.count(), 1);

        QTest::mousePress(m_window, Qt::LeftButton, {}, onUpper);
        QTest::mouseMove(m_window, {104, 30});
        QVERIFY(!m_upper->isDown());
        QTest::mouseMove(m_window, {96, 30}); // wobbled out and in again
        QVERIFY(m_upper->isDown());
        QTest::mouseRelease(m_window, Qt::LeftButton, {}, {96, 30});
        QCOMPARE(clicked.count(), 2);

        QTest::mousePress(m_window, Qt::LeftButton, {}, onUpper);
        QTest::mouseMove(m_window, {105, 30});
        QTest::mouseRelease(m_window, Qt::LeftButton, {}, {105, 30});
        QCOMPARE(clicked.count(), 2);
    }

    void eachFingerCountsOnItsOwn() {
        QSignalSpy upper(m_upper, &PressArea::clicked);
        QSignalSpy lower(m_lower, &PressArea::clicked);
        QTest::touchEvent(m_window, m_glass).press(0, onUpper);
        QTest::touchEvent(m_window, m_glass).stationary(0).press(1, onLower);
        QVERIFY(m_upper->isDown() && m_lower->isDown());
        QTest::touchEvent(m_window, m_glass).stationary(0).release(1, onLower);
        QCOMPARE(lower.count(), 1);
        QCOMPARE(upper.count(), 0);
        // One more finger on a button that is held is no second press.
        QTest::touchEvent(m_window, m_glass).stationary(0).press(2, onUpper + QPoint(5, 5));
        QTest::touchEvent(m_window, m_glass).stationary(0).release(2, onUpper + QPoint(5, 5));
        QCOMPARE(upper.count(), 0);
        QTest::touchEvent(m_window, m_glass).release(0, onUpper);
        QCOMPARE(upper.count(), 1);
        QCOMPARE(lower.count(), 1);
    }

    void aFingerThatSlidesScrollsAndDoesNotPress() {
        QSignalSpy clicked(m_upper, &PressArea::clicked);
        QTest::touchEvent(m_window, m_glass).press(0, onUpper + QPoint(0, 20));
        for (int y = 40; y > 5; y -= 5)
            QTest::touchEvent(m_window, m_glass).move(0, {50, y});
        QVERIFY(!m_upper->isDown());
        QTest::touchEvent(m_window, m_glass).release(0, {50, 5});
        QCOMPARE(clicked.count(), 0);
    }

    void besideAButtonNothingIsPressed() {
        QSignalSpy upper(m_upper, &PressArea::clicked);
        QSignalSpy lower(m_lower, &PressArea::clicked);
        QTest::mouseClick(m_window, Qt::LeftButton, {}, beside);
        QTest::touchEvent(m_window, m_glass).press(0, beside);
        QTest::touchEvent(m_window, m_glass).release(0, beside);
        QCOMPARE(upper.count() + lower.count(), 0);
    }

    void keysPressAndShowWhereTheyAre() {
        QSignalSpy clicked(m_upper, &PressArea::clicked);
        m_upper->forceActiveFocus(Qt::TabFocusReason);
        QVERIFY(m_upper->hasVisualFocus());
        for (const Qt::Key key : {Qt::Key_Space, Qt::Key_Return, Qt::Key_Enter})
            QTest::keyClick(m_window, key);
        QCOMPARE(clicked.count(), 3);

        // Held: the key is told again and again, and one press it is.
        QTest::keyPress(m_window, Qt::Key_Space);
        for (int i = 0; i < 3; ++i) {
            QKeyEvent again(QEvent::KeyPress, Qt::Key_Space, {}, QStringLiteral(" "), true);
            QCoreApplication::sendEvent(m_window, &again);
        }
        QVERIFY(m_upper->isDown());
        QTest::keyRelease(m_window, Qt::Key_Space);
        QCOMPARE(clicked.count(), 4);
        QTest::keyPress(m_window, Qt::Key_Return);
        QKeyEvent again(QEvent::KeyPress, Qt::Key_Return, {}, QStringLiteral("\r"), true);
        QCoreApplication::sendEvent(m_window, &again);
        QTest::keyRelease(m_window, Qt::Key_Return);
        QCOMPARE(clicked.count(), 5);

        QTest::keyPress(m_window, Qt::Key_Space);
        m_lower->forceActiveFocus(Qt::TabFocusReason); // the key ends elsewhere
        QTest::keyRelease(m_window, Qt::Key_Space);
        QCOMPARE(clicked.count(), 5);
        QVERIFY(!m_upper->isDown() && !m_upper->hasVisualFocus());
        QTest::keyClick(m_window, Qt::Key_A);
        QTest::mouseClick(m_window, Qt::LeftButton, {}, onUpper);
        QVERIFY(m_upper->hasActiveFocus() && !m_upper->hasVisualFocus());
    }

    void whatCannotBePressedAnyMoreIsLetGo() {
        QSignalSpy clicked(m_upper, &PressArea::clicked);
        for (const char* property : {"enabled", "visible"}) {
            QTest::mousePress(m_window, Qt::LeftButton, {}, onUpper);
            QVERIFY(m_upper->isDown());
            m_upper->setProperty(property, false);
            QVERIFY(!m_upper->isDown());
            QTest::mouseRelease(m_window, Qt::LeftButton, {}, onUpper);
            m_upper->setProperty(property, true);

            QTest::touchEvent(m_window, m_glass).press(0, onUpper);
            QVERIFY(m_upper->isDown());
            m_upper->setProperty(property, false);
            QVERIFY(!m_upper->isDown());
            QTest::touchEvent(m_window, m_glass).release(0, onUpper);
            m_upper->setProperty(property, true);

            m_upper->forceActiveFocus(Qt::TabFocusReason);
            QTest::keyPress(m_window, Qt::Key_Space);
            QVERIFY(m_upper->isDown());
            m_upper->setProperty(property, false);
            QVERIFY(!m_upper->isDown());
            QTest::keyRelease(m_window, Qt::Key_Space);
            m_upper->setProperty(property, true);
        }
        QCOMPARE(clicked.count(), 0);
    }

    void aScreenReaderPressesItToo() {
        QSignalSpy clicked(m_upper, &PressArea::clicked);
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(m_upper);
        QVERIFY(face && face->actionInterface());
        QCOMPARE(face->role(), QAccessible::Button);
        QCOMPARE(face->text(QAccessible::Name), QStringLiteral("Wash"));
        QCOMPARE(face->text(QAccessible::Description), QStringLiteral("half a cup"));
        QVERIFY(face->state().focusable);
        face->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
        QCOMPARE(clicked.count(), 1);
    }

    void wordsStandWithinThePadding() {
        const auto* content = m_upper->findChild<QQuickItem*>(QStringLiteral("content"));
        const auto* background = m_upper->findChild<QQuickItem*>(QStringLiteral("background"));
        QVERIFY(content && background);
        QCOMPARE(QRectF(content->position(), content->size()), QRectF(10, 10, 80, 40));
        QCOMPARE(background->size(), QSizeF(100, 60));
        QCOMPARE(m_upper->implicitContentHeight(), 33.0);
        m_upper->setPadding(15);
        m_upper->setWidth(120);
        QCOMPARE(QRectF(content->position(), content->size()), QRectF(15, 15, 90, 30));
        QCOMPARE(m_upper->availableWidth(), 90.0);
        QCOMPARE(background->size(), QSizeF(120, 60));
    }

private:
    QPointingDevice* m_glass = nullptr;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<QQmlApplicationEngine> m_engine;
    QQuickWindow* m_window = nullptr;
    PressArea* m_upper = nullptr;
    PressArea* m_lower = nullptr;
};

QTEST_MAIN(PressTest)
#include "press_test.moc"
