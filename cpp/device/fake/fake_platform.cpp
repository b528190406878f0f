// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/fake/fake_platform.h"

#include <QDir>

#include <algorithm>
#include <utility>

namespace halfcup::device {

class FakeKeepAwake::CountedHold final : public KeepAwake::Hold {
public:
    explicit CountedHold(std::shared_ptr<Counts> counts)
        : m_counts(std::move(counts)) {
        ++m_counts->acquired;
    }
    ~CountedHold() override { ++m_counts->released; }

private:
    std::shared_ptr<Counts> m_counts;
};

FakeKeepAwake::FakeKeepAwake(QObject* parent)
    : KeepAwake(parent)
    , m_counts(std::make_shared<Counts>()) {}

std::unique_ptr<KeepAwake::Hold> FakeKeepAwake::hold(const QString& reason) {
    m_reasons.append(reason);
    return std::make_unique<CountedHold>(m_counts);
}

void FakeKeepAwake::setWorks(bool works) {
    if (m_works != works) {
        m_works = works;
        Q_EMIT worksChanged();
    }
}

FakeTones::FakeTones(const Clock& clock, QObject* parent)
    : Tones(parent)
    , m_clock(clock) {}

void FakeTones::play(Tone tone) {
    if (m_on && m_works) {
        m_played.push_back({tone, m_clock.now().bootMs});
    }
}

void FakeTones::setWorks(bool works) {
    if (m_works != works) {
        m_works = works;
        Q_EMIT worksChanged();
    }
}

int FakeTones::count(Tone tone) const {
    return static_cast<int>(
        std::count_if(m_played.begin(), m_played.end(), [tone](const Played& p) { return p.tone == tone; }));
}

FakeVibration::FakeVibration(QObject* parent)
    : Vibration(parent) {}

void FakeVibration::buzz(std::chrono::milliseconds length) {
    if (m_on && m_works && length.count() > 0) {
        m_buzzes.push_back(std::min(length, kLongest));
    }
}

void FakeVibration::setWorks(bool works) {
    if (m_works != works) {
        m_works = works;
        Q_EMIT worksChanged();
    }
}

FakeVolumeKeys::FakeVolumeKeys(QObject* parent)
    : VolumeKeys(parent) {}

void FakeVolumeKeys::setGrabbed(bool grabbed) {
    if (grabbed && !m_grabbed) {
        ++m_timesGrabbed;
    }
    m_grabbed = grabbed;
}

void FakeVolumeKeys::pressUp() {
    if (m_grabbed) {
        Q_EMIT volumeUpPressed();
    }
}

void FakeVolumeKeys::pressDown() {
    if (m_grabbed) {
        Q_EMIT volumeDownPressed();
    }
}

SeededRandom::SeededRandom(std::uint64_t seed)
    : m_engine(seed) {}

std::uint64_t SeededRandom::next() {
    return m_engine();
}

FakeFolders::FakeFolders() {
    const QDir root(m_root.path());
    for (const auto& [folder, name] : {std::pair{&m_data, "data"}, std::pair{&m_exports, "exports"}}) {
        folder->path = root.filePath(QString::fromLatin1(name));
        if (!m_root.isValid() || !root.mkpath(folder->path)) {
            folder->trouble = FolderTrouble::CannotCreate;
        }
    }
}

FakePlatform makeFakePlatform(std::int64_t utcMs, std::uint64_t seed) {
    FakePlatform fake;
    auto own = [](auto& slot, auto part) {
        auto* view = part.get();
        slot = std::move(part);
        return view;
    };
    Platform& p = fake.platform;
    fake.clock = own(p.clock, std::make_unique<SetClock>(utcMs));
    fake.random = own(p.random, std::make_unique<SeededRandom>(seed));
    fake.folders = own(p.folders, std::make_unique<FakeFolders>());
    fake.keepAwake = own(p.keepAwake, std::make_unique<FakeKeepAwake>());
    fake.brightness = own(p.brightness, std::make_unique<FakeBrightness>());
    fake.tones = own(p.tones, std::make_unique<FakeTones>(*fake.clock));
    fake.voice = own(p.voice, std::make_unique<FakeVoice>());
    fake.vibration = own(p.vibration, std::make_unique<FakeVibration>());
    fake.volumeKeys = own(p.volumeKeys, std::make_unique<FakeVolumeKeys>());
    fake.files = own(p.files, std::make_unique<FakeFileHandover>());
    p.capabilities = std::make_unique<CapabilityWatch>(*p.keepAwake, *p.tones, *p.vibration, *p.volumeKeys);
    return fake;
}

} // namespace halfcup::device
