// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/shifted_clock.h"
#include "exchange/demo_reader.h"
#include "exchange/keep_demo.h"
#include "touch/languages.h"
#include "touch/program.h"
#include "touch/recovery_controller.h"
#include "touch/restoring.h"
#include "touch/self_test.h"
#include "touch/tour.h"
#include "touch/words.h"

#ifdef Q_OS_WASM
#include "device/web/browser.h"
#endif

#include <QCommandLineParser>
#include <QDir>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTextStream>
#include <QTimer>

#include <cstdio>
#include <functional>
#include <memory>
#include <utility>

using namespace halfcup;
using namespace halfcup::touch;

namespace {

int fail(const QString& sentence) {
    QTextStream(stderr) << sentence << Qt::endl;
    return 1;
}

/// "360x740"; nothing for anything else.
std::optional<QSize> sizeFrom(const QString& text) {
    const QStringList parts = text.split(u'x');
    bool widthOk = false;
    bool heightOk = false;
    const QSize size =
        parts.size() == 2 ? QSize(parts[0].toInt(&widthOk), parts[1].toInt(&heightOk)) : QSize();
    if (!widthOk || !heightOk || size.width() < 200 || size.height() < 200 || size.width() > 4000 ||
        size.height() > 4000)
        return std::nullopt;
    return size;
}

/// The demo has a database of its own, made anew each time, and a clock that starts on the scenario's day. A
/// database that was named is the keeper's: nothing in it is touched, the demo's yards come beside what is
/// there, today.
void prepareDemo(device::Platform& platform, ProgramOptions& options) {
    if (!options.databasePath.isEmpty())
        return;
    const exchange::Demo demo = exchange::readDemo(exchange::builtInDemo());
    platform.clock = std::make_unique<device::ShiftedClock>(std::move(platform.clock), demo.today.utcMs);
    options.databasePath = QDir(platform.folders->data().path).filePath(QStringLiteral("demo.db"));
    for (const char* ending : {"", "-wal", "-shm"})
        QFile::remove(options.databasePath + QLatin1String(ending));
}

/// Where the records are, if nobody named a file.
void nameDatabase(device::Platform& platform, ProgramOptions& options, bool isDemo) {
    const device::Folder folder = platform.folders->data();
    if (folder.path.isEmpty() && options.databasePath.isEmpty())
        throw store::StoreError(store::StoreError::Kind::FolderMissing, "the system names no data folder");
    if (isDemo)
        prepareDemo(platform, options);
    else if (options.databasePath.isEmpty())
        options.databasePath = QDir(folder.path).filePath(QStringLiteral("halfcup.db"));
}

void loadDemo(Program& program) {
    const records::Moment now = program.services().now();
    exchange::keepDemo(program.store(), exchange::readDemo(exchange::builtInDemo(), {now.utcMs, now}));
}

/// On the records that were named.
int tryPages(Program& program) {
    const int pages = openEveryPage(program);
    for (const QString& warning : program.qmlWarnings())
        fail(warning);
    QTextStream(stdout) << "Self-test: " << pages << " pages, " << program.qmlWarnings().size()
                        << " warnings, database " << QString::fromStdString(program.store().integrityReport())
                        << Qt::endl;
    return program.qmlWarnings().isEmpty() ? 0 : 1;
}

/// One program after another on the same records: putting a backup back, or another language, ends one and
/// wants the next.
class Runs {
public:
    Runs(device::Platform& platform, const ProgramOptions& options)
        : m_platform(platform)
        , m_options(options) {}

    /// Puts the next one together; the one before must be gone. Throws store::StoreError.
    Program& make() {
        m_program = std::make_unique<Program>(m_platform, m_options);
        if (!m_news.isEmpty())
            m_program->services().messages.say(m_news);
        return *m_program;
    }

    /// What can wait until the first picture is on the glass.
    void prepareLater() {
        m_program->afterFirstPicture([this] {
            m_platform.tones->prepare();
            m_platform.voice->prepare();
            (void)m_program->services().handbook(); // so that no page waits for it
        });
    }

    /// After a program has ended itself: whether another one is wanted. If so, the program is gone, and its
    /// hold on the database; the next one opens what is there then.
    bool wantsNext() {
        const QString restoreFrom = m_program->restoreFrom();
        const bool wanted = !restoreFrom.isEmpty() || m_program->wantsAgain();
        m_program.reset();
        m_news = restoreFrom.isEmpty() ? QString() : putBack(restoreFrom, m_options.databasePath, m_platform);
        return wanted;
    }

    void forgetNews() { m_news.clear(); }

private:
    device::Platform& m_platform;
    const ProgramOptions& m_options;
    QString m_news; // how a restore went
    std::unique_ptr<Program> m_program;
};

} // namespace

