// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/tray.h"

#include <QTest>

#include <vector>

using namespace halfcup::records;

namespace {

Sample jar(const std::string& id, const std::string& label) {
    Sample sample;
    sample.id = id;
    sample.jar = label;
    sample.step = Step::Pour;
    return sample;
}

} // namespace

class RecordsTrayTest : public QObject {
    Q_OBJECT

private slots:
    void labelsAHurriedHandCannotTellApart() {
        QVERIFY(isSameLabel("4", " 4 "));
        QVERIFY(isSameLabel("B12", "b12"));
        QVERIFY(!isSameLabel("4", "14"));
        QVERIFY(!isSameLabel("", "4"));
    }

    void aLabelStandsOnOneWaitingJarOnly() {
        const std::vector drafts{jar("one", "4"), jar("two", "B12")};
        QCOMPARE(jarWith("4 ", drafts, "three"), &drafts[0]);
        QCOMPARE(jarWith("b12", drafts, "three"), &drafts[1]);
        QCOMPARE(jarWith("4", drafts, "one"), nullptr); // its own
        QCOMPARE(jarWith("5", drafts, "three"), nullptr);
        std::vector counted = drafts;
        counted[0].state = SampleState::Finished; // the label is free again
        QCOMPARE(jarWith("4", counted, "three"), nullptr);
    }

    void freeLabels() {
        const std::vector drafts{jar("one", "4"), jar("two", "1"), jar("three", "2")};
        QCOMPARE(freeLabel("7", drafts, "new"), std::string("7")); // the colony's own
        QCOMPARE(freeLabel("4", drafts, "new"), std::string("3")); // taken: the first free number
        QCOMPARE(freeLabel("4", drafts, "one"), std::string("4"));
        QCOMPARE(freeLabel("", {}, "new"), std::string("1"));
    }

    void waitingJarsAreCounted() {
        std::vector<Sample> drafts;
        for (int i = 0; i < mostWaitingJars; ++i)
            drafts.push_back(jar("id" + std::to_string(i), std::to_string(i)));
        QCOMPARE(waitingJars(drafts), mostWaitingJars);
        QCOMPARE(waitingJars(drafts, "id7"), mostWaitingJars - 1);
        drafts[0].jar.clear(); // a draft that is no jar
        drafts[1].state = SampleState::Abandoned;
        QCOMPARE(waitingJars(drafts), mostWaitingJars - 2);
    }
};

QTEST_GUILESS_MAIN(RecordsTrayTest)
#include "records_tray.moc"
