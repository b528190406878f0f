// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Damaged exchange files: every intact line is taken, every damaged one named, nothing wrong is ever taken,
// and the good copy completes what is there.
#include "exchange/exchange_sentence.h"
#include "exchange_kit.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <random>

using namespace halfcup;
using namespace halfcup::exchange;
using namespace halfcup::exchangetest;
using records::RecordPart;

namespace {

struct Read {
    ExchangeReport report;
    std::vector<RecordPart> parts;
    int headers = 0;
};

Read readBytes(const QByteArray& bytes) {
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    Read read;
    read.report = readExchange(buffer, {[&](const ExchangeHeader&) { ++read.headers; },
                                        [&](const RecordPart& part) {
                                            read.parts.push_back(part);
                                            return true;
                                        }});
    return read;
}

bool flip(QByteArray& bytes, qsizetype bit) {
    bytes[bit / 8] = static_cast<char>(bytes[bit / 8] ^ (1 << (bit % 8)));
    return bytes[bit / 8] == '\n';
}

} // namespace

class ExchangeDamageTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QByteArray m_good;               // the demo season and all other kinds, 200 kB and more
    std::vector<RecordPart> m_parts; // of it, one for each line between the first and the last
    std::string m_dump;              // of a database that took the good copy alone
    int m_databases = 0;

    std::unique_ptr<Phone> emptyPhone() {
        const QString path = m_folder.filePath(QStringLiteral("%1.db").arg(++m_databases));
        QFile::copy(m_folder.filePath("empty.db"), path);
        return std::make_unique<Phone>(path, 77);
    }
    void drop(std::unique_ptr<Phone> phone) {
        const QString path = phone->path();
        phone.reset();
        for (const char* ending : {"", "-wal", "-shm", ".before-merge"})
            QFile::remove(path + QLatin1String(ending));
    }

    /// The season goes on: each colony of the demo is washed and counted once more, so many times.
    void washOn(Phone& phone, int rounds) {
        for (int round = 1; round <= rounds; ++round)
            for (const auto& yard : phone.store().yards())
                for (const auto& colony : phone.store().colonies(yard.id)) {
                    phone.host.nowMs += 600'000;
                    auto sample = addSample(phone.store(), colony, phone.host.nowMs);
                    for (int tap = 0; tap < round; ++tap)
                        phone.store().addCount(sample.id, {0, 1, {}, 0, phone.host.nowMs + tap});
                    sample.state = records::SampleState::Finished;
                    sample.finishedAtMs = phone.host.nowMs;
                    phone.store().save(sample);
                }
    }

    /// Takes in the damaged file, then the good one.
    QString completes(const QByteArray& damaged, ExchangeReport* report = nullptr) {
        auto phone = emptyPhone();
        const Taken taken = phone->take(damaged);
        if (report)
            *report = taken.report;
        if (const std::string state = phone->store().integrityReport(); state != "ok")
            return QString::fromStdString(state);
        if (!phone->take(m_good).report.isWhole())
            return "the good copy is called damaged";
        const bool equal = dumpOf(phone->path()) == m_dump;
        drop(std::move(phone));
        return equal ? QString()
                     : QStringLiteral("the database differs from one that took the good copy alone");
    }

    /// One bit of a file flipped: which lines are then damaged, and that all others come as they were.
    QString complaintAbout(const QByteArray& good, const std::vector<RecordPart>& parts, qsizetype bit) {
        QByteArray bytes = good;
        const bool newEnd = flip(bytes, bit);
        const auto line = good.left(bit / 8).count('\n'); // from 0
        const bool lostEnd = good[bit / 8] == '\n';
        const Read read = readBytes(bytes);
        std::vector<RecordPart> expected;
        for (qsizetype i = 0; i < static_cast<qsizetype>(parts.size()); ++i)
            if (i + 1 != line && !(lostEnd && i == line))
                expected.push_back(parts[static_cast<std::size_t>(i)]);
        if (read.report.refusal != ExchangeRefusal::None)
            return "refused";
        if (read.report.isWhole())
            return "called whole";
        if (read.parts != expected)
            return "other parts than the intact ones are taken";
        if (lostEnd && bit / 8 == good.size() - 1) // the last line has lost its end and looks cut
            return read.report.cut && read.report.damagedCount == 0 ? QString()
                                                                    : QStringLiteral("not called cut");
        if (read.report.damagedCount != (newEnd ? 2 : 1) || read.report.damaged[0].number != line + 1)
            return QStringLiteral("line %1 is not the one that is named").arg(line + 1);
        return {};
    }

