// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/same_controller.h"

#include "store/joining.h"
#include "store/not_same.h"
#include "touch/colony_entries.h"
#include "touch/words.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace halfcup::touch {

using place::LikelyPair;
using records::Kind;

namespace {

QString plain(const std::string& text) {
    return QString::fromStdString(text);
}

} // namespace

SameController::SameController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString SameController::countLine() const {
    return m_pairs.empty() ? QString() : tr("%n pair(s) may be the same", nullptr, count());
}

QString SameController::title() const {
    if (m_pairs.empty())
        return tr("Shown as one");
    return m_pairs.front().kind == Kind::Yard ? tr("Same yard?") : tr("Same colony?");
}

void SameController::refresh() {
    m_result.clear();
    m_services.kept([&] { read(); });
    emit changed();
}

void SameController::read() {
    const std::vector<records::Yard> yards = m_services.store.yards();
    std::vector<records::Colony> colonies;
    for (const records::Yard& yard : yards)
        for (records::Colony& colony : m_services.store.colonies(yard.id))
            colonies.push_back(std::move(colony));
    m_pairs = place::likelySame(yards, colonies, store::NotSame(m_services.store).all());
    showPair();
    showJoined();
}

void SameController::showPair() {
    m_reason.clear();
    QList<ChoiceListModel::Entry> entries;
    m_demo = false;
    if (!m_pairs.empty()) {
        const LikelyPair& pair = m_pairs.front();
        for (const records::RecordId& id : {pair.one, pair.other})
            if (const auto yard = pair.kind == Kind::Yard ? m_services.store.yard(id) : std::nullopt) {
                entries.append(entryOf(*yard));
                m_demo = m_demo || yard->demo;
            } else if (const auto colony = m_services.store.colony(id)) {
                entries.append(entryOf(*colony));
                m_demo = m_demo || colony->demo;
            }
        m_reason = reasonOf(pair);
    }
    m_pair.setEntries(entries);
}

void SameController::showJoined() {
    QList<ChoiceListModel::Entry> entries;
    for (const store::Joining::Joined& each : store::Joining(m_services.store).all()) {
        ChoiceListModel::Entry entry;
        const bool yard = each.kind == Kind::Yard;
        entry.key = (yard ? QStringLiteral("yard-") : QStringLiteral("colony-")) + plain(each.id);
        entry.title = yard ? tr("Yard %1").arg(plain(each.name)) : tr("Colony %1").arg(plain(each.name));
        entry.detail = yard ? tr("shown as %1", "another yard").arg(plain(each.intoName))
                            : tr("shown as colony %1").arg(plain(each.intoName));
        entries.append(entry);
    }
    m_joined.setEntries(entries);
}

QString SameController::reasonOf(const LikelyPair& pair) const {
    const QString apart = pair.distanceM ? m_services.distance(std::round(*pair.distanceM)) : QString();
    if (pair.kind == Kind::Colony)
        return pair.oneYard
                   ? tr("Both have the same name and stand in one yard.")
                   : tr("Both have the same name, and their yards may be one yard that was made twice.");
    if (pair.namedAlike && pair.near)
        return tr("They are named alike and lie %1 apart.").arg(apart);
    if (pair.near)
        return tr("They lie %1 apart.").arg(apart);
    return pair.distanceM ? tr("They are named alike, but lie %1 apart.").arg(apart)
                          : tr("They are named alike. How far they lie apart is not known.");
}

QString SameController::washesLine(std::vector<records::Sample> samples) {
    std::erase_if(samples, [](const records::Sample& sample) {
        return sample.state != records::SampleState::Finished;
    });
    if (samples.empty())
        return tr("no wash yet");
    const auto day = [](const records::Sample& sample) { return records::localDate(sampledAt(sample)); };
    const auto [first, last] = std::ranges::minmax_element(samples, {}, day);
    const QString washes = tr("%n wash(es)", nullptr, static_cast<int>(samples.size()));
    if (day(*first) == day(*last))
        return tr("%1, on %2", "washes, day").arg(washes, words::dayAndYear(day(*first)));
    return tr("%1, from %2 to %3", "washes, first and last day")
        .arg(washes, words::dayAndYear(day(*first)), words::dayAndYear(day(*last)));
}

