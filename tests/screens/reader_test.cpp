// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What a screen reader is told by itself during a wash: enough to follow it, and never so much that the
// reader cannot finish a sentence.
#include "screens.h"

#include <QAccessible>
#include <QTest>

#include <private/qguiapplication_p.h>
#include <qpa/qplatformaccessibility.h>
#include <qpa/qplatformintegration.h>

using namespace halfcup;
using namespace halfcup::screens;

namespace {

QStringList told; // by changes of names and descriptions, in order
QAccessible::UpdateHandler before = nullptr;

/// Readers speak a change of the name or the description of what they may stand on, and what is an alert
/// [common practice of readers, no source]. Texts beside are read when they are asked for.
void listen(QAccessibleEvent* event) {
    if (before)
        before(event);
    const auto type = event->type();
    if (type != QAccessible::NameChanged && type != QAccessible::DescriptionChanged &&
        type != QAccessible::Alert)
        return;
    if (QAccessibleInterface* face = event->accessibleInterface();
        face && !face->state().invisible && face->role() != QAccessible::StaticText)
        told.append(face->text(type == QAccessible::DescriptionChanged ? QAccessible::Description
                                                                       : QAccessible::Name));
}

} // namespace

class ReaderTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        // As the platform does when a reader asks for the first time.
        QGuiApplicationPrivate::platformIntegration()->accessibility()->setActive(true);
        before = QAccessible::installUpdateHandler(listen);
    }
    void cleanupTestCase() { QAccessible::installUpdateHandler(before); }
    void init() { told.clear(); }

    void aMinuteOfShakingIsToldInAFewSentences() {
        Stage stage(Stage::Demo);
        QVERIFY(pressMain(stage, 4) && stage.find(QStringLiteral("shakeStep")));
        told.clear();
        for (int quarter = 0; quarter < 248; ++quarter) {
            stage.device().clock->advance(250);
            QTest::qWait(255); // the timer of the page looks four times a second
        }
        qInfo("%s", qPrintable(told.join(QStringLiteral(" | "))));
        QVERIFY(told.contains(QStringLiteral("45 seconds left")));
        QVERIFY(told.contains(QStringLiteral("Half time is past. 30 seconds left")));
        QVERIFY(told.contains(QStringLiteral("Last ten seconds.")));
        QVERIFY2(told.size() <= 16, qPrintable(QString::number(told.size()))); // a sentence takes some 3 s
    }

    void everyFifthMiteIsTold() {
        Stage stage(Stage::Demo);
        QVERIFY(toTheCount(stage));
        QQuickItem* field = stage.find(QStringLiteral("countField"));
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(field);
        QVERIFY(face && face->actionInterface());
        told.clear();
        for (int mite = 0; mite < 12; ++mite)
            face->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
        stage.settle();
        QCOMPARE(stage.app().wash()->count()->mites(), 12);
        told.removeAll(QStringLiteral("Done")); // the main button, named otherwise before the first mite
        QCOMPARE(told, QStringList({QStringLiteral("5 mites"), QStringLiteral("10 mites")}));
        QVERIFY(stage.touch(QStringLiteral("undo")));
        QCOMPARE(told.last(), QStringLiteral("11 mites"));
    }
};

QTEST_MAIN(ReaderTest)
#include "reader_test.moc"
