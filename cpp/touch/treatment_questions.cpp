// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/treatment_questions.h"

#include "handbook/substance.h"
#include "records/colony_state.h"
#include "season/turn_date.h"
#include "touch/treatment_form.h"
#include "touch/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace halfcup::touch {

namespace {

using records::Date;
using records::GivenTreatment;
using records::Treatment;

class Questions {
    Q_DECLARE_TR_FUNCTIONS(TreatmentQuestions)
};

/// What rotates together: of two entries with the same substance in different forms, too.
std::string activeOf(const std::string& substance, const handbook::Handbook& handbook) {
    for (const handbook::Substance& each : handbook::substances(handbook))
        if (each.id == substance)
            return each.active;
    return substance;
}

bool overlap(const Treatment& a, const Treatment& b) {
    return a.firstDay <= records::endOf(b) && b.firstDay <= records::endOf(a);
}

void askOverlaps(QStringList& questions, const GivenTreatment& entry,
                 const std::vector<records::Colony>& colonies, Services& services) {
    const std::string active = activeOf(entry.treatment.substance, services.handbook());
    for (const records::Colony& colony : colonies)
        for (const GivenTreatment& other : services.store.treatmentsOf(colony.id)) {
            if (other.treatment.id == entry.treatment.id || other.treatment.removed ||
                !overlap(entry.treatment, other.treatment) ||
                activeOf(other.treatment.substance, services.handbook()) != active)
                continue;
            questions.append(Questions::tr("Colony %1 has %2 already, from %3 to %4.")
                                 .arg(QString::fromStdString(colony.label),
                                      QString::fromStdString(other.treatment.product),
                                      words::day(other.treatment.firstDay),
                                      words::day(records::endOf(other.treatment))));
            break;
        }
}

/// True where supers are on at the start or come on before honey may be taken.
bool supersWithin(const records::Colony& colony, const Treatment& treatment, Services& services) {
    const auto events = services.store.eventsOf(colony.id);
    const auto state = records::stateOn(colony, events, treatment.firstDay);
    if (state.supersOn && state.supersOn->value)
        return true;
    return std::ranges::any_of(events, [&](const records::ColonyEvent& event) {
        return event.colonyId == colony.id && event.kind == records::EventKind::SupersOn && !event.removed &&
               records::holdsHoneyOn(treatment, event.day);
    });
}

void askSupers(QStringList& questions, const Treatment& treatment,
               const std::vector<records::Colony>& colonies, Services& services) {
    const auto all = handbook::substances(services.handbook());
    const auto substance = std::ranges::find(all, treatment.substance, &handbook::Substance::id);
    if (substance == all.end() || substance->supers == handbook::Allowed::Yes)
        return;
    QStringList labels;
    for (const records::Colony& colony : colonies)
        if (supersWithin(colony, treatment, services))
            labels.append(QString::fromStdString(colony.label));
    if (labels.isEmpty())
        return;
    const QString list = labels.join(QStringLiteral(", "));
    questions.append(
        substance->supers == handbook::Allowed::No
            ? Questions::tr("Supers are on within the course or the withdrawal (colony %1). Their honey is "
                            "not for eating.")
                  .arg(list)
            : Questions::tr("Supers are on within the course or the withdrawal (colony %1): only where the "
                            "label allows it.")
                  .arg(list));
}

} // namespace

QStringList questionsBefore(const GivenTreatment& entry, Services& services) {
    const Treatment& treatment = entry.treatment;
    std::vector<records::Colony> colonies;
    for (const records::RecordId& id : entry.colonyIds)
        if (const auto colony = services.store.colony(id))
            colonies.push_back(*colony);

    QStringList questions;
    for (const records::TreatmentProblem problem :
         records::problemsOf(treatment, static_cast<int>(entry.colonyIds.size()), services.today()))
        if (!records::isForbidding(problem))
            questions.append(sentenceOf(problem));
    const bool isSubstance = !services.handbook().find(treatment.substance, "does"); // else a measure
    if (const auto yard = services.store.yard(treatment.yardId); yard && isSubstance)
        if (const auto turn = season::turnDateFrom(*yard, treatment.firstDay);
            turn && records::endOf(treatment) > *turn)
            questions.append(
                Questions::tr("The course runs past the turn date, %1: the bees that overwinter are "
                              "raised while mites are still there.")
                    .arg(words::day(*turn)));
    askOverlaps(questions, entry, colonies, services);
    askSupers(questions, treatment, colonies, services);
    if (isSubstance && !treatment.withdrawalDays)
        questions.append(
            Questions::tr("The withdrawal is not written down, so nobody can say from when on honey "
                          "may be taken. It stands on the label; write 0 where it says none."));
    return questions;
}

} // namespace halfcup::touch
