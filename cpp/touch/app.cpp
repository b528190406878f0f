// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/app.h"

#include "store/outgoing.h"

#include <QGuiApplication>

#include <utility>

namespace halfcup::touch {

App::App(Services& services, Messages& messages, QObject* parent)
    : QObject(parent)
    , m_services(services)
    , m_messages(messages)
    , m_here(services)
    , m_wash(services)
    , m_answer(services)
    , m_otherAnswer(services)
    , m_methods(services)
    , m_tray(services)
    , m_colony(services)
    , m_event(services)
    , m_onDay(services)
    , m_lines(services)
    , m_round(services)
    , m_compare(services)
    , m_season(services)
    , m_treat(services)
    , m_situation(services)
    , m_choice(services)
    , m_treatment(services)
    , m_check(services)
    , m_ownScoops(services)
    , m_yards(services)
    , m_yardPlan(services)
    , m_same(services)
    , m_history(services)
    , m_folder(services)
    , m_share(services)
    , m_backup(services)
    , m_table(services)
    , m_setup(services)
    , m_sources(services) {
    const auto wash = [this](const QString& colonyId) { beginWash(colonyId); };
    const auto draft = [this](const QString& sampleId) {
        if (m_wash.resume(sampleId))
            m_navigator.open(Navigator::Wash);
    };
    const auto colony = [this](const QString& colonyId) { openColony(colonyId); };
    const auto home = [this] { m_navigator.home(); };

    connect(&m_here, &HereController::washWanted, this, wash);
    connect(&m_here, &HereController::draftWanted, this, draft);
    connect(&m_here, &HereController::colonyWanted, this, colony);
    connect(&m_here, &HereController::newYardWanted, this, [this] {
        m_yards.startNew();
        m_navigator.open(Navigator::YardEdit);
    });

    connect(&m_wash, &WashController::left, this, home);
    connect(&m_wash, &WashController::finished, this, [this](const QString& sampleId) {
        m_here.refresh();
        if (m_answer.show(sampleId))
            m_navigator.replace(Navigator::Answer);
        else if (m_otherAnswer.show(sampleId))
            m_navigator.replace(Navigator::OtherAnswer);
    });
    connect(&m_methods, &MethodsController::picked, this, &App::beginWash);
    connect(&m_otherAnswer, &OtherAnswerController::washWanted, this, wash);
    connect(&m_otherAnswer, &OtherAnswerController::homeWanted, this, home);
    connect(&m_otherAnswer, &OtherAnswerController::sourcesWanted, this,
            [this] { openSources(QStringLiteral("other-lines")); });

    connect(&m_answer, &AnswerController::washWanted, this,
            [this](const QString& colonyId) { beginWash(colonyId, m_answer.methodId()); });
    connect(&m_answer, &AnswerController::colonyWanted, this, colony);
    connect(&m_answer, &AnswerController::homeWanted, this, home);
    connect(&m_answer, &AnswerController::sourcesWanted, this, [this] {
        m_sources.show(QStringLiteral("lines"));
        m_navigator.open(Navigator::Sources);
    });

    connect(&m_colony, &ColonyController::washWanted, this, wash);
    connect(&m_colony, &ColonyController::draftWanted, this, draft);
    connect(&m_colony, &ColonyController::answerWanted, this, [this](const QString& sampleId) {
        if (m_answer.show(sampleId))
            m_navigator.open(Navigator::Answer);
        else if (m_otherAnswer.show(sampleId))
            m_navigator.open(Navigator::OtherAnswer);
    });
    connect(&m_colony, &ColonyController::methodsWanted, this, [this](const QString& colonyId) {
        if (m_methods.show(colonyId))
            m_navigator.open(Navigator::Methods);
    });

    connect(&m_yards, &YardsController::editWanted, this, [this] { m_navigator.open(Navigator::YardEdit); });
    connect(&m_yards, &YardsController::saved, this,
            [this](const QString& yardId) { m_here.pickYard(yardId); });
    connect(&m_share, &ShareController::recordsChanged, &m_here, &HereController::refresh);
    connect(&m_answer, &AnswerController::countWanted, this, [this](const QString& sampleId) {
        if (m_ownScoops.show(sampleId))
            m_navigator.open(Navigator::CountBees);
    });
    connect(&m_ownScoops, &OwnScoopsController::kept, this, [this](const QString& sampleId) {
        m_answer.show(sampleId);
        m_here.refresh();
        m_navigator.back();
    });
    wireTray();
    wireTreating();
    wireStory();
    wireRound();
    wireCompare();
    wirePlan();
    wireYardPlan();
    wireSame();
    wireTable();
    wireBackup();
    wireFolder();

    // At the start all has just been read.
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this,
            [this, wasAway = false](Qt::ApplicationState state) mutable {
                const bool isBack = state == Qt::ApplicationActive && std::exchange(wasAway, false);
                wasAway = wasAway || state != Qt::ApplicationActive;
                if (isBack && m_navigator.page() == Navigator::Here)
                    m_here.arrive();
            });

