// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What the start waits for.
#include "many_records.h"
#include "shown_program.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace halfcup;

class StartTest : public QObject {
    Q_OBJECT

    /// The files in memory whose path has this in it, a line each.
    static QString inMemory(const char* part) {
        QStringList found;
        QFile maps(QStringLiteral("/proc/self/maps"));
        if (maps.open(QIODevice::ReadOnly))
            for (const QByteArray& line : maps.readAll().split('\n'))
                if (const QString path = QString::fromUtf8(line.mid(line.indexOf('/')));
                    path.contains(QLatin1String(part)) && !found.contains(path))
                    found.append(path);
        return found.join(u'\n');
    }

private slots:
    void initTestCase() {
        QVERIFY(m_folder.isValid());
        QVERIFY(!inMemory("libQt6Core").isEmpty());
        touch::prepareQuick();
    }

    /// Neither Qt's modules for it nor the libraries they bring (device/linux/loaded_sound.h).
    void nothingOfSoundIsInMemory() {
        for (const char* library : {"libQt6Multimedia", "libQt6TextToSpeech", "libpulse"})
            QCOMPARE(inMemory(library), QString());
    }

    /// A plugin of QML wants the main thread, and while that is at work on something else the reading of the
    /// pages, in its own thread, stands still. So all that the first pages import is in the program itself.
    void theFirstPageWantsNoPluginOfQml() {
        const QString path = m_folder.filePath(QStringLiteral("records.db"));
        bench::makeManyRecords(path.toStdString(), 20, 40);
        bench::ShownProgram program(path, bench::dayAfterwardsMs);
        QVERIFY(program.app().here()->view() != touch::HereController::NoYards);
        QVERIFY(!inMemory("libQt6Quick.so").isEmpty());
        QCOMPARE(inMemory("/qml/"), QString());
    }

private:
    QTemporaryDir m_folder;
};

QTEST_MAIN(StartTest)
#include "start_test.moc"
