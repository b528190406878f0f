// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/revision.h"
#include "store/merge_plan.h"
#include "store/record_builder.h"
#include "store/store.h"

#include <SQLiteCpp/Transaction.h>

#include <map>
#include <optional>
#include <string>
#include <unordered_map>

namespace halfcup::store {

/// Where parts come from.
struct MergeSource {
    std::string name;                        // for the keeper: a file's name
    std::map<std::string, std::string> seen; // device -> the greatest stamp of it the writer knew
    bool passedOn = false;                   // from the exchange folder: everyone there has it already
};

/// Takes in parts of records that other phones made. Everything happens in one transaction that is rolled
/// back unless keep() is called: a plan is a merge that is not kept, and so says exactly what the same merge
/// does when it is.
///
/// Taking in is commutative, associative and idempotent: revisions and acts of counting are only ever added,
/// and rows follow from them (record_builder.h). Of two values with one stamp, which no Halfcup writes, the
/// greater is kept, so that this holds for forged files too.
///
/// While a Merge lives nothing else may be written to the Store. Throws StoreError.
class Merge {
public:
    using Source = MergeSource;
    explicit Merge(Store& store);
    ~Merge();
    Merge(const Merge&) = delete;
    Merge& operator=(const Merge&) = delete;

    /// For the parts that follow.
    void from(const MergeSource& source);
    /// The phone's clock, for those who judge whether a stamp can be believed.
    [[nodiscard]] std::int64_t utcNowMs() const { return m_store.utcNowMs(); }
    /// False, and nothing taken, where the record is known here as one of another kind.
    bool take(const records::RecordPart& part);
    /// After the last part, once.
    const MergePlan& finish();
    /// After finish(): makes a checked copy of the database as it was before (mergeCopyName()), then keeps
    /// what was taken. Where nothing is new, nothing is written at all.
    void keep();

private:
    struct Known; // what of a record was here before a part of it came
    struct Taken {
        records::Kind kind = records::Kind::Yard;
        Change change = Change::Same;
        int item = -1; // its place in the plan's list
    };

    Known knownOf(const records::RecordPart& part);
    bool takeRevision(const records::RecordPart& part, const records::Revision& revision, Known& known);
    int takeCounts(const records::RecordPart& part);
    void note(const records::RecordPart& part, records::Kind kind, Change change, std::vector<Clash> clashes);
    void noteStamp(const std::string& stamp);
    void describe(MergeItem& item);

    Store& m_store;
    SQLite::Transaction m_transaction;
    RecordBuilder& m_builder;
    SQLite::Statement m_known;
    SQLite::Statement m_insert;
    SQLite::Statement m_knownCounts;
    SQLite::Statement m_insertCount;
    SQLite::Statement m_number;
    MergeSource m_source;
    std::string m_sources;     // all names, for the log
    bool m_allPassedOn = true; // nothing came by another way than the exchange folder
    std::int64_t m_mergeNumber = 0;
    std::unordered_map<records::RecordId, Taken> m_taken;
    std::map<std::string, std::string> m_latest; // by device
    std::string m_greatest;
    MergePlan m_plan;
    bool m_finished = false;
};

/// The name of the copy that is made before a merge is kept.
[[nodiscard]] std::string mergeCopyName(const std::string& databasePath);

} // namespace halfcup::store
