// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/any/multimedia_tones.h"

#include <QAudioDevice>
#include <QMediaDevices>
#include <QSoundEffect>
#include <QTimer>

#include <array>
#include <utility>
#include <vector>

namespace halfcup::device {

namespace {

constexpr std::array kTones{Tone::HalfTime, Tone::TenSeconds, Tone::End, Tone::CountTick, Tone::Trouble};

QtMessageHandler g_usualHandler = nullptr;

/// Where no sound server runs, Qt 6.4 warns of it in its default category, so no logging rule can keep that
/// one line out. Here it is no fault but an answer ("no loudspeaker"), and a warning must stay something to
/// look at.
class NoSoundServerIsNoFault {
public:
    NoSoundServerIsNoFault() { g_usualHandler = qInstallMessageHandler(&pass); }
    ~NoSoundServerIsNoFault() { qInstallMessageHandler(g_usualHandler); }
    NoSoundServerIsNoFault(const NoSoundServerIsNoFault&) = delete;
    NoSoundServerIsNoFault& operator=(const NoSoundServerIsNoFault&) = delete;

private:
    static void pass(QtMsgType type, const QMessageLogContext& context, const QString& text) {
        if (!text.startsWith(QLatin1String("PulseAudioService:")) && g_usualHandler != nullptr) {
            g_usualHandler(type, context, text);
        }
    }
};

/// The players of one tone, used in turn: starting one anew cuts off what it has handed on and nobody has
/// heard yet.
struct Turn {
    std::vector<std::unique_ptr<QSoundEffect>> players;
    std::size_t next = 0;
};

// A tick lasts a third of a second with its silent end, and a quick counter makes eight a second.
constexpr std::size_t playersOf(Tone tone) {
    return tone == Tone::CountTick ? 4 : 1;
}

} // namespace

struct MultimediaTones::Players {
    QMediaDevices devices; // tells when a loudspeaker comes or goes
    std::array<Turn, kTones.size()> turns;
    bool hasLoudspeaker = false;
};

MultimediaTones::MultimediaTones(QObject* parent)
    : Tones(parent) {}

MultimediaTones::~MultimediaTones() = default;

QUrl MultimediaTones::soundOf(Tone tone) {
    switch (tone) {
    case Tone::HalfTime:
        return QUrl(QStringLiteral("qrc:/halfcup/sounds/half_time.wav"));
    case Tone::TenSeconds:
        return QUrl(QStringLiteral("qrc:/halfcup/sounds/ten_seconds.wav"));
    case Tone::End:
        return QUrl(QStringLiteral("qrc:/halfcup/sounds/end.wav"));
    case Tone::CountTick:
        return QUrl(QStringLiteral("qrc:/halfcup/sounds/count_tick.wav"));
    case Tone::Trouble:
        return QUrl(QStringLiteral("qrc:/halfcup/sounds/trouble.wav"));
    }
    return {};
}

bool MultimediaTones::works() const {
    return m_players && m_players->hasLoudspeaker;
}

void MultimediaTones::prepare() {
    if (m_players) {
        return;
    }
    const NoSoundServerIsNoFault quiet;
    m_players = std::make_unique<Players>();
    connect(&m_players->devices, &QMediaDevices::audioOutputsChanged, this,
            &MultimediaTones::lookForLoudspeakers);
    lookForLoudspeakers();
}

void MultimediaTones::lookForLoudspeakers() {
    const bool had = m_players->hasLoudspeaker;
    const QAudioDevice loudspeaker = QMediaDevices::defaultAudioOutput();
    m_players->hasLoudspeaker = !QMediaDevices::audioOutputs().isEmpty() && !loudspeaker.isNull();
    for (const Tone tone : kTones) {
        auto& players = m_players->turns[static_cast<std::size_t>(tone)].players;
        if (!m_players->hasLoudspeaker) {
            players.clear();
            continue;
        }
        while (players.size() < playersOf(tone)) {
            players.push_back(std::make_unique<QSoundEffect>(loudspeaker));
            players.back()->setSource(soundOf(tone));
        }
        for (const auto& player : players) {
            if (player->audioDevice() != loudspeaker) {
                player->setAudioDevice(loudspeaker);
            }
        }
    }
    if (had != m_players->hasLoudspeaker) {
        Q_EMIT worksChanged();
    }
}

void MultimediaTones::play(Tone tone) {
    if (!m_on) {
        return;
    }
    if (!m_players) {
        // Not now: this may be the answer to a touch. Of several tones before the first turn only the last is
        // news.
        if (!m_waiting) {
            QTimer::singleShot(0, this, [this] {
                prepare();
                if (const auto waiting = std::exchange(m_waiting, std::nullopt)) {
                    play(*waiting);
                }
            });
        }
        m_waiting = tone;
        return;
    }
    if (m_players->hasLoudspeaker) {
        Turn& turn = m_players->turns[static_cast<std::size_t>(tone)];
        turn.players[turn.next]->play();
        turn.next = (turn.next + 1) % turn.players.size();
    }
}

void MultimediaTones::setOn(bool on) {
    m_on = on;
    if (on) {
        return;
    }
    m_waiting.reset();
    if (works()) {
        for (const Turn& turn : m_players->turns) {
            for (const auto& player : turn.players) {
                player->stop();
            }
        }
    }
}

} // namespace halfcup::device
