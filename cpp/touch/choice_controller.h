// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "season/what_if.h"
#include "touch/choice_list_model.h"
#include "touch/outlook_item.h"
#include "touch/picture_legend.h"
#include "touch/treat_scope.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// One choice: its verdict with every reason, its dangers, its course, and what it would do.
class ChoiceController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed)
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(int verdict READ verdict NOTIFY changed)             // VerdictMark::Value
    Q_PROPERTY(QString verdictWord READ verdictWord NOTIFY changed) // "Fits with care"
    // title: the reason; detail: its source; standing: VerdictMark::Value; key: the handbook's topic, or
    // empty
    Q_PROPERTY(halfcup::touch::ChoiceListModel* reasons READ reasons CONSTANT)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed) // dangers, honey, the label and the law
    Q_PROPERTY(QString courseLine READ courseLine NOTIFY changed)
    // What if
    Q_PROPERTY(bool hasOutlook READ hasOutlook NOTIFY changed)
    Q_PROPERTY(
        QString startLine READ startLine NOTIFY changed) // the wash it starts from, or why there is none
    Q_PROPERTY(QString nothingLine READ nothingLine NOTIFY changed) // "If nothing is done: ..."
    Q_PROPERTY(QString withLine READ withLine NOTIFY changed) // "With it: ...", or why nothing is foretold
    Q_PROPERTY(QStringList outlookNotes READ outlookNotes NOTIFY changed)
    Q_PROPERTY(halfcup::touch::OutlookPicture picture READ picture NOTIFY changed)
    Q_PROPERTY(halfcup::touch::PictureLegend legend READ legend NOTIFY changed) // of the picture
    Q_PROPERTY(QString waitText READ waitText NOTIFY changed) // "begun today", "begun in 14 days, on 1 June"
    Q_PROPERTY(bool canWaitLess READ canWaitLess NOTIFY changed)
    Q_PROPERTY(bool canWaitMore READ canWaitMore NOTIFY changed)
public:
    ChoiceController(Services& services, QObject* parent = nullptr);

    QString context() const;
    bool isDemo() const { return m_scope.demo(); }
    QString name() const { return QString::fromStdString(m_choice.name); }
    int verdict() const;
    QString verdictWord() const;
    ChoiceListModel* reasons() { return &m_reasons; }
    QStringList cautions() const;
    QString courseLine() const;
    bool hasOutlook() const { return m_picture.chart.days() > 1; }
    QString startLine() const { return m_startLine; }
    QString nothingLine() const { return m_nothingLine; }
    QString withLine() const { return m_withLine; }
    QStringList outlookNotes() const { return m_outlookNotes; }
    OutlookPicture picture() const { return m_picture; }
    PictureLegend legend() const { return {pictures::legendOf(m_picture.chart)}; }
    QString waitText() const;
    bool canWaitLess() const { return m_wait > 0; }
    bool canWaitMore() const;

    void show(const TreatScope& scope, const season::Choice& choice);

    [[nodiscard]] const TreatScope& scope() const { return m_scope; }
    [[nodiscard]] const season::Choice& choice() const { return m_choice; }
    /// The first day of the course, as far as the page was asked to wait.
    [[nodiscard]] records::Date begins() const;

    Q_INVOKABLE void waitMore(); // today, in 7, 14, 28 days
    Q_INVOKABLE void waitLess();
    Q_INVOKABLE void record();
    Q_INVOKABLE void openSource(const QString& topic);

signals:
    void changed();
    void recordWanted();
    void sourceWanted(const QString& topic);

private:
    void listReasons();
    void foretell();
    std::optional<season::WhatIf> question();

    Services& m_services;
    TreatScope m_scope;
    season::Choice m_choice;
    std::size_t m_wait = 0; // place in the list of waits
    ChoiceListModel m_reasons;
    QString m_startLine, m_nothingLine, m_withLine;
    QStringList m_outlookNotes;
    OutlookPicture m_picture;
};

} // namespace halfcup::touch
