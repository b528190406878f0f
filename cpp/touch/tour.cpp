// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/tour.h"

#include "device/fake/fake_platform.h"
#include "exchange/keep_demo.h"
#include "place/scripted_position_source.h"
#include "touch/program.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QMouseEvent>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTextStream>
#include <QThread>

#include <random>
#include <stdexcept>

namespace halfcup::touch {

namespace {

constexpr int mitesOfTheTour = 9;

/// A hand that touches what it finds by name, and an eye that keeps what it sees.
class Guide {
public:
    Guide(Program& program, device::SetClock& clock, QDir pictures)
        : m_program(program)
        , m_clock(clock)
        , m_pictures(std::move(pictures)) {}

    void touch(const QString& name) {
        QQuickItem* item = find(name);
        const QPointF at = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
        const QPointF global = m_program.window()->mapToGlobal(at);
        QMouseEvent press(QEvent::MouseButtonPress, at, global, Qt::LeftButton, Qt::LeftButton,
                          Qt::NoModifier);
        QCoreApplication::sendEvent(m_program.window(), &press);
        QMouseEvent release(QEvent::MouseButtonRelease, at, global, Qt::LeftButton, Qt::NoButton,
                            Qt::NoModifier);
        QCoreApplication::sendEvent(m_program.window(), &release);
        settle();
    }

    void wait(std::int64_t ms) {
        m_clock.advance(ms);
        QThread::msleep(300); // the pages look at the clock four times a second
        settle();
    }

    void picture(const QString& what) {
        settle();
        const QString name = QStringLiteral("%1-%2.png").arg(++m_number, 2, 10, QLatin1Char('0')).arg(what);
        const QImage image = m_program.window()->grabWindow();
        if (image.isNull() || !image.save(m_pictures.filePath(name)))
            throw std::runtime_error("The picture " + m_pictures.filePath(name).toStdString() +
                                     " could not be written.");
    }

private:
    static void settle() {
        for (int i = 0; i < 5; ++i) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        }
    }

    QQuickItem* find(const QString& name) {
        if (QQuickItem* item = findIn(m_program.window()->contentItem(), name))
            return item;
        throw std::runtime_error("The tour finds no \"" + name.toStdString() + "\" to touch on this page.");
    }

    /// Along what is seen, not along who owns whom: a loaded page is no QObject child of the window.
    static QQuickItem* findIn(QQuickItem* parent, const QString& name) {
        for (QQuickItem* item : parent->childItems()) {
            if (!item->isVisible() || !item->isEnabled())
                continue;
            if (item->objectName() == name)
                return item;
            if (QQuickItem* found = findIn(item, name))
                return found;
        }
        return nullptr;
    }

