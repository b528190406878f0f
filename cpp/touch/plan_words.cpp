// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/plan_words.h"

#include "records/clean_text.h"
#include "records/colony_event.h"
#include "touch/clash_words.h"
#include "touch/history_fields.h"
#include "touch/story.h"
#include "touch/words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>

#include <algorithm>
#include <array>

namespace halfcup::touch::plan {

using exchange::ExchangeRefusal;
using exchange::LineTrouble;
using records::Kind;
using store::Change;
using Entry = ChoiceListModel::Entry;

namespace {

class PlanWords {
    Q_DECLARE_TR_FUNCTIONS(PlanWords)
};

constexpr std::size_t mostLinesNamed = 8; // more damaged lines than this are only counted [convention]
constexpr std::size_t mostClashesTold = 4;
constexpr qsizetype markLength = 4;

/// What a keeper must look at stands first.
constexpr std::array changesInOrder{Change::BothChanged, Change::RemovedThere, Change::Changed, Change::New,
                                    Change::Same};

QString clean(const std::string& text) {
    return QString::fromStdString(records::cleanText(text)).simplified();
}

QString changeName(Change change) {
    switch (change) {
    case Change::New:
        return PlanWords::tr("New");
    case Change::Changed:
        return PlanWords::tr("Changed there");
    case Change::BothChanged:
        return PlanWords::tr("Changed on both phones");
    case Change::RemovedThere:
        return PlanWords::tr("Removed there");
    case Change::Same:
        break;
    }
    return PlanWords::tr("Known here already");
}

QString changeNote(Change change) {
    switch (change) {
    case Change::BothChanged:
        return PlanWords::tr("The later value counts. The other one stays in the record's history.");
    case Change::RemovedThere:
        return PlanWords::tr("They leave the lists here too. The history keeps them.");
    case Change::New:
    case Change::Changed:
    case Change::Same:
        break;
    }
    return {};
}

/// Whether it belongs to a colony and that has not come yet: it waits, and shows nowhere else.
bool waitsForItsColony(const store::MergeItem& item) {
    return item.colony.empty() &&
           (item.kind == Kind::Sample || item.kind == Kind::Event || item.kind == Kind::Treated);
}

QString whatItIs(Services& services, const store::MergeItem& item) {
    switch (item.kind) {
    case Kind::Yard:
        return item.yard.empty() ? PlanWords::tr("A yard") : PlanWords::tr("Yard %1").arg(clean(item.yard));
    case Kind::Colony:
        return item.colony.empty() ? PlanWords::tr("A colony")
                                   : PlanWords::tr("Colony %1").arg(clean(item.colony));
    case Kind::Sample:
        return item.word.empty() ? PlanWords::tr("A wash")
                                 : story::capitalised(words::method(clean(item.word)));
    case Kind::Event: {
        const auto kind = records::eventKindFrom(item.word);
        return kind ? story::kindName(*kind) : PlanWords::tr("An event");
    }
    case Kind::Treatment:
        return item.word.empty() ? PlanWords::tr("A treatment")
                                 : PlanWords::tr("Treatment: %1")
                                       .arg(clean(story::substanceName(services, item.word).toStdString()));
    case Kind::Treated:
        return PlanWords::tr("A treatment given");
    case Kind::ScoopCount:
        return PlanWords::tr("A counted scoop");
    case Kind::Round:
        break;
    }
    return PlanWords::tr("A yard round");
}

QString title(Services& services, const store::MergeItem& item) {
    const QString what = whatItIs(services, item);
    if (item.kind == Kind::Yard || item.kind == Kind::Colony || item.colony.empty())
        return what;
    return PlanWords::tr("%1, colony %2", "what it is, of which colony").arg(what, clean(item.colony));
}

QString detail(const Services& services, const store::MergeItem& item) {
    QStringList parts;
    if (waitsForItsColony(item))
        parts.append(PlanWords::tr("waits for its colony"));
    if (item.kind != Kind::Yard && !item.yard.empty())
        parts.append(clean(item.yard));
    if (const auto day = records::parseIsoDate(item.day))
        parts.append(words::dayAndYear(*day));
    else if (item.atMs)
        parts.append(words::dayAndYear(
            records::localDate({*item.atMs, services.device.clock->utcOffsetMinutes(*item.atMs)})));
    return parts.join(PlanWords::tr(", ", "between the parts of a line"));
}

/// One line for each field that changed on both phones; what a keeper typed before what follows from it.
QString clashes(Services& services, const store::MergeItem& item) {
    std::vector<store::Clash> told;
    std::ranges::copy_if(item.clashes, std::back_inserter(told),
                         [](const store::Clash& clash) { return isTyped(clash.field); });
    if (told.empty())
        told = item.clashes;
    QStringList lines;
    for (std::size_t i = 0; i < std::min(told.size(), mostClashesTold); ++i) {
        const store::Clash& clash = told[i];
        const QString ours = fieldValue(services, item.kind, clash.field, clash.ours);
        const QString theirs = fieldValue(services, item.kind, clash.field, clash.theirs);
        const QString values = PlanWords::tr("%1: yours %2, theirs %3.", "a field and its values")
                                   .arg(story::capitalised(fieldName(clash.field)), ours, theirs);
        lines.append(values + u' ' +
                     (clash.oursWins
                          ? PlanWords::tr("Yours is the later one and stays: %1.").arg(ours)
                          : PlanWords::tr("Theirs is the later one and is kept: %1.").arg(theirs)));
    }
    const auto more = static_cast<int>(item.clashes.size() - static_cast<std::size_t>(lines.size()));
    if (more > 0)
        lines.append(PlanWords::tr("and %n other field(s)", nullptr, more));
    return lines.join(u'\n');
}

QString damagedLine(const exchange::DamagedLine& line) {
    const QString number = QLocale().toString(static_cast<qlonglong>(line.number));
    switch (line.trouble) {
    case LineTrouble::TooLong:
        return PlanWords::tr("Line %1 is too long and was left out.").arg(number);
    case LineTrouble::TooDeep:
        return PlanWords::tr("Line %1 is nested too deep and was left out.").arg(number);
    case LineTrouble::BadId:
        return PlanWords::tr("Line %1 has an id that is none and was left out.").arg(number);
    case LineTrouble::BadStamp:
        return PlanWords::tr("Line %1 has a time that cannot be and was left out.").arg(number);
    case LineTrouble::BadField:
        return PlanWords::tr("Line %1 has a value that cannot be (%2) and was left out.")
            .arg(number, fieldName(line.field));
    case LineTrouble::BadCount:
        return PlanWords::tr("Line %1 has a count that cannot be and was left out.").arg(number);
    case LineTrouble::TooMuch:
        return PlanWords::tr("Line %1 brings more of one record than any has and was left out.").arg(number);
    case LineTrouble::OtherKind:
        return PlanWords::tr("Line %1 calls a record by another kind than it has here and was left out.")
            .arg(number);
    case LineTrouble::Damaged:
        break;
    }
    return PlanWords::tr("Line %1 is damaged and was left out.").arg(number);
}

} // namespace

QString shownName(const QString& path) {
    return clean(QFileInfo(path).fileName().toStdString());
}

QString phoneMark(const std::string& device) {
    const QString id = clean(device);
    return id.isEmpty() ? QStringLiteral("?") : id.right(markLength).toUpper();
}

QString writtenLine(const Services& services, const exchange::ExchangeHeader& header,
                    const std::string& ownDevice) {
    if (header.device.empty())
        return PlanWords::tr("Which phone wrote it, and when, is not readable.");
    const QString who = header.device == ownDevice
                            ? PlanWords::tr("this phone")
                            : PlanWords::tr("phone %1", "by its mark").arg(phoneMark(header.device));
    const auto written = records::parseRfc3339(header.written);
    if (!written)
        return PlanWords::tr("Written by %1.").arg(who);
    const records::Moment at{written->utcMs, services.device.clock->utcOffsetMinutes(written->utcMs)};
    return PlanWords::tr("Written by %1 on %2 at %3, by its clock.", "a phone, a day, a time")
        .arg(who, words::dayAndYear(records::localDate(at)), words::timeOfDay(at));
}

QString heldRecords(const std::map<std::string, std::int64_t>& counts) {
    QStringList parts;
    for (const Kind kind : {Kind::Yard, Kind::Colony, Kind::Sample}) {
        const auto found = counts.find(std::string(records::nameOf(kind)));
        if (found != counts.end() && found->second > 0)
            parts.append(
                howMany(kind, static_cast<int>(std::min<std::int64_t>(found->second, 1'000'000'000))));
    }
    return parts.join(PlanWords::tr(", ", "between the parts of a line"));
}

QString refusal(ExchangeRefusal refusal, const QString& path) {
    const QString name = shownName(path);
    switch (refusal) {
    case ExchangeRefusal::None:
        return {};
    case ExchangeRefusal::NotThere:
        return PlanWords::tr("%1 is not there any more. Nothing was changed.").arg(name);
    case ExchangeRefusal::CannotRead:
        return PlanWords::tr("%1 cannot be read: it is a folder, this user may not read it, or its storage "
                             "fails. Nothing was changed.")
            .arg(name);
    case ExchangeRefusal::Empty:
        return PlanWords::tr("%1 is empty. Ask for it again. Nothing was changed.").arg(name);
    case ExchangeRefusal::TooLarge:
        return PlanWords::tr(
                   "%1 is larger than any file of Halfcup. It was not read, and nothing was changed.")
            .arg(name);
    case ExchangeRefusal::Newer:
        return PlanWords::tr(
                   "%1 was written for a newer Halfcup. Update this phone, then take it in. Nothing "
                   "was changed.")
            .arg(name);
    case ExchangeRefusal::NotOurs:
        break;
    }
    return PlanWords::tr("%1 is not a file that Halfcup wrote for another phone. Nothing was changed.")
        .arg(name);
}

QString headline(const store::MergePlan& plan) {
    if (plan.nothingNew())
        return PlanWords::tr("Nothing in it is new: all of it is here already.");
    int records = plan.unknownKinds;
    for (const auto& [what, count] : plan.counts)
        records += what.second == Change::Same ? 0 : count;
    return PlanWords::tr("%n record(s) new or changed. Nothing of yours is lost.", nullptr, records);
}

QString howMany(Kind kind, int count) {
    switch (kind) {
    case Kind::Yard:
        return PlanWords::tr("%n yard(s)", nullptr, count);
    case Kind::Colony:
        return PlanWords::tr("%n colony(ies)", nullptr, count);
    case Kind::Sample:
        return PlanWords::tr("%n wash(es)", nullptr, count);
    case Kind::Event:
        return PlanWords::tr("%n event(s)", nullptr, count);
    case Kind::Treatment:
        return PlanWords::tr("%n treatment(s)", nullptr, count);
    case Kind::Treated:
        return PlanWords::tr("%n treated colony(ies)", nullptr, count);
    case Kind::ScoopCount:
        return PlanWords::tr("%n counted scoop(s)", nullptr, count);
    case Kind::Round:
        break;
    }
    return PlanWords::tr("%n yard round(s)", nullptr, count);
}

QList<Entry> counts(const store::MergePlan& plan) {
    QList<Entry> entries;
    for (const Change change : changesInOrder) {
        QStringList parts;
        for (const Kind kind : records::allKinds)
            if (const auto found = plan.counts.find({kind, change}); found != plan.counts.end())
                parts.append(howMany(kind, found->second));
        if (parts.isEmpty())
            continue;
        Entry entry;
        entry.key = QString::number(static_cast<int>(change));
        entry.title = changeName(change);
        entry.detail = parts.join(PlanWords::tr(", ", "between the parts of a line"));
        entry.note = changeNote(change);
        entries.append(entry);
    }
    return entries;
}

QStringList troubles(const exchange::ExchangeReport& report) {
    QStringList sentences;
    for (const exchange::DamagedLine& line : report.damaged) {
        if (static_cast<std::size_t>(sentences.size()) == mostLinesNamed)
            break;
        sentences.append(damagedLine(line));
    }
    const auto more =
        static_cast<int>(std::min<std::int64_t>(report.damagedCount - sentences.size(), 1'000'000'000));
    if (more > 0)
        sentences.append(PlanWords::tr("%n more line(s) are damaged and were left out.", nullptr, more));
    if (report.cut)
        sentences.append(PlanWords::tr("The file was cut: its end is missing."));
    else if (report.incomplete)
        sentences.append(PlanWords::tr("Lines are missing from the middle of the file."));
    if (report.partlyNewer)
        sentences.append(PlanWords::tr("Some of the file is for a newer Halfcup alone and was passed over."));
    if (!sentences.isEmpty())
        sentences.append(PlanWords::tr(
            "What is whole can be taken in now. Ask for the file again: the good copy completes it."));
    return sentences;
}

QStringList remarks(const store::MergePlan& plan) {
    QStringList sentences;
    if (plan.unknownKinds > 0)
        sentences.append(
            PlanWords::tr("%n record(s) of a kind that this version does not know: a newer Halfcup "
                          "wrote them. They are kept and passed on.",
                          nullptr, plan.unknownKinds));
    if (plan.waiting > 0)
        sentences.append(
            PlanWords::tr("%n record(s) wait for what they belong to. They show as soon as a file "
                          "brings it.",
                          nullptr, plan.waiting));
    return sentences;
}

QList<Entry> items(Services& services, const store::MergePlan& plan) {
    QList<Entry> entries;
    for (const Change change : changesInOrder) {
        bool isFirst = true;
        for (const store::MergeItem& item : plan.items) {
            if (item.change != change)
                continue;
            Entry entry;
            entry.key = QString::fromStdString(item.id);
            entry.title = title(services, item);
            entry.detail = detail(services, item);
            entry.note = clashes(services, item);
            if (std::exchange(isFirst, false))
                entry.section = changeName(change);
            entries.append(entry);
        }
    }
    return entries;
}

QList<Entry> toLookAt(Services& services, const store::MergePlan& plan) {
    QList<Entry> entries;
    for (const Change change : {Change::BothChanged, Change::RemovedThere})
        for (const store::MergeItem& item : plan.items) {
            if (item.change != change || knownFields(item.kind).empty())
                continue;
            Entry entry;
            entry.key = QString::fromStdString(std::string(records::nameOf(item.kind)) + '/' + item.id);
            entry.title = title(services, item);
            entry.detail = detail(services, item);
            entry.note = changeName(change);
            entries.append(entry);
        }
    return entries;
}

QString moreItems(const store::MergePlan& plan) {
    int changed = 0;
    for (const auto& [what, count] : plan.counts)
        changed += what.second == Change::Same ? 0 : count;
    const int more = changed - static_cast<int>(plan.items.size());
    return more > 0 ? PlanWords::tr("%n more are not listed one by one.", nullptr, more) : QString();
}

} // namespace halfcup::touch::plan
