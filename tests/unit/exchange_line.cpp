// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Lines of exchange files: every value comes back as it went, for our own reader and for others (Python's
// json, zlib and hashlib, and a JSON Schema validator).
#include "exchange/exchange_sentence.h"
#include "exchange_kit.h"

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>
#include <limits>

using namespace halfcup;
using namespace halfcup::exchange;
using namespace halfcup::exchangetest;
using records::CountEvent;
using records::RecordPart;
using records::Value;

namespace {

const std::string id = records::makeRecordId(startMs, 7, 8);

/// Everything a value can be.
std::vector<Value> values() {
    using Whole = std::numeric_limits<std::int64_t>;
    using Real = std::numeric_limits<double>;
    std::vector<Value> all{{},
                           Whole::min(),
                           Whole::max(),
                           std::int64_t{0},
                           std::int64_t{-1},
                           0.1,
                           1e300,
                           -0.0,
                           0.0,
                           300.0,
                           -1e22,
                           5e-324,
                           1.0 / 3,
                           123456789012345678.0,
                           Real::max(),
                           Real::min(),
                           Real::epsilon()};
    for (const char* text :
         {"", "4", "\"quoted\" and \\ and /", "two\nlines\r\n\ttab", "\x01\x1f\x7f", "\u2028\u2029",
          "\xF0\x9F\x90\x9D bee, \xE8\x9C\x82", "\u202Eturned\u202C", "\uFEFF", "../../etc/passwd",
          "=cmd|' /C calc'!A0", "null", "]}\",\"sum\":\"00000000\"}", "\xED\x9F\xBF\xEE\x80\x80"})
        all.emplace_back(std::string(text));
    all.emplace_back(std::string("with\0zero", 9));
    all.emplace_back(std::string(100'000, 'x'));
    all.emplace_back(std::string(100'000, '"'));
    std::string emoji;
    while (emoji.size() < 100'000)
        emoji += "\xF0\x9F\x90\x9D";
    all.emplace_back(emoji);
    return all;
}

/// As the script shows it.
QByteArray shown(const Value& value) {
    if (const auto* text = std::get_if<std::string>(&value))
        return "t:" + QByteArray::fromStdString(*text).toHex();
    if (const auto* whole = std::get_if<std::int64_t>(&value))
        return "i:" + QByteArray::number(static_cast<qlonglong>(*whole));
    return "n:";
}

bool sameBits(const Value& one, const Value& other) {
    const auto* first = std::get_if<double>(&one);
    const auto* second = std::get_if<double>(&other);
    if (first && second)
        return std::bit_cast<std::uint64_t>(*first) == std::bit_cast<std::uint64_t>(*second);
    return one == other;
}

std::vector<RecordPart> partsOf(const QByteArray& bytes, ExchangeReport* report = nullptr) {
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    std::vector<RecordPart> parts;
    const ExchangeReport read = readExchange(buffer, {[](const ExchangeHeader&) {},
                                                      [&](const RecordPart& part) {
                                                          parts.push_back(part);
                                                          return true;
                                                      }});
    if (report)
        *report = read;
    return parts;
}

struct Run {
    int code = -1;
    QByteArray out, err;
};

Run outside(const QStringList& arguments) {
    QProcess python;
    python.start("python3",
                 QStringList{"-B", HALFCUP_SOURCE_DIR "/tests/unit/exchange_outside.py"} + arguments);
    python.waitForFinished(100'000);
    return {python.exitStatus() == QProcess::NormalExit ? python.exitCode() : -1,
            python.readAllStandardOutput(), python.readAllStandardError()};
}

} // namespace

class ExchangeLineTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

private slots:
    /// The check value that every description of CRC-32 gives for these nine digits (ISO 3309; ITU-T V.42).
    void theSumIsCrc32() {
        QCOMPARE(lineSum("123456789"), std::string("cbf43926"));
        QCOMPARE(lineSum(""), std::string("00000000"));
    }

    void everyValueComesBack() {
        for (const Value& value : values()) {
            const std::vector<records::Revision> revisions{{"newer_field", stampAt(startMs), value}};
            const std::string line = partLine(id, "later", revisions, {});
            QVERIFY(line.find('\n') == std::string::npos);
            const ReadLine read = readLine(line);
            QVERIFY2(read.part && read.part->revisions.size() == 1, line.substr(0, 200).c_str());
            QVERIFY2(sameBits(read.part->revisions[0].value, value), line.substr(0, 200).c_str());
            QCOMPARE(read.part->revisions[0].value.index(), value.index()); // 300.0 stays a real
            QCOMPARE(read.part->kind, std::string("later"));
            QCOMPARE(read.part->id, id);
            QCOMPARE(read.part->revisions[0].stamp, stampAt(startMs));
        }
    }

    void noNumberIsNothing() {
        for (const double number : {std::nan(""), HUGE_VAL, -HUGE_VAL}) {
            const std::vector<records::Revision> revisions{{"newer_field", stampAt(startMs), number}};
            const ReadLine read = readLine(partLine(id, "later", revisions, {}));
            QVERIFY(read.part && read.part->revisions[0].value == Value{});
        }
    }

    void headerAndEndComeBack() {
        ExchangeHeader header;
        header.device = "0123-abc";
        header.written = "2026-06-15T09:00:00Z";
        header.counts = {{"yard", 3}, {"later", 7}};
        header.seen = {{"0123-abc", stampAt(startMs, 4, "0123-abc")}, {"other", stampAt(1, 0, "other")}};
        const std::string line = headerLine(header);
        QVERIFY(line.starts_with(exchangeMagic));
        const ReadLine read = readLine(line);
        QVERIFY(read.header && !read.part && !read.end);
        QCOMPARE(read.header->format, 1);
        QCOMPARE(read.header->needs, 1);
        QCOMPARE(read.header->device, header.device);
        QCOMPARE(read.header->written, header.written);
        QVERIFY(read.header->counts == header.counts);
        QVERIFY(read.header->seen == header.seen);
        const ReadLine end = readLine(endLine({12, std::string(64, 'a')}));
        QVERIFY(end.end && end.end->lines == 12 && end.end->sha256 == std::string(64, 'a'));
    }

    /// A stranger's file can bring any number of phones; what we write must stay readable all the same.
    void aHeaderStaysOneLine() {
        ExchangeHeader header;
        header.device = "own";
        for (int i = 0; i < 20'000; ++i) {
            const std::string device = std::string(58, 'a') + std::to_string(100'000 + i);
            header.seen[device] = stampAt(startMs + i, 0, device);
        }
        header.seen["own"] = stampAt(startMs + 50'000, 0, "own");
        const ReadLine read = readLine(headerLine(header));
        QVERIFY(read.header);
        QCOMPARE(read.header->seen.size(), mostSeen);
        QCOMPARE(read.header->seen.count("own"), std::size_t{1});
        QCOMPARE(read.header->seen.count(std::string(58, 'a') + "119999"), std::size_t{1});
        QCOMPARE(read.header->seen.count(std::string(58, 'a') + "100000"), std::size_t{0});
    }

    void aLongRecordIsSplitAndReadsBackEqual() {
        RecordPart part;
        part.id = id;
        part.kind = "sample";
        for (std::uint32_t i = 0; i < 40; ++i)
            part.revisions.push_back(
                {"note", stampAt(startMs, i), std::string(20'000 + i, i % 2 ? '\n' : 'n')});
        for (std::uint32_t i = 0; i < 10'000; ++i) {
            CountEvent event;
            event.rinse = 1 + static_cast<int>(i % 2);
            event.change = static_cast<CountEvent::Change>(i % 3);
            event.typed = event.change == CountEvent::Change::Typed ? i : 0;
            event.atUtcMs = startMs + i;
            part.counts.push_back({stampAt(startMs, 100 + i), event});
        }
        QByteArray bytes;
        ExchangeHeader header;
        header.device = "own";
        ExchangeWriter writer(into(bytes), header);
        writer.part(part);
        writer.end();
        const QByteArrayList lines = linesOf(bytes);
        QVERIFY(lines.size() > 30);
        QCOMPARE(writer.lines(), static_cast<std::int64_t>(lines.size() - 1));
        for (const QByteArray& line : lines)
            QVERIFY(line.size() <= static_cast<qsizetype>(longestLine));
        ExchangeReport report;
        RecordPart together;
        for (const RecordPart& piece : partsOf(bytes, &report)) {
            QCOMPARE(piece.id, part.id);
            QCOMPARE(piece.kind, part.kind);
            std::ranges::copy(piece.revisions, std::back_inserter(together.revisions));
            std::ranges::copy(piece.counts, std::back_inserter(together.counts));
        }
        QVERIFY(report.isWhole());
        QVERIFY(together.revisions == part.revisions);
        QVERIFY(together.counts == part.counts);
    }

    /// Python's own json, zlib.crc32 and hashlib read the same.
    void othersReadTheSame() {
        QByteArray bytes, expected;
        ExchangeHeader header;
        header.device = "own";
        ExchangeWriter writer(into(bytes), header);
        for (const Value& value : values()) {
            writer.part({id, "later", {{"newer_field", stampAt(startMs), value}}, {}});
            const auto* real = std::get_if<double>(&value);
            expected += "newer_field " + (real ? "r:" : shown(value));
            if (real) { // the other program's own notation for the bits
                QProcess python;
                python.start(
                    "python3",
                    {"-c",
                     "import struct,sys; print(struct.unpack('>d', bytes.fromhex(sys.argv[1]))[0].hex())",
                     QStringLiteral("%1").arg(std::bit_cast<std::uint64_t>(*real), 16, 16, QChar('0'))});
                QVERIFY(python.waitForFinished(60'000));
                expected += python.readAllStandardOutput().trimmed();
            }
            expected += '\n';
        }
        writer.end();
        const QString path = m_folder.filePath("values.halfcup");
        QVERIFY(putBytes(path, bytes));
        const Run run = outside({path});
        QVERIFY2(run.code == 0, run.err);
        QVERIFY(run.out == expected);
    }

    /// What the program writes of all kinds of records holds against the schema, and broken lines do not.
    void theSchemaHolds() {
        Phone phone(m_folder.filePath("all.db"));
        keepAllKinds(phone);
        const QByteArray bytes = phone.file();
        for (const auto kind : records::allKinds)
            QVERIFY2(bytes.contains(QByteArray("{\"kind\":\"") + std::string(nameOf(kind)).c_str() + '"'),
                     std::string(nameOf(kind)).c_str());
        const QString path = m_folder.filePath("all.halfcup");
        QVERIFY(putBytes(path, bytes));
        const Run run = outside({path, HALFCUP_SOURCE_DIR "/assets/exchange/line.schema.json"});
        if (run.code == 77)
            QSKIP(run.out.constData());
        QVERIFY2(run.code == 0, run.out.right(300) + run.err.left(3000));
        qInfo("%s", run.out.trimmed().constData());
        Phone other(m_folder.filePath("other.db"), 99);
        QVERIFY(other.take(bytes).report.isWhole());
        QVERIFY(dumpOf(other.path()) == dumpOf(phone.path()));
    }

    /// The schema's fields are the program's, neither fewer nor more, and of the same types.
    void theSchemaKnowsTheFields() {
        QFile file(HALFCUP_SOURCE_DIR "/assets/exchange/line.schema.json");
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QJsonObject schema = QJsonDocument::fromJson(file.readAll()).object();
        const QJsonArray all = schema["$defs"]["part"]["allOf"].toArray();
        QCOMPARE(all.size(), static_cast<qsizetype>(records::allKinds.size()));
        for (const QJsonValue each : all) {
            const auto kind =
                records::kindFrom(each["if"]["properties"]["kind"]["const"].toString().toStdString());
            QVERIFY(kind);
            const QJsonObject fields =
                each["then"]["properties"]["revisions"]["items"]["properties"]["fields"]["properties"]
                    .toObject();
            QCOMPARE(fields.size(), static_cast<qsizetype>(records::fieldNames(*kind).size()));
            for (const std::string_view name : records::fieldNames(*kind)) {
                const QJsonValue field = fields[QString::fromStdString(std::string(name))];
                using enum records::FieldType;
                const auto type = field.toObject().contains("oneOf")  ? Id
                                  : field.toObject().contains("enum") ? Flag
                                  : field["type"][0] == "integer"     ? Whole
                                  : field["type"][0] == "number"      ? Real
                                                                      : Text;
                QVERIFY2(!field.isUndefined() && records::typeOf(*kind, name) == type,
                         std::string(name).c_str());
                if (type != Whole && type != Real)
                    continue;
                // The ends of its range fit, what lies beyond does not.
                for (const char* end : {"minimum", "maximum"}) {
                    const double limit = field[QLatin1String(end)].toDouble();
                    const double beyond =
                        limit + (end[1] == 'i' ? -1 : 1) * std::max(1.0, std::abs(limit) / 1e9);
                    const auto fits = [&](double number) {
                        return records::fits(type == Whole ? Value{static_cast<std::int64_t>(number)}
                                                           : Value{number},
                                             *kind, name);
                    };
                    QVERIFY2(fits(limit) && !fits(beyond), std::string(name).c_str());
                }
            }
        }
    }

    /// The small file in the page for developers is a real one.
    void theExampleOfThePageIsValid() {
        QFile page(HALFCUP_SOURCE_DIR "/cpp/exchange/exchange-file.md");
        QVERIFY(page.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(page.readAll());
        const auto match =
            QRegularExpression("```jsonl\n(.*?)```", QRegularExpression::DotMatchesEverythingOption)
                .match(text);
        QVERIFY(match.hasMatch());
        const QByteArray bytes = match.captured(1).toUtf8();
        Phone phone(m_folder.filePath("page.db"));
        const Taken taken = phone.take(bytes);
        QVERIFY2(taken.report.isWhole(), sentenceFor(taken.report).c_str());
        QCOMPARE(taken.plan.waiting, 0);
        QCOMPARE(phone.store().yards().size(), std::size_t{1});
        QCOMPARE(phone.store().sampleCount(), 1);
        QCOMPARE(
            phone.store()
                .countEvents(
                    phone.store().samplesOf(phone.store().colonies(phone.store().yards()[0].id)[0].id)[0].id)
                .size(),
            std::size_t{3});
        const QString path = m_folder.filePath("page.halfcup");
        QVERIFY(putBytes(path, bytes));
        const Run run = outside({path});
        QVERIFY2(run.code == 0, run.err);
    }

    void sentencesSayWhatIsWrong() {
        ExchangeReport report;
        report.parts = 1;
        QCOMPARE(sentenceFor(report), std::string("1 record read."));
        report.parts = 4;
        report.damaged = {{12, LineTrouble::Damaged, {}}, {13, LineTrouble::BadField, "name"}};
        report.damagedCount = 5;
        report.cut = true;
        QCOMPARE(
            sentenceFor(report),
            std::string("4 records read, 5 lines left out. The end of the file is missing. A good copy of "
                        "the file completes it."));
        QCOMPARE(damagedLineSentences(report),
                 (std::vector<std::string>{"Line 12: damaged: it is not as it was written.",
                                           "Line 13: \"name\" has a name or a value that cannot be.",
                                           "And 3 lines more."}));
        std::set<std::string> different;
        for (int i = 1; i <= static_cast<int>(ExchangeRefusal::Newer); ++i) {
            report.refusal = static_cast<ExchangeRefusal>(i);
            different.insert(sentenceFor(report));
            QVERIFY(damagedLineSentences(report).empty());
        }
        QCOMPARE(different.size(), std::size_t{6});
        QVERIFY(!different.contains(""));
    }
};

QTEST_GUILESS_MAIN(ExchangeLineTest)
#include "exchange_line.moc"
