// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// The exchange folder without a synchroniser: files that grow, are half there, vanish, come twice or are
// damaged. journeys/folder carries them by a real one.
#include "exchange/keep_folder.h"
#include "store/merge.h"
#include "store/merge_log.h"
#include "store/outgoing.h"
#include "store_kit.h"

#include <QDateTime>
#include <QDir>
#include <QTemporaryDir>
#include <QTest>

using namespace halfcup;
using namespace halfcup::records;
using namespace halfcup::storetest;
using exchange::ExchangeFolder;
using exchange::FolderState;
using Look = exchange::FolderLook<store::MergePlan>;

namespace {

/// One phone and its folder.
struct Phone {
    Host host;
    std::unique_ptr<store::Store> store;
    QString folder;
    FolderState state;

    Phone(const QString& database, const QString& folderPath, std::uint64_t chance)
        : folder(folderPath) {
        host.chance = chance;
        store = std::make_unique<store::Store>(database.toStdString(), host.asked());
        QDir().mkpath(folder);
    }
    std::string device() { return store::Outgoing(*store).device(); }
    ExchangeFolder place() { return {folder, device()}; }
    Look look(std::int64_t nowMs = QDateTime::currentMSecsSinceEpoch()) {
        // As it is kept between two runs.
        state = FolderState::from(state.toText(), folder.toStdString(), device());
        return exchange::exchangeThrough<store::Merge, store::Outgoing, store::MergePlan>(place(), state,
                                                                                          *store, nowMs);
    }
    [[nodiscard]] QString own() { return place().ownFile(); }
};

} // namespace

class ExchangeFolderTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_dir;
    std::unique_ptr<Phone> m_a, m_b;

    /// What a synchroniser does, at its best.
    void carry(Phone& from, Phone& to) {
        const QString name = QFileInfo(from.own()).fileName();
        QFile::remove(to.folder + "/" + name);
        QVERIFY(QFile::copy(from.own(), to.folder + "/" + name));
    }