    Program& m_program;
    device::SetClock& m_clock;
    QDir m_pictures;
    int m_number = 0;
};

/// Fixes as a phone beside the yard would give them: a few metres about its position, always the same ones.
std::unique_ptr<place::PositionSource> sourceAt(const records::Position& position,
                                                const device::Clock& clock) {
    auto source = std::make_unique<place::ScriptedPositionSource>();
    std::mt19937 chance(20260518);
    std::normal_distribution<double> metres(0.0, 2.0);
    std::vector<place::Fix> fixes;
    for (int i = 0; i < 10; ++i) {
        place::Fix fix;
        fix.latitudeDeg = position.latitudeDeg + metres(chance) / 111'195;
        fix.longitudeDeg = position.longitudeDeg + metres(chance) / 70'000;
        fix.accuracyM = 6.0;
        fix.takenAtUtcMs = clock.now().utcMs;
        fix.receiverUtcMs = clock.now().utcMs - 10 + i;
        fix.source = "demo";
        fixes.push_back(fix);
    }
    source->setFixesOnStart(std::move(fixes));
    return source;
}

void walk(Guide& guide) {
    guide.picture(QStringLiteral("here"));
    guide.touch(QStringLiteral("mainAction"));
    guide.picture(QStringLiteral("queen"));
    guide.touch(QStringLiteral("mainAction"));
    guide.picture(QStringLiteral("scoop"));
    guide.touch(QStringLiteral("mainAction"));
    guide.picture(QStringLiteral("pour"));
    guide.touch(QStringLiteral("mainAction"));
    guide.wait(12'000);
    guide.picture(QStringLiteral("shake"));
    guide.wait(26'000);
    guide.picture(QStringLiteral("shake-past-half"));
    guide.wait(22'500);
    guide.picture(QStringLiteral("shake-over"));
    guide.touch(QStringLiteral("mainAction"));
    guide.wait(8'000);
    guide.picture(QStringLiteral("settle"));
    guide.wait(25'000);
    guide.touch(QStringLiteral("mainAction"));
    guide.picture(QStringLiteral("count-start"));
    for (int i = 0; i < mitesOfTheTour; ++i)
        guide.touch(QStringLiteral("countField"));
    guide.picture(QStringLiteral("count"));
    guide.touch(QStringLiteral("typeIt"));
    guide.picture(QStringLiteral("count-typed"));
    guide.touch(QStringLiteral("padBack"));
    guide.touch(QStringLiteral("mainAction"));
    guide.picture(QStringLiteral("second-rinse"));
    guide.touch(QStringLiteral("skipRinse"));
    guide.picture(QStringLiteral("answer"));
}

/// From the answer to what to treat with, and what the season looks like. Nothing is recorded.
void treat(Program& program, Guide& guide) {
    App& app = program.app();
    guide.touch(QStringLiteral("treat"));
    guide.touch(QStringLiteral("mainAction"));
    app.situation()->typeHighs(QStringLiteral("24 26 27"));
    guide.picture(QStringLiteral("situation"));
    guide.touch(QStringLiteral("mainAction"));
    guide.picture(QStringLiteral("treat"));
    app.treat()->openChoice(QStringLiteral("formic-acid"));
    guide.picture(QStringLiteral("choice"));
    guide.touch(QStringLiteral("mainAction"));
    guide.picture(QStringLiteral("record"));
    app.navigator()->home();
    app.navigator()->open(Navigator::Season);
    guide.picture(QStringLiteral("season"));
}

void lookAround(Program& program, Guide& guide) {
    App& app = program.app();
    const QString colonyId = app.here()->colonies()->entries().first().colonyId;
    app.navigator()->home();
    app.here()->openColony(colonyId);
    guide.picture(QStringLiteral("colony"));
    app.sources()->show(QStringLiteral("lines"));
    app.navigator()->open(Navigator::Sources);
    guide.picture(QStringLiteral("sources"));
    app.navigator()->home();
    for (const auto& [page, name] :
         {std::pair{Navigator::Yards, "yards"}, std::pair{Navigator::Setup, "setup"}}) {
        app.navigator()->open(page);
        guide.picture(QLatin1String(name));
        app.navigator()->home();
    }
    app.yards()->edit(app.here()->yardId());
    guide.picture(QStringLiteral("yard"));
    app.navigator()->home();
    app.navigator()->open(Navigator::Share);
    guide.picture(QStringLiteral("share"));
}

struct Where {
    QDir pictures;
    QString databasePath;
    QString csvPath; // empty: none is written
};

void playAt(const QSize& size, const Where& where, const QString& language) {
    const exchange::Demo wanted = exchange::readDemo(exchange::builtInDemo());
    device::FakePlatform fake = device::makeFakePlatform(wanted.today.utcMs);
    fake.clock->setOffset(wanted.today.offsetMinutes);
    exchange::DemoOptions options;
    options.untilUtcMs = wanted.today.utcMs;
    const exchange::Demo demo = exchange::readDemo(exchange::builtInDemo(), options);
    const records::Position yard = demo.yards.front().position.value_or(records::Position{});

    ProgramOptions program;
    program.databasePath = where.databasePath;
    program.language = language;
    program.windowSize = size;
    program.positionSource = QStringLiteral("demo");
    program.makeSource = [&](const QString&) { return sourceAt(yard, *fake.platform.clock); };
    Program running(fake.platform, program);
    exchange::keepDemo(running.store(), demo);
    if (!running.show())
        throw std::runtime_error("The pages could not be loaded.");
    Guide guide(running, *fake.clock, where.pictures);
    walk(guide);
    treat(running, guide);
    lookAround(running, guide);
    if (!where.csvPath.isEmpty()) {
        running.app().navigator()->open(Navigator::Export);
        ExportController* const people = running.app().share()->people();
        if (!people->writeTo(where.csvPath))
            throw std::runtime_error(people->result().toStdString());
        guide.picture(QStringLiteral("shared"));
    }
    if (!running.qmlWarnings().isEmpty())
        throw std::runtime_error("A page complains: " + running.qmlWarnings().first().toStdString());
}

} // namespace

int playTour(const QString& folder, const QString& language) {
    QTextStream out(stdout);
    try {
        for (const QSize& size : {QSize(360, 740), QSize(320, 568), QSize(412, 915)}) {
            const QString name = QStringLiteral("%1x%2").arg(size.width()).arg(size.height());
            QDir pictures(QDir(folder).absoluteFilePath(name));
            if (!pictures.mkpath(QStringLiteral(".")))
                throw std::runtime_error("The folder " + pictures.path().toStdString() + " cannot be made.");
            const bool first = size.width() == 360;
            // Never the name of a keeper's database: the one of an earlier tour is removed.
            const QString database =
                (first ? QDir(folder) : pictures).absoluteFilePath(QStringLiteral("tour.db"));
            for (const char* ending : {"", "-wal", "-shm"}) // of an earlier tour
                QFile::remove(database + QLatin1String(ending));
            playAt(size,
                   {pictures, database,
                    first ? QDir(folder).absoluteFilePath(QStringLiteral("washes.csv")) : QString()},
                   language);
            if (!first)
                for (const char* ending : {"", "-wal", "-shm"})
                    QFile::remove(database + QLatin1String(ending));
            out << "Pictures at " << name << ": " << pictures.path() << Qt::endl;
        }
        out << "Database and export: " << QDir(folder).absolutePath() << Qt::endl;
        return 0;
    } catch (const std::exception& error) {
        QTextStream(stderr) << "The tour stopped: " << error.what() << Qt::endl;
        return 1;
    }
}

} // namespace halfcup::touch
