// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QObject>
#include <QQmlEngine>

namespace halfcup::touch {

/// The ways to count a colony's mites, to pick one for this time.
class MethodsController : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(QString context READ context NOTIFY changed) // "Colony 4, Alder Bend"
    Q_PROPERTY(bool demo READ isDemo NOTIFY changed)
    Q_PROPERTY(halfcup::touch::ChoiceListModel* methods READ methods CONSTANT)
public:
    MethodsController(Services& services, QObject* parent = nullptr);

    QString context() const { return m_context; }
    bool isDemo() const { return m_demo; }
    ChoiceListModel* methods() { return &m_methods; }

    /// False where there is no such colony.
    bool show(const QString& colonyId);

    Q_INVOKABLE void pick(const QString& methodId);

signals:
    void changed();
    void picked(const QString& colonyId, const QString& methodId);

private:
    Services& m_services;
    QString m_colonyId;
    QString m_context;
    bool m_demo = false;
    ChoiceListModel m_methods;
};

} // namespace halfcup::touch
