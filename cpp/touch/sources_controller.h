// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// How well a value is known: "published", "common practice, no source".
[[nodiscard]] QString markWords(handbook::Mark mark);

/// "Where this comes from": the values the app did not measure, each with its source and mark.
class SourcesController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString topic READ topic NOTIFY changed) // title of what is shown
    Q_PROPERTY(
        QString pageText READ pageText NOTIFY changed) // Markdown of ours; empty where values are shown
    Q_PROPERTY(halfcup::touch::ChoiceListModel* topics READ topics CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* values READ values
                   CONSTANT) // title: figure; detail: source; note: mark
public:
    SourcesController(Services& services, QObject* parent = nullptr);

    QString topic() const { return m_topic; }
    QString pageText() const { return m_pageText; }
    ChoiceListModel* topics() { return &m_topics; }
    ChoiceListModel* values() { return &m_values; }

    Q_INVOKABLE void show(const QString& topic); // "lines", "scoop", ..., or the name of a page for people

signals:
    void changed();

private:
    Services& m_services;
    QString m_topic;
    QString m_pageText;
    ChoiceListModel m_topics;
    ChoiceListModel m_values;
};

} // namespace halfcup::touch
