// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Items side by side, held against Qt Quick's own layouts (a library of general purpose: QtQuick.Layouts),
// which the app leaves out because reading them holds up its start.
#include "touch/program.h"
#include "touch/side_by_side.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QRegularExpression>
#include <QTest>

using namespace halfcup::touch;

namespace {

/// The same items in ours and in theirs: some with a height of their own, one that can hide, one that becomes
/// higher as it becomes narrower.
constexpr auto page = R"(
import QtQuick
import QtQuick.Layouts
import Halfcup.Touch

Window {
    id: window

    property real room: 300
    property bool hides: false
    property bool mirrors: false
    property int count: 5

    width: 800
    height: 600
    visible: true

    component Box: Item {
        required property int index

        objectName: "box" + index
        implicitWidth: 10
        implicitHeight: index === 3 ? Math.ceil(4000 / Math.max(1, width)) : 20 + 7 * index
        visible: !(window.hides && index === 1)
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 1
    }

    SideBySide {
        objectName: "ourRow"
        width: window.room
        spacing: 12
        mirrored: window.mirrors

        Repeater {
            model: window.count
            delegate: Box {}
        }
    }

    RowLayout {
        objectName: "theirRow"
        width: window.room
        spacing: 12
        LayoutMirroring.enabled: window.mirrors

        Repeater {
            model: window.count
            delegate: Box {}
        }
    }

    SideBySide {
        objectName: "ourGrid"
        width: window.room
        spacing: 12
        columns: 2
        mirrored: window.mirrors

        Repeater {
            model: window.count
            delegate: Box {}
        }
    }

    GridLayout {
        objectName: "theirGrid"
        width: window.room
        columnSpacing: 12
        rowSpacing: 12
        columns: 2
        LayoutMirroring.enabled: window.mirrors

        Repeater {
            model: window.count
            delegate: Box {}
        }
    }

    SideBySide {
        objectName: "wideLast"
        width: window.room
        height: 90
        spacing: 10
        lastShare: 2

        Box { index: 0; implicitWidth: 50 }
        Box { index: 2 }
    }
}
)";

QString words(const QRectF& place) {
    return QStringLiteral("%1,%2 %3x%4").arg(place.x()).arg(place.y()).arg(place.width()).arg(place.height());
}

QRectF placeOf(const QQuickItem* item) {
    return {item->x(), item->y(), item->width(), item->height()};
}

/// Nowhere, if it is not there.
QRectF placeOf(const QQuickItem* row, const QString& name) {
    for (const QQuickItem* each : row->childItems())
        if (each->objectName() == name)
            return placeOf(each);
    return {-1, -1, 0, 0};
}

} // namespace

class SideBySideTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QQmlApplicationEngine> m_engine;
    QQuickWindow* m_window = nullptr;

    QQuickItem* item(const char* name) const { return m_window->findChild<QQuickItem*>(QLatin1String(name)); }

    /// What stands elsewhere, by more than a pixel: theirs spreads what is left of one over the columns in
    /// another way. Empty: nothing.
    QString differences(const char* ours, const char* theirs) const {
        const QQuickItem* one = item(ours);
        const QQuickItem* other = item(theirs);
        QString said;
        if (std::abs(one->implicitHeight() - other->implicitHeight()) > 1)
            said += QStringLiteral("%1 high, theirs %2; ")
                        .arg(one->implicitHeight())
                        .arg(other->implicitHeight());
        for (const QQuickItem* box : one->childItems()) {
            if (!box->objectName().startsWith(QLatin1String("box")) || !box->isVisible())
                continue;
            const QRectF a = placeOf(box);
            const QRectF b = placeOf(other, box->objectName());
            if (std::abs(a.x() - b.x()) > 1 || std::abs(a.y() - b.y()) > 1 ||
                std::abs(a.width() - b.width()) > 1 || std::abs(a.height() - b.height()) > 1)
                said += QStringLiteral("%1: %2, theirs %3; ").arg(box->objectName(), words(a), words(b));
        }
        return said;
    }

    /// Theirs lay out when the next picture is made.
    void compare(const char* ours, const char* theirs) {
        qsizetype boxes = 0;
        for (const QQuickItem* each : item(ours)->childItems())
            boxes += each->objectName().startsWith(QLatin1String("box")) && each->isVisible();
        const int count = m_window->property("count").toInt();
        QCOMPARE(boxes, count - (m_window->property("hides").toBool() && count > 1));
        QTRY_COMPARE(differences(ours, theirs), QString());
    }

private slots:
    void initTestCase() { prepareQuick(); }

    void init() {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("."))); // a binding loop, above all
        m_engine = std::make_unique<QQmlApplicationEngine>();
        m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_engine->loadData(page);
        QVERIFY(!m_engine->rootObjects().isEmpty());
        m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().first());
        QVERIFY(QTest::qWaitForWindowExposed(m_window));
    }

    void cleanup() { m_engine.reset(); }

    void itemsStandWhereQtsLayoutsPutThem() {
        for (const int count : {1, 2, 3, 5, 6})
            for (const double room : {300.0, 337.0, 251.5, 700.0})
                for (const bool hides : {false, true})
                    for (const bool mirrors : {false, true}) {
                        m_window->setProperty("count", count);
                        m_window->setProperty("room", room);
                        m_window->setProperty("hides", hides);
                        m_window->setProperty("mirrors", mirrors);
                        compare("ourRow", "theirRow");
                        compare("ourGrid", "theirGrid");
                        if (QTest::currentTestFailed()) {
                            qWarning("%d items on %g, hides %d, mirrors %d", count, room, hides, mirrors);
                            return;
                        }
                    }
    }

    void theLastMayBeWiderThanTheOthers() {
        const auto* row = item("wideLast");
        const auto boxes = row->childItems();
        // 290 in three parts
        QCOMPARE(placeOf(boxes[0]), QRectF(0, 0, 97, 90));
        QCOMPARE(placeOf(boxes[1]), QRectF(107, 0, 193, 90));
        // 100 in three parts would be less than the first wants
        m_window->setProperty("room", 110);
        QCOMPARE(placeOf(boxes[0]), QRectF(0, 0, 50, 90));
        QCOMPARE(placeOf(boxes[1]), QRectF(60, 0, 50, 90));
        // and there is no more than half for it
        m_window->setProperty("room", 90);
        QCOMPARE(placeOf(boxes[0]), QRectF(0, 0, 40, 90));
        QCOMPARE(placeOf(boxes[1]), QRectF(50, 0, 40, 90));
    }

    /// What changes while the page is away is laid out when it comes back.
    void aHiddenPageIsLaidOutWhenItIsShown() {
        auto* row = item("ourRow");
        const QRectF before = placeOf(row, QStringLiteral("box2"));
        row->setVisible(false);
        m_window->setProperty("room", 600);
        m_window->setProperty("hides", true);
        row->setVisible(true);
        compare("ourRow", "theirRow");
        QVERIFY(placeOf(row, QStringLiteral("box2")) != before);
    }
};

QTEST_MAIN(SideBySideTest)
#include "side_by_side_test.moc"
