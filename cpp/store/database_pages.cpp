// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/database_pages.h"

#include "store/store_error.h"

#include <algorithm>
#include <array>
#include <bit>
#include <fstream>
#include <iterator>

namespace halfcup::store {

using records::Value;

namespace {

constexpr std::string_view magic{"SQLite format 3\0", 16};
constexpr std::size_t headerBytes = 100;
constexpr std::size_t logHeaderBytes = 32;
constexpr std::size_t frameHeaderBytes = 24;
constexpr int deepest = 40; // levels of a tree: far more than any file has
constexpr std::uint64_t longestRow = 1U
                                     << 20; // bytes; a damaged figure must not make us gather the whole file

enum PageKind : std::uint8_t { IndexInterior = 2, TableInterior = 5, IndexLeaf = 10, TableLeaf = 13 };

std::uint32_t numberAt(std::string_view bytes, std::size_t at, int length) {
    std::uint32_t number = 0;
    for (int i = 0; i < length; ++i)
        number = number << 8 | static_cast<std::uint8_t>(bytes[at + static_cast<std::size_t>(i)]);
    return number;
}

/// SQLite's number of one to nine bytes; moves at behind it. Nothing where the bytes end before it does.
std::optional<std::uint64_t> varint(std::string_view bytes, std::size_t& at) {
    std::uint64_t number = 0;
    for (int i = 0; i < 9; ++i) {
        if (at >= bytes.size())
            return std::nullopt;
        const auto byte = static_cast<std::uint8_t>(bytes[at++]);
        if (i == 8)
            return number << 8 | byte;
        number = number << 7 | (byte & 0x7FU);
        if (byte < 0x80)
            return number;
    }
    return number;
}

std::int64_t signedAt(std::string_view bytes, std::size_t at, std::size_t length) {
    std::uint64_t number = static_cast<std::uint8_t>(bytes[at]) >= 0x80 ? ~std::uint64_t{0} : 0;
    for (std::size_t i = 0; i < length; ++i)
        number = number << 8 | static_cast<std::uint8_t>(bytes[at + i]);
    return static_cast<std::int64_t>(number);
}

/// The values of a record; nothing where the bytes are none, or where there is a blob among them.
std::optional<std::vector<Value>> valuesIn(std::string_view record) {
    std::size_t type = 0;
    const auto headerEnd = varint(record, type);
    if (!headerEnd || *headerEnd > record.size() || *headerEnd < type)
        return std::nullopt;
    const std::string_view header = record.substr(0, static_cast<std::size_t>(*headerEnd));
    std::size_t at = header.size();
    std::vector<Value> values;
    while (type < header.size()) {
        const auto code = varint(header, type);
        if (!code)
            return std::nullopt;
        constexpr std::array<std::size_t, 8> lengths{0, 1, 2, 3, 4, 6, 8, 8};
        const bool isText = *code >= 13 && *code % 2 == 1;
        if (!isText && *code > 9)
            return std::nullopt;
        const std::uint64_t length = isText       ? (*code - 13) / 2
                                     : *code >= 8 ? 0
                                                  : lengths[static_cast<std::size_t>(*code)];
        if (length > record.size() - at)
            return std::nullopt;
        const auto size = static_cast<std::size_t>(length);
        if (isText)
            values.emplace_back(std::string(record.substr(at, size)));
        else if (*code == 0)
            values.emplace_back();
        else if (*code == 7)
            values.emplace_back(std::bit_cast<double>(signedAt(record, at, size)));
        else if (*code >= 8)
            values.emplace_back(static_cast<std::int64_t>(*code - 8));
        else
            values.emplace_back(signedAt(record, at, size));
        at += size;
    }
    if (at != record.size()) // no record has anything behind its values
        return std::nullopt;
    return values;
}

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file)
        throw StoreError(StoreError::Kind::NotAllowed, path + " cannot be read");
    std::string bytes{std::istreambuf_iterator<char>(file), {}};
    if (file.bad())
        throw StoreError(StoreError::Kind::Failed, path + " cannot be read to its end");
    return bytes;
}

/// The two running sums over the log, in the order of bytes that its first number names.
struct LogSum {
    bool bigEndian;
    std::uint32_t one = 0;
    std::uint32_t two = 0;

    void add(std::string_view bytes) {
        for (std::size_t at = 0; at + 8 <= bytes.size(); at += 8) {
            one += word(bytes, at) + two;
            two += word(bytes, at + 4) + one;
        }
    }
    [[nodiscard]] std::uint32_t word(std::string_view bytes, std::size_t at) const {
        const std::uint32_t number = numberAt(bytes, at, 4);
        return bigEndian ? number
                         : number >> 24 | (number >> 8 & 0xFF00U) | (number << 8 & 0xFF0000U) | number << 24;
    }
    [[nodiscard]] bool isAt(std::string_view bytes, std::size_t at) const {
        return one == numberAt(bytes, at, 4) && two == numberAt(bytes, at + 4, 4);
    }
};

} // namespace

