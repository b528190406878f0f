// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/settings.h"

#include "records/method.h"
#include "records/shake.h"
#include "records/typed_input.h"
#include "store/restore.h"

#include <QLocale>

namespace halfcup::touch {

namespace {

std::int64_t integer(store::Store& store, const char* name, std::int64_t otherwise) {
    const records::Value value = store.setting(name);
    const auto* whole = std::get_if<std::int64_t>(&value);
    return whole ? *whole : otherwise;
}

} // namespace

Settings::Settings(store::Store& store, QObject* parent)
    : QObject(parent)
    , m_store(store) {}

int Settings::shakeSeconds() const {
    const auto kept = integer(m_store, "shake_s", records::usualShakeS);
    return kept < records::shortestShakeS || kept > records::longestShakeS ? records::usualShakeS
                                                                           : static_cast<int>(kept);
}

void Settings::setShakeSeconds(int seconds) {
    m_store.setSetting("shake_s", std::int64_t{seconds});
    emit changed();
}

bool Settings::leftHand() const {
    return integer(m_store, "left_hand", 0) != 0;
}

void Settings::setLeftHand(bool left) {
    m_store.setSetting("left_hand", std::int64_t{left});
    emit changed();
}

bool Settings::thickGloves() const {
    return integer(m_store, "thick_gloves", 0) != 0;
}

void Settings::setThickGloves(bool thick) {
    m_store.setSetting("thick_gloves", std::int64_t{thick});
    emit changed();
}

int Settings::textPercent() const {
    const auto kept = integer(m_store, "text_percent", 100);
    return kept < 100 || kept > 200 ? 100 : static_cast<int>(kept);
}

void Settings::setTextPercent(int percent) {
    m_store.setSetting("text_percent", std::int64_t{percent});
    emit changed();
}

bool Settings::dusk() const {
    return integer(m_store, "dusk", 0) != 0;
}

void Settings::setDusk(bool dusk) {
    m_store.setSetting("dusk", std::int64_t{dusk});
    emit changed();
}

QString Settings::language() const {
    const records::Value value = m_store.setting("language");
    const auto* code = std::get_if<std::string>(&value);
    return code ? QString::fromStdString(*code) : QString();
}

void Settings::setLanguage(const QString& code) {
    m_store.setSetting("language", code.toStdString());
    emit changed();
}

bool Settings::sound() const {
    return integer(m_store, "sound", 1) != 0;
}

void Settings::setSound(bool on) {
    m_store.setSetting("sound", std::int64_t{on});
    emit changed();
}

bool Settings::voice() const {
    return integer(m_store, "voice", 1) != 0;
}

void Settings::setVoice(bool on) {
    m_store.setSetting("voice", std::int64_t{on});
    emit changed();
}

QString Settings::positionSource() const {
    const records::Value value = m_store.setting(store::positionSourceSetting);
    const auto* text = std::get_if<std::string>(&value);
    return text ? QString::fromStdString(*text) : QString();
}

void Settings::setPositionSource(const QString& source) {
    m_store.setSetting(store::positionSourceSetting, source.toStdString());
    emit changed();
}

records::Scoop Settings::usualScoop() const {
    records::Scoop scoop;
    const records::Value volume = m_store.setting("scoop_volume_ml");
    if (const auto* ml = std::get_if<double>(&volume);
        ml && *ml >= records::smallestScoopMl && *ml <= records::largestScoopMl)
        scoop.volumeMl = *ml;
    if (integer(m_store, "scoop_settled", 0) != 0)
        scoop.packing = records::Packing::Settled;
    return scoop;
}

void Settings::setUsualScoop(const records::Scoop& scoop) {
    m_store.inOneTransaction([&] {
        m_store.setSetting("scoop_volume_ml", scoop.volumeMl);
        m_store.setSetting("scoop_settled", std::int64_t{scoop.packing == records::Packing::Settled});
    });
    emit changed();
}

std::string Settings::usualMethod() const {
    const records::Value value = m_store.setting("usual_method");
    const auto* id = std::get_if<std::string>(&value);
    return id && records::findMethod(*id) ? *id : std::string(records::alcoholWash().id);
}

void Settings::setUsualMethod(const std::string& id) {
    m_store.setSetting("usual_method", id);
    emit changed();
}

Units Settings::units() const {
    // Of the phone's region, not of the language that was chosen here: English is read in many countries.
    const bool feet = QLocale::system().measurementSystem() == QLocale::ImperialUSSystem;
    return integer(m_store, "fahrenheit", feet) != 0 ? Units::UsCustomary : Units::Metric;
}

void Settings::setUnits(Units units) {
    m_store.setSetting("fahrenheit", std::int64_t{units == Units::UsCustomary});
    emit changed();
}

season::TemperatureUnit Settings::temperatureUnit() const {
    return units() == Units::UsCustomary ? season::TemperatureUnit::Fahrenheit
                                         : season::TemperatureUnit::Celsius;
}

std::vector<std::string> Settings::ofTheHand() {
    return {"shake_s",      "left_hand",       "dusk",
            "sound",        "scoop_volume_ml", "scoop_settled",
            "usual_method", "fahrenheit",      "read_what_this_is_not",
            "language",     "thick_gloves",    "text_percent",
            "voice"};
}

bool Settings::readWhatThisIsNot() const {
    return integer(m_store, "read_what_this_is_not", 0) != 0;
}

void Settings::setReadWhatThisIsNot(bool read) {
    m_store.setSetting("read_what_this_is_not", std::int64_t{read});
    emit changed();
}

} // namespace halfcup::touch
