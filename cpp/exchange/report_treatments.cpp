// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/report_parts.h"
#include "exchange/report_words.h"

#include <QCoreApplication>

namespace halfcup::exchange::report {

namespace {

class ReportText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

QString orMissing(const QString& text) {
    return text.isEmpty() ? ReportText::tr("not written down") : text;
}

QString orMissing(const std::optional<records::Date>& date) {
    return date ? day(*date) : ReportText::tr("not written down");
}

QString removal(const records::Treatment& treatment) {
    if (treatment.removedOn)
        return ReportText::tr("taken out on %1").arg(day(*treatment.removedOn));
    return treatment.removalDue
               ? ReportText::tr("due on %1; not written down as taken out").arg(day(*treatment.removalDue))
               : ReportText::tr("nothing stays in the hive");
}

QString withdrawal(const records::Treatment& treatment) {
    if (!treatment.withdrawalDays)
        return ReportText::tr("not written down; that is not none");
    return ReportText::tr("%1 days; honey from %2")
        .arg(QString::number(*treatment.withdrawalDays), day(*records::honeyFrom(treatment)));
}

ReportFacts told(const Making& making, const records::GivenTreatment& given) {
    const records::Treatment& treatment = given.treatment;
    QStringList colonies;
    for (const records::RecordId& id : given.colonyIds)
        colonies.append(clean(making.records.names.label(id)));
    const QString active = clean(substanceName(making.handbook, treatment.substance));
    ReportFacts facts;
    // Days and product are what a treatment is looked up by, so they stand above the rest.
    facts.title =
        treatment.firstDay == treatment.lastDay
            ? ReportText::tr("%1: %2", "the day, the product")
                  .arg(day(treatment.firstDay), orMissing(clean(treatment.product)))
            : ReportText::tr("%1 to %2: %3", "first and last day, the product")
                  .arg(day(treatment.firstDay), day(treatment.lastDay), orMissing(clean(treatment.product)));
    if (treatment.demo)
        facts.title = ReportText::tr("%1 (invented)").arg(facts.title);
    auto& all = facts.facts;
    all.emplace_back(ReportText::tr("Substance or measure"), orMissing(active));
    all.emplace_back(ReportText::tr("Quantity, all colonies"), orMissing(clean(treatment.quantity)));
    all.emplace_back(ReportText::tr("Batch"), orMissing(clean(treatment.batch)));
    all.emplace_back(ReportText::tr("Expiry"), orMissing(treatment.expiry));
    all.emplace_back(ReportText::tr("Withdrawal"), withdrawal(treatment));
    all.emplace_back(ReportText::tr("Taken out of the hive"), removal(treatment));
    all.emplace_back(ReportText::tr("Supplier"), orMissing(clean(treatment.supplier)));
    all.emplace_back(ReportText::tr("Proof of purchase"), orMissing(clean(treatment.proof)));
    all.emplace_back(ReportText::tr("Prescribed by"), orMissing(clean(treatment.prescriber)));
    all.emplace_back(ReportText::tr("Done by"), orMissing(clean(treatment.doneBy)));
    if (making.manyYards())
        all.emplace_back(ReportText::tr("Yard"), clean(making.records.names.yard(treatment.yardId).name));
    addLabels(facts, ReportText::tr("Colonies treated"), std::move(colonies));
    if (!treatment.note.empty())
        all.emplace_back(ReportText::tr("Note"), clean(treatment.note));
    return facts;
}

} // namespace

void addTreatments(const Making& making) {
    making.blocks.emplace_back(ReportHeading{ReportText::tr("Treatments")});
    if (!making.records.treatments.empty())
        making.blocks.emplace_back(ReportParagraph{
            ReportText::tr("Above each: its first and last day, and the product as named on its label."),
            ReportParagraph::Small});
    for (const records::GivenTreatment& given : making.records.treatments)
        making.blocks.emplace_back(told(making, given));
    if (making.records.treatments.empty())
        making.blocks.emplace_back(
            ReportParagraph{ReportText::tr("No treatment was written down for this period."), {}});
    if (const handbook::Entry* law = making.handbook.find("eu-record-first-day"))
        making.blocks.emplace_back(
            ReportParagraph{ReportText::tr("What is to be written down in the European Union: %1. Other "
                                           "countries ask for other things.")
                                .arg(clean(law->source)),
                            ReportParagraph::Small});
}

void addCautions(const Making& making) {
    making.blocks.emplace_back(ReportParagraph{
        ReportText::tr(
            "These are the keeper's own records, as they were typed. The label of the product, the "
            "law where the hives stand, and the vet or inspector outrank anything said here. A "
            "withdrawal that is not written down is not one of no days."),
        ReportParagraph::Caution});
}

} // namespace halfcup::exchange::report