    // Each page is read when it comes up, so that it never shows what was.
    connect(&m_navigator, &Navigator::pageChanged, this, [this] {
        m_tray.setShown(m_navigator.page() == Navigator::Tray);
        switch (m_navigator.page()) {
        case Navigator::Here:
            m_here.arrive();
            break;
        case Navigator::Tray:
            m_tray.show(m_here.yardId());
            break;
        case Navigator::Colony:
            m_colony.refresh();
            break;
        case Navigator::Yards:
            m_yards.refresh();
            break;
        case Navigator::Season:
            m_season.refresh();
            break;
        case Navigator::Treat:
            m_treat.refresh();
            break;
        case Navigator::OwnScoops:
            m_ownScoops.refresh();
            break;
        case Navigator::Share:
            m_share.refresh();
            break;
        case Navigator::Export:
            m_share.people()->show(m_here.yardId());
            break;
        default:
            break;
        }
    });
}

void App::wireStory() {
    connect(&m_colony, &ColonyController::newEventWanted, this, [this](const QString& colonyId) {
        if (m_event.startFor(colonyId))
            m_navigator.open(Navigator::Event);
    });
    connect(&m_colony, &ColonyController::eventWanted, this, [this](const QString& eventId) {
        if (m_event.open(eventId))
            m_navigator.open(Navigator::Event);
    });
    connect(&m_colony, &ColonyController::treatWanted, this, &App::openTreat);
    connect(&m_colony, &ColonyController::treatmentWanted, this, &App::openTreatment);
    connect(&m_event, &EventController::left, this, [this] {
        m_here.refresh();
        m_navigator.back();
    });
    connect(&m_colony, &ColonyController::dayWanted, this, [this](const QString& colonyId) {
        if (m_onDay.showColony(colonyId))
            m_navigator.open(Navigator::OnDay);
    });
    connect(&m_yards, &YardsController::supersWanted, this, [this](const QString& yardId, bool on) {
        if (m_event.startForYard(yardId, on ? records::EventKind::SupersOn : records::EventKind::SupersOff))
            m_navigator.open(Navigator::Event);
    });
    connect(&m_yards, &YardsController::dayWanted, this, [this](const QString& yardId) {
        if (m_onDay.showYard(yardId))
            m_navigator.open(Navigator::OnDay);
    });
    connect(&m_yards, &YardsController::linesWanted, this, [this](const QString& yardId) {
        if (m_lines.show(yardId))
            m_navigator.open(Navigator::YardLines);
    });
    connect(&m_lines, &LinesController::yardChanged, this, [this] {
        m_yards.reload();
        m_here.refresh();
    });
    connect(&m_setup, &SetupController::understood, this, [this] { m_navigator.back(); });
}

void App::beginWash(const QString& colonyId, const QString& methodId) {
    m_wash.begin(m_here.yardId(), colonyId, methodId);
    m_navigator.home();
    m_navigator.open(Navigator::Wash);
}

/// Read once: by the page that comes up.
void App::openColony(const QString& colonyId) {
    if (m_navigator.page() == Navigator::Colony)
        m_colony.show(colonyId);
    else if (m_colony.choose(colonyId))
        m_navigator.open(Navigator::Colony);
}

void App::start() {
    m_here.refresh();
    std::vector<records::Sample> drafts;
    m_services.kept([&] {
        drafts = m_services.store.drafts();
        // A wash that another keeper is at is no wash to go on with.
        std::erase_if(drafts, [&](const records::Sample& draft) {
            return records::waits(draft) || !store::Outgoing(m_services.store).isFromHere(draft.id);
        });
    });
    if (!drafts.empty() && m_wash.resume(QString::fromStdString(drafts.front().id)))
        m_navigator.open(Navigator::Wash);
    else
        m_here.lookAgain();
    if (m_here.view() == HereController::NoYards && !m_services.settings.readWhatThisIsNot())
        m_navigator.open(Navigator::FirstStart);
}

} // namespace halfcup::touch
