// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Exchange files made to harm, or by mistake: refused or defused with a reason, and the database as before.
#include "exchange/exchange_sentence.h"
#include "exchange_kit.h"
#include "patience.h"

#include <QDir>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>

#include <random>
#include <sys/resource.h>
#include <sys/stat.h>

using namespace halfcup;
using namespace halfcup::exchange;
using namespace halfcup::exchangetest;
using records::FieldType;
using records::Kind;

namespace {

const std::string newId = records::makeRecordId(startMs, 0xABC, 0xDEF);
const std::string stamp = stampAt(startMs + 5);
constexpr std::int64_t year10000Ms = 253'402'300'800'000;
constexpr std::int64_t yearMs = std::int64_t{365} * 86'400'000;

QByteArray yardBody(const QByteArray& fields, const std::string& at = stamp) {
    return partBody("yard", newId, at, fields);
}

QByteArray countBody(const QByteArray& act, const std::string& kind = "sample") {
    return "{\"kind\":\"" + QByteArray::fromStdString(kind) + "\",\"id\":\"" +
           QByteArray::fromStdString(newId) + "\",\"counts\":[" + act + "]";
}

QByteArray act(const QByteArray& rest) {
    return "{\"at\":\"" + QByteArray::fromStdString(stamp) + "\"," + rest + "}";
}

QByteArray headerWith(const QByteArray& rest) {
    return summed("{\"halfcup\":\"exchange\"," + rest);
}

} // namespace

Q_DECLARE_METATYPE(halfcup::exchange::LineTrouble)
Q_DECLARE_METATYPE(halfcup::exchange::ExchangeRefusal)

class ExchangeHostileTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<Phone> m_phone;
    Place m_place;
    std::string m_before;

    QString path(const char* name) const { return m_folder->filePath(name); }
    std::string now() const { return dumpOf(m_phone->path(), true); }
    std::string latestStamp() const {
        return sql(m_phone->path(), "SELECT max(stamp) FROM revision WHERE field = 'name'");
    }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        m_phone = std::make_unique<Phone>(path("a.db"));
        m_place = addPlace(m_phone->store());
        m_before = now();
    }

    void filesThatAreNotOurs_data() {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<ExchangeRefusal>("refusal");
        using enum ExchangeRefusal;
        QFile picture(HALFCUP_SOURCE_DIR "/assets/pictures/01-here.png");
        QVERIFY(picture.open(QIODevice::ReadOnly));
        QTest::newRow("a picture") << picture.readAll() << NotOurs;
        QTest::newRow("empty") << QByteArray() << Empty;
        QTest::newRow("one line end") << QByteArray("\n") << NotOurs;
        QTest::newRow("a byte order mark") << QByteArray("\xEF\xBB\xBF") << NotOurs;
        QTest::newRow("other JSON lines")
            << QByteArray("{\"a\":1}\n{\"kind\":\"yard\"}\n").repeated(500) << NotOurs;
        QTest::newRow("one line of other JSON") << QByteArray("{\"halfcup\":\"backup\"}") << NotOurs;
        QTest::newRow("a table") << QByteArray("day,yard,colony,mites\r\n2024-07-01,Mill,4,5\r\n") << NotOurs;
        QTest::newRow("random") << QByteArray(200'000, Qt::Uninitialized) << NotOurs;
        QTest::newRow("a million letters") << QByteArray(1'000'000, 'x') << NotOurs;
        QTest::newRow("many empty lines") << QByteArray(1'000'000, '\n') << NotOurs;
        QTest::newRow("brackets") << QByteArray(100'000, '[') << NotOurs;
        QTest::newRow("needs a newer one") << headerWith(R"("format":2,"needs":2,"device":"x")") + "\n" +
                                                  summed(yardBody(R"("name":"new")")) + "\n"
                                           << Newer;
    }
    void filesThatAreNotOurs() {
        QFETCH(QByteArray, bytes);
        QFETCH(ExchangeRefusal, refusal);
        if (QByteArray(QTest::currentDataTag()) == "random") {
            std::mt19937 chance(3);
            for (char& byte : bytes)
                byte = static_cast<char>(chance());
        }
        QVERIFY(putBytes(path("file.halfcup"), bytes));
        store::Merge merge(m_phone->store());
        const ExchangeReport report = takeExchangeFile(merge, path("file.halfcup"));
        QCOMPARE(report.refusal, refusal);
        QCOMPARE(report.parts, std::int64_t{0});
        QVERIFY(merge.finish().nothingNew());
        merge.keep();
        QVERIFY(now() == m_before);
        QVERIFY(!sentenceFor(report).empty());
    }

    void filesThatAreTooLargeOrNoFiles() {
        const auto refusalOf = [&](const QString& file) {
            QElapsedTimer timer;
            timer.start();
            store::Merge merge(m_phone->store());
            const auto refusal = takeExchangeFile(merge, file).refusal;
            return timer.elapsed() < 5000 ? std::optional(refusal) : std::nullopt;
        };
        QFile sparse(path("sparse.halfcup"));
        QVERIFY(sparse.open(QIODevice::WriteOnly) && sparse.resize(qint64{2} << 30));
        QCOMPARE(refusalOf(sparse.fileName()), ExchangeRefusal::TooLarge);
        QVERIFY(sparse.resize(100'000'000)); // one line of zeros: read in pieces, never held
        QCOMPARE(refusalOf(sparse.fileName()), ExchangeRefusal::NotOurs);
        QCOMPARE(refusalOf(path("nothing")), ExchangeRefusal::NotThere);
        QCOMPARE(refusalOf(m_folder->path()), ExchangeRefusal::CannotRead);
        QCOMPARE(mkfifo(qPrintable(path("pipe")), 0600), 0);
        QCOMPARE(refusalOf(path("pipe")), ExchangeRefusal::CannotRead); // opened, it would be waited for
        QCOMPARE(refusalOf("/dev/zero"), ExchangeRefusal::CannotRead);
        QCOMPARE(refusalOf(m_phone->path()), ExchangeRefusal::NotOurs);
        QVERIFY(now() == m_before);
    }

    void linesThatCannotBe_data() {
        QTest::addColumn<QByteArray>("body");
        QTest::addColumn<LineTrouble>("trouble");
        QTest::addColumn<QString>("field");
        using enum LineTrouble;
        const auto row = [](const char* name, const QByteArray& body, LineTrouble trouble,
                            const char* field = "") {
            QTest::newRow(name) << body << trouble << QString(field);
        };
        row("deep", yardBody("\"x\":" + QByteArray(100'000, '[') + QByteArray(100'000, ']')), TooDeep);
        row("deep in another member",
            "{\"kind\":\"yard\",\"id\":\"" + QByteArray::fromStdString(newId) + "\",\"x\":[[[[1]]]]",
            TooDeep);
        row("a million letters", yardBody("\"name\":\"" + QByteArray(1'000'000, 'x') + "\""), TooLong);
        row("no JSON", "{\"kind\":yard", Damaged);
        row("no UTF-8", yardBody("\"name\":\"\xFF\xFE\""), Damaged);
        row("half a surrogate pair", yardBody(R"("name":"\ud800")"), Damaged);
        row("a number beyond all", yardBody("\"reach_m\":1e400"), Damaged);
        row("NaN", yardBody("\"reach_m\":NaN"), Damaged);
        row("no kind", "{\"id\":\"" + QByteArray::fromStdString(newId) + "\"", Damaged);
        row("a kind that is a table", partBody("sqlite_master; DROP TABLE yard", newId, stamp, ""), Damaged);
        row("a list of kinds", "{\"kind\":[],\"id\":\"x\"", Damaged);
        row("revisions are no list",
            "{\"kind\":\"yard\",\"id\":\"" + QByteArray::fromStdString(newId) + "\",\"revisions\":7",
            Damaged);
        row("an id that is a path", partBody("yard", "../../etc/passwd", stamp, "\"name\":\"x\""), BadId);
        row("an id of version 4", partBody("yard", "0b2a1c3d-1111-4222-8333-444455556666", stamp, ""), BadId);
        row("an id in capitals",
            partBody("yard", QString::fromStdString(newId).toUpper().toStdString(), stamp, ""), BadId);
        row("year 10000", yardBody("\"name\":\"x\"", stampAt(year10000Ms)), BadStamp);
        row("26 years ahead", yardBody("\"name\":\"x\"", stampAt(startMs + 26 * yearMs)), BadStamp);
        row("the last there is", yardBody("\"name\":\"x\"", "0000ffffffffffff-ffffffff-x"), BadStamp);
        row("before 1970", yardBody("\"name\":\"x\"", "ffffffffffffffff-00000000-x"), BadStamp);
        row("a stamp in capitals", yardBody("\"name\":\"x\"", "00000198AE3F2A10-00000000-x"), BadStamp);
        row("a stamp of no phone", yardBody("\"name\":\"x\"", "000001989e3f2a10-00000000-"), BadStamp);
        row("a stamp of a path", yardBody("\"name\":\"x\"", "000001989e3f2a10-00000000-../../etc/passwd"),
            BadStamp);
        row("a stamp of a long name", yardBody("\"name\":\"x\"", stampAt(startMs, 0, std::string(65, 'a'))),
            BadStamp);
        row("a list", yardBody("\"newer\":[1]"), TooDeep);
        row("an object", yardBody("\"newer\":{}"), TooDeep);
        row("true", yardBody("\"newer\":true"), BadField, "newer");
        row("2 to the 63rd", yardBody("\"newer\":9223372036854775808"), BadField, "newer");
        row("a name with SQL", yardBody("\"x'; DROP TABLE yard; --\":1"), BadField,
            "x'; DROP TABLE yard; --");
        row("a name of 65 letters", yardBody("\"" + QByteArray(65, 'x') + "\":1"), BadField,
            QByteArray(64, 'x'));
        row("a number for a text", yardBody("\"name\":4"), BadField, "name");
        row("a text for a number", yardBody("\"reach_m\":\"far\""), BadField, "reach_m");
        row("a flag of 2", yardBody("\"removed\":2"), BadField, "removed");
        row("north of the pole", yardBody("\"latitude_deg\":90.01"), BadField, "latitude_deg");
        row("a huge figure", yardBody("\"own_line\":1e300"), BadField, "own_line");
        row("a long text", yardBody("\"name\":\"" + QByteArray(100'001, 'x') + "\""), BadField, "name");
        row("half a mite", partBody("sample", newId, stamp, "\"mites\":2.5"), BadField, "mites");
        row("an unknown act", countBody(act(R"("rinse":1,"change":"guess","ms":5)")), BadCount);
        row("a third rinse", countBody(act(R"("rinse":3,"change":"tap","ms":5)")), BadCount);
        row("typed nothing", countBody(act(R"("rinse":1,"change":"typed","ms":5)")), BadCount);
        row("typed half", countBody(act(R"("rinse":1,"change":"typed","ms":5,"typed":2.5)")), BadCount);
        row("typed 10001", countBody(act(R"("rinse":1,"change":"typed","ms":5,"typed":10001)")), BadCount);
        row("before 1970, a tap", countBody(act(R"("rinse":1,"change":"tap","ms":-5)")), BadCount);
        row("counts of a yard", countBody(act(R"("rinse":1,"change":"tap","ms":5)"), "yard"), BadCount);
        row("an act without a stamp", countBody("{\"rinse\":1}"), BadStamp);
    }
    void linesThatCannotBe() {
        QFETCH(QByteArray, body);
        QFETCH(LineTrouble, trouble);
        QFETCH(QString, field);
        const Taken taken = m_phone->take(fileOf({body}));
        QCOMPARE(taken.report.refusal, ExchangeRefusal::None);
        QCOMPARE(taken.report.damagedCount, std::int64_t{1});
        QCOMPARE(taken.report.damaged.at(0).number, std::int64_t{2});
        QCOMPARE(taken.report.damaged.at(0).trouble, trouble);
        QCOMPARE(QString::fromStdString(taken.report.damaged.at(0).field), field);
        QVERIFY(!taken.report.cut && !taken.report.incomplete);
        QVERIFY(taken.plan.nothingNew());
        QVERIFY(now() == m_before);
        QVERIFY(damagedLineSentences(taken.report).at(0).starts_with("Line 2: "));
        // What stands beside it is taken.
        const auto beside = m_phone->take(fileOf({body, yardBody(R"("name":"Beside")")}));
        QCOMPARE(beside.report.parts, std::int64_t{1});
        QCOMPARE(m_phone->store().yard(newId)->name, std::string("Beside"));
    }

    void headersThatCannotBe_data() {
        QTest::addColumn<QByteArray>("rest");
        QTest::addColumn<QString>("field");
        QTest::newRow("no format") << QByteArray(R"("needs":1,"device":"x")") << "format";
        QTest::newRow("format as text") << QByteArray(R"("format":"1","needs":1,"device":"x")") << "format";
        QTest::newRow("needs 0") << QByteArray(R"("format":1,"needs":0,"device":"x")") << "needs";
        QTest::newRow("no phone") << QByteArray(R"("format":1,"needs":1)") << "device";
        QTest::newRow("a path") << QByteArray(R"("format":1,"needs":1,"device":"../../etc/passwd")")
                                << "device";
    }
    void headersThatCannotBe() {
        QFETCH(QByteArray, rest);
        QFETCH(QString, field);
        const auto taken = m_phone->take(fileOf({yardBody(R"("name":"Good")")}, headerWith(rest)));
        QCOMPARE(taken.report.damagedCount, std::int64_t{1});
        QCOMPARE(taken.report.damaged.at(0).number, std::int64_t{1});
        QCOMPARE(taken.report.damaged.at(0).trouble, LineTrouble::BadField);
        QCOMPARE(QString::fromStdString(taken.report.damaged.at(0).field), field);
        QCOMPARE(taken.report.parts, std::int64_t{1}); // a bad first line does not spoil the rest
    }

    void whatIsNoHelpInAHeaderIsLeftOut() {
        QByteArray seen, counts;
        for (int i = 0; i < 5000; ++i)
            seen += "\"d" + QByteArray::number(i) + "\":\"" + QByteArray::fromStdString(stampAt(i)) + "\",";
        counts = R"("yard":-1,"colony":"many","Ümlaut":3,"sample":4)";
        const ReadLine read =
            readLine(headerWith(R"("format":1,"needs":1,"device":"x","written":"soon","seen":{)" + seen +
                                R"("../x":"y","z":7},"counts":{)" + counts + "}")
                         .toStdString());
        QVERIFY(read.header);
        QCOMPARE(read.header->seen.size(), std::size_t{5000});
        QCOMPARE(read.header->counts, (std::map<std::string, std::int64_t>{{"sample", 4}}));
        QCOMPARE(read.header->written, std::string());
    }

    void oneIdOfTwoKinds() {
        const auto taken = m_phone->take(fileOf(
            {partBody("colony", m_place.yard.id, stamp, "\"label\":\"4\""), yardBody("\"name\":\"Good\"")}));
        QCOMPARE(taken.report.damaged.at(0).trouble, LineTrouble::OtherKind);
        QCOMPARE(taken.report.damaged.at(0).number, std::int64_t{2});
        QCOMPARE(taken.report.parts, std::int64_t{1});
        QCOMPARE(m_phone->store().yard(m_place.yard.id)->name, std::string("By the ford"));
        // Acts of counting make it a sample, though nothing else of it has come.
        const std::string other = records::makeRecordId(startMs, 1, 2);
        QByteArray tap = countBody(act(R"("rinse":1,"change":"tap","ms":5)"));
        tap.replace(newId.c_str(), other.c_str());
        const auto counted = m_phone->take(fileOf({tap, partBody("yard", other, stamp, "\"name\":\"x\"")}));
        QCOMPARE(counted.report.damagedCount, std::int64_t{1});
        QCOMPARE(counted.report.damaged.at(0).trouble, LineTrouble::OtherKind);
        Phone third(path("c.db"), 55); // and what we pass on is read by others
        QVERIFY(third.take(m_phone->file()).report.isWhole());
    }

    void aRecordThatPointsNowhereWaits() {
        const std::string nowhere = records::makeRecordId(startMs, 5, 5);
        const std::string before = dumpOf(m_phone->path());
        const auto taken = m_phone->take(
            fileOf({partBody("sample", newId, stamp,
                             "\"colony_id\":\"" + QByteArray::fromStdString(nowhere) + "\",\"yard_id\":\"" +
                                 QByteArray::fromStdString(m_place.yard.id) +
                                 "\",\"state\":\"finished\",\"started_at_ms\":5")}));
        QVERIFY(taken.report.isWhole());
        QCOMPARE(taken.plan.waiting, 1);
        QCOMPARE(m_phone->store().sampleCount(), 0);
        QVERIFY(!m_phone->store().sample(newId));
        QCOMPARE(m_phone->store().integrityReport(), std::string("ok"));
        // What it points to comes: it is there.
        m_phone->take(fileOf({partBody("colony", nowhere, stamp,
                                       "\"label\":\"7\",\"yard_id\":\"" +
                                           QByteArray::fromStdString(m_place.yard.id) + "\"")}));
        QCOMPARE(m_phone->store().sampleCount(), 1);
    }

    /// Kept and passed on as they came, shown without what could deceive or do harm.
    void textsThatDeceive() {
        const std::string name = "a\u202Eb\x01\u2066c\u200F";
        const QByteArray json = "\"name\":\"a\u202Eb\\u0001\u2066c\u200F\"";
        m_phone->take(fileOf({yardBody(json)}));
        QCOMPARE(m_phone->store().yard(newId)->name, std::string("abc"));
        const auto kept =
            sql(m_phone->path(),
                "SELECT hex(value) FROM revision WHERE field = 'name' AND stamp = '" + stamp + "'");
        QCOMPARE(QByteArray::fromHex(QByteArray::fromStdString(kept)), QByteArray::fromStdString(name));
        Phone other(path("b.db"), 99);
        QVERIFY(other.take(m_phone->file()).report.isWhole());
        QVERIFY(dumpOf(other.path()) == dumpOf(m_phone->path()));
    }

    void namesThatAreCommandsOrPaths() {
        for (const std::string name :
             {"=cmd|' /C calc'!A0", "../../etc/passwd", "/etc/passwd", "C:\\x", "%s%n"}) {
            Phone phone(path("names.db"));
            QByteArray quoted = QByteArray::fromStdString(name);
            quoted.replace("\\", "\\\\");
            QVERIFY(phone.take(fileOf({yardBody("\"name\":\"" + quoted + "\"")})).report.isWhole());
            QCOMPARE(phone.store().yard(newId)->name, name); // a name is a name
            QByteArray table;
            CsvWriter csv(into(table));
            csv.text(phone.store().yard(newId)->name);
            csv.endRow();
            QVERIFY(!table.startsWith("=") &&
                    !table.startsWith("\"=")); // no spreadsheet takes it for a formula
            for (const char* ending : {"", "-wal", "-shm", ".before-merge"})
                QFile::remove(path("names.db") + QLatin1String(ending));
        }
        const QStringList left = QDir(m_folder->path()).entryList({}, QDir::Files);
        for (const QString& file : left)
            QVERIFY2(file.startsWith("a.db"), qPrintable(file));
    }

    /// Whatever stamps come, ours go on growing, are never one that was there, win over what was before, and
    /// can be read by others.
    void ourClockGoesOn_data() {
        QTest::addColumn<QByteArray>("time");
        QTest::addColumn<bool>("own");
        const auto hex = [](std::int64_t ms) { return QByteArray::fromStdString(stampAt(ms).substr(0, 16)); };
        for (const bool own : {false, true}) {
            const char* who = own ? "as if ours" : "a stranger's";
            QTest::addRow("%s, a year ahead", who) << hex(startMs + yearMs) + "-00000007-" << own;
            QTest::addRow("%s, counter at its end", who) << hex(startMs + yearMs) + "-ffffffff-" << own;
            QTest::addRow("%s, 25 years ahead, counter at its end", who)
                << hex(startMs + 25 * yearMs) + "-ffffffff-" << own;
            QTest::addRow("%s, this very moment", who) << hex(startMs) + "-00000001-" << own;
            QTest::addRow("%s, long ago", who) << hex(1) + "-00000000-" << own;
        }
    }
    void ourClockGoesOn() {
        QFETCH(QByteArray, time);
        QFETCH(bool, own);
        const std::string device = sql(m_phone->path(), "SELECT value FROM setting WHERE name = 'device_id'");
        const std::string forged = time.toStdString() + (own ? device : "stranger");
        const std::string id = m_place.yard.id;
        const auto taken = m_phone->take(fileOf({partBody("yard", id, forged, "\"name\":\"Forged\"")}));
        QVERIFY2(taken.report.isWhole(), sentenceFor(taken.report).c_str());
        std::string last = latestStamp();
        for (int i = 0; i < 5; ++i) {
            m_place.yard.name = "Ours " + std::to_string(i);
            m_phone->store().save(m_place.yard);
            const std::string latest = latestStamp();
            QVERIFY(latest > last && latest > forged);
            QCOMPARE(m_phone->store().yard(id)->name, m_place.yard.name);
            last = latest;
            if (i == 2) { // also after the program was closed
                const QString file = m_phone->path();
                m_phone.reset();
                m_phone = std::make_unique<Phone>(file, 4711);
            }
        }
        Phone other(path("b.db"), 99);
        other.host.nowMs = startMs + 1000;
        QVERIFY(other.take(m_phone->file()).report.isWhole());
        QVERIFY(dumpOf(other.path()) == dumpOf(m_phone->path()));
        QCOMPARE(other.store().yard(id)->name, std::string("Ours 4"));
    }

    /// A phone whose clock stands at 1970 or 2010 hears the others; one that is far ahead too.
    void aWrongClockOfOursRefusesNobody() {
        for (const std::int64_t nowMs :
             {std::int64_t{0}, std::int64_t{1'262'304'000'000}, startMs + 19 * yearMs}) {
            Phone phone(path("w.db"));
            phone.host.nowMs = nowMs;
            QVERIFY(phone.take(m_phone->file()).report.isWhole());
            for (const char* ending : {"", "-wal", "-shm", ".before-merge"})
                QFile::remove(path("w.db") + QLatin1String(ending));
        }
        QVERIFY(latestStampMs(std::numeric_limits<std::int64_t>::max()) == endOfTimeMs);
        QVERIFY(latestStampMs(std::numeric_limits<std::int64_t>::min()) > startMs);
    }

    /// Thousands of made-up phones in stamps: our own next file can still be read.
    void thousandsOfPhones() {
        QByteArrayList bodies;
        for (int i = 0; i < 10'000; ++i) {
            const std::string device = std::string(56, 'a') + "-" + std::to_string(i);
            bodies += yardBody("\"visited_on\":\"2026-06-15\"", stampAt(startMs + i, 0, device));
        }
        QByteArrayList parts; // as many stamps in one line as it holds
        for (qsizetype i = 0; i < bodies.size(); i += 2000) {
            QByteArray revisions;
            for (const QByteArray& body : bodies.mid(i, 2000)) {
                const auto from = body.indexOf("[{") + 1;
                revisions += (revisions.isEmpty() ? "" : ",") + body.mid(from, body.size() - from - 1);
            }
            parts += "{\"kind\":\"yard\",\"id\":\"" + QByteArray::fromStdString(newId) +
                     "\",\"revisions\":[" + revisions + "]";
        }
        QVERIFY(m_phone->take(fileOf(parts)).report.isWhole());
        Phone other(path("b.db"), 99);
        QVERIFY(other.take(m_phone->file()).report.isWhole());
        QVERIFY(dumpOf(other.path()) == dumpOf(m_phone->path()));
    }

    void aMillionFieldsOfOneRecord() {
        QByteArrayList bodies;
        for (int i = 0; i < 1'000'000;) {
            QByteArray fields;
            for (int k = 0; k < 20'000; ++k, ++i)
                fields += "\"f" + QByteArray::number(i) + "\":1,";
            fields.chop(1);
            bodies += yardBody(fields);
        }
        QElapsedTimer timer;
        timer.start();
        const auto taken = m_phone->take(fileOf(bodies));
        rusage usage{};
        getrusage(RUSAGE_SELF, &usage);
        qInfo("a million fields: %lld ms, %ld MB at most", static_cast<long long>(timer.elapsed()),
              usage.ru_maxrss / 1024);
        QCOMPARE(taken.report.parts, std::int64_t{2}); // more than 50,000 are more than any record has
        QCOMPARE(taken.report.damagedCount, std::int64_t{48});
        QCOMPARE(taken.report.damaged.at(0).trouble, LineTrouble::TooMuch);
        QVERIFY(static_cast<double>(timer.elapsed()) < 60'000 * patience());
        // So are 500 lines, one after the other.
        QByteArrayList lines;
        for (std::uint32_t i = 0; i < 700; ++i)
            lines += partBody("yard", m_place.yard.id, stampAt(startMs, i), "\"name\":\"x\"");
        QCOMPARE(m_phone->take(fileOf(lines)).report.damagedCount, std::int64_t{200});
    }

    /// Values that fit their types and mean nothing: nothing falls over them, and they reach the next phone.
    void figuresAndWordsThatMeanNothing() {
        std::mt19937 chance(42);
        const auto pick = [&](const QByteArrayList& from) {
            return from[static_cast<qsizetype>(chance() % static_cast<unsigned>(from.size()))];
        };
        std::map<Kind, std::vector<std::string>> ids;
        QByteArrayList bodies;
        std::uint64_t number = 100;
        for (int round = 0; round < 60; ++round)
            for (const Kind kind : {Kind::Yard, Kind::Colony, Kind::Treatment, Kind::Sample, Kind::Event,
                                    Kind::Treated, Kind::ScoopCount, Kind::Round}) {
                ++number;
                const std::string id = records::makeRecordId(startMs, number, number);
                QByteArray fields;
                for (const std::string_view name : records::fieldNames(kind)) {
                    const std::string field(name);
                    QByteArray value;
                    switch (*records::typeOf(kind, name)) {
                    case FieldType::Whole:
                        value = name.ends_with("_ms")
                                    ? pick({"0", "1", "281474976710655", "1781514000000", "null"})
                                    : pick({"0", "-1", "1000000000", "-1000000000", "3", "null"});
                        break;
                    case FieldType::Real:
                        value = name.ends_with("_deg")
                                    ? pick({"0", "-90.0", "90", "45.5", "null"})
                                    : pick({"0", "-0.0", "1e12", "-1e12", "5e-324", "-3", "2", "null"});
                        break;
                    case FieldType::Flag:
                        value = pick({"0", "1", "null"});
                        break;
                    case FieldType::Text:
                        value =
                            pick({R"("")", R"("nonsense")", R"("9999-99-99")", R"("2026-02-30")", R"("-")",
                                  R"("finished")", R"("alcohol_wash")", R"("merged")", R"("2026-06-15")",
                                  R"("\u0000\n")", "\"" + QByteArray(3000, 'x') + "\"", "null"});
                        break;
                    case FieldType::Id: {
                        const auto& all = ids[*records::referredKind(kind, name)];
                        value = all.empty() || chance() % 20 == 0
                                    ? pick({"null", R"("")", R"("../x")"})
                                    : '"' + QByteArray::fromStdString(all[chance() % all.size()]) + '"';
                    }
                    }
                    fields +=
                        (fields.isEmpty() ? "\"" : ",\"") + QByteArray::fromStdString(field) + "\":" + value;
                }
                ids[kind].push_back(id);
                bodies += partBody(std::string(nameOf(kind)), id,
                                   stampAt(startMs, static_cast<std::uint32_t>(number)), fields);
            }
        const auto taken = m_phone->take(fileOf(bodies));
        QVERIFY2(taken.report.isWhole(), sentenceFor(taken.report).c_str());
        store::Store& store = m_phone->store();
        std::size_t seen = 0;
        for (const auto& yard : store.allYards()) {
            seen += store.allColonies(yard.id).size() + store.latestFinished(yard.id).size() +
                    store.treatmentsOfYard(yard.id).size() + store.eventsOfYard(yard.id).size() +
                    store.roundsOf(yard.id).size() + store.samplesOfYard(yard.id, 0).size();
            seen += store.yardRecords(yard.id).has_value();
            for (const auto& colony : store.allColonies(yard.id))
                seen += store.samplesOf(colony.id).size() + store.eventsOf(colony.id).size() +
                        store.treatmentsOf(colony.id).size();
        }
        store.forEachSample([&](const records::Sample&) { ++seen; });
        seen += store.drafts().size() + store.scoopCounts().size() + store.allTreatments().size();
        QVERIFY(seen > 200);
        QCOMPARE(store.integrityReport(), std::string("ok"));
        Phone other(path("b.db"), 99);
        QVERIFY(other.take(m_phone->file()).report.isWhole());
        QVERIFY(dumpOf(other.path()) == dumpOf(m_phone->path()));
    }

    /// A newer version's kinds, fields and members: taken, kept, and in our own next file with the same
    /// values.
    void whatANewerVersionAdds() {
        const std::string colour = records::makeRecordId(startMs, 21, 22);
        const QByteArray newer =
            R"("shade":"half","sun_h":6.0,"rows":-9223372036854775808,"roof":null,"odd":0.1)";
        const QByteArray file =
            fileOf({yardBody(newer + ",\"name\":\"Kept\""),
                    partBody("queen_mark", colour, stamp, R"("colour":"blue \u2028 \u0007")"),
                    partBody("yard", m_place.yard.id, stamp, newer)},
                   headerWith(R"("format":2,"needs":1,"device":"x","later":[1,{"a":[2]}],"sky":true)"));
        const auto taken = m_phone->take(file);
        QVERIFY2(taken.report.isWhole(), sentenceFor(taken.report).c_str());
        QCOMPARE(taken.report.header.format, 2);
        QCOMPARE(taken.plan.unknownKinds, 1);
        QCOMPARE(m_phone->store().yard(newId)->name, std::string("Kept"));
        QCOMPARE(m_phone->store().yard(m_place.yard.id)->name, std::string("By the ford"));
        const auto passedOn = [&](Phone& phone) {
            std::map<std::string, std::vector<records::Revision>> all;
            QBuffer buffer;
            buffer.setData(phone.file());
            buffer.open(QIODevice::ReadOnly);
            const auto report = readExchange(
                buffer, {[](const ExchangeHeader&) {},
                         [&](const records::RecordPart& part) {
                             std::ranges::copy(part.revisions, std::back_inserter(all[part.kind + part.id]));
                             return true;
                         }});
            return report.isWhole() ? all : decltype(all){};
        };
        const auto all = passedOn(*m_phone);
        QCOMPARE(all.at("queen_mark" + colour).size(), std::size_t{1});
        QVERIFY(all.at("queen_mark" + colour)[0].value == records::Value{"blue \u2028 \x07"});
        std::map<std::string, records::Value> fields;
        for (const auto& revision : all.at("yard" + newId))
            fields[revision.field] = revision.value;
        QVERIFY(fields.at("shade") == records::Value{"half"});
        QVERIFY(fields.at("sun_h") == records::Value{6.0});
        QVERIFY(fields.at("rows") == records::Value{std::numeric_limits<std::int64_t>::min()});
        QVERIFY(fields.at("roof") == records::Value{});
        QVERIFY(fields.at("odd") == records::Value{0.1});
        Phone other(path("b.db"), 99);
        QVERIFY(other.take(m_phone->file()).report.isWhole());
        QVERIFY(passedOn(other) == all);
        QVERIFY(m_phone->take(file).plan.nothingNew());
    }

    /// A file that a newer version wrote on: what came before is ours.
    void aSectionForNewerOnesAlone() {
        const QByteArray first = fileOf({yardBody(R"("name":"Old")")});
        const QByteArray second =
            fileOf({"{\"record\":\"in some new shape\""}, headerWith(R"("format":2,"needs":2,"device":"x")"));
        const auto taken = m_phone->take(first + second + first);
        QCOMPARE(taken.report.refusal, ExchangeRefusal::None);
        QVERIFY(taken.report.partlyNewer && !taken.report.cut && !taken.report.incomplete);
        QCOMPARE(taken.report.damagedCount, std::int64_t{0});
        QCOMPARE(taken.report.parts, std::int64_t{2});
        QVERIFY(sentenceFor(taken.report).ends_with("newer Halfcup alone and was passed over."));
    }
};

QTEST_GUILESS_MAIN(ExchangeHostileTest)
#include "exchange_hostile.moc"