DatabasePages::DatabasePages(const std::string& path)
    : m_file(bytesOf(path)) {
    if (m_file.size() >= headerBytes && std::string_view(m_file).starts_with(magic)) {
        const std::uint32_t size = numberAt(m_file, 16, 2);
        const std::size_t bytes = size == 1 ? 65536 : size;
        if (std::has_single_bit(bytes) && bytes >= 512)
            m_pageSize = bytes;
    }
    std::ifstream log(path + "-wal", std::ios::binary);
    if (log)
        readLog({std::istreambuf_iterator<char>(log), {}});
}

/// As SQLite itself reads it: frames count up to the last whole transaction before the first one that is not
/// as it was written.
void DatabasePages::readLog(const std::string& log) {
    if (log.size() < logHeaderBytes || (numberAt(log, 0, 4) & ~1U) != 0x377F0682)
        return;
    LogSum sum{.bigEndian = (numberAt(log, 0, 4) & 1U) != 0};
    sum.add(std::string_view(log).substr(0, 24));
    const std::size_t pageSize = numberAt(log, 8, 4);
    if (!sum.isAt(log, 24) || !std::has_single_bit(pageSize) || pageSize < 512 || pageSize > 65536)
        return;
    m_pageSize = pageSize; // also where the file's own header is lost
    std::map<std::uint32_t, std::string> unfinished;
    for (std::size_t at = logHeaderBytes; at + frameHeaderBytes + pageSize <= log.size();
         at += frameHeaderBytes + pageSize) {
        const std::string_view frame = std::string_view(log).substr(at, frameHeaderBytes + pageSize);
        sum.add(frame.substr(0, 8));
        sum.add(frame.substr(frameHeaderBytes));
        if (frame.substr(8, 8) != std::string_view(log).substr(16, 8) || !sum.isAt(frame, 16))
            return;
        unfinished[numberAt(frame, 0, 4)] = frame.substr(frameHeaderBytes);
        if (numberAt(frame, 4, 4) == 0)
            continue;
        for (auto& [number, bytes] : unfinished)
            m_changed[number] = std::move(bytes);
        unfinished.clear();
    }
}

std::uint32_t DatabasePages::pageCount() const {
    const auto inFile = static_cast<std::uint32_t>((m_file.size() + m_pageSize - 1) / m_pageSize);
    return m_changed.empty() ? inFile : std::max(inFile, m_changed.rbegin()->first);
}

DatabasePages::Page DatabasePages::page(std::uint32_t number) const {
    if (const auto changed = m_changed.find(number); changed != m_changed.end())
        return changed->second;
    const std::size_t at = (std::size_t{number} - 1) * m_pageSize;
    if (number == 0 || at + m_pageSize > m_file.size())
        return {};
    return Page(m_file).substr(at, m_pageSize);
}

std::set<std::uint32_t> DatabasePages::freePages() const {
    std::set<std::uint32_t> free;
    const Page first = page(1);
    if (first.size() < headerBytes || !first.starts_with(magic))
        return free;
    std::uint32_t trunk = numberAt(first, 32, 4);
    while (trunk != 0 && !page(trunk).empty() && free.insert(trunk).second) {
        const Page list = page(trunk);
        const std::size_t leaves = std::min<std::size_t>(numberAt(list, 4, 4), m_pageSize / 4 - 2);
        for (std::size_t i = 0; i < leaves; ++i)
            free.insert(numberAt(list, 8 + 4 * i, 4));
        trunk = numberAt(list, 0, 4);
    }
    return free;
}

std::uint8_t DatabasePages::kindOf(std::uint32_t number) const {
    const Page bytes = page(number);
    return bytes.empty() ? 0 : static_cast<std::uint8_t>(bytes[number == 1 ? headerBytes : 0]);
}

int DatabasePages::cells(std::uint32_t number) const {
    const std::uint8_t kind = kindOf(number);
    if (kind != IndexInterior && kind != TableInterior && kind != IndexLeaf && kind != TableLeaf)
        return -1;
    const std::uint32_t cells = numberAt(page(number), (number == 1 ? headerBytes : 0) + 3, 2);
    return cells <= m_pageSize / 4 ? static_cast<int>(cells) : -1; // pointer and the smallest cell
}

