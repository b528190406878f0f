// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/report_words.h"

#include "exchange/selection.h"
#include "records/judgement.h"
#include "records/method.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <cmath>

namespace halfcup::exchange::report {

namespace {

class ReportWords {
    Q_DECLARE_TR_FUNCTIONS(ReportWords)
};

bool turnsText(char16_t c) { // embeddings, overrides and isolates; plain direction marks stay
    return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
}

QString frames(double count) {
    if (count == 1)
        return ReportWords::tr("1 frame of bees");
    return ReportWords::tr("%1 frames of bees").arg(QLocale().toString(count, 'g', 4));
}

QString brood(records::Brood seen) {
    switch (seen) {
    case records::Brood::Capped:
        return ReportWords::tr("capped brood");
    case records::Brood::OpenOnly:
        return ReportWords::tr("open brood only");
    case records::Brood::None:
        return ReportWords::tr("no brood");
    case records::Brood::NotKnown:
        break;
    }
    return ReportWords::tr("brood not known");
}

QString floor(records::Floor floor) {
    switch (floor) {
    case records::Floor::Solid:
        return ReportWords::tr("solid floor");
    case records::Floor::Screened:
        return ReportWords::tr("screened floor");
    case records::Floor::NotKnown:
        break;
    }
    return ReportWords::tr("floor not known");
}

QString kind(records::EventKind kind) {
    using Kind = records::EventKind;
    switch (kind) {
    case Kind::SupersOn:
        return ReportWords::tr("Supers on");
    case Kind::SupersOff:
        return ReportWords::tr("Supers off");
    case Kind::Split:
        return ReportWords::tr("Split");
    case Kind::Merged:
        return ReportWords::tr("Put into another colony");
    case Kind::Requeened:
        return ReportWords::tr("New queen");
    case Kind::Moved:
        return ReportWords::tr("Moved");
    case Kind::Swarmed:
        return ReportWords::tr("Swarmed");
    case Kind::Dead:
        return ReportWords::tr("Dead");
    case Kind::Brood:
    case Kind::Strength:
    case Kind::Floor:
        break;
    }
    return {};
}

} // namespace

QString clean(const std::string& text) {
    QString out;
    for (const QChar c : QString::fromStdString(text)) {
        const char16_t code = c.unicode();
        if (code < 0x20 || (code >= 0x7F && code < 0xA0) || code == 0x2028 || code == 0x2029)
            out += u' ';
        else if (!turnsText(code))
            out += c;
    }
    out = out.simplified();
    if (out.size() <= longestText)
        return out;
    const bool cutsPair = out[longestText - 4].isHighSurrogate();
    return out.left(longestText - (cutsPair ? 4 : 3)) + QStringLiteral("...");
}

QString day(const records::Date& date) {
    return QLocale().toString(QDate(date.year, date.month, date.day),
                              ReportWords::tr("d MMM yyyy", "date format, as in 18 May 2026"));
}

QString load(double per100) {
    const QLocale locale;
    if (per100 >= 9.95)
        return locale.toString(std::round(per100), 'f', 0);
    if (per100 > 0 && per100 < 0.05)
        return ReportWords::tr("under %1").arg(locale.toString(0.1, 'f', 1));
    return locale.toString(per100, 'f', per100 == 0 ? 0 : 1);
}

QString loadRange(const records::Answer& answer) {
    return ReportWords::tr("%1 to %2", "a range of loads")
        .arg(load(answer.mites == 0 ? 0.0 : answer.loadQ05), load(answer.loadQ95));
}

QString loadAndRange(const records::Answer& answer) {
    return ReportWords::tr("%1 (%2)", "a load, its range").arg(load(answer.loadQ50), loadRange(answer));
}

QString linesOf(const records::Answer& answer) {
    const QString treat = figure(answer.lines.treat);
    return answer.lines.own
               ? ReportWords::tr("%1; own %2", "treat line, own line").arg(treat, figure(*answer.lines.own))
               : treat;
}

QString dayOf(const records::Sample& sample) {
    return day(records::localDate(momentOf(sample)));
}

QString figure(double value) {
    return QLocale().toString(value, 'g', 4);
}

QString chance(double chance) {
    const double percent = 100 * chance;
    const auto nearBoundary = [percent](double boundary) { return std::abs(percent - boundary) < 0.95; };
    if (percent < 0.5)
        return ReportWords::tr("under 1 %", "a chance");
    if (percent > 99.5)
        return ReportWords::tr("over 99 %", "a chance");
    return ReportWords::tr("%1 %", "a chance")
        .arg(QLocale().toString(percent, 'f', nearBoundary(20) || nearBoundary(50) ? 1 : 0));
}

QString standing(const records::Sample& sample) {
    const auto standing = records::graverStanding(sample);
    if (!standing)
        return ReportWords::tr("No answer");
    switch (*standing) {
    case mites::Standing::Under:
        return ReportWords::tr("Under your line");
    case mites::Standing::Close:
        return ReportWords::tr("Close to your line");
    case mites::Standing::Over:
        return ReportWords::tr("Over your line");
    case mites::Standing::CannotTell:
        break;
    }
    return ReportWords::tr("Can't tell yet");
}

QString method(const std::string& id) {
    const records::Method* known = records::findMethod(id);
    QString name = known ? QCoreApplication::translate("Method", known->name) : clean(id);
    if (!name.isEmpty())
        name[0] = name[0].toUpper();
    return name;
}

QString happened(const records::ColonyEvent& event, const QString& other) {
    using Kind = records::EventKind;
    const QString words = clean(event.words);
    QString told = kind(event.kind);
    if (event.kind == Kind::Brood)
        told = ReportWords::tr("Brood seen: %1").arg(brood(event.brood));
    else if (event.kind == Kind::Strength)
        told = ReportWords::tr("Strength: %1").arg(frames(event.frames.value_or(0)));
    else if (event.kind == Kind::Floor)
        told = ReportWords::tr("Stands on: %1").arg(floor(event.floor));
    else if (event.kind == Kind::Split && !other.isEmpty())
        told = ReportWords::tr("Split: colony %1 was made from it").arg(other);
    else if (event.kind == Kind::Merged && !other.isEmpty())
        told = ReportWords::tr("Put into colony %1; this one ends").arg(other);
    else if (event.kind == Kind::Moved && !other.isEmpty())
        told = ReportWords::tr("Moved to %1").arg(other);
    return words.isEmpty() ? told : ReportWords::tr("%1. %2", "what happened, a note").arg(told, words);
}

QString mark(handbook::Mark mark) {
    switch (mark) {
    case handbook::Mark::Published:
        return ReportWords::tr("published");
    case handbook::Mark::Quoted:
        return ReportWords::tr("quoted in a second source");
    case handbook::Mark::FromMemory:
        return ReportWords::tr("published, not read again");
    case handbook::Mark::CommonPractice:
        return ReportWords::tr("common practice");
    case handbook::Mark::Computed:
        return ReportWords::tr("computed");
    case handbook::Mark::OwnChoice:
        break;
    }
    return ReportWords::tr("own choice of this program");
}

} // namespace halfcup::exchange::report