ChoiceListModel::Entry SameController::entryOf(const records::Yard& yard) {
    std::vector<records::Sample> samples;
    const std::vector<records::Colony> colonies = m_services.store.colonies(yard.id);
    for (const records::Colony& colony : colonies)
        for (records::Sample& sample : m_services.store.samplesOf(colony.id))
            samples.push_back(std::move(sample));
    ChoiceListModel::Entry entry;
    entry.key = plain(yard.id);
    entry.title = plain(yard.name);
    entry.detail = tr("%n colony(ies)", nullptr, static_cast<int>(colonies.size()));
    entry.note = washesLine(std::move(samples));
    return entry;
}

ChoiceListModel::Entry SameController::entryOf(const records::Colony& colony) {
    const auto yard = m_services.store.yard(colony.yardId);
    ChoiceListModel::Entry entry;
    entry.key = plain(colony.id);
    entry.title = tr("Colony %1").arg(plain(colony.label));
    entry.detail = yard ? plain(yard->name) : QString();
    if (!colony.note.empty())
        entry.detail = tr("%1: %2", "yard, note").arg(entry.detail, plain(colony.note));
    entry.note = washesLine(m_services.store.samplesOf(colony.id));
    return entry;
}

void SameController::open() {
    refresh();
    emit wanted();
}

void SameController::yes() {
    if (m_pairs.empty())
        return;
    const LikelyPair pair = m_pairs.front();
    bool joined = false;
    m_result.clear();
    m_services.kept([&] {
        store::Joining joining(m_services.store);
        joined = joining.join(pair.kind, pair.one, pair.other);
        const records::RecordId into = joining.standsFor(pair.one);
        QString name;
        if (pair.kind == Kind::Yard)
            name = plain(m_services.store.yard(into).value_or(records::Yard{}).name);
        else
            name =
                tr("Colony %1").arg(plain(m_services.store.colony(into).value_or(records::Colony{}).label));
        if (joined)
            m_result = tr("Both are now shown as \"%1\"; nothing was thrown away.").arg(name);
        read();
    });
    emit changed();
    if (joined)
        emit recordsJoined(plain(pair.other), plain(pair.one));
}

void SameController::no() {
    if (m_pairs.empty())
        return;
    const LikelyPair pair = m_pairs.front();
    m_result.clear();
    m_services.kept([&] {
        store::NotSame(m_services.store).add(pair.one, pair.other);
        m_result = tr("They stay two. This phone does not ask again.");
        read();
    });
    emit changed();
}

void SameController::askSeparate(const QString& key) {
    m_question.clear();
    m_asked.clear();
    for (const ChoiceListModel::Entry& entry : m_joined.entries())
        if (entry.key == key) {
            m_asked = key;
            m_question = tr("%1 is %2. It will stand by itself again, with what was recorded for it.",
                            "Yard Ford, shown as By the ford")
                             .arg(entry.title, entry.detail);
        }
    emit changed();
}

void SameController::separate() {
    const records::RecordId id = m_asked.mid(m_asked.indexOf(u'-') + 1).toStdString();
    const Kind kind = m_asked.startsWith(QLatin1String("yard-")) ? Kind::Yard : Kind::Colony;
    if (m_asked.isEmpty())
        return;
    m_asked.clear();
    m_result.clear();
    bool separated = false;
    m_services.kept([&] {
        m_services.store.inOneTransaction([&] {
            store::Joining joining(m_services.store);
            const records::RecordId into = joining.standsFor(id);
            separated = joining.separate(kind, id);
            if (separated) // the keeper has answered: not asked again at once
                store::NotSame(m_services.store).add(id, into);
        });
        m_result = separated ? tr("They are two again. What was recorded for each is with it.") : QString();
        read();
    });
    emit changed();
    if (separated)
        emit recordsSeparated();
}

} // namespace halfcup::touch
