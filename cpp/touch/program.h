// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/platform.h"
#include "device/surroundings.h"
#include "touch/app.h"
#include "touch/look.h"

#include <QQmlApplicationEngine>
#include <QSize>
#include <QString>

#include <functional>
#include <memory>
#include <optional>

class QQuickWindow;

namespace halfcup::touch {

class FirstPages;
class RecoveryController;
class Surroundings;

/// What may differ from one run to the next.
struct ProgramOptions {
    QString databasePath;
    QSize windowSize{360, 740};                   // of a window on a desktop; a phone gives its own
    double pixelsPerMm = 160 / 25.4;              // device-independent pixels in a millimetre of the glass
    double fontScale = 1.0;                       // beside the system's own
    std::optional<QString> language;              // instead of the keeper's setting, for this run only
    std::optional<QString> positionSource;        // instead of the keeper's setting, for this run only
    PositionStamper::MakeSource makeSource;       // empty: what this build has
    device::Surroundings* surroundings = nullptr; // must outlive the program; null: the phone's
    std::function<void()> ended;                  // what ends the program; empty: QCoreApplication::exit()
};

/// The program put together: the one place where phone, store, controllers and pages meet. Made once by
/// main(), by the tour and by each test that wants the real thing.
class Program {
public:
    /// platform must outlive this. Throws store::StoreError where the database cannot be used.
    Program(device::Platform& platform, const ProgramOptions& options);
    ~Program();

    /// Loads the pages; the window is shown. False where the QML cannot be loaded.
    bool show();

    /// The backup that the keeper asked to have put back; empty: none. The program has ended itself for it;
    /// with it goes the database's Store, then see restoring.h.
    [[nodiscard]] QString restoreFrom() const { return m_restoreFrom; }

    /// The keeper chose another language: the program has ended itself to be put together again in it.
    [[nodiscard]] bool wantsAgain() const { return m_wantsAgain; }

    [[nodiscard]] App& app() { return *m_app; }
    [[nodiscard]] store::Store& store() { return *m_store; }
    [[nodiscard]] Services& services() { return *m_services; }
    [[nodiscard]] Look& look() { return *m_look; }
    [[nodiscard]] QQuickWindow* window() const { return m_window; }
    /// Calls once the first picture is on the glass: for what that must not wait for. After show().
    void afterFirstPicture(const std::function<void()>& call);
    /// Warnings of the QML engine so far: none in a sound program, and tests fail on any.
    [[nodiscard]] const QStringList& qmlWarnings() const { return m_warnings; }

private:
    void sizeLetters();
    void end();

    device::Platform& m_platform;
    ProgramOptions m_options;
    KeepersHandbook m_handbook;
    std::unique_ptr<store::Store> m_store;
    std::unique_ptr<Settings> m_settings;
    std::unique_ptr<PositionStamper> m_position;
    std::unique_ptr<Messages> m_messages;
    std::unique_ptr<Services> m_services;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<App> m_app;
    device::Surroundings m_phone; // empty where the options have others
    std::unique_ptr<Surroundings> m_surroundings;
    device::TextScale* m_textScale = nullptr;
    std::unique_ptr<QQmlApplicationEngine> m_engine; // goes before what its pages look at
    std::unique_ptr<FirstPages> m_firstPages;
    QQuickWindow* m_window = nullptr;
    QStringList m_warnings;
    QString m_restoreFrom;
    bool m_wantsAgain = false;
};

/// The window that stands in for the app where its records cannot be opened. Lives until the engine goes.
[[nodiscard]] std::unique_ptr<QQmlApplicationEngine> showTrouble(Look& look, RecoveryController& recovery);

/// The types the pages use, and a language (languages.h). Call once, before the first Program.
void prepareQuick(const QString& language = {});

} // namespace halfcup::touch
