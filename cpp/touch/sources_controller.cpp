// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/sources_controller.h"

#include "touch/page_text.h"
#include "touch/words.h"

#include <QLocale>

namespace halfcup::touch {

namespace {

QString figure(const handbook::Entry& entry) {
    const QLocale locale;
    const auto number = [&](double value) { return locale.toString(value, 'g', 6); };
    const QString unit = words::fromHandbook(entry.unit);
    if (entry.value)
        return SourcesController::tr("%1 %2", "figure and unit").arg(number(*entry.value), unit);
    if (entry.low && entry.high)
        return SourcesController::tr("%1 to %2 %3", "range and unit")
            .arg(number(*entry.low), number(*entry.high), unit);
    if (entry.low)
        return SourcesController::tr("from %1 %2", "open range and unit").arg(number(*entry.low), unit);
    if (entry.high)
        return SourcesController::tr("up to %1 %2", "open range and unit").arg(number(*entry.high), unit);
    return words::fromHandbook(entry.words);
}

} // namespace

QString markWords(handbook::Mark mark) {
    switch (mark) {
    case handbook::Mark::Published:
        return SourcesController::tr("published");
    case handbook::Mark::Quoted:
        return SourcesController::tr("quoted in a second source");
    case handbook::Mark::FromMemory:
        return SourcesController::tr("published, figure from memory: check before you rely on it");
    case handbook::Mark::CommonPractice:
        return SourcesController::tr("common practice, no source");
    case handbook::Mark::Computed:
        return SourcesController::tr("computed from the inputs");
    case handbook::Mark::OwnChoice:
        return SourcesController::tr("a choice of this app");
    }
    return {};
}

SourcesController::SourcesController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

void SourcesController::show(const QString& topic) {
    m_topic = QString::fromStdString(m_services.handbook().topicTitle(topic.toStdString()));
    m_pageText = pageForScreen(topic);
    if (!m_pageText.isEmpty())
        m_topic = pageTitle(topic);
    QList<ChoiceListModel::Entry> topics;
    for (const QString& page : builtInPages()) {
        ChoiceListModel::Entry entry;
        entry.key = page;
        entry.title = pageTitle(page);
        entry.chosen = page == topic;
        topics.append(entry);
    }
    for (const std::string& each : m_services.handbook().topics()) {
        ChoiceListModel::Entry entry;
        entry.key = QString::fromStdString(each);
        entry.title = QString::fromStdString(m_services.handbook().topicTitle(each));
        entry.chosen = entry.key == topic;
        topics.append(entry);
    }
    m_topics.setEntries(topics);
    QList<ChoiceListModel::Entry> values;
    for (const handbook::Entry* each : m_services.handbook().topic(topic.toStdString())) {
        ChoiceListModel::Entry entry;
        entry.key = QString::fromStdString(each->id);
        entry.title =
            tr("%1: %2", "what and how much").arg(QString::fromStdString(each->title), figure(*each));
        const QString source = QString::fromStdString(each->source);
        entry.detail = source;
        entry.note = each->note.empty() ? markWords(each->mark)
                                        : tr("%1. %2", "mark, then a note")
                                              .arg(markWords(each->mark), QString::fromStdString(each->note));
        values.append(entry);
    }
    m_values.setEntries(values);
    emit changed();
}

} // namespace halfcup::touch
