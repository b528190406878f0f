// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A phone that lies on a lid: nothing is painted while nothing changes.
#include "screens.h"

#include <QTest>

using namespace halfcup::screens;

class RestTest : public QObject {
    Q_OBJECT

    static constexpr std::size_t atOnce = 30;

    static bool mayMove(const QString& name) { // the time runs on them
        return name == QLatin1String("wash: shake") || name == QLatin1String("wash: shake past half") ||
               name == QLatin1String("wash: shake over") || name == QLatin1String("wash: settle");
    }

private slots:
    void nothingIsPaintedWhileNothingChanges_data() {
        QTest::addColumn<std::size_t>("from");
        for (std::size_t from = 0; from < allScreens().size(); from += atOnce)
            QTest::addRow("from screen %zu", from) << from;
    }

    /// Some dozens of screens stand open beside each other and are looked at for ten seconds.
    void nothingIsPaintedWhileNothingChanges() {
        QFETCH(const std::size_t, from);
        const std::size_t to = std::min(from + atOnce, allScreens().size());
        std::vector<std::unique_ptr<Stage>> stages;
        std::vector<int> frames(atOnce, 0);
        for (std::size_t i = from; i < to; ++i) {
            stages.push_back(std::make_unique<Stage>(allScreens()[i].records, QSize(320, 568)));
            QVERIFY2(allScreens()[i].open(*stages.back()), allScreens()[i].name);
        }
        QTest::qWait(1500); // what a page still does when it has just come up
        for (std::size_t i = 0; i < stages.size(); ++i)
            connect(
                stages[i]->window(), &QQuickWindow::afterRendering, this, [&frames, i] { ++frames[i]; },
                Qt::DirectConnection);
        QTest::qWait(10'000);
        QStringList restless;
        for (std::size_t i = 0; i < stages.size(); ++i) {
            const QString name = QLatin1String(allScreens()[from + i].name);
            if (frames[i] > 0 && !mayMove(name))
                restless.append(QStringLiteral("%1: %2 frames").arg(name).arg(frames[i]));
        }
        QCOMPARE(restless, QStringList());
    }
};

QTEST_MAIN(RestTest)
#include "rest_test.moc"
