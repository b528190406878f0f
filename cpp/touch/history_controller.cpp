// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/history_controller.h"

#include "records/field_access.h"
#include "store/history.h"
#include "touch/colony_entries.h"
#include "touch/history_fields.h"
#include "touch/plan_words.h"
#include "touch/story.h"
#include "touch/words.h"

#include <algorithm>

namespace halfcup::touch {

using records::Fields;
using records::Kind;

namespace {

QString plain(const std::string& text) {
    return QString::fromStdString(text);
}

} // namespace

HistoryController::HistoryController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

bool HistoryController::show(const QString& kind, const QString& id) {
    const auto known = records::kindFrom(kind.toStdString());
    if (!known || knownFields(*known).empty())
        return false;
    m_kind = *known;
    m_id = id.toStdString();
    m_result.clear();
    m_question.clear();
    m_asked = -1;
    m_failed = false;
    return read();
}

bool HistoryController::read() {
    bool found = false;
    m_services.kept([&] {
        found = readContext();
        if (found)
            listValues();
    });
    emit changed();
    return found;
}

bool HistoryController::readContext() {
    store::Store& store = m_services.store;
    const auto colonyName = [&](const records::RecordId& id) {
        const auto colony = store.colony(id);
        return colony ? tr("colony %1").arg(plain(colony->label)) : QString();
    };
    const auto yardName = [&](const records::RecordId& id) {
        const auto yard = store.yard(id);
        return yard ? plain(yard->name) : QString();
    };
    const auto take = [&](const auto& record, const QString& context) {
        m_demo = record.demo;
        m_removed = record.removed;
        m_context = context;
        return true;
    };
    if (m_kind == Kind::Yard) {
        const auto yard = store.yard(m_id);
        return yard && take(*yard, plain(yard->name));
    }
    if (m_kind == Kind::Colony) {
        const auto colony = store.colony(m_id);
        return colony &&
               take(*colony,
                    tr("Colony %1, %2", "colony, yard").arg(plain(colony->label), yardName(colony->yardId)));
    }
    if (m_kind == Kind::Sample) {
        const auto sample = store.sample(m_id);
        return sample && take(*sample, tr("%1, %2, %3", "method, colony, day")
                                           .arg(story::capitalised(words::method(plain(sample->method))),
                                                colonyName(sample->colonyId),
                                                words::dayAndYear(records::localDate(sampledAt(*sample)))));
    }
    const auto given = store.treatment(m_id);
    return given && take(given->treatment, tr("%1, %2", "treatment, its days")
                                               .arg(story::treatmentName(m_services, given->treatment),
                                                    story::course(given->treatment)));
}

QString HistoryController::whenAndWhere(const records::RevisionStamp& stamp,
                                        const std::string& thisPhone) const {
    const records::Moment at{stamp.utcMs, m_services.device.clock->utcOffsetMinutes(stamp.utcMs)};
    QString phone = tr("another phone, %1").arg(plan::phoneMark(stamp.device));
    if (stamp.device == thisPhone)
        phone = tr("this phone");
    else if (!records::isRecordId(stamp.device)) // "demo", and what another program wrote
        phone = tr("no phone");
    return tr("%1 at %2, %3", "day, time, phone")
        .arg(words::dayAndYear(records::localDate(at)), words::timeOfDay(at), phone);
}

void HistoryController::listValues() {
    store::History history(m_services.store);
    const std::string thisPhone = history.thisPhone();
    m_past.clear();
    QList<ChoiceListModel::Entry> entries;
    for (const KnownField& known : knownFields(m_kind)) {
        const auto states = history.of(m_kind, m_id, known.fields);
        if (states.size() < 2)
            continue; // it never changed
        const QString title = titleOf(known);
        const Fields& now = states.back().values;
        for (auto state = states.rbegin(); state != states.rend(); ++state) {
            Past past{title, valueOf(m_services, m_kind, known, state->values), {}};
            for (const std::string& field : known.fields) {
                const auto value = state->values.find(field);
                past.values[field] = value == state->values.end() ? records::Value{} : value->second;
            }
            const bool empty = past.values[known.fields.front()] == records::Value{} ||
                               past.values[known.fields.front()] == records::Value{std::string()};
            ChoiceListModel::Entry entry;
            entry.title = past.value;
            entry.detail = whenAndWhere(state->stamp, thisPhone);
            if (state == states.rbegin())
                entry.section = title;
            if (state->values == now)
                entry.note = state == states.rbegin() ? tr("so it is now") : tr("as it is now");
            else if (known.canBePutBack && (known.mayBeEmpty || !empty))
                entry.key = QString::number(m_past.size());
            entries.append(entry);
            m_past.push_back(std::move(past));
        }
    }
    m_values.setEntries(entries);
}

void HistoryController::ask(const QString& key) {
    bool number = false;
    const int asked = key.toInt(&number);
    if (!number || asked < 0 || asked >= static_cast<int>(m_past.size()))
        return;
    m_asked = asked;
    const Past& past = m_past[static_cast<std::size_t>(asked)];
    m_question =
        tr("%1: %2. What stands there now stays in this list.", "field, value").arg(past.title, past.value);
    emit changed();
}

/// A colony's label stands on one hive of a yard only.
QString HistoryController::labelProblem(const Fields& values) {
    const auto label = m_kind == Kind::Colony ? records::textIn(values, "label") : std::nullopt;
    if (!label)
        return {};
    const auto colony = m_services.store.colony(m_id);
    for (const records::Colony& other : m_services.store.colonies(colony ? colony->yardId : std::string()))
        if (other.id != m_id && other.label == *label)
            return tr("Another colony of this yard is called %1 now. Give that one another name first.")
                .arg(plain(*label));
    return {};
}

void HistoryController::keep(const Fields& values, const QString& result) {
    m_result.clear();
    m_failed = false;
    bool changedNow = false;
    m_services.kept([&] {
        m_result = labelProblem(values);
        m_failed = !m_result.isEmpty();
        if (!m_failed && store::History(m_services.store).putBack(m_kind, m_id, values)) {
            m_result = result;
            changedNow = true;
        }
    });
    read();
    if (changedNow)
        emit recordChanged();
}

void HistoryController::putBack() {
    if (m_asked < 0)
        return;
    const Past past = m_past[static_cast<std::size_t>(m_asked)];
    m_asked = -1;
    keep(past.values, tr("%1 is put back: %2.", "field, value").arg(past.title, past.value));
}

void HistoryController::bringBack() {
    keep({{"removed", std::int64_t{0}}}, tr("It is back in the lists."));
}

} // namespace halfcup::touch
