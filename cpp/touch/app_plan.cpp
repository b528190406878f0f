// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"
#include "touch/plan_words.h"

#include <QEvent>
#include <QFileInfo>
#include <QFileOpenEvent>
#include <QGuiApplication>

#include <functional>
#include <utility>

// Files that come in, and what is opened with the program.
namespace halfcup::touch {

namespace {

/// A file touched in another program, on systems that tell it by an event.
class OpenedFiles final : public QObject {
public:
    OpenedFiles(std::function<void(const QString&)> opened, QObject* parent)
        : QObject(parent)
        , m_opened(std::move(opened)) {}

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() != QEvent::FileOpen)
            return QObject::eventFilter(watched, event);
        m_opened(static_cast<QFileOpenEvent*>(event)->file());
        return true;
    }

private:
    std::function<void(const QString&)> m_opened;
};

} // namespace

void App::wirePlan() {
    PlanController* const plan = m_share.plan();
    connect(plan, &PlanController::backWanted, this, [this] { m_navigator.back(); });
    connect(plan, &PlanController::homeWanted, this, [this] {
        m_navigator.home();
        // A phone whose first records came in a file: what the app is not is still to be read.
        if (!m_services.settings.readWhatThisIsNot())
            m_navigator.open(Navigator::FirstStart);
    });
    connect(plan, &PlanController::recordsChanged, this, [this] {
        m_here.refresh();
        m_same.refresh(); // what came may be there twice now
    });
    connect(&m_share, &ShareController::takeInWanted, this, [this, plan] {
        plan->begin();
        m_navigator.open(Navigator::Plan);
    });
    connect(&m_share, &ShareController::lastTakenWanted, this, [this, plan] {
        if (plan->showLast())
            m_navigator.open(Navigator::Plan);
    });
    connect(&m_navigator, &Navigator::pageChanged, this, [this, plan] {
        if (m_navigator.page() == Navigator::Share)
            plan->refreshLast();
    });
    auto* opened = new OpenedFiles([this](const QString& path) { openFiles({path}); }, this);
    qGuiApp->installEventFilter(opened);
    // The page that asked knows what it asked for, whatever name the file came by.
    connect(m_services.device.files.get(), &device::FileHandover::chosen, this, [this](const QString& path) {
        switch (m_navigator.page()) {
        case Navigator::Plan:
            m_share.plan()->openFile(path);
            break;
        case Navigator::ImportTable:
            m_table.openFile(path);
            break;
        case Navigator::Backup:
            m_backup.pick(path);
            break;
        default:
            openFiles({path});
        }
    });
}

void App::openFiles(const QStringList& paths) {
    if (paths.isEmpty())
        return;
    if (paths.size() > 1) {
        m_messages.say(
            tr("%n files were opened at once. Open them one after the other, so that you see what is "
               "in each.",
               nullptr, static_cast<int>(paths.size())));
        return;
    }
    const QString path = QFileInfo(paths.first()).absoluteFilePath();
    const QString ending = QFileInfo(path).suffix().toLower();
    if (ending == QLatin1String("halfcup")) {
        m_navigator.open(Navigator::Plan);
        m_share.plan()->openFile(path);
    } else if (ending == QLatin1String("csv") || ending == QLatin1String("tsv") ||
               ending == QLatin1String("txt")) {
        m_navigator.open(Navigator::ImportTable); // begins anew, then the file
        m_table.openFile(path);
    } else {
        m_messages.say(
            tr("%1 is none of the files that Halfcup takes in: .halfcup from another phone, .csv or "
               ".txt with a table of washes. Nothing was changed.")
                .arg(plan::shownName(path)));
    }
}

} // namespace halfcup::touch
