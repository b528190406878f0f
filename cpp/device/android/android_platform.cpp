// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/android/activity_insets.h"
#include "device/android/activity_volume_keys.h"
#include "device/android/android_file_handover.h"
#include "device/android/configuration_text_scale.h"
#include "device/android/java.h"
#include "device/android/motor_vibration.h"
#include "device/android/window_keep_awake.h"
#include "device/any/multimedia_tones.h"
#include "device/any/qt_app_state.h"
#include "device/any/speech_voice.h"
#include "device/any/standard_folders.h"
#include "device/any/system_brightness.h"
#include "device/any/system_random.h"
#include "device/linux/boot_clock.h"
#include "device/platform.h"
#include "device/surroundings.h"

namespace halfcup::device {

namespace {

/// Linux' clocks. Some phones hide the kernel's name of this start from programs; then it is the count of
/// starts that Android keeps.
class AndroidClock final : public Clock {
public:
    AndroidClock()
        : m_fallback(m_clock.now().bootId.empty() ? bootCount() : std::string()) {}
    [[nodiscard]] ClockReading now() const override {
        ClockReading reading = m_clock.now();
        if (reading.bootId.empty())
            reading.bootId = m_fallback;
        return reading;
    }
    [[nodiscard]] int utcOffsetMinutes(std::int64_t utcMs) const override {
        return m_clock.utcOffsetMinutes(utcMs);
    }

private:
    static std::string bootCount() {
        const jint count = QJniObject::callStaticMethod<jint>(
            java::kPhone, "bootCount", "(Landroid/content/Context;)I", java::context().object());
        return count > 0 ? "android-boot-" + std::to_string(count) : std::string();
    }

    BootClock m_clock;
    std::string m_fallback;
};

/// The keeper's documents belong to no program since Android 11, so what is handed on lies in the program's
/// own documents on the shared storage, where a cable or a file manager finds it.
QString exportsPath() {
    const QString folder = QJniObject::callStaticObjectMethod(java::kPhone, "documentsFolder",
                                                              "(Landroid/content/Context;)Ljava/lang/String;",
                                                              java::context().object())
                               .toString();
    return folder.isEmpty() ? QString() : folder + QStringLiteral("/Halfcup");
}

} // namespace

Platform makePlatform() {
    Platform platform;
    const std::shared_ptr<CallsFromJava> calls = CallsFromJava::open();
    platform.clock = std::make_unique<AndroidClock>();
    platform.random = std::make_unique<SystemRandom>();
    platform.folders = std::make_unique<StandardFolders>(QString(), exportsPath());
    platform.keepAwake = std::make_unique<WindowKeepAwake>();
    platform.brightness = std::make_unique<SystemBrightness>();
    platform.tones = std::make_unique<MultimediaTones>();
    platform.voice = std::make_unique<SpeechVoice>();
    platform.vibration = std::make_unique<MotorVibration>();
    platform.volumeKeys = std::make_unique<ActivityVolumeKeys>(calls);
    platform.files = std::make_unique<AndroidFileHandover>(calls);
    platform.capabilities = std::make_unique<CapabilityWatch>(*platform.keepAwake, *platform.tones,
                                                              *platform.vibration, *platform.volumeKeys);
    return platform;
}

Surroundings makeSurroundings() {
    const std::shared_ptr<CallsFromJava> calls = CallsFromJava::open();
    auto state = std::make_unique<QtAppState>();
    QObject::connect(calls.get(), &CallsFromJava::memoryIsShort, state.get(), &QtAppState::tellMemoryIsShort);
    QJniObject::callStaticMethod<void>(java::kMemory, "listen", "()V");
    return {std::make_unique<ActivityInsets>(calls), std::move(state),
            std::make_unique<ConfigurationTextScale>()};
}

} // namespace halfcup::device
