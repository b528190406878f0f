// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/treatment.h"
#include "touch/field_list_model.h"

#include <QString>

namespace halfcup::touch {

/// The fields of a treatment record as they are typed: first what is needed at the hive, then the rest of
/// what the law asks for (handbook "records"). Never a dose: the quantity is what the keeper types.
class TreatmentForm {
public:
    /// A form with the texts of the treatment. courseHint: how long a course takes, under the last day.
    /// asksSubstance: the active substance is typed, because it is not one of the handbook's.
    void fill(const records::Treatment& treatment, bool isNew, const QString& courseHint, bool asksSubstance);

    /// What is typed, put over the treatment; or the first thing that cannot be, in a sentence.
    struct Result {
        records::Treatment treatment;
        QString problem;
    };
    [[nodiscard]] Result read(records::Treatment treatment, const records::Date& today) const;

    [[nodiscard]] QString text(const QString& key) const;
    /// A new entry keeps its days in step: moving the first day moves the others with it, and the day on
    /// which it has to come out follows the last day while the two are the same.
    void type(const QString& key, const QString& text, const records::Date& today);
    /// A day on or back; from today where nothing that is a day stands there.
    void moveDay(const QString& key, int days, const records::Date& today);

    FieldListModel needed;
    FieldListModel more;

private:
    void put(const QString& key, const QString& text);
    void follow(const QString& key, const QString& before, const records::Date& today);

    bool m_isNew = true;
};

/// What is wrong with a record as a whole, in a sentence.
[[nodiscard]] QString sentenceOf(records::TreatmentProblem problem);

} // namespace halfcup::touch
