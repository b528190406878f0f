// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/fake/fake_platform.h"
#include "device/fake/fake_surroundings.h"
#include "place/scripted_position_source.h"
#include "stage.h"

#include <QMetaEnum>
#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;

namespace {

/// The program in a window that the phone reaches into.
struct Phone {
    explicit Phone(QSize size) {
        static const bool prepared = (touch::prepareQuick(), true);
        Q_UNUSED(prepared)
        touch::ProgramOptions options;
        options.databasePath = folder.filePath(QStringLiteral("halfcup.db"));
        options.windowSize = size;
        options.surroundings = &around.surroundings;
        options.makeSource = [this](const QString&) {
            auto made = std::make_unique<place::ScriptedPositionSource>();
            source = made.get();
            return made;
        };
        program = std::make_unique<touch::Program>(device.platform, options);
        program->services().settings.setReadWhatThisIsNot(true);
    }
    void settle() { screens::settle(program->window()); }

    QTemporaryDir folder;
    device::FakePlatform device = device::makeFakePlatform();
    device::FakeSurroundings around;
    place::ScriptedPositionSource* source = nullptr;
    std::unique_ptr<touch::Program> program;
};

} // namespace

class SurroundingsTest : public QObject {
    Q_OBJECT
private slots:
    void pagesKeepClear_data();
    void pagesKeepClear();
    void noReceiverRunsWhileAway();
    void whatWasNotLookedForIsNotLookedForAgain();
    void pagesLiveThroughShortMemory();
    void theScreenIsTheKeepersOwnWhileAway();
    void lettersAreAsLargeAsTheSystemSays();
};

// As phones with a notch have it, upright and turned; the figures are from memory of common phones.
void SurroundingsTest::pagesKeepClear_data() {
    QTest::addColumn<QSize>("size");
    QTest::addColumn<QMarginsF>("covered");
    QTest::newRow("upright") << QSize(360, 780) << QMarginsF(0, 44, 0, 34);
    QTest::newRow("turned") << QSize(780, 560) << QMarginsF(44, 0, 44, 21);
    QTest::newRow("nothing") << QSize(360, 740) << QMarginsF(0, 0, 0, 0);
}

void SurroundingsTest::pagesKeepClear() {
    QFETCH(QSize, size);
    QFETCH(QMarginsF, covered);
    Phone phone(size);
    QVERIFY(phone.program->show());
    QCOMPARE(phone.around.insets->watched(), phone.program->window());
    QVERIFY(QTest::qWaitForWindowExposed(phone.program->window()));
    phone.around.insets->set({covered.left(), covered.top(), covered.right(), covered.bottom()});
    phone.settle();
    const QRectF clear =
        QRectF(QPointF(0, 0), QSizeF(phone.program->window()->size())).marginsRemoved(covered);
    const auto pages = QMetaEnum::fromType<touch::Navigator::Page>();
    int looked = 0;
    for (int i = 0; i < pages.keyCount(); ++i) {
        phone.program->app().navigator()->home();
        phone.program->app().navigator()->open(static_cast<touch::Navigator::Page>(pages.value(i)));
        phone.settle();
        for (QQuickItem* item : visibleItems(phone.program->window()->contentItem())) {
            if (item->objectName() != QLatin1String("pages") &&
                item->objectName() != QLatin1String("mainAction") &&
                item->objectName() != QLatin1String("back"))
                continue;
            const QRectF there = item->mapRectToScene(QRectF(0, 0, item->width(), item->height()));
            QVERIFY2(
                clear.contains(there),
                qPrintable(QStringLiteral("%1 on %2").arg(item->objectName(), QLatin1String(pages.key(i)))));
            if (item->objectName() == QLatin1String("pages"))
                QCOMPARE(there, clear); // no more is lost than has to be
            ++looked;
        }
    }
    QVERIFY(looked > pages.keyCount());
}

void SurroundingsTest::noReceiverRunsWhileAway() {
    Phone phone({360, 740});
    auto& position = phone.program->services().position;
    position.want();
    QVERIFY(phone.source && phone.source->isRunning());
    phone.around.state->putAway();
    QVERIFY(!phone.source->isRunning());
    phone.around.state->takeOut();
    QVERIFY(phone.source->isRunning());
}

void SurroundingsTest::whatWasNotLookedForIsNotLookedForAgain() {
    Phone phone({360, 740});
    auto& position = phone.program->services().position;
    position.want();
    position.forget();
    phone.around.state->putAway();
    phone.around.state->takeOut();
    QVERIFY(!position.isRunning());
}

void SurroundingsTest::theScreenIsTheKeepersOwnWhileAway() {
    Phone phone({360, 740});
    touch::CountController* count = phone.program->app().wash()->count();
    count->setListening(true);
    QVERIFY(phone.device.brightness->isRaised());
    phone.around.state->putAway();
    QVERIFY(!phone.device.brightness->isRaised());
    phone.around.state->takeOut();
    QVERIFY(phone.device.brightness->isRaised());
    count->setListening(false);
    phone.around.state->putAway();
    phone.around.state->takeOut();
    QVERIFY(!phone.device.brightness->isRaised());
}

void SurroundingsTest::lettersAreAsLargeAsTheSystemSays() {
    Phone phone({360, 740});
    const touch::Look& look = phone.program->look();
    QCOMPARE(look.fontScale(), 1.0);
    phone.around.text->set(1.5);
    QCOMPARE(look.fontScale(), 1.5);
    phone.program->services().settings.setTextPercent(125); // larger still in this program alone
    QCOMPARE(look.fontScale(), 1.875);
    phone.around.text->set(3.0);
    QCOMPARE(look.fontScale(), 2.0); // what the pages hold
    phone.around.text->set(0.5);
    QCOMPARE(look.fontScale(), 1.0);
}

void SurroundingsTest::pagesLiveThroughShortMemory() {
    Phone phone({360, 740});
    QVERIFY(phone.program->show());
    QVERIFY(QTest::qWaitForWindowExposed(phone.program->window()));
    phone.settle();
    const QImage before = phone.program->window()->grabWindow();
    phone.around.state->runShortOfMemory();
    phone.settle();
    QCOMPARE(phone.program->window()->grabWindow(), before);
    QVERIFY2(phone.program->qmlWarnings().isEmpty(), qPrintable(phone.program->qmlWarnings().join(u'\n')));
}

QTEST_MAIN(SurroundingsTest)
#include "surroundings_test.moc"