private slots:
    void initTestCase() {
        Phone(m_folder.filePath("empty.db")).store();
        Phone phone(m_folder.filePath("good.db"), 5);
        keepAllKinds(phone);
        washOn(phone, 12);
        m_good = phone.file();
        m_parts = readBytes(m_good).parts;
        QVERIFY2(m_good.size() >= 200'000, qPrintable(QString::number(m_good.size())));
        QCOMPARE(static_cast<qsizetype>(m_parts.size()), m_good.count('\n') - 2);
        auto other = emptyPhone();
        QVERIFY(other->take(m_good).report.isWhole());
        m_dump = dumpOf(other->path());
        QVERIFY(m_dump == dumpOf(phone.path()));
        drop(std::move(other));
        qInfo("the file has %lld bytes in %lld lines", static_cast<long long>(m_good.size()),
              static_cast<long long>(m_good.count('\n')));
    }

    void cutAtEveryThousandthByte() {
        int cuts = 0;
        for (qsizetype size = 1000; size < m_good.size(); size += 1000, ++cuts) {
            ExchangeReport report;
            const QByteArray cut = m_good.left(size);
            const QString complaint = completes(cut, &report);
            QVERIFY2(complaint.isEmpty(), qPrintable(QStringLiteral("%1: %2").arg(size).arg(complaint)));
            QCOMPARE(report.refusal, ExchangeRefusal::None);
            QVERIFY(report.cut);
            QCOMPARE(report.damagedCount, std::int64_t{0});
            const bool atEnd = m_good[size] == '\n'; // only the line end is lost: the line is there
            QCOMPARE(report.parts, std::max<std::int64_t>(0, cut.count('\n') - 1 + atEnd));
        }
        QVERIFY(cuts >= 200);
        qInfo("%d cuts", cuts);
    }

    /// At every byte around the ends of lines, where reading could go wrong by one.
    void cutAroundLineEnds() {
        qsizetype end = -1;
        for (int line = 0; line < 40; ++line) {
            end = m_good.indexOf('\n', end + 1);
            for (qsizetype size = end - 1; size <= end + 2; ++size) {
                const Read read = readBytes(m_good.left(size));
                QVERIFY(read.report.cut);
                QCOMPARE(read.report.damagedCount, std::int64_t{0});
                QCOMPARE(static_cast<int>(read.parts.size()), std::max(0, line - (size < end)));
                for (std::size_t i = 0; i < read.parts.size(); ++i)
                    QVERIFY(read.parts[i] == m_parts[i]);
            }
        }
        for (const qsizetype size :
             {qsizetype{1}, qsizetype{10}}) // nothing in it says that it was one of ours
            QCOMPARE(readBytes(m_good.left(size)).report.refusal, ExchangeRefusal::NotOurs);
        QCOMPARE(readBytes(m_good.left(30)).report.refusal, ExchangeRefusal::None);
        QVERIFY(
            readBytes(m_good.left(m_good.size() - 1)).report.isWhole()); // some editors take the last end off
    }

    void singleBitsFlippedAtSeededPlaces() {
        std::mt19937_64 chance(20260615);
        for (int i = 0; i < 2000; ++i) {
            const auto bit =
                static_cast<qsizetype>(chance() % (static_cast<std::uint64_t>(m_good.size()) * 8));
            const QString complaint = complaintAbout(m_good, m_parts, bit);
            QVERIFY2(complaint.isEmpty(), qPrintable(QStringLiteral("bit %1: %2").arg(bit).arg(complaint)));
            if (i % 40 != 0) // a database for some of them
                continue;
            QByteArray bytes = m_good;
            flip(bytes, bit);
            const QString after = completes(bytes);
            QVERIFY2(after.isEmpty(), qPrintable(QStringLiteral("bit %1: %2").arg(bit).arg(after)));
        }
    }

    /// Header, first records, last record and end line: each of their bits.
    void everyBitOfAShortFile() {
        QByteArrayList lines = linesOf(m_good);
        const QByteArrayList few{lines[0], lines[1], lines[2], lines[lines.size() - 3]};
        QByteArray file = few.join('\n') + '\n';
        ExchangeEnd end;
        end.lines = few.size();
        end.sha256 = QCryptographicHash::hash(file, QCryptographicHash::Sha256).toHex().toStdString();
        file += QByteArray::fromStdString(endLine(end)) + '\n';
        const std::vector<RecordPart> parts = readBytes(file).parts;
        QCOMPARE(parts.size(), std::size_t{3});
        QVERIFY(readBytes(file).report.isWhole());
        for (qsizetype bit = 0; bit < file.size() * 8; ++bit) {
            const QString complaint = complaintAbout(file, parts, bit);
            QVERIFY2(complaint.isEmpty(), qPrintable(QStringLiteral("bit %1: %2").arg(bit).arg(complaint)));
        }
        qInfo("%lld bits", static_cast<long long>(file.size() * 8));
    }

    void linesMovedDoubledAndLost() {
        const QByteArrayList lines = linesOf(m_good);
        const auto check = [&](const QByteArrayList& changed, bool cut, const char* what) {
            ExchangeReport report;
            const QString complaint = completes(changed.join('\n'), &report);
            QVERIFY2(complaint.isEmpty(), qPrintable(QString(what) + ": " + complaint));
            QVERIFY2(report.damagedCount == 0 && !report.isWhole(), what);
            QVERIFY2(report.cut == cut && report.incomplete == !cut, what);
        };
        QByteArrayList changed = lines;
        changed.swapItemsAt(3, 40);
        check(changed, false, "two lines swapped");
        changed = lines;
        changed.insert(9, lines[8]);
        check(changed, false, "a line doubled");
        changed = lines;
        changed.removeAt(17);
        check(changed, false, "a line lost");
        changed = lines;
        changed.removeFirst();
        check(changed, false, "the first line lost");
        changed = lines;
        changed.removeAt(lines.size() - 2);
        check(changed, true, "the last line lost");
        changed = lines;
        changed.insert(lines.size() - 1, lines[lines.size() - 2]);
        check(changed, false, "the last line doubled");
        changed = lines.mid(0, lines.size() - 2) + lines; // the end lost, and the whole file again behind it
        check(changed, true, "written on after a cut");
    }

    /// A damaged line does not hide that another one is missing.
    void damagedAndLost() {
        QByteArrayList lines = linesOf(m_good);
        lines[20][30] = static_cast<char>(lines[20][30] ^ 1);
        QVERIFY(!readBytes(lines.join('\n')).report.incomplete);
        lines.removeAt(25);
        const ExchangeReport report = readBytes(lines.join('\n')).report;
        QVERIFY(report.incomplete);
        QCOMPARE(report.damaged.at(0).number, std::int64_t{21});
    }

    /// As mails and editors change a text; nothing in a line can be meant otherwise, so all of it is taken.
    void otherLineEndsAndAByteOrderMark() {
        QByteArray crlf = m_good;
        crlf.replace("\n", "\r\n");
        for (const QByteArray& bytes :
             {crlf, "\xEF\xBB\xBF" + m_good, "\xEF\xBB\xBF" + crlf, m_good + "\n\r\n"}) {
            const Read read = readBytes(bytes);
            QVERIFY2(read.report.isWhole(), sentenceFor(read.report).c_str());
            QVERIFY(read.parts == m_parts);
        }
    }

    void sectionsAddedLater() {
        const Read read = readBytes(m_good + m_good);
        QVERIFY(read.report.isWhole());
        QCOMPARE(read.headers, 2);
        QCOMPARE(read.parts.size(), 2 * m_parts.size());
        QBuffer buffer;
        buffer.setData(m_good + m_good.left(m_good.size() - 10));
        buffer.open(QIODevice::ReadOnly);
        QCOMPARE(completeUpTo(buffer, 0), static_cast<std::int64_t>(m_good.size()));
        QVERIFY(readBytes(buffer.data()).report.cut);
        // The header of the second is damaged: what it began is taken all the same.
        QByteArray bytes = m_good + m_good;
        flip(bytes, m_good.size() * 8 + 100);
        const Read damaged = readBytes(bytes);
        QCOMPARE(damaged.report.damagedCount, std::int64_t{1});
        QCOMPARE(damaged.report.damaged[0].number, static_cast<std::int64_t>(m_good.count('\n') + 1));
        QCOMPARE(damaged.parts.size(), 2 * m_parts.size());
        QVERIFY(!damaged.report.incomplete && !damaged.report.cut);
    }
};

QTEST_GUILESS_MAIN(ExchangeDamageTest)
#include "exchange_damage.moc"
