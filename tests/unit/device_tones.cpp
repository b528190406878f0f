// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/multimedia_tones.h"

#include <QAudioDevice>
#include <QElapsedTimer>
#include <QFile>
#include <QMediaDevices>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>
#include <QtEndian>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <vector>

using namespace halfcup::device;

namespace {

constexpr std::array kAll{Tone::HalfTime, Tone::TenSeconds, Tone::End, Tone::CountTick, Tone::Trouble};

struct Sound {
    int rateHz = 0;
    std::vector<double> samples; // -1 to 1
    QString fault;
};

// Source: "Multimedia Programming Interface and Data Specifications 1.0" (1991), RIFF and WAVE, from memory.
Sound readWav(Tone tone) {
    Sound sound;
    QFile file(QStringLiteral(":") + MultimediaTones::soundOf(tone).path());
    if (!file.open(QIODevice::ReadOnly)) {
        sound.fault = QStringLiteral("not compiled in: ") + file.fileName();
        return sound;
    }
    const QByteArray all = file.readAll();
    const auto u16 = [&](qsizetype at) { return qFromLittleEndian<quint16>(all.constData() + at); };
    const auto u32 = [&](qsizetype at) { return qFromLittleEndian<quint32>(all.constData() + at); };
    if (all.size() < 44 || all.mid(0, 4) != "RIFF" || all.mid(8, 8) != "WAVEfmt " ||
        all.mid(36, 4) != "data") {
        sound.fault = QStringLiteral("not a plain wav file");
    } else if (u32(4) != all.size() - 8 || u32(16) != 16 || u32(40) != all.size() - 44) {
        sound.fault = QStringLiteral("the lengths in the header are not those of the file");
    } else if (u16(20) != 1 || u16(22) != 1 || u16(34) != 16 || u16(32) != 2 || u32(28) != u32(24) * 2) {
        sound.fault = QStringLiteral("not 16-bit mono PCM");
    } else {
        sound.rateHz = static_cast<int>(u32(24));
        for (qsizetype at = 44; at + 1 < all.size(); at += 2) {
            sound.samples.push_back(qFromLittleEndian<qint16>(all.constData() + at) / 32768.0);
        }
    }
    return sound;
}

struct Note {
    double startS;
    double lengthS;
};

// Notes are what lies between pauses of at least 20 ms of silence.
std::vector<Note> notesOf(const Sound& sound) {
    std::vector<Note> notes;
    const double rate = sound.rateHz;
    std::ptrdiff_t first = -1;
    std::ptrdiff_t last = -1;
    const auto count = static_cast<std::ptrdiff_t>(sound.samples.size());
    for (std::ptrdiff_t i = 0; i <= count; ++i) {
        const bool end = i == count;
        const bool loud = !end && std::abs(sound.samples[static_cast<std::size_t>(i)]) > 0.005;
        if (first >= 0 && (end || (loud && static_cast<double>(i - last) > 0.02 * rate))) {
            notes.push_back({static_cast<double>(first) / rate, static_cast<double>(last - first) / rate});
            first = -1;
        }
        if (loud) {
            first = first < 0 ? i : first;
            last = i;
        }
    }
    return notes;
}

// How strong one pitch is in a stretch (a single bin of a Fourier sum with a Hann window).
double strength(const Sound& sound, const Note& note, double pitchHz) {
    const auto begin = static_cast<std::size_t>(note.startS * sound.rateHz);
    const auto count = static_cast<std::size_t>(note.lengthS * sound.rateHz);
    double re = 0;
    double im = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double turn = 2 * std::numbers::pi * static_cast<double>(i);
        const double hann = 0.5 - 0.5 * std::cos(turn / static_cast<double>(count));
        const double value = sound.samples[begin + i] * hann;
        re += value * std::cos(turn * pitchHz / sound.rateHz);
        im += value * std::sin(turn * pitchHz / sound.rateHz);
    }
    return std::hypot(re, im);
}

// The strongest of all notes of the piano, as its MIDI number (A4 = 69 = 440 Hz, twelve equal steps an
// octave).
int strongestKey(const Sound& sound, const Note& note) {
    int best = 0;
    double most = 0;
    for (int key = 45; key <= 108; ++key) {
        const double found = strength(sound, note, 440.0 * std::exp2((key - 69) / 12.0));
        if (found > most) {
            most = found;
            best = key;
        }
    }
    return best;
}

} // namespace

class DeviceTones : public QObject {
    Q_OBJECT
private slots:
    void soundsAreSound_data() {
        QTest::addColumn<int>("tone");
        for (const Tone tone : kAll) {
            QTest::addRow("%d", static_cast<int>(tone)) << static_cast<int>(tone);
        }
    }
    void soundsAreSound() {
        QFETCH(int, tone);
        const Sound sound = readWav(static_cast<Tone>(tone));
        QVERIFY2(sound.fault.isEmpty(), qPrintable(sound.fault));
        QCOMPARE(sound.rateHz, 44100);
        const double lengthS = static_cast<double>(sound.samples.size()) / sound.rateHz;
        QVERIFY2(lengthS >= 0.02 && lengthS <= 1.5, qPrintable(QString::number(lengthS)));
        double peak = 0;
        double sum = 0;
        for (const double sample : sound.samples) {
            peak = std::max(peak, std::abs(sample));
            sum += sample;
        }
        QVERIFY2(peak > 0.7 && peak < 0.9, qPrintable(QString::number(peak)));
        QVERIFY(std::abs(sum / static_cast<double>(sound.samples.size())) < 0.005);
        const Note last = notesOf(sound).back();
        QVERIFY2(lengthS - last.startS - last.lengthS > 0.29,
                 "no silence at the end: the player cuts the last note off");
        QVERIFY2(std::abs(sound.samples.front()) < 0.01 && std::abs(sound.samples.back()) < 0.01,
                 "would click");
    }