int main(int argc, char** argv) {
    const bool wantsSelfTest = asksForSelfTest(argc, argv);
    QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("halfcup"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Halfcup"));
    QGuiApplication::setApplicationVersion(QStringLiteral(HALFCUP_VERSION));

    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral("Varroa washes at the open hive, and what they mean."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption database(QStringLiteral("database"), QStringLiteral("The records' file."),
                                      QStringLiteral("file"));
    const QCommandLineOption demo(QStringLiteral("demo"),
                                  QStringLiteral("Start on the demo's yards, with records of their own."));
    const QCommandLineOption tour(QStringLiteral("tour"),
                                  QStringLiteral("Play the guided wash and leave pictures in the folder."),
                                  QStringLiteral("folder"));
    const QCommandLineOption size(QStringLiteral("size"), QStringLiteral("Window size, such as 360x740."),
                                  QStringLiteral("size"));
    const QCommandLineOption dpi(QStringLiteral("dpi"),
                                 QStringLiteral("Dots per inch of the glass, 40 to 1000."),
                                 QStringLiteral("number"));
    const QCommandLineOption position(QStringLiteral("position"),
                                      QStringLiteral("Where positions come from, for this run."),
                                      QStringLiteral("source"));
    const QCommandLineOption at(
        QStringLiteral("at"),
        QStringLiteral("Let the clock start at this time, as 2026-05-18T09:40:00+02:00: to "
                       "look ahead on a copy of the records, and for tests."),
        QStringLiteral("time"));
    const QCommandLineOption language(QStringLiteral("language"),
                                      QStringLiteral("de, en, es or fr, for this run."),
                                      QStringLiteral("code"));
    const QCommandLineOption check(
        QStringLiteral("self-test"),
        QStringLiteral("Try the program out on records of its own, say what this "
                       "device has, quit; on the records that are named, open every page."));
    parser.addOptions({database, demo, tour, size, dpi, position, at, language, check});
    parser.addPositionalArgument(QStringLiteral("file"),
                                 QStringLiteral("What to take in: a file from another phone (.halfcup), or a "
                                                "table of earlier washes (.csv)."),
                                 QStringLiteral("[file]"));
    parser.process(application);

    if (parser.isSet(language) && languageFor(parser.value(language)) != parser.value(language))
        return fail(QStringLiteral("--language wants de, en, es or fr."));
    prepareQuick(parser.value(language));
    if (parser.isSet(tour))
        return playTour(parser.value(tour), parser.value(language));

    ProgramOptions options;
    options.databasePath = parser.value(database);
    if (parser.isSet(language))
        options.language = parser.value(language);
    if (parser.isSet(position))
        options.positionSource = parser.value(position);
    if (parser.isSet(size)) {
        const auto wanted = sizeFrom(parser.value(size));
        if (!wanted)
            return fail(QStringLiteral("--size wants a width and a height such as 360x740."));
        options.windowSize = *wanted;
    }
    if (parser.isSet(dpi)) {
        bool ok = false;
        const double dots = parser.value(dpi).toDouble(&ok);
        if (!ok || !(dots >= 40 && dots <= 1000))
            return fail(QStringLiteral("--dpi wants a number from 40 to 1000."));
        options.pixelsPerMm = dots / 25.4;
    }

    device::Platform platform = device::makePlatform();
    if (parser.isSet(at)) {
        const auto start = records::parseRfc3339(parser.value(at).toStdString());
        if (!start)
            return fail(QStringLiteral("--at wants a time such as 2026-05-18T09:40:00+02:00."));
        platform.clock = std::make_unique<device::ShiftedClock>(std::move(platform.clock), start->utcMs);
    }
    if (wantsSelfTest && !parser.isSet(database) && !parser.isSet(demo))
        return selfTest(platform, options);
    Look look(options.pixelsPerMm);
    Runs runs(platform, options);
#ifdef Q_OS_WASM
    // exec() never comes back in a browser, so that the next program begins on the event loop of the first.
    std::unique_ptr<RecoveryController> trouble;
    std::unique_ptr<QQmlApplicationEngine> troubleWindow;
    bool isFirst = true;
    const std::function<void()> startNext = [&] {
        troubleWindow.reset(); // one engine at a time
        try {
            if (isFirst)
                nameDatabase(platform, options, parser.isSet(demo));
            refuseDamaged(options.databasePath);
            Program& program = runs.make();
            if (std::exchange(isFirst, false) && parser.isSet(demo))
                loadDemo(program);
            if (program.show())
                runs.prepareLater();
        } catch (const store::StoreError& error) {
            runs.forgetNews();
            trouble = std::make_unique<RecoveryController>(platform, options.databasePath, error.kind(),
                                                           QString::fromUtf8(error.what()));
            troubleWindow = showTrouble(look, *trouble);
            QObject::connect(trouble.get(), &RecoveryController::closeWanted, &application, [&] {
                if (trouble->wantsStart())
                    QTimer::singleShot(0, &application, startNext);
                else
                    halfcupLoadAnew();
            });
        }
    };
    options.ended = [&] {
        QTimer::singleShot(0, &application, [&] {
            if (runs.wantsNext())
                startNext();
        });
    };
    startNext();
    return QGuiApplication::exec();
#else
    for (bool isFirst = true;; isFirst = false) {
        try {
            if (isFirst)
                nameDatabase(platform, options, parser.isSet(demo));
            refuseDamaged(options.databasePath);
            Program& program = runs.make();
            if (isFirst && parser.isSet(demo))
                loadDemo(program);
            if (!program.show())
                return fail(QStringLiteral("The pages could not be loaded."));
            if (wantsSelfTest)
                return tryPages(program);
            if (isFirst)
                program.app().openFiles(parser.positionalArguments());
            runs.prepareLater();
            const int code = QGuiApplication::exec();
            if (!runs.wantsNext())
                return code;
        } catch (const store::StoreError& error) {
            runs.forgetNews();
            RecoveryController recovery(platform, options.databasePath, error.kind(),
                                        QString::fromUtf8(error.what()));
            fail(recovery.sentence());
            if (wantsSelfTest)
                return 1;
            const auto engine = showTrouble(look, recovery);
            QGuiApplication::exec();
            if (!recovery.wantsStart())
                return 1;
        } catch (const std::exception& error) {
            return fail(QString::fromUtf8(error.what()));
        }
    }
#endif
}