private slots:
    void init() {
        m_dir = std::make_unique<QTemporaryDir>();
        m_a = std::make_unique<Phone>(m_dir->filePath("a.db"), m_dir->filePath("a"), 1);
        m_b = std::make_unique<Phone>(m_dir->filePath("b.db"), m_dir->filePath("b"), 77);
    }

    void whatOneAddsTheOtherTakes() {
        const auto place = addPlace(*m_a->store);
        QVERIFY(m_a->look().written);
        carry(*m_a, *m_b);
        const Look look = m_b->look();
        QCOMPARE(look.plan.count(store::Change::New), 2);
        QVERIFY(look.taken.at(0).report.isWhole());
        QCOMPARE(m_b->store->yards().size(), std::size_t{1});
        // A first file holds all there is: the folder may be new to all of it. After that, what came through
        // the folder is not written into it once more.
        QVERIFY(bytesOf(m_b->own()).contains(place.yard.id.c_str()));
        const QByteArray first = bytesOf(m_b->own());
        addPlace(*m_a->store, "Another");
        static_cast<void>(m_a->look());
        carry(*m_a, *m_b);
        static_cast<void>(m_b->look());
        QCOMPARE(m_b->store->yards().size(), std::size_t{2});
        QCOMPARE(bytesOf(m_b->own()), first);
        QVERIFY(m_b->look().taken.empty()); // nothing is read twice
    }

    void theOwnFileOnlyGrows() {
        addPlace(*m_a->store);
        static_cast<void>(m_a->look());
        const QByteArray before = bytesOf(m_a->own());
        QVERIFY(!m_a->look().written);
        QCOMPARE(bytesOf(m_a->own()), before);
        addPlace(*m_a->store, "Another");
        QVERIFY(m_a->look().written);
        const QByteArray after = bytesOf(m_a->own());
        QVERIFY(after.startsWith(before) && after.size() > before.size());
        carry(*m_a, *m_b);
        QCOMPARE(m_b->look().plan.count(store::Change::New), 4);
    }

    void onlyWhatWasAddedIsReadAgain() {
        addPlace(*m_a->store);
        static_cast<void>(m_a->look());
        carry(*m_a, *m_b);
        static_cast<void>(m_b->look());
        addPlace(*m_a->store, "Another");
        static_cast<void>(m_a->look());
        carry(*m_a, *m_b);
        const Look look = m_b->look();
        QCOMPARE(look.taken.at(0).report.parts, std::int64_t{2}); // not the four that the file holds
        QCOMPARE(look.plan.count(store::Change::New), 2);
    }

    void aHalfCopiedFileIsWaitedFor() {
        addPlace(*m_a->store);
        static_cast<void>(m_a->look());
        const QByteArray first = bytesOf(m_a->own());
        addPlace(*m_a->store, "Another");
        static_cast<void>(m_a->look());
        const QByteArray whole = bytesOf(m_a->own());
        const QString there = m_b->folder + "/" + QFileInfo(m_a->own()).fileName();
        // Cut within the first section: nothing yet. Within the second: the first is taken.
        QVERIFY(putBytes(there, whole.left(first.size() / 2)));
        Look look = m_b->look();
        QCOMPARE(look.waiting.size(), std::size_t{1});
        QVERIFY(look.taken.empty());
        QVERIFY(putBytes(there, whole.left(first.size() + 200)));
        look = m_b->look();
        QCOMPARE(look.waiting.size(), std::size_t{1});
        QCOMPARE(m_b->store->yards().size(), std::size_t{1});
        QVERIFY(putBytes(there, whole));
        look = m_b->look();
        QVERIFY(look.waiting.empty());
        QCOMPARE(m_b->store->yards().size(), std::size_t{2});
    }

    void aDamagedFileIsTakenAsFarAsItGoesOnceItHasLainLong() {
        addPlace(*m_a->store);
        addPlace(*m_a->store, "Another");
        static_cast<void>(m_a->look());
        QByteArray bytes = bytesOf(m_a->own());
        const QString there = m_b->folder + "/" + QFileInfo(m_a->own()).fileName();
        const qsizetype place = bytes.indexOf("Another");
        bytes[place] = 'B';
        QVERIFY(putBytes(there, bytes));
        QVERIFY(m_b->look().taken.empty()); // it may still be on its way
        const auto later = QDateTime::currentMSecsSinceEpoch() + ExchangeFolder::patienceMs + 1000;
        const Look look = m_b->look(later);
        QCOMPARE(look.taken.at(0).report.damagedCount, std::int64_t{1});
        QCOMPARE(m_b->store->yards().size(), std::size_t{1});
        QVERIFY(m_b->look(later).taken.empty()); // not over and over
        carry(*m_a, *m_b);
        static_cast<void>(m_b->look());
        QCOMPARE(m_b->store->yards().size(), std::size_t{2});
    }

    void aFileThatVanishesIsNoTrouble() {
        addPlace(*m_a->store);
        static_cast<void>(m_a->look());
        carry(*m_a, *m_b);
        static_cast<void>(m_b->look());
        QVERIFY(QFile::remove(m_b->folder + "/" + QFileInfo(m_a->own()).fileName()));
        const Look look = m_b->look();
        QVERIFY(look.trouble == exchange::FolderTrouble::None && look.waiting.empty());
        QCOMPARE(m_b->store->yards().size(), std::size_t{1});
        carry(*m_a, *m_b);
        QVERIFY(m_b->look().plan.nothingNew());
    }

    void aConflictCopyIsOneMoreFile() { // as some synchronisers make them
        addPlace(*m_a->store);
        static_cast<void>(m_a->look());
        QVERIFY(QFile::copy(m_a->own(),
                            m_b->folder + "/halfcup-x.sync-conflict-20260615-101500-ABCDEFG.halfcup"));
        QCOMPARE(m_b->look().plan.count(store::Change::New), 2);
        carry(*m_a, *m_b);
        QVERIFY(m_b->look().plan.nothingNew());
    }

    void theOwnFileIsWrittenAnewWhereAnotherHandChangedIt() {
        addPlace(*m_a->store);
        static_cast<void>(m_a->look());
        const QByteArray good = bytesOf(m_a->own());
        for (const QByteArray& bad : {QByteArray(), good.left(100), good + "half a sec"}) {
            if (bad.isEmpty())
                QFile::remove(m_a->own());
            else
                QVERIFY(putBytes(m_a->own(), bad));
            QVERIFY(m_a->look().written);
            carry(*m_a, *m_b);
            m_b->state = {};
            static_cast<void>(m_b->look());
            QCOMPARE(m_b->store->yards().size(), std::size_t{1});
        }
    }

    void othersFilesAreNeverWritten() {
        addPlace(*m_a->store);
        static_cast<void>(m_a->look());
        carry(*m_a, *m_b);
        const QString there = m_b->folder + "/" + QFileInfo(m_a->own()).fileName();
        QVERIFY(QFile::setPermissions(there, QFile::ReadOwner));
        const QByteArray before = bytesOf(there);
        addPlace(*m_b->store, "B's");
        static_cast<void>(m_b->look());
        QCOMPARE(bytesOf(there), before);
        QCOMPARE(QDir(m_b->folder).entryList(QDir::Files).size(), 2);
    }

    void whatCameByMailGoesIntoTheFolder() {
        Phone c(m_dir->filePath("c.db"), m_dir->filePath("c"), 5);
        const auto place = addPlace(*c.store, "C's");
        static_cast<void>(m_a->look());
        {
            store::Merge merge(*m_a->store);
            merge.from({"mail", {}, false});
            store::Outgoing(*c.store).forEachPart([&](const RecordPart& part) { merge.take(part); });
            merge.finish();
            merge.keep();
        }
        QVERIFY(m_a->look().written);
        carry(*m_a, *m_b);
        static_cast<void>(m_b->look());
        QCOMPARE(m_b->store->yards().at(0).id, place.yard.id);
    }

    void noFolderIsSaid() {
        m_a->folder = m_dir->filePath("not there");
        const Look look = m_a->look();
        QVERIFY(look.trouble == exchange::FolderTrouble::NotThere);
        QVERIFY(!QDir(m_a->folder).exists());
    }

    void aFullDiskLeavesTheFileAsItWas() {
        const int result = inChild([&] {
            addPlace(*m_a->store);
            if (!mountSmallDisk(m_a->folder, "size=64k"))
                return skipped;
            static_cast<void>(m_a->look());
            const QByteArray before = bytesOf(m_a->own());
            for (int i = 0; i < 60; ++i) {
                Yard yard;
                yard.id = m_a->store->newId();
                yard.name = std::string(3000, 'y');
                m_a->store->save(yard);
            }
            const Look look = m_a->look();
            if (!look.writing || look.writing->problem != exchange::FileProblem::DiskFull)
                return 1;
            if (bytesOf(m_a->own()) != before)
                return 2;
            return look.written ? 3 : 0;
        });
        if (result == skipped)
            QSKIP("this system lets a test mount nothing.");
        QCOMPARE(result, 0);
    }

    void aStateOfAnotherFolderOrPhoneIsNotUsed() {
        FolderState state;
        state.folder = std::string("/one");
        state.device = std::string("d");
        state.ownSize = 7;
        state.others["x"] = {5, 6, 7, true};
        const std::string text = state.toText();
        const FolderState same = FolderState::from(text, "/one", "d");
        QCOMPARE(same.ownSize, std::int64_t{7});
        QVERIFY(same.others.at("x").done == 5 && same.others.at("x").rest);
        for (const auto& [folder, device, bad] :
             {std::tuple("/two", "d", text), std::tuple("/one", "e", text),
              std::tuple("/one", "d", std::string("{\"folder\":3")),
              std::tuple("/one", "d", std::string())}) {
            const FolderState fresh = FolderState::from(bad, folder, device);
            QVERIFY(fresh.others.empty() && fresh.ownSize == 0 && fresh.folder == folder);
        }
    }
};

QTEST_APPLESS_MAIN(ExchangeFolderTest)
#include "exchange_folder.moc"
