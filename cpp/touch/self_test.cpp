// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/self_test.h"

#include "device/any/standard_folders.h"
#include "handbook/built_in.h"
#include "mites/scoop.h"
#include "records/judgement.h"

#include <QDeadlineTimer>
#include <QGuiApplication>
#include <QImage>
#include <QMetaEnum>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTextStream>
#include <QThread>

#include <cmath>
#include <stdexcept>

namespace halfcup::touch {

namespace {

constexpr int waitForServicesMs = 3000;

/// 3 mites in half a cup of loose bees, nobody's own scoops: load per 100 bees and the chance of more than 3.
/// Found by adaptive integration in R, another method than ours: "numbers.md" of the project's papers,
/// section 1.10, for 302.17 bees and a spread of .1204. Those are rounded, so the figures may differ by a ten
/// thousandth; a wrong law would be off by far more.
constexpr int referenceMites = 3;
constexpr mites::LoadEstimate referenceLoad{.32541, 1.10932, 3.28506};
constexpr double referenceChance = .06618;
constexpr double referenceTolerance = 1e-4; // relative

class Report {
public:
    void check(const char* what, const std::function<QString()>& work) {
        try {
            line("ok", what, work());
        } catch (const std::exception& error) {
            ++m_failed;
            line("FAILED", what, QString::fromUtf8(error.what()));
        }
    }
    void service(const char* what, bool isHere, const QString& note) {
        line(isHere ? "here" : "not here", what, note);
    }
    int exitCode() {
        m_out << (m_failed == 0 ? QStringLiteral("All is well.")
                                : QStringLiteral("%1 of these failed.").arg(m_failed))
              << Qt::endl;
        return m_failed == 0 ? 0 : 1;
    }

private:
    void line(const char* state, const char* what, const QString& note) {
        m_out << QString::fromLatin1(state).leftJustified(10) << what
              << (note.isEmpty() ? QString() : QStringLiteral(": ") + note) << Qt::endl;
    }

    QTextStream m_out{stdout};
    int m_failed = 0;
};

void must(bool holds, const char* sentence) {
    if (!holds)
        throw std::runtime_error(sentence);
}

/// A counted wash of one colony, as the pages would keep it.
records::Sample finishedWash(const Services& services, store::Store& store, const records::Colony& colony) {
    records::Sample wash;
    wash.id = store.newId();
    wash.colonyId = colony.id;
    wash.yardId = colony.yardId;
    wash.state = records::SampleState::Finished;
    wash.step = records::Step::Answer;
    wash.startedAtMs = services.now().utcMs;
    wash.scoopedAtMs = wash.startedAtMs;
    wash.finishedAtMs = wash.startedAtMs;
    const mites::BeesInScoop bees = mites::scoopFromVolume(wash.scoop.volumeMl);
    wash.scoop.beesMean = bees.mean;
    wash.scoop.beesCv = bees.cv;
    wash.answer = records::answerOf(wash, referenceMites, std::nullopt, {});
    return wash;
}

QString tryRecords(Program& program, records::RecordId& washId) {
    store::Store& store = program.store();
    records::Yard yard;
    yard.id = store.newId();
    yard.name = "Self-test";
    store.save(yard);
    records::Colony colony;
    colony.id = store.newId();
    colony.yardId = yard.id;
    colony.label = "1";
    store.save(colony);
    const records::Sample wash = finishedWash(program.services(), store, colony);
    store.save(wash);
    for (int i = 1; i <= referenceMites; ++i)
        store.addCount(wash.id, {i, 1, records::CountEvent::Change::Tap, 0, wash.startedAtMs});
    washId = wash.id;

    const auto kept = store.sample(wash.id);
    must(store.yards().size() == 1 && store.colonies(yard.id).size() == 1 && kept,
         "what was written is not there to be read");
    must(records::toFields(*kept) == records::toFields(wash), "the wash reads otherwise than it was written");
    must(store.countEvents(wash.id).size() == referenceMites, "a counted mite was lost");
    const std::string report = store.integrityReport();
    if (report != "ok")
        throw std::runtime_error("the database is not sound: " + report);
    return QStringLiteral("a yard, a colony and a wash written and read back, the database is sound");
}

QString tryLoad(Program& program, const records::RecordId& washId) {
    const auto wash = program.store().sample(washId);
    must(wash && wash->answer, "there is no wash with an answer");
    const records::Answer& answer = *wash->answer;
    for (const auto& [found, wanted] :
         {std::pair{answer.loadQ05, referenceLoad.q05}, std::pair{answer.loadQ50, referenceLoad.q50},
          std::pair{answer.loadQ95, referenceLoad.q95}, std::pair{answer.chanceOver, referenceChance}})
        if (!(std::abs(found - wanted) < referenceTolerance * wanted))
            throw std::runtime_error(QStringLiteral("%1 was found where %2 is right")
                                         .arg(found, 0, 'f', 6)
                                         .arg(wanted, 0, 'f', 5)
                                         .toStdString());
    return QStringLiteral("3 mites in half a cup are %1 on 100 bees, %2 to %3, as they should be")
        .arg(answer.loadQ50, 0, 'f', 2)
        .arg(answer.loadQ05, 0, 'f', 2)
        .arg(answer.loadQ95, 0, 'f', 2);
}

QString tryHandbook() {
    const handbook::Handbook book = handbook::builtIn(); // throws where it cannot be read
    const std::vector<std::string> topics = book.topics();
    must(!topics.empty(), "the handbook has no topics");
    for (const std::string& topic : topics)
        must(!book.topic(topic).empty(), "a topic of the handbook is empty");
    must(book.figureAt("trade-rule") == records::Lines{}.treat, "the handbook and the usual line disagree");
    return QStringLiteral("%1 values in %2 topics").arg(book.size()).arg(topics.size());
}

QString tryPages(Program& program) {
    must(program.show(), "the pages could not be loaded");
    QCoreApplication::processEvents();
    const QImage frame = program.window()->grabWindow();
    must(!frame.isNull(), "no picture of a page could be drawn");
    bool isDrawn = false;
    for (int y = 0; y < frame.height() && !isDrawn; ++y)
        for (int x = 0; x < frame.width() && !isDrawn; ++x)
            isDrawn = frame.pixel(x, y) != frame.pixel(0, 0);
    must(isDrawn, "the picture of a page has one colour only");
    const int pages = openEveryPage(program);
    if (!program.qmlWarnings().isEmpty())
        throw std::runtime_error(program.qmlWarnings().join(QStringLiteral("; ")).toStdString());
    return QStringLiteral("%1 opened without a complaint, the first drawn as %2 x %3 dots")
        .arg(pages)
        .arg(frame.width())
        .arg(frame.height());
}

/// Services answer late or never: whichever has not by then is not here.
void waitForServices(device::Platform& platform, PositionStamper& position) {
    platform.tones->prepare();
    platform.voice->prepare();
    position.wantAnew();
    const QDeadlineTimer deadline(waitForServicesMs);
    const auto allAnswered = [&] {
        return platform.voice->works() && platform.tones->works() && platform.files->canChoose() &&
               (position.problem() || position.best());
    };
    while (!deadline.hasExpired() && !allAnswered()) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        QThread::msleep(10);
    }
}

void saySound(Report& report, const device::Platform& platform) {
    const bool hasTones = platform.tones->works();
    report.service("tones", hasTones,
                   hasTones ? QString()
                            : QStringLiteral("no loudspeaker; the shake timer is read from the screen"));
    const bool hasVoice = platform.voice->works();
    report.service("voice", hasVoice,
                   hasVoice ? QString()
                            : QStringLiteral("no speech engine for this language; tones instead"));
}

void sayPosition(Report& report, const PositionStamper& position) {
    using Problem = place::PositionSource::Problem;
    if (position.best())
        report.service("position", true, QStringLiteral("a place is known"));
    else if (!position.problem() || position.problem() == Problem::NoFixYet)
        report.service("position", true, QStringLiteral("no place is known yet"));
    else
        report.service("position", false,
                       QStringLiteral("%1 A wash is kept with its time alone, and the yard is picked by hand")
                           .arg(position.problemSentence()));
}

void sayServices(Report& report, const device::Platform& platform, const PositionStamper& position) {
    saySound(report, platform);
    sayPosition(report, position);
    const device::FileHandover& files = *platform.files;
    report.service("file chooser", files.canChoose(),
                   files.canChoose()
                       ? QString()
                       : QStringLiteral("no portal or picker; the app lists the files of Downloads, "
                                        "documents and its own folder itself"));
    report.service(
        "share sheet", files.canShare() && files.hasShareSheet(),
        !files.canShare()
            ? QStringLiteral("the app says in which folder a file lies")
            : (files.hasShareSheet() ? QString() : QStringLiteral("the folder of a file is shown instead")));
    const device::Capabilities can = platform.capabilities->now();
    report.service("screen kept on", can.keepAwake,
                   can.keepAwake ? QString()
                                 : QStringLiteral("the screen may go dark; a shake goes on by the clock"));
    report.service("vibration", can.vibration,
                   can.vibration ? QString()
                                 : QStringLiteral("no motor; tones and the screen tell the same"));
}

} // namespace

