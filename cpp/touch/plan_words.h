// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/exchange_reader.h"
#include "store/merge_plan.h"
#include "touch/choice_list_model.h"
#include "touch/services.h"

#include <QList>
#include <QString>
#include <QStringList>

/// What taking in a file would do, in words. What comes out of a stranger's file is cleaned before it is
/// shown (records/clean_text.h). Those with Services read the store and throw store::StoreError.
namespace halfcup::touch::plan {

/// The name of a file as it may be shown.
[[nodiscard]] QString shownName(const QString& path);

/// "4F2C": four signs that tell phones apart, from the end of a phone's id; "?" where there is none.
[[nodiscard]] QString phoneMark(const std::string& device);

/// "Written by phone 4F2C on 15 June 2026 at 09:41, by its clock."
[[nodiscard]] QString writtenLine(const Services& services, const exchange::ExchangeHeader& header,
                                  const std::string& ownDevice);

/// "3 yards, 17 colonies, 85 washes", of the numbers of records by the names of their kinds; empty where
/// there are none.
[[nodiscard]] QString heldRecords(const std::map<std::string, std::int64_t>& counts);

/// Why nothing of a file was taken, in a sentence; empty for None.
[[nodiscard]] QString refusal(exchange::ExchangeRefusal refusal, const QString& path);

/// "14 records are new or changed. Nothing of yours is lost.", or that there is nothing new.
[[nodiscard]] QString headline(const store::MergePlan& plan);

/// Title: what happens ("New"); detail: to how many of what ("12 washes, 2 colonies"); note: what that means.
[[nodiscard]] QList<ChoiceListModel::Entry> counts(const store::MergePlan& plan);

/// What is wrong with the file, and what waits: sentences, at most a dozen, the last one says how to heal it.
[[nodiscard]] QStringList troubles(const exchange::ExchangeReport& report);
[[nodiscard]] QStringList remarks(const store::MergePlan& plan);

/// The records one by one, what changed on both phones first. Section: the heading where a group begins.
[[nodiscard]] QList<ChoiceListModel::Entry> items(Services& services, const store::MergePlan& plan);

/// Those of them of which something was lost, or which left the lists, and whose past has a page: to be
/// looked at once they are taken in. Key: the kind's name, a slash, the id.
[[nodiscard]] QList<ChoiceListModel::Entry> toLookAt(Services& services, const store::MergePlan& plan);

/// "12 more are not listed."; empty where all are.
[[nodiscard]] QString moreItems(const store::MergePlan& plan);

/// "3 washes", "1 treated colony".
[[nodiscard]] QString howMany(records::Kind kind, int count);

} // namespace halfcup::touch::plan
