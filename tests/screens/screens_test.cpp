// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "measure.h"
#include "screens.h"

#include <QDir>
#include <QTest>

using namespace halfcup;
using namespace halfcup::screens;

/// Every screen at three sizes, by day and at dusk, for both hands. With HALFCUP_PICTURES set to a folder,
/// each is left there as a picture.
class ScreensTest : public QObject {
    Q_OBJECT

    static void keep(Stage& stage, const QString& name) {
        const QString folder = qEnvironmentVariable("HALFCUP_PICTURES");
        if (folder.isEmpty())
            return;
        QString file = name;
        file.replace(QLatin1String(": "), QLatin1String("-")).replace(QLatin1Char(' '), QLatin1Char('-'));
        file.remove(QLatin1Char(',')).remove(QLatin1Char('?'));
        QVERIFY(QDir().mkpath(folder) &&
                stage.picture().save(QDir(folder).filePath(file + QLatin1String(".png"))));
    }

    // What lies below the edge comes up, too; and for the next size the page begins at its top again.
    static void scroll(Stage& stage, bool down) {
        for (QQuickItem* item : visibleItems(stage.window()->contentItem()))
            if (item->inherits("QQuickFlickable")) {
                const double below = item->property("contentHeight").toDouble() - item->height();
                item->setProperty("contentY",
                                  item->property("originY").toDouble() + (down ? std::max(0.0, below) : 0.0));
            }
        stage.settle();
    }

private slots:
    void screen_data() {
        QTest::addColumn<int>("index");
        for (std::size_t i = 0; i < allScreens().size(); ++i)
            QTest::newRow(allScreens()[i].name) << static_cast<int>(i);
    }

    void screen() {
        QFETCH(int, index);
        const Screen& screen = allScreens()[static_cast<std::size_t>(index)];
        Stage stage(screen.records);
        QVERIFY2(screen.open(stage), "the way to this screen is blocked");
        QStringList wrong;
        for (const QSize& size : {QSize(320, 568), QSize(360, 740), QSize(412, 915)}) {
            stage.resize(size);
            scroll(stage, false);
            for (const bool dusk : {false, true}) {
                for (const bool left : {false, true}) {
                    stage.setDusk(dusk);
                    stage.setLeftHand(left);
                    const QString name =
                        QStringLiteral("%1 %2x%3%4%5")
                            .arg(QLatin1String(screen.name))
                            .arg(size.width())
                            .arg(size.height())
                            .arg(QLatin1String(dusk ? " dusk" : ""), QLatin1String(left ? " left" : ""));
                    wrong += whatIsWrong(stage, name, screen.mainActions);
                    keep(stage, name);
                }
            }
            stage.setDusk(false);
            stage.setLeftHand(false);
            scroll(stage, true);
            wrong += whatIsWrong(
                stage, QStringLiteral("%1 %2, end").arg(QLatin1String(screen.name)).arg(size.width()),
                screen.mainActions);
            keep(stage, QStringLiteral("%1 %2x%3 end")
                            .arg(QLatin1String(screen.name))
                            .arg(size.width())
                            .arg(size.height()));
        }
        for (const QString& each : wrong)
            qWarning("%s", qPrintable(each));
        QVERIFY2(wrong.isEmpty(), qPrintable(QStringLiteral("%1 complaints").arg(wrong.size())));
        QCOMPARE(stage.program().qmlWarnings(), QStringList());
    }
};

QTEST_MAIN(ScreensTest)
#include "screens_test.moc"