    // By rhythm: number of notes and their lengths; by pitch: MIDI numbers (G5 79, A5 81, C#6 85, D6 86, E6
    // 88, G6 91, C7 96, E5 76, C5 72). What is expected here is what the header promises, not what make.py
    // says.
    void tonesAreToldApartByRhythmAndPitch() {
        const auto hear = [](Tone tone) {
            const Sound sound = readWav(tone);
            std::vector<int> keys;
            std::vector<double> lengthsS;
            for (const Note& note : notesOf(sound)) {
                keys.push_back(strongestKey(sound, note));
                lengthsS.push_back(note.lengthS);
            }
            return std::pair{keys, lengthsS};
        };
        const auto [halfKeys, half] = hear(Tone::HalfTime);
        QCOMPARE(halfKeys, (std::vector{79, 86}));
        QVERIFY(std::abs(half[0] - half[1]) < 0.02);

        const auto [tenKeys, ten] = hear(Tone::TenSeconds);
        QCOMPARE(tenKeys, (std::vector{91, 91, 91}));
        QVERIFY(ten[0] < 0.1 && ten[1] < 0.1 && ten[2] < 0.1);

        const auto [endKeys, end] = hear(Tone::End);
        QCOMPARE(endKeys, (std::vector{81, 85, 88}));
        QVERIFY2(end[2] > 3 * end[1] && end[2] > 3 * end[0], "the last note is the long one");

        const auto [tickKeys, tick] = hear(Tone::CountTick);
        QCOMPARE(tickKeys.size(), 1U);
        QVERIFY(tick[0] < 0.05);

        const auto [troubleKeys, trouble] = hear(Tone::Trouble);
        QCOMPARE(troubleKeys, (std::vector{76, 72}));
        QVERIFY2(trouble[0] > 1.3 * half[0], "slower than half time");
    }

    void withoutLoudspeakerSilentAndQuick() {
        QTest::failOnWarning(QRegularExpression(QStringLiteral(".*")));
        // The very first look of this program for loudspeakers is the one below: it is the slow one.
        MultimediaTones tones;
        QSignalSpy changed(&tones, &Tones::worksChanged);
        QVERIFY(!tones.works());
        QElapsedTimer timer;
        timer.start();
        for (const Tone tone : kAll) {
            tones.play(tone); // before prepare(): put off, not done now
        }
        const qint64 playMs = timer.elapsed();
        QVERIFY2(playMs < 50, qPrintable(QString::number(playMs)));
        timer.restart();
        tones.prepare();
        tones.prepare();
        const qint64 prepareMs = timer.elapsed();
        if (tones.works()) {
            QSKIP("This computer has a loudspeaker; what happens without one cannot be seen here.");
        }
        QVERIFY(QMediaDevices::audioOutputs().isEmpty());
        qInfo("prepare() took %d ms without a loudspeaker", static_cast<int>(prepareMs));
        QVERIFY2(prepareMs < 1000, qPrintable(QString::number(prepareMs)));
        timer.restart();
        for (int i = 0; i < 1000; ++i) {
            tones.play(kAll[static_cast<std::size_t>(i) % kAll.size()]);
        }
        QVERIFY2(timer.elapsed() < 50, qPrintable(QString::number(timer.elapsed())));
        QTest::qWait(20);
        QVERIFY(!tones.works());
        QCOMPARE(changed.count(), 0);
        tones.setOn(false);
        QVERIFY(!tones.isOn());
        tones.play(Tone::End);
        tones.setOn(true);
        QVERIFY(tones.isOn());
    }

    void goingAwayWithATonePutOffIsHarmless() {
        {
            MultimediaTones tones;
            tones.play(Tone::End);
        }
        QTest::qWait(10);
    }

    void withLoudspeakerTonesPlay() {
        MultimediaTones tones;
        tones.prepare();
        if (!tones.works()) {
            QSKIP("There is no loudspeaker here; run under a PulseAudio null sink to hear.");
        }
        QElapsedTimer timer;
        for (const Tone tone : kAll) {
            timer.start();
            tones.play(tone);
            QVERIFY2(timer.elapsed() < 50, qPrintable(QString::number(timer.elapsed())));
            QTest::qWait(1300);
        }
        // A quick counter: eight mites a second.
        for (int i = 0; i < 16; ++i) {
            tones.play(Tone::CountTick);
            QTest::qWait(125);
        }
        QTest::qWait(400);
        tones.setOn(false);
    }
};

QTEST_MAIN(DeviceTones)
#include "device_tones.moc"
