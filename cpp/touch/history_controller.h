// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"
#include "records/revision_stamp.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

#include <vector>

namespace halfcup::touch {

/// "What changed": the past of one yard, colony, wash or treatment, field by field, and back to it. What lost
/// where two phones changed one field stands here too.
class HistoryController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed) // "Colony 4, By the ford"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(bool removed READ isRemoved NOTIFY changed) // it is in no list now
    /// Newest first under each heading. Key: empty where it cannot be put back; title: what it was; detail:
    /// when and by which phone; note: that it is so now; section: the heading where a field begins.
    Q_PROPERTY(halfcup::touch::ChoiceListModel* values READ values CONSTANT)
    Q_PROPERTY(QString question READ question NOTIFY changed) // before one is put back
    Q_PROPERTY(QString result READ result NOTIFY changed)
    Q_PROPERTY(bool failed READ isFailed NOTIFY changed)
public:
    explicit HistoryController(Services& services, QObject* parent = nullptr);

    QString context() const { return m_context; }
    bool isDemo() const { return m_demo; }
    bool isRemoved() const { return m_removed; }
    ChoiceListModel* values() { return &m_values; }
    QString question() const { return m_question; }
    QString result() const { return m_result; }
    bool isFailed() const { return m_failed; }

    /// kind: a name of records::kindFrom(), as "colony". False where there is no such record, or its kind has
    /// no past that is told.
    bool show(const QString& kind, const QString& id);

    /// What putting that one back would mean, into question().
    Q_INVOKABLE void ask(const QString& key);
    Q_INVOKABLE void putBack();   // the one that was asked about
    Q_INVOKABLE void bringBack(); // the record, removed here or on another phone

signals:
    void changed();
    void recordChanged();

private:
    struct Past {
        QString title; // of the field
        QString value;
        records::Fields values; // of all its fields, also the empty ones
    };
    bool read();
    bool readContext();
    void listValues();
    void keep(const records::Fields& values, const QString& result);
    QString whenAndWhere(const records::RevisionStamp& stamp, const std::string& thisPhone) const;
    QString labelProblem(const records::Fields& values);

    Services& m_services;
    records::Kind m_kind = records::Kind::Yard;
    records::RecordId m_id;
    QString m_context;
    bool m_demo = false;
    bool m_removed = false;
    std::vector<Past> m_past; // a key is a place in it
    int m_asked = -1;
    QString m_question;
    QString m_result;
    bool m_failed = false;
    ChoiceListModel m_values;
};

} // namespace halfcup::touch
