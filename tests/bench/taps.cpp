// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// From the touch on the counting page to the tap on the disk, beside a bare transaction of one row in
// SQLite's same mode on the same disk; and a minute of twenty taps a second: bench_taps FOLDER RUNS SECONDS.
// Lines: "bare MS", "tap MS", "told MS" in turns: to SQLite's word that it is committed, both, and until the
// touch returns, with the page told. Then "frame MS" for each frame of the minute, from the touch to its
// picture.
#include "shown_program.h"

#include "exchange/demo_reader.h"
#include "exchange/keep_demo.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QQuickItem>
#include <QTimer>

#include <cstdio>
#include <sqlite3.h>
#include <stdexcept>
#include <vector>

using namespace halfcup;

namespace {

double since(const QElapsedTimer& timer) {
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

void must(bool well, const char* what) {
    if (!well)
        throw std::runtime_error(what);
}

/// SQLite says of every connection of this process when a commit is on the disk.
class CommitClock {
public:
    /// Before the first connection.
    static void noteConnections() { sqlite3_auto_extension(reinterpret_cast<void (*)()>(onOpened)); }
    /// Not sooner: at the end of its opening SQLite puts its own hook there, which does no more than
    /// onCommitted's checkpoint.
    static void watch() {
        must(connections.size() == 2, "Other connections than the records' and the floor's.");
        for (sqlite3* database : connections)
            sqlite3_wal_hook(database, onCommitted, nullptr);
    }
    static void start() {
        committedAfterMs = -1;
        timer.start();
    }
    static double committed() {
        must(committedAfterMs >= 0, "Nothing was committed.");
        return committedAfterMs;
    }
    static double now() { return since(timer); }

private:
    static int onOpened(sqlite3* database, char** /*error*/, const void* /*api*/) {
        connections.push_back(database);
        return SQLITE_OK;
    }
    static int onCommitted(void* /*context*/, sqlite3* database, const char* name, int pages) {
        committedAfterMs = now();
        constexpr int usualPages = 1000; // SQLITE_DEFAULT_WAL_AUTOCHECKPOINT
        if (pages >= usualPages)
            sqlite3_wal_checkpoint_v2(database, name, SQLITE_CHECKPOINT_PASSIVE, nullptr, nullptr);
        return SQLITE_OK;
    }
    static inline std::vector<sqlite3*> connections;
    static inline QElapsedTimer timer;
    static inline double committedAfterMs = -1;
};

/// One row, one transaction, nothing else: what a tap cannot be faster than.
class BareTransaction {
public:
    explicit BareTransaction(const QString& path) {
        must(sqlite3_open(path.toUtf8().constData(), &m_database) == SQLITE_OK,
             "The floor cannot be opened.");
        run("PRAGMA journal_mode = WAL");
        run("PRAGMA synchronous = FULL");
        run("CREATE TABLE row(id INTEGER PRIMARY KEY, sample_id TEXT, stamp TEXT, change TEXT, at_ms "
            "INTEGER)");
        must(
            sqlite3_prepare_v2(m_database,
                               "INSERT INTO row(sample_id, stamp, change, at_ms) VALUES"
                               " ('018f0000-0000-7000-8000-000000000000',"
                               " '0000019ec0000000-00000000-018f0000-0000-7000-8000-000000000001', 'tap', ?)",
                               -1, &m_insert, nullptr) == SQLITE_OK,
            "The floor's statement is wrong.");
    }
    ~BareTransaction() {
        sqlite3_finalize(m_insert);
        sqlite3_close(m_database);
    }
    BareTransaction(const BareTransaction&) = delete;
    BareTransaction& operator=(const BareTransaction&) = delete;

    void write(std::int64_t atMs) {
        sqlite3_bind_int64(m_insert, 1, atMs);
        must(sqlite3_step(m_insert) == SQLITE_DONE, "The floor was not written.");
        sqlite3_reset(m_insert);
    }

private:
    void run(const char* sql) {
        must(sqlite3_exec(m_database, sql, nullptr, nullptr, nullptr) == SQLITE_OK, sql);
    }
    sqlite3* m_database = nullptr;
    sqlite3_stmt* m_insert = nullptr;
};

QQuickItem* find(QQuickItem* root, const QString& name) {
    if (!root->isVisible())
        return nullptr;
    if (root->objectName() == name)
        return root;
    for (QQuickItem* child : root->childItems())
        if (QQuickItem* found = find(child, name))
            return found;
    return nullptr;
}

/// The program at the counting page of a demo colony.
class Counting {
public:
    explicit Counting(const QString& database)
        : m_program(database, device::SetClock::kStartUtcMs, loadDemo) {
        touch::App& app = m_program.app();
        app.navigator()->home();
        app.here()->refresh();
        app.here()->act();
        touch::WashController& wash = *app.wash();
        wash.queenSafe();
        wash.scooped();
        wash.poured();
        m_program.clock().advance(61'000);
        wash.endShake();
        m_program.clock().advance(31'000);
        wash.endSettle();
        QTest::qWait(500);
        QQuickItem* field = find(window()->contentItem(), QStringLiteral("countField"));
        must(field, "The counting page is not there.");
        m_at = field->mapToScene(QPointF(field->width() / 2, field->height() / 2)).toPoint();
    }

    void fingerDown() {
        m_program.clock().advance(1);
        QTest::mousePress(window(), Qt::LeftButton, {}, m_at);
    }
    void fingerUp() { QTest::mouseRelease(window(), Qt::LeftButton, {}, m_at); }

    QQuickWindow* window() { return m_program.window(); }
    std::int64_t counted() { return m_program.app().wash()->count()->mites(); }

private:
    static void loadDemo(touch::Program& program) {
        const records::Moment now = program.services().now();
        exchange::keepDemo(program.store(), exchange::readDemo(exchange::builtInDemo(), {now.utcMs, now}));
    }

    bench::ShownProgram m_program;
    QPoint m_at;
};

} // namespace

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    if (argc != 4) {
        std::fputs("usage: bench_taps FOLDER RUNS SECONDS\n", stderr);
        return 2;
    }
    const QString folder = QString::fromLocal8Bit(argv[1]);
    const int runs = std::atoi(argv[2]);
    const int minuteMs = std::atoi(argv[3]) * 1000;
    touch::prepareQuick();
    CommitClock::noteConnections();
    Counting counting(folder + QStringLiteral("/taps.db"));
    BareTransaction bare(folder + QStringLiteral("/bare.db"));
    CommitClock::watch();
    for (int run = 0; run < runs; ++run) {
        CommitClock::start();
        bare.write(run);
        std::printf("bare %.4f\n", CommitClock::committed());
        CommitClock::start();
        counting.fingerDown(); // a tap counts with the press, and is on the disk when that returns
        std::printf("told %.4f\n", CommitClock::now());
        std::printf("tap %.4f\n", CommitClock::committed());
        counting.fingerUp();
        QCoreApplication::processEvents(); // its picture
    }
    must(counting.counted() == runs, "Not every tap was counted.");

    QElapsedTimer timer;
    bool waits = false; // for the picture of a touch
    QObject::connect(counting.window(), &QQuickWindow::frameSwapped, counting.window(), [&] {
        if (waits)
            std::printf("frame %.4f\n", since(timer));
        waits = false;
    });
    QTimer finger;
    finger.setTimerType(Qt::PreciseTimer);
    QObject::connect(&finger, &QTimer::timeout, counting.window(), [&] {
        timer.start();
        waits = true;
        counting.fingerDown();
        counting.fingerUp();
    });
    finger.start(50);
    QTest::qWait(minuteMs);
    finger.stop();
    std::printf("counted %lld\n", static_cast<long long>(counting.counted() - runs));
    return 0;
}
