// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/substance_names.h"

#include "handbook/measure.h"
#include "handbook/substance.h"

namespace halfcup::touch {

QString substanceName(const std::string& id, const handbook::Handbook& handbook) {
    for (const handbook::Substance& each : handbook::substances(handbook))
        if (each.id == id)
            return QString::fromStdString(each.name);
    for (const handbook::Measure& each : handbook::measures(handbook))
        if (each.id == id)
            return QString::fromStdString(each.name);
    return QString::fromStdString(id);
}

bool isUnknownSubstance(const std::string& id, const handbook::Handbook& handbook) {
    return !handbook.find(id, "name");
}

std::string substanceId(const std::string& typed, const handbook::Handbook& handbook) {
    const QString text = QString::fromStdString(typed).toCaseFolded();
    for (const handbook::Substance& each : handbook::substances(handbook))
        for (const std::string& name : {each.id, each.name, each.active})
            if (QString::fromStdString(name).toCaseFolded() == text)
                return each.id;
    return typed;
}

std::string substanceHazard(const std::string& id, const handbook::Handbook& handbook) {
    for (const handbook::Substance& each : handbook::substances(handbook))
        if (each.id == id)
            return each.hazard;
    return {};
}

} // namespace halfcup::touch