std::optional<std::string> DatabasePages::payload(Page bytes, std::size_t at, std::uint64_t size,
                                                  bool ofTable) const {
    const std::uint64_t usable = m_pageSize; // our databases reserve nothing at the end of a page
    const std::uint64_t most = ofTable ? usable - 35 : (usable - 12) * 64 / 255 - 23;
    const std::uint64_t least = (usable - 12) * 32 / 255 - 23;
    if (size > longestRow)
        return std::nullopt;
    std::uint64_t here = size;
    if (size > most) {
        here = least + (size - least) % (usable - 4);
        here = here <= most ? here : least;
    }
    if (at + here + (here < size ? 4 : 0) > bytes.size())
        return std::nullopt;
    std::string all(bytes.substr(at, static_cast<std::size_t>(here)));
    std::uint32_t next = here < size ? numberAt(bytes, at + static_cast<std::size_t>(here), 4) : 0;
    while (all.size() < size) {
        const Page more = page(next);
        if (more.empty())
            return std::nullopt;
        all += more.substr(4, static_cast<std::size_t>(size) - all.size());
        next = numberAt(more, 0, 4);
    }
    return all;
}

std::optional<DatabasePages::Payload> DatabasePages::cell(std::uint32_t number, int index) const {
    const Page bytes = page(number);
    const std::uint8_t kind = kindOf(number);
    const bool interior = kind == IndexInterior || kind == TableInterior;
    const std::size_t pointers = (number == 1 ? headerBytes : 0) + (interior ? 12U : 8U);
    const std::size_t pointer = pointers + 2 * static_cast<std::size_t>(index);
    if (pointer + 2 > bytes.size())
        return std::nullopt;
    std::size_t at = numberAt(bytes, pointer, 2);
    if (at < pointer || at + 4 > bytes.size())
        return std::nullopt;
    Payload found;
    if (interior) {
        found.leftChild = numberAt(bytes, at, 4);
        at += 4;
        if (kind == TableInterior) // holds a row id, no payload
            return found;
    }
    const auto size = varint(bytes, at);
    if (!size || (kind == TableLeaf && !varint(bytes, at)))
        return std::nullopt;
    auto content = payload(bytes, at, *size, kind == TableLeaf);
    if (!content)
        return std::nullopt;
    found.bytes = std::move(*content);
    return found;
}

/// sqlite_master: type, name, table, first page, SQL.
void DatabasePages::readSchema(std::uint32_t number, int depth) {
    const int count = cells(number);
    if (count < 0 || depth > deepest || kindOf(number) == IndexLeaf || kindOf(number) == IndexInterior) {
        m_unreadable.insert(number);
        return;
    }
    for (int i = 0; i < count; ++i) {
        const auto found = cell(number, i);
        if (found && kindOf(number) == TableInterior) {
            readSchema(found->leftChild, depth + 1);
            continue;
        }
        const auto values = found ? valuesIn(found->bytes) : std::nullopt;
        if (!values || values->size() != 5 || !std::holds_alternative<std::string>((*values)[1]) ||
            !std::holds_alternative<std::int64_t>((*values)[3])) {
            m_unreadable.insert(number);
            continue;
        }
        m_roots[std::get<std::string>((*values)[1])] =
            static_cast<std::uint32_t>(std::get<std::int64_t>((*values)[3]));
    }
    if (kindOf(number) == TableInterior)
        readSchema(numberAt(page(number), (number == 1 ? headerBytes : 0) + 8, 4), depth + 1);
}

/// Notes to which table the pages below this one belong.
void DatabasePages::follow(std::uint32_t number, const std::string& table, int depth) {
    const int count = cells(number);
    const std::uint8_t kind = kindOf(number);
    if (count < 0 || depth > deepest || (kind != IndexInterior && kind != IndexLeaf)) {
        // Tables with row ids are SQLite's own and the log of merges: nothing of them is wanted.
        if (count < 0 || depth > deepest)
            m_unreadable.insert(number);
        return;
    }
    if (!m_tables.try_emplace(number, table).second)
        return; // two ways to one page: the first is believed
    if (kind == IndexLeaf)
        return;
    for (int i = 0; i < count; ++i)
        if (const auto found = cell(number, i))
            follow(found->leftChild, table, depth + 1);
    follow(numberAt(page(number), 8, 4), table, depth + 1);
}

void DatabasePages::forEachRow(const std::function<void(const Found&)>& visit) {
    const std::set<std::uint32_t> free = freePages();
    readSchema(1, 0);
    for (const auto& [table, root] : m_roots)
        follow(root, table, 0);
    for (std::uint32_t number = 1; number <= pageCount(); ++number) {
        const std::uint8_t kind = kindOf(number);
        const auto known = m_tables.find(number);
        if (free.contains(number) || (kind != IndexLeaf && kind != IndexInterior))
            continue;
        for (int i = 0; i < cells(number); ++i) {
            const auto found = cell(number, i);
            auto values = found ? valuesIn(found->bytes) : std::nullopt;
            if (values)
                visit({known == m_tables.end() ? std::string_view() : known->second, std::move(*values)});
            else if (known != m_tables.end())
                m_unreadable.insert(number);
        }
    }
}

} // namespace halfcup::store
