// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/treatment_form.h"

#include "records/typed_input.h"
#include "touch/typed_date.h"
#include "touch/words.h"

#include <QCoreApplication>
#include <QLocale>

namespace halfcup::touch {

namespace {

using records::Treatment;

class Record {
    Q_DECLARE_TR_FUNCTIONS(TreatmentForm)
};

QString dayText(const std::optional<records::Date>& day) {
    return day ? words::dayAndYear(*day) : QString();
}

QString plain(const std::string& text) {
    return QString::fromStdString(text);
}

constexpr qsizetype longestText = 500; // of one field, characters [convention]

QList<FieldListModel::Entry> neededFields(const Treatment& t, const QString& courseHint, bool asksSubstance) {
    using Kind = FieldListModel::Kind;
    QList<FieldListModel::Entry> fields{
        {QStringLiteral("product"), Record::tr("Product"), Record::tr("as its label names it"), Kind::Text,
         plain(t.product)},
        {QStringLiteral("first_day"), Record::tr("First day"), {}, Kind::Day, dayText(t.firstDay)},
        {QStringLiteral("last_day"), Record::tr("Last day"), courseHint, Kind::Day, dayText(t.lastDay)},
        {QStringLiteral("removal_due"), Record::tr("To be taken out on"),
         Record::tr("Leave it empty where nothing stays in the hive."), Kind::Day, dayText(t.removalDue)},
        {QStringLiteral("withdrawal_days"), Record::tr("Withdrawal for honey, days"),
         Record::tr("From the label; 0 where it says none."), Kind::Number,
         t.withdrawalDays ? QLocale().toString(*t.withdrawalDays) : QString()},
        {QStringLiteral("quantity"), Record::tr("Quantity, all colonies together"),
         Record::tr("with its unit; how much to give stands on the label"), Kind::Text, plain(t.quantity)},
        {QStringLiteral("batch"), Record::tr("Batch"), {}, Kind::Text, plain(t.batch)},
    };
    if (asksSubstance)
        fields.prepend({QStringLiteral("substance"), Record::tr("Active substance"),
                        Record::tr("as the label names it"), Kind::Text, plain(t.substance)});
    return fields;
}

QList<FieldListModel::Entry> moreFields(const Treatment& t, bool isNew) {
    using Kind = FieldListModel::Kind;
    QList<FieldListModel::Entry> fields{
        {QStringLiteral("expiry"), Record::tr("Expiry of the product"), {}, Kind::Day, dayText(t.expiry)},
        {QStringLiteral("supplier"), Record::tr("Supplier"), Record::tr("name and address"), Kind::Text,
         plain(t.supplier)},
        {QStringLiteral("proof"), Record::tr("Proof of purchase"),
         Record::tr("number of the receipt, or where it is kept"), Kind::Text, plain(t.proof)},
        {QStringLiteral("prescriber"), Record::tr("Prescribed by"), Record::tr("where it was prescribed"),
         Kind::Text, plain(t.prescriber)},
        {QStringLiteral("done_by"), Record::tr("Done by"), {}, Kind::Text, plain(t.doneBy)},
        {QStringLiteral("note"), Record::tr("Note"), {}, Kind::Text, plain(t.note)},
    };
    if (!isNew)
        fields.prepend(
            {QStringLiteral("removed_on"), Record::tr("Taken out on"), {}, Kind::Day, dayText(t.removedOn)});
    return fields;
}

/// Puts a typed day into its place; the sentence where it is none.
QString readDay(const QString& label, const QString& text, const records::Date& today,
                std::optional<records::Date>& day) {
    TypedDate typed = readDate(text, today, label);
    day = typed.date;
    return typed.problem;
}

QString readWithdrawal(const QString& label, const QString& text, std::optional<int>& days) {
    days.reset();
    if (text.isEmpty())
        return {};
    const auto read = records::readNumber(text.toStdString());
    std::optional<records::InputProblem> wrong;
    if (const auto* problem = std::get_if<records::InputProblem>(&read))
        wrong = *problem;
    else if (const double value = std::get<double>(read); value < 0)
        wrong = records::InputProblem::Negative;
    else if (value > records::longestWithdrawalDays)
        wrong = records::InputProblem::TooLarge;
    else if (value != static_cast<int>(value))
        wrong = records::InputProblem::NotWhole;
    else
        days = static_cast<int>(value);
    return wrong ? words::problem(*wrong, label, 0, records::longestWithdrawalDays) : QString();
}

} // namespace

void TreatmentForm::fill(const Treatment& treatment, bool isNew, const QString& courseHint,
                         bool asksSubstance) {
    m_isNew = isNew;
    needed.setEntries(neededFields(treatment, courseHint, asksSubstance));
    more.setEntries(moreFields(treatment, isNew));
}

QString TreatmentForm::text(const QString& key) const {
    return needed.has(key) ? needed.text(key) : more.text(key);
}

void TreatmentForm::put(const QString& key, const QString& text) {
    needed.setText(key, text);
    more.setText(key, text);
}

void TreatmentForm::type(const QString& key, const QString& text, const records::Date& today) {
    const QString before = this->text(key);
    put(key, text);
    if (m_isNew)
        follow(key, before, today);
}

void TreatmentForm::follow(const QString& key, const QString& before, const records::Date& today) {
    const auto day = [&](const QString& text) { return readDate(text, today, {}).date; };
    const auto from = day(before);
    const auto to = day(text(key));
    if (!from || !to || *from == *to)
        return;
    const QString removal = QStringLiteral("removal_due");
    const int moved = records::daysBetween(*from, *to);
    if (key == QLatin1String("first_day"))
        for (const QString& other : {QStringLiteral("last_day"), removal}) {
            if (const auto old = day(text(other)))
                put(other, dayText(records::plusDays(*old, moved)));
        }
    else if (key == QLatin1String("last_day") && day(text(removal)) == from)
        put(removal, dayText(*to));
}

void TreatmentForm::moveDay(const QString& key, int days, const records::Date& today) {
    const auto day = readDate(text(key), today, {}).date;
    type(key, dayText(day ? records::plusDays(*day, days) : today), today);
}

TreatmentForm::Result TreatmentForm::read(Treatment treatment, const records::Date& today) const {
    const auto value = [&](const char* key) {
        return text(QLatin1String(key)).left(longestText).toStdString();
    };
    if (needed.has(QStringLiteral("substance")))
        treatment.substance = text(QStringLiteral("substance")).trimmed().left(longestText).toStdString();
    treatment.product = value("product");
    treatment.quantity = value("quantity");
    treatment.batch = value("batch");
    treatment.supplier = value("supplier");
    treatment.proof = value("proof");
    treatment.prescriber = value("prescriber");
    treatment.doneBy = value("done_by");
    treatment.note = value("note");

    QString problem;
    const auto readInto = [&](const QString& key, std::optional<records::Date>& day) {
        const QString label = needed.has(key) ? needed.label(key) : more.label(key);
        const QString wrong = readDay(label, text(key), today, day);
        if (problem.isEmpty())
            problem = wrong;
    };
    std::optional<records::Date> first, last;
    readInto(QStringLiteral("first_day"), first);
    readInto(QStringLiteral("last_day"), last);
    readInto(QStringLiteral("removal_due"), treatment.removalDue);
    readInto(QStringLiteral("expiry"), treatment.expiry);
    if (more.has(QStringLiteral("removed_on")))
        readInto(QStringLiteral("removed_on"), treatment.removedOn);
    if (problem.isEmpty() && !first)
        problem = Record::tr("Write down the first day.");
    if (problem.isEmpty() && !last)
        problem = Record::tr("Write down the last day; for what is given once it is the first.");
    const QString days = QStringLiteral("withdrawal_days");
    const QString wrong = readWithdrawal(needed.label(days), text(days), treatment.withdrawalDays);
    if (problem.isEmpty())
        problem = wrong;
    if (first)
        treatment.firstDay = *first;
    if (last)
        treatment.lastDay = *last;
    return {treatment, problem};
}

QString sentenceOf(records::TreatmentProblem problem) {
    using Problem = records::TreatmentProblem;
    switch (problem) {
    case Problem::NoSubstance:
        return Record::tr("No active substance is named.");
    case Problem::NoProduct:
        return Record::tr("Write down the product as its label names it.");
    case Problem::NoColony:
        return Record::tr("Pick the colonies that get it.");
    case Problem::ImpossibleDay:
        return Record::tr("One of the days does not exist.");
    case Problem::EndBeforeStart:
        return Record::tr("The last day lies before the first.");
    case Problem::RemovalBeforeStart:
        return Record::tr("It cannot be taken out before the first day.");
    case Problem::NegativeWithdrawal:
        return Record::tr("The withdrawal cannot be less than 0 days.");
    case Problem::LongWithdrawal:
        return Record::tr("The withdrawal can be %n day(s) at the most.", nullptr,
                          records::longestWithdrawalDays);
    case Problem::ExpiredProduct:
        return Record::tr("The product has expired before the first day.");
    case Problem::LongCourse:
        return Record::tr("The course is longer than %n day(s).", nullptr, records::longestCourseDays);
    case Problem::FarDay:
        return Record::tr("The first day is more than a year away.");
    }
    return {};
}

} // namespace halfcup::touch
