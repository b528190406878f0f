// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The map, and which records a file holds. Read back by Qt's JSON reader: one that is not ours.
#include "people_keeper.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

using namespace halfcup;
using namespace halfcup::exchange;
using peopletest::Keeper;
using peopletest::someRecords;

namespace {

std::string mapText(const Keeper& keeper, const ExportOptions& options) {
    std::string out;
    exportMap(keeper, options, [&](std::string_view bytes) { out += bytes; });
    return out;
}

QJsonArray featuresOf(const std::string& text) {
    QJsonParseError error;
    const auto read = QJsonDocument::fromJson(QByteArray::fromStdString(text), &error);
    if (error.error != QJsonParseError::NoError)
        qFatal("Not JSON: %s", qPrintable(error.errorString()));
    return read.object()["features"].toArray();
}

ExportOptions exact() {
    ExportOptions options;
    options.detail = PositionDetail::Exact;
    return options;
}

} // namespace

class PeopleMapTest : public QObject {
    Q_OBJECT

private slots:
    // RFC 7946: 3.1.1 longitude first; 3.2 geometry may be null; 4 no "crs".
    void longitudeComesFirst() {
        const std::string text = mapText(someRecords(), exact());
        const QJsonArray features = featuresOf(text);
        QCOMPARE(features.size(), 4);
        const QJsonObject yard = features[0].toObject();
        QCOMPARE(yard["type"].toString(), QStringLiteral("Feature"));
        QCOMPARE(yard["geometry"]["type"].toString(), QStringLiteral("Point"));
        QCOMPARE(yard["geometry"]["coordinates"].toArray(), (QJsonArray{19.6423, 53.0712}));
        QCOMPARE(yard["properties"]["position_is"].toString(), QStringLiteral("exact"));
        QVERIFY(text.find("\"crs\"") == std::string::npos);
    }

    void blurredMapTellsNoMore() {
        const std::string text = mapText(someRecords(), {});
        for (const char* digits : {"53.071", "19.641", "19.642"})
            QVERIFY2(text.find(digits) == std::string::npos, digits);
        for (const QJsonValue each : featuresOf(text)) {
            QCOMPARE(each["geometry"]["coordinates"].toArray(), (QJsonArray{19.64, 53.07}));
            QCOMPARE(each["properties"]["position_is"].toString(), QStringLiteral("blurred"));
        }
    }

    void nothingStampedIsNull() {
        Keeper keeper = someRecords();
        keeper.keptYards[0].position.reset();
        for (records::Sample& sample : keeper.samples)
            sample.stamp.state = records::PositionState::NoFix;
        for (const QJsonValue each : featuresOf(mapText(keeper, exact()))) {
            QVERIFY(each.toObject().contains("geometry") && each["geometry"].isNull());
            QCOMPARE(each["properties"]["position_is"].toString(), QStringLiteral("none"));
        }
    }

    void yardTellsItsNewestWash() {
        const QJsonObject yard = featuresOf(mapText(someRecords(), {}))[0].toObject();
        const records::Answer answer = *someRecords().samples[2].answer;
        QCOMPARE(yard["properties"]["last_wash_on"].toString(), QStringLiteral("2026-05-18"));
        QCOMPARE(yard["properties"]["last_load_q95_per_100"].toDouble(), answer.loadQ95);
        QCOMPARE(yard["properties"]["colonies"].toInt(), 2);
    }

    void hostileNamesStayText() {
        Keeper keeper = someRecords();
        keeper.keptYards[0].name = "=cmd|'/c x'!A1 \"\\ \n\x01\xE2\x80\xAE \xFF";
        const QJsonObject yard = featuresOf(mapText(keeper, {}))[0].toObject();
        // JSON, RFC 8259 section 7: quotes, backslashes and controls are escaped, so they come back.
        QCOMPARE(yard["properties"]["name"].toString(),
                 QString::fromUtf8("=cmd|'/c x'!A1 \"\\ \n\x01\xE2\x80\xAE \xEF\xBF\xBD"));
    }

    void emptyMapIsAMap() { QCOMPARE(featuresOf(mapText(Keeper{}, {})).size(), 0); }

    void yearIsTheKeepersOwn() { // 2025-12-31 23:30 at -02:00 is 2026 in UTC
        ExportOptions options;
        options.selection.periods["yard"] = {{2026, 1, 1}, {2026, 12, 31}};
        QCOMPARE(featuresOf(mapText(someRecords(), options)).size(), 3);
        options.selection.colonyId = "colony-4";
        QCOMPARE(featuresOf(mapText(someRecords(), options)).size(), 2);
        options.selection.periods.clear();
        options.selection.periods["another"] = {{2026, 1, 1}, {2026, 12, 31}};
        QCOMPARE(featuresOf(mapText(someRecords(), options)).size(), 1);
    }

    // Regulation (EU) 2019/6, Article 108: the withdrawal goes with the treatment, so a treatment that still
    // held the honey belongs to the year.
    void treatmentOfLastYearThatHeldTheHoneyIsThere() {
        records::GivenTreatment given = someRecords().treatments[0];
        given.treatment.firstDay = {2025, 12, 1};
        given.treatment.lastDay = {2025, 12, 30};
        Selection selection;
        selection.periods["yard"] = {{2026, 1, 1}, {2026, 12, 31}};
        given.treatment.withdrawalDays = 2; // until 31 December; free on 1 January
        QVERIFY(!selection.holds(given));
        given.treatment.withdrawalDays = 3;
        QVERIFY(selection.holds(given));
        given.treatment.withdrawalDays.reset();
        QVERIFY(!selection.holds(given));
        selection.colonyId = "another";
        QVERIFY(!selection.holds(given));
    }

    void countsRunUp() { // a tap, a typed 7, an undo: 1, 7, 1 again
        using Change = records::CountEvent::Change;
        Keeper keeper = someRecords();
        keeper.samples.resize(1);
        keeper.counts = {{1, 1, Change::Tap, 0, 1000},
                         {2, 1, Change::Typed, 7, 2000},
                         {3, 1, Change::Undo, 0, 3000},
                         {4, 2, Change::Tap, 0, 4000}};
        std::string out;
        QCOMPARE(exportCounts(keeper, {}, [&](std::string_view bytes) { out += bytes; }), 4);
        const QList<QByteArray> rows = QByteArray::fromStdString(out).split('\n');
        QCOMPARE(rows[1].trimmed(),
                 QByteArray("wash-1,Alder Bend,4,no,1,1,tap,,1,1969-12-31T22:00:01-02:00"));
        QCOMPARE(rows[2].trimmed(),
                 QByteArray("wash-1,Alder Bend,4,no,2,1,typed,7,7,1969-12-31T22:00:02-02:00"));
        QCOMPARE(rows[3].trimmed(),
                 QByteArray("wash-1,Alder Bend,4,no,3,1,undo,,1,1969-12-31T22:00:03-02:00"));
        QCOMPARE(rows[4].trimmed(),
                 QByteArray("wash-1,Alder Bend,4,no,4,2,tap,,1,1969-12-31T22:00:04-02:00"));
    }
};

QTEST_GUILESS_MAIN(PeopleMapTest)
#include "people_map.moc"
