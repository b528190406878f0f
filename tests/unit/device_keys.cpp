// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/key_event_volume_keys.h"

#include <QGuiApplication>
#include <QKeyEvent>
#include <QSignalSpy>
#include <QTest>
#include <QWindow>

using namespace halfcup::device;

namespace {

/// A page's window: writes down the keys that got through to it.
class Window : public QWindow {
public:
    QList<int> pressed;
    QList<int> released;

protected:
    void keyPressEvent(QKeyEvent* event) override { pressed.append(event->key()); }
    void keyReleaseEvent(QKeyEvent* event) override { released.append(event->key()); }
};

} // namespace

class DeviceKeys : public QObject {
    Q_OBJECT
private slots:
    void init() {
        m_window = std::make_unique<Window>();
        m_window->show();
        QVERIFY(QTest::qWaitForWindowExposed(m_window.get()));
        m_window->requestActivate();
        QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
    }
    void cleanup() { m_window.reset(); }

    void freeKeysReachTheWindow() {
        KeyEventVolumeKeys keys;
        QSignalSpy up(&keys, &VolumeKeys::volumeUpPressed);
        QTest::keyClick(m_window.get(), Qt::Key_VolumeUp);
        QCOMPARE(up.count(), 0);
        QCOMPARE(m_window->pressed, QList<int>{Qt::Key_VolumeUp});
        QCOMPARE(m_window->released, QList<int>{Qt::Key_VolumeUp});
    }

    void grabbedKeysAreSignalsAndGoNoFurther() {
        KeyEventVolumeKeys keys;
        QSignalSpy up(&keys, &VolumeKeys::volumeUpPressed);
        QSignalSpy down(&keys, &VolumeKeys::volumeDownPressed);
        keys.setGrabbed(true);
        keys.setGrabbed(true); // twice is once
        QVERIFY(keys.isGrabbed());
        QTest::keyClick(m_window.get(), Qt::Key_VolumeUp);
        QTest::keyClick(m_window.get(), Qt::Key_VolumeUp);
        QTest::keyClick(m_window.get(), Qt::Key_VolumeDown);
        QCOMPARE(up.count(), 2);
        QCOMPARE(down.count(), 1);
        QVERIFY(m_window->pressed.isEmpty());
        QVERIFY(m_window->released.isEmpty());
    }

    void otherKeysStayWhatTheyAre() {
        KeyEventVolumeKeys keys;
        keys.setGrabbed(true);
        QTest::keyClick(m_window.get(), Qt::Key_Space);
        QTest::keyClick(m_window.get(), Qt::Key_VolumeMute);
        QCOMPARE(m_window->pressed, (QList<int>{Qt::Key_Space, Qt::Key_VolumeMute}));
    }

    void aHeldKeyCountsOnce() {
        KeyEventVolumeKeys keys;
        keys.setGrabbed(true);
        QSignalSpy up(&keys, &VolumeKeys::volumeUpPressed);
        QKeyEvent first(QEvent::KeyPress, Qt::Key_VolumeUp, Qt::NoModifier);
        QCoreApplication::sendEvent(m_window.get(), &first);
        for (int i = 0; i < 5; ++i) {
            QKeyEvent again(QEvent::KeyPress, Qt::Key_VolumeUp, Qt::NoModifier, QString(), true);
            QCoreApplication::sendEvent(m_window.get(), &again);
        }
        QCOMPARE(up.count(), 1);
        QVERIFY(m_window->pressed.isEmpty());
    }

    void lettingGoGivesThemBack() {
        KeyEventVolumeKeys keys;
        QSignalSpy down(&keys, &VolumeKeys::volumeDownPressed);
        keys.setGrabbed(true);
        keys.setGrabbed(false);
        QVERIFY(!keys.isGrabbed());
        QTest::keyClick(m_window.get(), Qt::Key_VolumeDown);
        QCOMPARE(down.count(), 0);
        QCOMPARE(m_window->pressed, QList<int>{Qt::Key_VolumeDown});
    }

    void goingAwayGivesThemBack() {
        {
            KeyEventVolumeKeys keys;
            keys.setGrabbed(true);
        }
        QTest::keyClick(m_window.get(), Qt::Key_VolumeDown);
        QCOMPARE(m_window->pressed, QList<int>{Qt::Key_VolumeDown});
    }

    void aPageMayLetGoInAnswerToAPress() {
        KeyEventVolumeKeys keys;
        keys.setGrabbed(true);
        int presses = 0;
        connect(&keys, &VolumeKeys::volumeUpPressed, &keys, [&] {
            ++presses;
            keys.setGrabbed(false);
        });
        QTest::keyPress(m_window.get(), Qt::Key_VolumeUp);
        QTest::keyPress(m_window.get(), Qt::Key_VolumeUp);
        QCOMPARE(presses, 1);
        QCOMPARE(m_window->pressed, QList<int>{Qt::Key_VolumeUp});
    }

private:
    std::unique_ptr<Window> m_window;
};

QTEST_MAIN(DeviceKeys)
#include "device_keys.moc"
