// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/fields.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace halfcup::store {

/// The rows of an SQLite file read page by page, without SQLite, which gives up a table at its first damaged
/// page. Every page stands for itself here: what lies on a sound one is found whatever became of the others,
/// also of the first. For rescue.h.
///
/// Source of the layout: "Database File Format" of the SQLite documentation (sqlite.org/fileformat2.html):
/// header (1.3), freelist (1.5), b-tree pages and overflow (1.6, 1.7), records (2.1), write-ahead log (4).
/// Text is taken as UTF-8, as all databases of ours have it; blobs, of which ours hold none, are not read.
class DatabasePages {
public:
    /// Reads the whole file, and the log beside it as far as it is sound, into memory. Throws StoreError:
    /// NotAllowed, Failed.
    explicit DatabasePages(const std::string& path);

    struct Found {
        std::string_view table; // or index; empty where the way from the table to the page is lost
        std::vector<records::Value> values;
    };
    /// Every row that can be made out, of tables without row ids and of indices, in the order of the pages.
    /// Pages that SQLite has laid aside as free are left out.
    void forEachRow(const std::function<void(const Found&)>& visit);

    /// Pages of the file that should hold rows and of which some or all could not be read. A lower bound:
    /// what is lost behind a page that leads to others is not seen. After forEachRow().
    [[nodiscard]] int unreadablePages() const { return static_cast<int>(m_unreadable.size()); }

private:
    using Page = std::string_view;
    struct Payload {
        std::string bytes;
        std::uint32_t leftChild = 0; // 0 on a leaf
    };

    void readLog(const std::string& log);
    [[nodiscard]] std::uint32_t pageCount() const;
    [[nodiscard]] Page page(std::uint32_t number) const; // from 1; empty where there is none
    [[nodiscard]] std::set<std::uint32_t> freePages() const;
    [[nodiscard]] std::optional<Payload> cell(std::uint32_t number, int index) const;
    [[nodiscard]] std::optional<std::string> payload(Page page, std::size_t at, std::uint64_t size,
                                                     bool ofTable) const;
    [[nodiscard]] int cells(std::uint32_t number) const; // -1 where it is no page of a tree
    [[nodiscard]] std::uint8_t kindOf(std::uint32_t number) const;
    void readSchema(std::uint32_t number, int depth);
    void follow(std::uint32_t number, const std::string& table, int depth);

    std::string m_file;
    std::map<std::uint32_t, std::string> m_changed; // pages as the log has them
    std::size_t m_pageSize = 4096;                  // SQLite's own default since 3.12
    std::map<std::string, std::uint32_t> m_roots;   // of tables and indices
    std::map<std::uint32_t, std::string> m_tables;  // page -> table
    std::set<std::uint32_t> m_unreadable;
};

} // namespace halfcup::store
