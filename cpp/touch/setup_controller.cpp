// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/setup_controller.h"

#include "records/method.h"
#include "records/shake.h"
#include "touch/languages.h"
#include "touch/page_text.h"
#include "touch/story.h"
#include "touch/words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <array>
#include <cmath>

namespace halfcup::touch {

namespace {

constexpr int shakeStepS = 10;
constexpr int textStep = 25; // percent
constexpr int mostTextPercent = 200;

struct UsualScoop {
    const char* key;
    double millilitres;
    records::Packing packing;
};
constexpr std::array usualScoops{
    UsualScoop{"half-cup", records::halfCupMl, records::Packing::Loose},
    UsualScoop{"half-cup-settled", records::halfCupMl, records::Packing::Settled},
    UsualScoop{"100-ml-settled", 100.0, records::Packing::Settled},
    UsualScoop{"150-ml", 150.0, records::Packing::Loose},
};

} // namespace

SetupController::SetupController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {
    refreshScoops();
    refreshMethods();
    refreshLanguages();
    connect(services.device.voice.get(), &device::Voice::worksChanged, this, &SetupController::changed);
    connect(&services.settings, &Settings::changed, this, [this] {
        refreshScoops();
        refreshMethods();
        refreshLanguages();
        emit changed();
    });
}

int SetupController::shakeSeconds() const {
    return m_services.settings.shakeSeconds();
}

QString SetupController::shakeText() const {
    return words::seconds(shakeSeconds());
}

bool SetupController::isLeftHand() const {
    return m_services.settings.leftHand();
}

void SetupController::setLeftHand(bool left) {
    m_services.kept([&] { m_services.settings.setLeftHand(left); });
}

bool SetupController::isDusk() const {
    return m_services.settings.dusk();
}

void SetupController::setDusk(bool dusk) {
    m_services.kept([&] { m_services.settings.setDusk(dusk); });
}

bool SetupController::hasThickGloves() const {
    return m_services.settings.thickGloves();
}

void SetupController::setThickGloves(bool thick) {
    m_services.kept([&] { m_services.settings.setThickGloves(thick); });
}

int SetupController::textPercent() const {
    return m_services.settings.textPercent();
}

QString SetupController::textLine() const {
    return tr("%1 %", "size of letters").arg(textPercent());
}

void SetupController::lettersLarger() {
    m_services.kept(
        [&] { m_services.settings.setTextPercent(std::min(textPercent() + textStep, mostTextPercent)); });
}

void SetupController::lettersSmaller() {
    m_services.kept([&] { m_services.settings.setTextPercent(std::max(textPercent() - textStep, 100)); });
}

bool SetupController::hasUsUnits() const {
    return m_services.settings.units() == Units::UsCustomary;
}

void SetupController::setUsUnits(bool us) {
    m_services.kept([&] { m_services.settings.setUnits(us ? Units::UsCustomary : Units::Metric); });
}

bool SetupController::hasSound() const {
    return m_services.settings.sound();
}

void SetupController::setSound(bool on) {
    m_services.kept([&] { m_services.settings.setSound(on); });
    m_services.applySound();
}

bool SetupController::hasVoice() const {
    return m_services.settings.voice();
}

void SetupController::setVoice(bool on) {
    m_services.kept([&] { m_services.settings.setVoice(on); });
    m_services.applySound();
}

bool SetupController::voiceWorks() const {
    return m_services.device.voice->works();
}

QString SetupController::positionSource() const {
    return m_services.settings.positionSource();
}

QString SetupController::positionSourceLine() const {
    const QString source = positionSource();
    if (source.isEmpty())
        return tr("The phone's own receiver");
    return source == QLatin1String("none") ? tr("No position is asked for") : source;
}

QString SetupController::databaseLine() const {
    return tr("Your records: %1")
        .arg(m_services.device.folders->areSeen() ? QString::fromStdString(m_services.store.path())
                                                  : tr("in this browser", "where the records are"));
}

QString SetupController::versionLine() const {
    return tr("Halfcup %1").arg(QCoreApplication::applicationVersion());
}

QString SetupController::whatThisIsNot() const {
    return pageForScreen(QStringLiteral("what-this-is-not"));
}

QString SetupController::whatThisIsNotTitle() const {
    return pageTitle(QStringLiteral("what-this-is-not"));
}

void SetupController::understoodWhatThisIsNot() {
    m_services.kept([&] { m_services.settings.setReadWhatThisIsNot(true); });
    emit understood();
}

void SetupController::refreshScoops() {
    const records::Scoop usual = m_services.settings.usualScoop();
    QList<ChoiceListModel::Entry> entries;
    for (const UsualScoop& each : usualScoops) {
        ChoiceListModel::Entry entry;
        entry.key = QLatin1String(each.key);
        entry.title = words::measure(each.millilitres);
        entry.detail = each.packing == records::Packing::Settled ? tr("rapped to settle") : tr("not rapped");
        entry.chosen = std::abs(usual.volumeMl - each.millilitres) < 0.5 && usual.packing == each.packing;
        entries.append(entry);
    }
    m_scoops.setEntries(entries);
}

void SetupController::refreshMethods() {
    QList<ChoiceListModel::Entry> entries;
    for (const records::Method* method : records::allMethods()) {
        if (method->measure != records::Measure::MitesPer100Bees)
            continue; // a board and brood are for now and then
        ChoiceListModel::Entry entry;
        entry.key = QString::fromLatin1(method->id.data(), static_cast<qsizetype>(method->id.size()));
        entry.title = story::capitalised(words::ofMethod(method->name));
        entry.detail = words::ofMethod(method->summary);
        entry.chosen = method->id == m_services.settings.usualMethod();
        entries.append(entry);
    }
    m_methods.setEntries(entries);
}

void SetupController::chooseMethod(const QString& id) {
    if (records::findMethod(id.toStdString()))
        m_services.kept([&] { m_services.settings.setUsualMethod(id.toStdString()); });
}

void SetupController::refreshLanguages() {
    const QString wish = m_services.settings.language();
    QList<ChoiceListModel::Entry> entries;
    ChoiceListModel::Entry phones;
    phones.title = tr("As the phone has it");
    phones.chosen = wish.isEmpty();
    for (const Language& each : touch::languages()) {
        ChoiceListModel::Entry entry;
        entry.key = each.code;
        entry.title = each.name;
        entry.chosen = each.code == wish;
        if (each.code == languageFor({}))
            phones.detail = each.name;
        entries.append(entry);
    }
    entries.prepend(phones);
    m_languages.setEntries(entries);
}

void SetupController::chooseLanguage(const QString& code) {
    const QString before = m_services.settings.language();
    if (code == before || !m_services.kept([&] { m_services.settings.setLanguage(code); }))
        return;
    if (languageFor(code) != languageFor(before))
        emit languageChosen();
}

void SetupController::shakeLonger() {
    m_services.kept([&] {
        m_services.settings.setShakeSeconds(std::min(shakeSeconds() + shakeStepS, records::longestShakeS));
    });
}

void SetupController::shakeShorter() {
    m_services.kept([&] {
        m_services.settings.setShakeSeconds(std::max(shakeSeconds() - shakeStepS, records::shortestShakeS));
    });
}

void SetupController::chooseScoop(const QString& key) {
    for (const UsualScoop& each : usualScoops)
        if (key == QLatin1String(each.key)) {
            records::Scoop scoop;
            scoop.volumeMl = each.millilitres;
            scoop.packing = each.packing;
            m_services.kept([&] { m_services.settings.setUsualScoop(scoop); });
        }
}

bool SetupController::typePositionSource(const QString& text) {
    const QString source = text.trimmed();
    if (source.size() > 300) {
        m_problem = tr("That is too long for a receiver's address.");
        emit changed();
        return false;
    }
    m_problem.clear();
    const bool done = m_services.kept([&] { m_services.settings.setPositionSource(source); });
    m_services.position.useSource(source);
    m_services.position.want(); // so that a wrong address is told at once
    emit changed();
    return done;
}

} // namespace halfcup::touch
