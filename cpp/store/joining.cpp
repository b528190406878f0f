// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/joining.h"

#include "records/field_access.h"
#include "store/sqlite_errors.h"

#include <algorithm>

namespace halfcup::store {

using namespace records;

namespace {

std::string nameIn(Kind kind, const Fields& fields) {
    return textIn(fields, kind == Kind::Yard ? "name" : "label").value_or("");
}

} // namespace

void Joining::set(Kind kind, const RecordId& id, const Value& sameAs) {
    m_store.write(kind, id, {{"same_as", sameAs}});
}

/// What the builder holds in memory goes the way of the transaction.
void Joining::inOne(const std::function<void()>& work) {
    try {
        m_store.inOneTransaction(work);
    } catch (...) {
        guarded([&] { m_store.builder().forget(); });
        throw;
    }
}

bool Joining::join(Kind kind, const RecordId& one, const RecordId& other) {
    if ((kind != Kind::Yard && kind != Kind::Colony) || one == other)
        return false;
    bool joined = false;
    inOne([&] {
        RecordBuilder& builder = m_store.builder();
        // From the one that stands for each, so that a second join leaves the first one's link in its place.
        const RecordId first = std::min(builder.standsFor(one), builder.standsFor(other));
        const RecordId second = std::max(builder.standsFor(one), builder.standsFor(other));
        if (first == second || !m_store.table(kind).find(first) || !m_store.table(kind).find(second))
            return;
        set(kind, second, first);
        builder.joinAnew();
        joined = true;
    });
    return joined;
}

bool Joining::separate(Kind kind, const RecordId& id) {
    bool separated = false;
    inOne([&] {
        RecordBuilder& builder = m_store.builder();
        for (const Row& row : m_store.table(kind).select("WHERE same_as = ?1 OR id = ?1", {id})) {
            if (!textIn(row.fields, "same_as"))
                continue;
            set(kind, row.id, {});
            separated = true;
        }
        builder.joinAnew();
    });
    return separated;
}

RecordId Joining::standsFor(const RecordId& id) {
    return m_store.builder().standsFor(id);
}

std::vector<Joining::Joined> Joining::all() {
    return guarded([&] {
        std::vector<Joined> all;
        SQLite::Statement rows(m_store.database(), "SELECT kind, id, into_id FROM joined ORDER BY kind, id");
        while (rows.executeStep()) {
            const Kind kind = rows.getColumn(0).getString() == nameOf(Kind::Yard) ? Kind::Yard : Kind::Colony;
            Joined joined{kind, rows.getColumn(1).getString(), rows.getColumn(2).getString(), {}, {}};
            if (const auto row = m_store.table(kind).find(joined.id))
                joined.name = nameIn(kind, row->fields);
            if (const auto row = m_store.table(kind).find(joined.into))
                joined.intoName = nameIn(kind, row->fields);
            all.push_back(std::move(joined));
        }
        return all;
    });
}

} // namespace halfcup::store
