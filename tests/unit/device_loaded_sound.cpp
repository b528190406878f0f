// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Sounds come from a library that is loaded when they are wanted, and not before; without it the program is
// silent.
#include "device/linux/loaded_sound.h"

#include <QFile>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>

using namespace halfcup::device;

namespace {

bool isInMemory(const char* library) {
    QFile maps(QStringLiteral("/proc/self/maps"));
    return maps.open(QIODevice::ReadOnly) && maps.readAll().contains(library);
}

constexpr auto ours = "libhalfcup_sound.so";
constexpr auto qts = "libQt6Multimedia.so";

} // namespace

class DeviceLoadedSoundTest : public QObject {
    Q_OBJECT
private slots:
    /// First: what is loaded once stays.
    void nothingIsLoadedBeforeItIsWanted() {
        QTest::failOnWarning(QRegularExpression(QStringLiteral(".")));
        QVERIFY(isInMemory("libQt6Core.so"));
        LoadedTones tones;
        LoadedVoice voice;
        tones.setOn(false);
        tones.play(Tone::End); // off: not even looked for
        voice.say(QStringLiteral("before it is prepared"));
        QVERIFY(!isInMemory(ours));
        QVERIFY(!isInMemory(qts));
        tones.setOn(true);
        tones.prepare();
        QVERIFY(isInMemory(ours));
        QVERIFY(isInMemory(qts));
    }

    void theFirstToneLoadsThem() {
        LoadedTones tones;
        QSignalSpy changed(&tones, &Tones::worksChanged);
        tones.play(Tone::End);
        QTest::qWait(50);
        QVERIFY(isInMemory(ours));
        QCOMPARE(changed.count(), tones.works() ? 1 : 0); // told across the border of the two
    }

    void aVoiceTellsAcrossTheBorderThatItWorks() {
        LoadedVoice voice(QStringLiteral("flite"));
        QSignalSpy told(&voice, &Voice::worksChanged);
        QLocale::setDefault(QLocale(QLocale::English));
        voice.prepare();
        if (!told.wait(10'000))
            QSKIP("The speech engine that the test listens to (flite) does not open on this machine.");
        QVERIFY(voice.works());
        voice.say(QStringLiteral("Half time"));
        voice.setOn(false);
        QVERIFY(!voice.isOn());
    }

    void withoutTheLibraryItIsSilent() {
        QTest::ignoreMessage(QtWarningMsg,
                             QRegularExpression(QStringLiteral("There are no sounds: .*no_such")));
        LoadedTones tones("libno_such.so");
        tones.prepare();
        tones.prepare(); // told once
        tones.play(Tone::Trouble);
        QVERIFY(!tones.works());
        QTest::ignoreMessage(QtWarningMsg,
                             QRegularExpression(QStringLiteral("There are no sounds: .*no_such")));
        LoadedVoice voice({}, "libno_such.so");
        voice.prepare();
        voice.prepare();
        voice.say(QStringLiteral("Half time"));
        QVERIFY(!voice.works());
    }

    /// As if another version of it lay there.
    void aLibraryThatMakesNoSoundsIsNone() {
        QTest::ignoreMessage(QtWarningMsg,
                             QRegularExpression(QStringLiteral("There are no sounds: .*halfcup_make")));
        LoadedTones tones("libQt6Core.so.6");
        tones.prepare();
        QVERIFY(!tones.works());
    }
};

QTEST_MAIN(DeviceLoadedSoundTest)
#include "device_loaded_sound.moc"
