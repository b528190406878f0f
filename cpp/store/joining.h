// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/store.h"

#include <string>
#include <vector>

namespace halfcup::store {

/// Two records of one yard or one colony, made on two phones that had not met. Joined, the one made first
/// stands for both: it shows the samples, events and treatments of both, and what refers to the other is led
/// to it. Nothing is rewritten, so separating them again puts everything back; and what a phone that has not
/// heard of it yet records for the other one is led over when it comes. Throws StoreError.
class Joining {
public:
    explicit Joining(Store& store)
        : m_store(store) {}

    /// Both of one kind (Yard or Colony) and known here; else nothing happens and it is false.
    bool join(records::Kind kind, const records::RecordId& one, const records::RecordId& other);
    /// Ends what joined the two, or whatever joins this record with others.
    bool separate(records::Kind kind, const records::RecordId& id);

    struct Joined {
        records::Kind kind = records::Kind::Yard;
        records::RecordId id;
        records::RecordId into; // the one that stands for both
        std::string name;       // of the one that is led over
        std::string intoName;
    };
    [[nodiscard]] std::vector<Joined> all();

    /// The record that stands for this one: itself where it was not joined.
    [[nodiscard]] records::RecordId standsFor(const records::RecordId& id);

private:
    void inOne(const std::function<void()>& work);
    void set(records::Kind kind, const records::RecordId& id, const records::Value& sameAs);

    Store& m_store;
};

} // namespace halfcup::store
