// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What each page asks of the database: by an index, and no more than what it shows makes needful, however
// many records there are besides. Counted in SQLite's own steps, never timed.
#include "many_records.h"
#include "query_log.h"
#include "shown_program.h"

#include <QMetaEnum>
#include <QSet>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace halfcup;
using namespace halfcup::screens;
using touch::Navigator;

class CostTest : public QObject {
    Q_OBJECT

    static constexpr int times = 10;
    // What all of them need alike (the yards' list, the tables of those joined) is not ten times as much.
    static constexpr double allowance = 1.25;

    QTemporaryDir m_folder;

    QString pathOf(const char* name) const {
        return m_folder.filePath(QLatin1String(name) + QStringLiteral(".db"));
    }

    /// What each page asks, by its name, with a colony chosen.
    static QMap<QString, std::vector<QueryLog::Ran>> asksOfPages(const QString& database) {
        bench::ShownProgram program(database, bench::dayAfterwardsMs);
        touch::App& app = program.app();
        app.here()->openColony(app.here()->colonies()->entries().first().colonyId);
        QMap<QString, std::vector<QueryLog::Ran>> asks;
        const QMetaEnum pages = QMetaEnum::fromType<Navigator::Page>();
        for (int i = 0; i < pages.keyCount(); ++i) {
            app.navigator()->home();
            app.navigator()->open(Navigator::Setup); // each is opened, even the one that is there
            QCoreApplication::processEvents();
            static_cast<void>(QueryLog::take());
            const auto page = static_cast<Navigator::Page>(pages.value(i));
            page == Navigator::Here ? app.navigator()->home() : app.navigator()->open(page);
            QCoreApplication::processEvents();
            asks[QLatin1String(pages.key(i))] = QueryLog::take();
        }
        return asks;
    }

    /// How many washes there are, and how many of them are in no backup, is said on a few pages, and SQLite
    /// counts them one by one, in the index of finished washes. Known, and let through here by name.
    static bool countsAllWashes(const QueryLog::Ran& ran) {
        return ran.sql.starts_with("SELECT count(*) FROM sample WHERE state = 'finished'");
    }

    static QMap<QString, long long> stepsOfPages(const QString& database) {
        QMap<QString, long long> steps;
        auto asks = asksOfPages(database);
        for (auto page = asks.begin(); page != asks.end(); ++page) {
            std::erase_if(page.value(), countsAllWashes);
            steps[page.key()] = stepsOf(page.value());
        }
        return steps;
    }

    /// What a plan's line reads from end to end, of the tables that grow with every wash; empty: nothing.
    static QString searchedThrough(const QString& plan) {
        const QSet<QString> grow{QStringLiteral("sample"),      QStringLiteral("s"),
                                 QStringLiteral("count_event"), QStringLiteral("revision"),
                                 QStringLiteral("event"),       QStringLiteral("treated")};
        const QString table = plan.section(QLatin1Char(' '), 1, 1);
        // The index of drafts holds nothing else.
        const bool scans = plan.startsWith(QLatin1String("SCAN ")) && !plan.contains(QLatin1String("drafts"));
        return scans && grow.contains(table) ? table : QString();
    }

    static void compare(const QMap<QString, long long>& few, const QMap<QString, long long>& many,
                        const QString& page, double most) {
        const auto before = static_cast<double>(few.value(page));
        const auto after = static_cast<double>(many.value(page));
        QVERIFY2(after <= std::max(before, 1.0) * most,
                 qPrintable(QStringLiteral("%1: %2 steps, and %3 with more records, more than %4 times")
                                .arg(page)
                                .arg(before)
                                .arg(after)
                                .arg(most)));
    }

private slots:
    void initTestCase() {
        QVERIFY(m_folder.isValid());
        touch::prepareQuick();
        bench::makeManyRecords(pathOf("few").toStdString(), 20, 20 * 12);
        bench::makeManyRecords(pathOf("long").toStdString(), 20, 20 * 12 * times);
        bench::makeManyRecords(pathOf("wide").toStdString(), 20 * times, 20 * times * 12);
        QueryLog::watch();
    }

    /// Ten years instead of one: only what shows all that there was may ask for more.
    void noPageReadsHistoryThatItDoesNotShow() {
        const QSet<QString> showsAll{QStringLiteral("Colony"), QStringLiteral("History")};
        const auto few = stepsOfPages(pathOf("few"));
        const auto many = stepsOfPages(pathOf("long"));
        QVERIFY(few.value(QStringLiteral("Here")) > 0 && few.value(QStringLiteral("Season")) > 0);
        for (auto page = few.keyBegin(); page != few.keyEnd(); ++page)
            compare(few, many, *page, showsAll.contains(*page) ? times * allowance : allowance);
    }

    /// Ten yards instead of one: a page of one yard asks for no more, one of all yards for ten times as much.
    void aPageOfOneYardReadsNoOther() {
        const QSet<QString> ofOneYard{QStringLiteral("Here"), QStringLiteral("Colony"),
                                      QStringLiteral("Round"), QStringLiteral("Compare"),
                                      QStringLiteral("Tray")};
        const auto few = stepsOfPages(pathOf("few"));
        const auto many = stepsOfPages(pathOf("wide"));
        for (auto page = few.keyBegin(); page != few.keyEnd(); ++page)
            compare(few, many, *page, ofOneYard.contains(*page) ? allowance : times * allowance);
    }

    /// Tables that grow are looked into by an index.
    void noPageSearchesThroughAWholeTable() {
        const auto asks = asksOfPages(pathOf("few"));
        QSet<QString> seen;
        for (auto page = asks.begin(); page != asks.end(); ++page)
            for (const QueryLog::Ran& ran : page.value()) {
                const QString sql = QString::fromStdString(ran.sql);
                if (!sql.startsWith(QLatin1String("SELECT")) || seen.contains(sql) || countsAllWashes(ran))
                    continue;
                seen.insert(sql);
                for (const std::string& line : planOf(pathOf("few").toStdString(), ran.sql)) {
                    const QString plan = QString::fromStdString(line);
                    QVERIFY2(searchedThrough(plan).isEmpty(),
                             qPrintable(QStringLiteral("%1: %2 for %3").arg(page.key()).arg(plan).arg(sql)));
                }
            }
        QVERIFY(seen.size() > 10);
    }
};

QTEST_MAIN(CostTest)
#include "cost_test.moc"
