// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A voice where there is one, silence where there is none; never an error, never a wait.
#include "device/any/speech_voice.h"

#include <QElapsedTimer>
#include <QLocale>
#include <QSignalSpy>
#include <QTest>
#include <QTextToSpeech>

using halfcup::device::SpeechVoice;

class DeviceVoiceTest : public QObject {
    Q_OBJECT

private slots:
    void init() { QLocale::setDefault(QLocale(QLocale::English)); }

    void withoutAnEngineItIsSilent() {
        SpeechVoice voice(QStringLiteral("no such engine"));
        QSignalSpy told(&voice, &SpeechVoice::worksChanged);
        voice.say(QStringLiteral("before it is prepared"));
        voice.prepare();
        voice.prepare(); // twice is once
        voice.say(QStringLiteral("Half time"));
        QTest::qWait(300);
        QVERIFY(!voice.works());
        QCOMPARE(told.count(), 0);
    }

    void nothingWaitsForIt() { // not the page that prepares it, nor the touch that says something
        QElapsedTimer clock;
        clock.start();
        SpeechVoice voice;
        voice.prepare();
        voice.say(QStringLiteral("Ten seconds"));
        QVERIFY(clock.elapsed() < 500); // an engine that is opened here blocks for seconds
    }

    void anEngineSpeaksItsLanguagesOnly() {
        if (!QTextToSpeech::availableEngines().contains(QStringLiteral("flite")))
            QSKIP("This machine has not the speech engine (flite) that the test listens to.");
        SpeechVoice voice(QStringLiteral("flite"));
        QSignalSpy told(&voice, &SpeechVoice::worksChanged);
        voice.prepare();
        if (!told.wait(10'000))
            QSKIP("The speech engine does not open on this machine: it has no way out for sound.");
        QVERIFY(voice.works());
        voice.say(QStringLiteral("Half time"));
        voice.say(QStringLiteral("Stop")); // in place of the first
        voice.setOn(false);
        QLocale::setDefault(QLocale(QLocale::German)); // flite speaks English alone
        voice.setOn(true);
        voice.say(QStringLiteral("Halbzeit"));
        QVERIFY(told.wait(10'000));
        QVERIFY(!voice.works());
        QLocale::setDefault(QLocale(QLocale::English)); // the keeper chose English again
        voice.prepare();
        QVERIFY(told.wait(10'000));
        QVERIFY(voice.works());
    }
};

QTEST_GUILESS_MAIN(DeviceVoiceTest)
#include "device_voice.moc"