bool asksForSelfTest(int argc, char** argv) {
    for (int i = 1; i < argc; ++i) {
        if (qstrcmp(argv[i], "--self-test") != 0)
            continue;
        for (const auto& [name, value] :
             {std::pair{"QT_QPA_PLATFORM", "offscreen"}, std::pair{"QT_QUICK_BACKEND", "software"},
              std::pair{"QML_DISABLE_DISK_CACHE", "1"}})
            if (qEnvironmentVariableIsEmpty(name))
                qputenv(name, value);
        return true;
    }
    return false;
}

int openEveryPage(Program& program) {
    const QMetaEnum pages = QMetaEnum::fromType<Navigator::Page>();
    for (int i = 0; i < pages.keyCount(); ++i) {
        program.app().navigator()->home();
        program.app().navigator()->open(static_cast<Navigator::Page>(pages.value(i)));
        QCoreApplication::processEvents();
    }
    return pages.keyCount();
}

int selfTest(device::Platform& platform, const ProgramOptions& options) {
    QTextStream(stdout) << "Halfcup " << QCoreApplication::applicationVersion() << ", self-test" << Qt::endl;
    Report report;
    const QTemporaryDir scratch;
    std::unique_ptr<Program> program;
    report.check("database", [&] {
        must(scratch.isValid(), "no temporary folder could be made");
        platform.folders = std::make_unique<device::StandardFolders>(
            scratch.filePath(QStringLiteral("data")), scratch.filePath(QStringLiteral("documents")));
        ProgramOptions own = options;
        own.databasePath = scratch.filePath(QStringLiteral("self-test.db"));
        program = std::make_unique<Program>(platform, own);
        return QStringLiteral("made in a temporary folder");
    });
    report.check("handbook", tryHandbook);
    if (!program)
        return report.exitCode(); // nothing else can be tried
    records::RecordId washId;
    report.check("records", [&] { return tryRecords(*program, washId); });
    report.check("load", [&] { return tryLoad(*program, washId); });
    report.check("pages", [&] { return tryPages(*program); });
    waitForServices(platform, program->services().position);
    sayServices(report, platform, program->services().position);
    program.reset(); // before its folder goes
    return report.exitCode();
}

} // namespace halfcup::touch
