// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/backup_controller.h"
#include "touch/controllers.h"
#include "touch/import_controller.h"
#include "touch/messages.h"
#include "touch/navigator.h"
#include "touch/season_controller.h"
#include "touch/setup_controller.h"
#include "touch/share_controller.h"

namespace halfcup::touch {

/// All controllers, and the wires between them: what one wants, the navigator opens.
class App : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(halfcup::touch::Navigator* navigator READ navigator CONSTANT)
    Q_PROPERTY(halfcup::touch::Messages* messages READ messages CONSTANT)
    Q_PROPERTY(halfcup::touch::HereController* here READ here CONSTANT)
    Q_PROPERTY(halfcup::touch::WashController* wash READ wash CONSTANT)
    Q_PROPERTY(halfcup::touch::AnswerController* answer READ answer CONSTANT)
    Q_PROPERTY(halfcup::touch::OtherAnswerController* otherAnswer READ otherAnswer CONSTANT)
    Q_PROPERTY(halfcup::touch::MethodsController* methods READ methods CONSTANT)
    Q_PROPERTY(halfcup::touch::TrayController* tray READ tray CONSTANT)
    Q_PROPERTY(halfcup::touch::ColonyController* colony READ colony CONSTANT)
    Q_PROPERTY(halfcup::touch::EventController* event READ event CONSTANT)
    Q_PROPERTY(halfcup::touch::OnDayController* onDay READ onDay CONSTANT)
    Q_PROPERTY(halfcup::touch::LinesController* lines READ lines CONSTANT)
    Q_PROPERTY(halfcup::touch::RoundController* round READ round CONSTANT)
    Q_PROPERTY(halfcup::touch::CompareController* compare READ compare CONSTANT)
    Q_PROPERTY(halfcup::touch::SeasonController* season READ season CONSTANT)
    Q_PROPERTY(halfcup::touch::TreatController* treat READ treat CONSTANT)
    Q_PROPERTY(halfcup::touch::SituationController* situation READ situation CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceController* choice READ choice CONSTANT)
    Q_PROPERTY(halfcup::touch::TreatmentController* treatment READ treatment CONSTANT)
    Q_PROPERTY(halfcup::touch::CheckController* check READ check CONSTANT)
    Q_PROPERTY(halfcup::touch::OwnScoopsController* ownScoops READ ownScoops CONSTANT)
    Q_PROPERTY(halfcup::touch::YardsController* yards READ yards CONSTANT)
    Q_PROPERTY(halfcup::touch::YardPlanController* yardPlan READ yardPlan CONSTANT)
    Q_PROPERTY(halfcup::touch::SameController* same READ same CONSTANT)
    Q_PROPERTY(halfcup::touch::HistoryController* history READ history CONSTANT)
    Q_PROPERTY(halfcup::touch::FolderController* folder READ folder CONSTANT)
    Q_PROPERTY(halfcup::touch::ShareController* share READ share CONSTANT)
    Q_PROPERTY(halfcup::touch::BackupController* backup READ backup CONSTANT)
    Q_PROPERTY(halfcup::touch::ImportController* tableImport READ tableImport CONSTANT)
    Q_PROPERTY(halfcup::touch::SetupController* setup READ setup CONSTANT)
    Q_PROPERTY(halfcup::touch::SourcesController* sources READ sources CONSTANT)
public:
    /// services and messages must outlive this.
    App(Services& services, Messages& messages, QObject* parent = nullptr);

    Navigator* navigator() { return &m_navigator; }
    Messages* messages() { return &m_messages; }
    HereController* here() { return &m_here; }
    WashController* wash() { return &m_wash; }
    AnswerController* answer() { return &m_answer; }
    OtherAnswerController* otherAnswer() { return &m_otherAnswer; }
    MethodsController* methods() { return &m_methods; }
    TrayController* tray() { return &m_tray; }
    ColonyController* colony() { return &m_colony; }
    EventController* event() { return &m_event; }
    OnDayController* onDay() { return &m_onDay; }
    LinesController* lines() { return &m_lines; }
    RoundController* round() { return &m_round; }
    CompareController* compare() { return &m_compare; }
    SeasonController* season() { return &m_season; }
    TreatController* treat() { return &m_treat; }
    SituationController* situation() { return &m_situation; }
    ChoiceController* choice() { return &m_choice; }
    TreatmentController* treatment() { return &m_treatment; }
    CheckController* check() { return &m_check; }
    OwnScoopsController* ownScoops() { return &m_ownScoops; }
    YardsController* yards() { return &m_yards; }
    YardPlanController* yardPlan() { return &m_yardPlan; }
    SameController* same() { return &m_same; }
    HistoryController* history() { return &m_history; }
    FolderController* folder() { return &m_folder; }
    ShareController* share() { return &m_share; }
    BackupController* backup() { return &m_backup; }
    ImportController* tableImport() { return &m_table; }
    SetupController* setup() { return &m_setup; }
    SourcesController* sources() { return &m_sources; }

    /// Opens the newest draft that does not wait in the tray at its step; else the Here page. Before the
    /// first yard, once: what the app is not.
    void start();
    /// Files that were opened with the program: the page for the first, or a sentence.
    void openFiles(const QStringList& paths);

signals:
    void restoreWanted(const QString& backupPath); // after the program has closed the database

private:
    void beginWash(const QString& colonyId, const QString& methodId = {}); // empty: the usual one
    void wireTray();
    void wireTreating();
    void openColony(const QString& colonyId);
    void openTreat(const QString& colonyId); // what to treat it with
    void openTreatment(const QString& treatmentId);
    void openCheck(const QString& treatmentId);
    void openSources(const QString& topic);
    void wireTable(); // of earlier washes
    void wireRound();
    void wireCompare();
    void wirePlan();
    void wireYardPlan();
    void wireSame();
    void wireBackup();
    void wireFolder();
    void wireStory(); // of a colony: its events, its days, its yard's lines

    Services& m_services;
    Messages& m_messages;
    Navigator m_navigator;
    HereController m_here;
    WashController m_wash;
    AnswerController m_answer;
    OtherAnswerController m_otherAnswer;
    MethodsController m_methods;
    TrayController m_tray;
    ColonyController m_colony;
    EventController m_event;
    OnDayController m_onDay;
    LinesController m_lines;
    RoundController m_round;
    CompareController m_compare;
    SeasonController m_season;
    TreatController m_treat;
    SituationController m_situation;
    ChoiceController m_choice;
    TreatmentController m_treatment;
    CheckController m_check;
    OwnScoopsController m_ownScoops;
    YardsController m_yards;
    YardPlanController m_yardPlan;
    SameController m_same;
    HistoryController m_history;
    FolderController m_folder;
    ShareController m_share;
    BackupController m_backup;
    ImportController m_table;
    SetupController m_setup;
    SourcesController m_sources;
};

} // namespace halfcup::touch
