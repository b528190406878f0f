// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/program.h"

#include "place/position_source.h"
#include "place/source_setting.h"
#include "touch/asking_source.h"
#include "touch/first_pages.h"
#include "touch/languages.h"
#include "touch/recovery_controller.h"
#include "touch/surroundings.h"

#include <QGuiApplication>
#include <QPixmapCache>
#include <QQuickWindow>
#include <QTimer>

// The registration lives in static libraries and is called by name, so that the linker keeps it.
extern void qml_register_types_Halfcup_Touch();
extern void qml_register_types_Halfcup();

namespace halfcup::touch {

namespace {

std::unique_ptr<QQmlApplicationEngine> makeEngine() {
    auto engine = std::make_unique<QQmlApplicationEngine>();
    engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    return engine;
}

QQuickWindow* load(QQmlApplicationEngine& engine, const QString& page, const QVariantMap& properties) {
    engine.setInitialProperties(properties);
    engine.load(urlOfPage(page));
    return engine.rootObjects().isEmpty() ? nullptr
                                          : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
}

} // namespace

void prepareQuick(const QString& language) {
    qml_register_types_Halfcup_Touch();
    qml_register_types_Halfcup();
    useLanguage(language);
}

Program::Program(device::Platform& platform, const ProgramOptions& options)
    : m_platform(platform)
    , m_options(options)
    , m_messages(std::make_unique<Messages>()) {
    m_engine = makeEngine();
    m_firstPages = std::make_unique<FirstPages>(*m_engine);
    m_store =
        std::make_unique<store::Store>(options.databasePath.toStdString(),
                                       store::StoreHost{[&platform] { return platform.clock->now().utcMs; },
                                                        [&platform] { return platform.random->next(); }});
    m_settings = std::make_unique<Settings>(*m_store);
    useLanguage(options.language.value_or(m_settings->language()));
    auto makeSource = options.makeSource;
    if (!makeSource)
        makeSource = [](const QString& setting) -> std::unique_ptr<place::PositionSource> {
            auto source = place::makePositionSource(setting);
            // A receiver of the keeper's own, on a line or the network, is not the phone's to guard.
            if (place::readSourceSetting(setting).kind != place::SourceSetting::Kind::PlatformDefault)
                return source;
            return std::make_unique<AskingSource>(std::move(source), device::makePositionPermission());
        };
    m_position = std::make_unique<PositionStamper>(*platform.clock, std::move(makeSource));
    m_position->useSource(options.positionSource.value_or(m_settings->positionSource()));
    m_services.reset(new Services{*m_store, m_platform, *m_position, *m_settings, *m_messages, m_handbook});
    m_services->applySound();

    m_look = std::make_unique<Look>(options.pixelsPerMm, options.fontScale);
    const auto applySettings = [this] {
        m_look->setDusk(m_settings->dusk());
        m_look->setLeftHand(m_settings->leftHand());
        m_look->setThickGloves(m_settings->thickGloves());
        sizeLetters();
    };
    applySettings();
    QObject::connect(m_settings.get(), &Settings::changed, m_look.get(), applySettings);
    Look::setInstance(m_look.get());
    m_app = std::make_unique<App>(*m_services, *m_messages);
    QObject::connect(m_app.get(), &App::restoreWanted, m_app.get(), [this](const QString& backupPath) {
        m_restoreFrom = backupPath;
        end();
    });
    QObject::connect(m_app->setup(), &SetupController::languageChosen, m_app.get(), [this] {
        m_wantsAgain = true;
        end();
    });
    if (!options.surroundings)
        m_phone = device::makeSurroundings();
    m_surroundings =
        std::make_unique<Surroundings>(options.surroundings ? *options.surroundings : m_phone, *m_position);
    m_textScale = (options.surroundings ? *options.surroundings : m_phone).text.get();
    sizeLetters();
    QObject::connect(m_textScale, &device::TextScale::changed, m_look.get(), [this] { sizeLetters(); });
    for (CountController* count : {m_app->wash()->count(), m_app->wash()->secondRinse()})
        QObject::connect(m_surroundings.get(), &Surroundings::inFrontChanged, count,
                         &CountController::setInFront);
    QObject::connect(m_surroundings.get(), &Surroundings::memoryIsShort, m_look.get(), [this] {
        if (m_window)
            m_window->releaseResources();
        m_engine->collectGarbage();
        m_engine->trimComponentCache();
        QPixmapCache::clear();
    });
}

Program::~Program() = default;

/// As large as the system says, and then as the keeper wants them in this program alone.
void Program::sizeLetters() {
    const double system = m_textScale ? m_textScale->now() : 1.0;
    m_look->setFontScale(m_options.fontScale * system * m_settings->textPercent() / 100);
}

void Program::end() {
    if (m_options.ended)
        m_options.ended();
    else
        QCoreApplication::exit();
}

bool Program::show() {
    // Every text loads the application's font before its own: so one that is shown anyway.
    QGuiApplication::setFont(m_look->fontOf(m_look->smallSize(), QFont::Normal));

    QObject::connect(m_engine.get(), &QQmlEngine::warnings, m_look.get(),
                     [this](const QList<QQmlError>& errors) {
                         for (const QQmlError& error : errors)
                             m_warnings.append(error.toString());
                     });
    if (!m_options.makeSource)
        m_position->hold();
    m_app->start();
    m_window = load(*m_engine, QStringLiteral("Main.qml"),
                    {{QStringLiteral("app"), QVariant::fromValue(m_app.get())},
                     {QStringLiteral("surroundings"), QVariant::fromValue(m_surroundings.get())},
                     {QStringLiteral("width"), m_options.windowSize.width()},
                     {QStringLiteral("height"), m_options.windowSize.height()}});
    m_firstPages.reset();
    if (!m_window)
        return false;
    m_surroundings->watch(m_window);
    m_window->show();
    afterFirstPicture([this] { m_position->go(); });
    return true;
}

void Program::afterFirstPicture(const std::function<void()>& call) {
    QObject::connect(
        m_window, &QQuickWindow::frameSwapped, m_look.get(),
        [this, call] { QTimer::singleShot(0, m_look.get(), call); }, Qt::SingleShotConnection);
}

std::unique_ptr<QQmlApplicationEngine> showTrouble(Look& look, RecoveryController& recovery) {
    Look::setInstance(&look);
    auto engine = makeEngine();
    if (QQuickWindow* window = load(*engine, QStringLiteral("TroubleWindow.qml"),
                                    {{QStringLiteral("recovery"), QVariant::fromValue(&recovery)}})) {
        window->resize(360, 740);
        window->show();
    }
    return engine;
}

} // namespace halfcup::touch
