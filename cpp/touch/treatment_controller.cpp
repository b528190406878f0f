// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/treatment_controller.h"

#include "season/natural_order.h"
#include "touch/substance_names.h"
#include "touch/treatment_questions.h"
#include "touch/words.h"

#include <algorithm>

namespace halfcup::touch {

namespace {

using records::Treatment;

const char* kept(season::Verdict verdict) {
    switch (verdict) {
    case season::Verdict::Fits:
        return "fits";
    case season::Verdict::WithCare:
        return "with_care";
    case season::Verdict::NotNow:
        return "not_now";
    }
    return "";
}

QString verdictSaid(const std::string& kept) {
    if (kept == "fits")
        return TreatmentController::tr("Fits");
    if (kept == "with_care")
        return TreatmentController::tr("Fits with care");
    if (kept == "not_now")
        return TreatmentController::tr("Not now");
    return {};
}

QString courseHintOf(int shortest, int longest) {
    if (longest <= 1)
        return TreatmentController::tr("Given once: the same day.");
    if (longest <= shortest)
        return TreatmentController::tr("by the label; usual course: %1").arg(words::days(shortest));
    return TreatmentController::tr("by the label; usual course: %1 to %2")
        .arg(shortest)
        .arg(words::days(longest));
}

} // namespace

TreatmentController::TreatmentController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

void TreatmentController::setShowsMore(bool more) {
    m_showsMore = more;
    emit changed();
}

void TreatmentController::readYard(const records::RecordId& yardId) {
    m_candidates.clear();
    m_yardName.clear();
    m_services.kept([&] {
        const auto yard = m_services.store.yard(yardId);
        m_yardName = yard ? QString::fromStdString(yard->name) : QString();
        const auto events = m_services.store.eventsOfYard(yardId);
        for (const records::Colony& colony : m_services.store.colonies(yardId))
            if (records::stateOn(colony, events, m_services.today()).alive())
                m_candidates.push_back(colony);
        for (const records::RecordId& id : m_entry.colonyIds) // those that stand elsewhere now, or died
            if (std::ranges::none_of(m_candidates, [&](const auto& colony) { return colony.id == id; }))
                if (const auto colony = m_services.store.colony(id))
                    m_candidates.push_back(*colony);
    });
    std::ranges::sort(m_candidates, [](const records::Colony& a, const records::Colony& b) {
        return season::naturalOrder(a.label, b.label) < 0;
    });
}

void TreatmentController::begin(const TreatScope& scope, const season::Choice& choice,
                                const records::Date& firstDay) {
    const bool course = choice.kind == season::ChoiceKind::Substance && choice.courseDaysLongest > 1;
    Treatment treatment;
    treatment.yardId = scope.kept.yard.id;
    treatment.substance = choice.id;
    treatment.demo = scope.demo();
    treatment.verdict = kept(choice.verdict);
    treatment.firstDay = firstDay;
    treatment.lastDay = course ? records::plusDays(firstDay, choice.courseDaysShortest - 1) : firstDay;
    if (course)
        treatment.removalDue = treatment.lastDay;
    if (choice.kind == season::ChoiceKind::Measure) { // nothing out of a bottle
        treatment.product = choice.name;
        treatment.withdrawalDays = 0;
    }
    m_courseHint =
        course ? courseHintOf(choice.courseDaysShortest, choice.courseDaysLongest) : courseHintOf(1, 1);
    beginForm(scope, treatment, QString::fromStdString(choice.name));
}

void TreatmentController::beginAnother(const TreatScope& scope) {
    Treatment treatment;
    treatment.yardId = scope.kept.yard.id;
    treatment.demo = scope.demo();
    treatment.firstDay = treatment.lastDay = scope.from;
    m_courseHint = tr("by the label");
    beginForm(scope, treatment, tr("Another substance"));
}

void TreatmentController::beginForm(const TreatScope& scope, const Treatment& treatment,
                                    const QString& name) {
    m_entry = {treatment, {}};
    m_chosen.clear();
    for (const records::Colony& colony : scope.colonies)
        m_chosen.push_back(colony.id);
    readYard(treatment.yardId);
    m_name = name;
    m_form.fill(treatment, true, m_courseHint,
                isUnknownSubstance(treatment.substance, m_services.handbook()));
    m_editing = true;
    m_typed = false;
    m_showsMore = false;
    m_problem.clear();
    m_questions.clear();
    listColonies();
    emit changed();
}

bool TreatmentController::show(const QString& treatmentId) {
    std::optional<records::GivenTreatment> found;
    m_services.kept([&] { found = m_services.store.treatment(treatmentId.toStdString()); });
    if (!found)
        return false;
    m_entry = *found;
    m_chosen = m_entry.colonyIds;
    readYard(m_entry.treatment.yardId);
    m_name = substanceName(m_entry.treatment.substance, m_services.handbook());
    m_courseHint.clear();
    m_editing = false;
    m_problem.clear();
    m_questions.clear();
    listColonies();
    listFacts();
    emit changed();
    return true;
}

void TreatmentController::listColonies() {
    QList<ChoiceListModel::Entry> entries;
    for (const records::Colony& colony : m_candidates) {
        ChoiceListModel::Entry entry;
        entry.key = QString::fromStdString(colony.id);
        entry.title = QString::fromStdString(colony.label);
        entry.chosen = std::ranges::find(m_chosen, colony.id) != m_chosen.end();
        entries.append(entry);
    }
    m_colonies.setEntries(entries);
}

QString TreatmentController::coloniesLine() const {
    QStringList labels;
    for (const ChoiceListModel::Entry& each : m_colonies.entries())
        if (each.chosen)
            labels.append(each.title);
    if (labels.isEmpty())
        return tr("No colony yet");
    if (labels.size() == 1)
        return tr("Colony %1").arg(labels.first());
    return tr("%n colony(ies): %1", nullptr, static_cast<int>(labels.size()))
        .arg(labels.join(QStringLiteral(", ")));
}

QStringList TreatmentController::cautions() const {
    QStringList sentences;
    if (const std::string hazard = substanceHazard(m_entry.treatment.substance, m_services.handbook());
        !hazard.empty())
        sentences.append(QString::fromStdString(hazard));
    sentences.append(
        tr("How much to give stands on the label. The label and your local law outrank this app."));
    return sentences;
}

void TreatmentController::type(const QString& key, const QString& text) {
    if (text.trimmed() == m_form.text(key))
        return;
    m_form.type(key, text, m_services.today());
    m_typed = true;
    emit changed();
}

void TreatmentController::moveDay(const QString& key, int days) {
    m_form.moveDay(key, days, m_services.today());
    m_typed = true;
    emit changed();
}

void TreatmentController::toggleColony(const QString& colonyId) {
    const std::string id = colonyId.toStdString();
    if (const auto there = std::ranges::find(m_chosen, id); there != m_chosen.end())
        m_chosen.erase(there);
    else
        m_chosen.push_back(id);
    m_typed = true;
    listColonies();
    emit changed();
}

void TreatmentController::pickAllColonies() {
    m_chosen.clear();
    for (const records::Colony& colony : m_candidates)
        m_chosen.push_back(colony.id);
    listColonies();
    emit changed();
}

/// The colonies in the order of the yard, so that the same choice gives the same record.
records::GivenTreatment TreatmentController::chosen() const {
    records::GivenTreatment entry{m_entry.treatment, {}};
    for (const records::Colony& colony : m_candidates)
        if (std::ranges::find(m_chosen, colony.id) != m_chosen.end())
            entry.colonyIds.push_back(colony.id);
    return entry;
}

bool TreatmentController::keep() {
    const records::Date today = m_services.today();
    records::GivenTreatment entry = chosen();
    const TreatmentForm::Result typed = m_form.read(entry.treatment, today);
    entry.treatment = typed.treatment;
    entry.treatment.substance = substanceId(entry.treatment.substance, m_services.handbook());
    m_problem = typed.problem;
    m_questions.clear();
    if (m_problem.isEmpty())
        for (const records::TreatmentProblem problem :
             records::problemsOf(entry.treatment, static_cast<int>(entry.colonyIds.size()), today))
            if (records::isForbidding(problem) && m_problem.isEmpty())
                m_problem = sentenceOf(problem);
    if (m_problem.isEmpty() && m_services.kept([&] { m_questions = questionsBefore(entry, m_services); }) &&
        m_questions.isEmpty())
        return write(entry);
    emit changed();
    return false;
}

bool TreatmentController::keepAllTheSame() {
    records::GivenTreatment entry = chosen();
    const TreatmentForm::Result typed = m_form.read(entry.treatment, m_services.today());
    if (m_questions.isEmpty() || !typed.problem.isEmpty())
        return false;
    entry.treatment = typed.treatment;
    entry.treatment.substance = substanceId(entry.treatment.substance, m_services.handbook());
    m_questions.clear();
    return write(entry);
}

void TreatmentController::dropQuestions() {
    m_questions.clear();
    emit changed();
}

bool TreatmentController::write(const records::GivenTreatment& entry) {
    records::GivenTreatment toKeep = entry;
    const bool first = toKeep.treatment.id.empty();
    if (first) {
        toKeep.treatment.id = m_services.store.newId();
        toKeep.treatment.recordedAtMs = m_services.now().utcMs;
    }
    if (!m_services.kept([&] { m_services.store.save(toKeep); })) {
        emit changed();
        return false;
    }
    emit recordsChanged();
    const bool shown = show(QString::fromStdString(toKeep.treatment.id));
    if (first)
        emit firstKept();
    return shown;
}

void TreatmentController::edit() {
    m_form.fill(m_entry.treatment, false, m_courseHint,
                isUnknownSubstance(m_entry.treatment.substance, m_services.handbook()));
    m_editing = true;
    m_typed = false;
    m_showsMore = true;
    m_problem.clear();
    emit changed();
}

bool TreatmentController::stopEditing() {
    if (isNew() || !m_editing)
        return false;
    show(QString::fromStdString(m_entry.treatment.id));
    return true;
}

QString TreatmentController::statusLine() const {
    const Treatment& treatment = m_entry.treatment;
    const records::Date today = m_services.today();
    if (treatment.removed)
        return tr("Removed from the records; the history keeps it.");
    if (today < treatment.firstDay)
        return tr("Begins on %1").arg(words::day(treatment.firstDay));
    if (treatment.removedOn)
        return tr("Taken out on %1").arg(words::day(*treatment.removedOn));
    if (treatment.removalDue && *treatment.removalDue < today)
        return tr("Still in: it should have come out on %1").arg(words::day(*treatment.removalDue));
    if (treatment.removalDue)
        return tr("Running: take it out on %1").arg(words::day(*treatment.removalDue));
    return records::isRunningOn(treatment, today) ? tr("Running until %1").arg(words::day(treatment.lastDay))
                                                  : tr("Ended on %1").arg(words::day(treatment.lastDay));
}

QString TreatmentController::honeyLine() const {
    const auto from = records::honeyFrom(m_entry.treatment);
    if (!from)
        return tr("The withdrawal is not written down: look at the label before honey is taken.");
    return m_entry.treatment.removalDue && !m_entry.treatment.removedOn
               ? tr("Honey may be taken again from %1 on, if it comes out as planned.")
                     .arg(words::dayAndYear(*from))
               : tr("Honey may be taken again from %1 on.").arg(words::dayAndYear(*from));
}

void TreatmentController::listFacts() {
    const Treatment& t = m_entry.treatment;
    QList<ChoiceListModel::Entry> entries;
    const auto add = [&](const QString& title, const QString& detail) {
        ChoiceListModel::Entry entry;
        entry.title = title;
        entry.detail = detail.isEmpty() ? tr("not written down") : detail;
        entries.append(entry);
    };
    const auto day = [](const std::optional<records::Date>& date) {
        return date ? words::dayAndYear(*date) : QString();
    };
    const auto text = [](const std::string& value) { return QString::fromStdString(value); };
    add(tr("Product"), text(t.product));
    add(tr("Colonies"), coloniesLine());
    add(tr("First and last day"),
        tr("%1 to %2", "days").arg(words::dayAndYear(t.firstDay), words::dayAndYear(t.lastDay)));
    if (t.removalDue)
        add(tr("To be taken out on"), day(t.removalDue));
    if (t.removedOn)
        add(tr("Taken out on"), day(t.removedOn));
    add(tr("Withdrawal for honey"), t.withdrawalDays ? words::days(*t.withdrawalDays) : QString());
    add(tr("Quantity"), text(t.quantity));
    add(tr("Batch"), text(t.batch));
    add(tr("Expiry of the product"), day(t.expiry));
    add(tr("Supplier"), text(t.supplier));
    add(tr("Proof of purchase"), text(t.proof));
    if (!t.prescriber.empty())
        add(tr("Prescribed by"), text(t.prescriber));
    add(tr("Done by"), text(t.doneBy));
    if (!t.verdict.empty())
        add(tr("What the app said of it"), verdictSaid(t.verdict));
    if (!t.note.empty())
        add(tr("Note"), text(t.note));
    m_facts.setEntries(entries);
}

bool TreatmentController::canTakeOut() const {
    const Treatment& t = m_entry.treatment;
    return !m_editing && !t.removed && t.removalDue && !t.removedOn && t.firstDay <= m_services.today();
}

void TreatmentController::takenOutToday() {
    if (!canTakeOut())
        return;
    records::GivenTreatment entry = m_entry;
    entry.treatment.removedOn = m_services.today();
    write(entry);
}

void TreatmentController::remove() {
    records::GivenTreatment entry = m_entry;
    entry.treatment.removed = true;
    if (isNew() || !m_services.kept([&] { m_services.store.save(entry); }))
        return;
    m_entry = entry;
    emit changed();
    emit recordsChanged();
    emit removedIt();
}

void TreatmentController::check() {
    emit checkWanted(QString::fromStdString(m_entry.treatment.id));
}

} // namespace halfcup::touch
