// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "place/likely_same.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

#include <vector>

namespace halfcup::touch {

/// "Are these the same?": yards and colonies that may have been made twice, on two phones that had not met;
/// one pair after the other. And those that were joined, to be separated again.
class SameController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(int count READ count NOTIFY changed)             // pairs to ask about
    Q_PROPERTY(QString countLine READ countLine NOTIFY changed) // "2 pairs may be the same"; or empty
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(QString reason READ reason NOTIFY changed) // why the pair at hand is asked about
    /// The two: name, where or how many, washes. Key: the id.
    Q_PROPERTY(halfcup::touch::ChoiceListModel* pair READ pair CONSTANT)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* joined READ joined CONSTANT)
    Q_PROPERTY(QString result READ result NOTIFY changed)     // of the last answer; or empty
    Q_PROPERTY(QString question READ question NOTIFY changed) // before separating
public:
    explicit SameController(Services& services, QObject* parent = nullptr);

    int count() const { return static_cast<int>(m_pairs.size()); }
    QString countLine() const;
    QString title() const;
    bool isDemo() const { return m_demo; }
    QString reason() const { return m_reason; }
    ChoiceListModel* pair() { return &m_pair; }
    ChoiceListModel* joined() { return &m_joined; }
    QString result() const { return m_result; }
    QString question() const { return m_question; }

    /// Reads the store. Cheap where nothing is to be asked; forgets the result of the last answer.
    void refresh();

    Q_INVOKABLE void open(); // the page
    Q_INVOKABLE void yes();  // the pair at hand is one
    Q_INVOKABLE void no();   // it is two, and is not asked about again on this phone
    /// What separating would mean, into question().
    Q_INVOKABLE void askSeparate(const QString& key);
    Q_INVOKABLE void separate(); // the one that was asked about

signals:
    void changed();
    void wanted();
    /// The one of the two that is led over, and the one that stands for both.
    void recordsJoined(const QString& id, const QString& into);
    void recordsSeparated();

private:
    void read();
    void showPair();
    void showJoined();
    ChoiceListModel::Entry entryOf(const records::Yard& yard);
    ChoiceListModel::Entry entryOf(const records::Colony& colony);
    QString reasonOf(const place::LikelyPair& pair) const;
    static QString washesLine(std::vector<records::Sample> samples);

    Services& m_services;
    std::vector<place::LikelyPair> m_pairs;
    bool m_demo = false;
    QString m_reason;
    QString m_result;
    QString m_question;
    QString m_asked; // key
    ChoiceListModel m_pair;
    ChoiceListModel m_joined;
};

} // namespace halfcup::touch
