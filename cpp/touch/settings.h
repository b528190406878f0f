// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/scoop.h"
#include "season/forecast_text.h"
#include "store/store.h"
#include "touch/units.h"

#include <QObject>
#include <QString>

#include <string>
#include <vector>

namespace halfcup::touch {

/// The keeper's settings, typed. They belong to this phone and stay on it. Reading never fails: what is
/// missing or out of range has its default. Writing throws store::StoreError.
class Settings : public QObject {
    Q_OBJECT
public:
    explicit Settings(store::Store& store, QObject* parent = nullptr);

    [[nodiscard]] int shakeSeconds() const; // 20 to 180, 60
    void setShakeSeconds(int seconds);
    [[nodiscard]] bool leftHand() const;
    void setLeftHand(bool left);
    [[nodiscard]] bool thickGloves() const; // targets bigger still
    void setThickGloves(bool thick);
    [[nodiscard]] int textPercent() const; // size of letters, 100 to 200
    void setTextPercent(int percent);
    [[nodiscard]] bool dusk() const;
    void setDusk(bool dusk);
    [[nodiscard]] QString language() const; // a code of languages.h; "" the phone's own
    void setLanguage(const QString& code);
    [[nodiscard]] bool sound() const; // on
    void setSound(bool on);
    [[nodiscard]] bool voice() const; // on; silent where sound is off
    void setVoice(bool on);
    [[nodiscard]] QString positionSource() const; // "" the phone's own; see place/qt_position_source.h
    void setPositionSource(const QString& source);
    [[nodiscard]] records::Scoop usualScoop() const; // volume and packing; half a cup, settled
    void setUsualScoop(const records::Scoop& scoop);
    [[nodiscard]] std::string usualMethod() const; // an id of records/method.h; alcohol wash
    void setUsualMethod(const std::string& id);
    [[nodiscard]] Units units() const; // as the phone's region has them
    void setUnits(Units units);
    [[nodiscard]] season::TemperatureUnit temperatureUnit() const; // goes with the units
    /// The names of the settings that are this phone's or this hand's, not the records': what putting a
    /// backup back leaves as it is.
    [[nodiscard]] static std::vector<std::string> ofTheHand();
    [[nodiscard]] bool readWhatThisIsNot() const; // the page of the first start was seen
    void setReadWhatThisIsNot(bool read);

signals:
    void changed();

private:
    store::Store& m_store;
};

} // namespace halfcup::touch
