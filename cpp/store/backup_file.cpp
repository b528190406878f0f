// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/backup_file.h"

#include "store/backup.h"
#include "store/open_database.h"

#include <array>
#include <filesystem>
#include <fstream>
#include <string_view>
#include <system_error>

namespace halfcup::store {

namespace fs = std::filesystem;
using Kind = BackupError::Kind;

namespace {

// https://www.sqlite.org/fileformat2.html, section 1.3: the first 100 bytes; numbers are big-endian.
constexpr std::string_view magic{"SQLite format 3\0", 16};
constexpr std::size_t headerBytes = 100;
constexpr std::size_t pageSizeAt = 16;
constexpr std::size_t readVersionAt = 19;
constexpr std::size_t pageCountAt = 28;
constexpr std::size_t applicationIdAt = 68;
constexpr char readVersionOfLog = 2;
constexpr int busyTimeoutMs = 3000;

using Header = std::array<char, headerBytes>;

std::int64_t numberAt(const Header& header, std::size_t place, std::size_t bytes) {
    std::int64_t number = 0;
    for (std::size_t i = 0; i < bytes; ++i)
        number = number * 256 + static_cast<unsigned char>(header[place + i]);
    return number;
}

/// As an URI of SQLite: a path may hold anything, a question mark too.
std::string uriOf(const std::string& path) {
    constexpr std::string_view plain = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/";
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string uri = "file://";
    for (const char c : fs::absolute(path).string()) {
        const auto byte = static_cast<unsigned char>(c);
        if (plain.find(c) != std::string_view::npos) {
            uri.push_back(c);
        } else {
            uri.push_back('%');
            uri.push_back(digits[byte / 16]);
            uri.push_back(digits[byte % 16]);
        }
    }
    return uri + "?immutable=1";
}

} // namespace

FileForm formOf(const std::string& path) {
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (status.type() == fs::file_type::not_found)
        throw BackupError(Kind::NotThere, path);
    if (error)
        throw BackupError(Kind::NotAllowed, path + ": " + error.message());
    if (!fs::is_regular_file(status))
        throw BackupError(Kind::NotAFile, path);
    FileForm form;
    form.sizeBytes = static_cast<std::int64_t>(fs::file_size(path, error));
    std::ifstream file(path, std::ios::binary);
    if (!file)
        throw BackupError(Kind::NotAllowed, path);
    if (form.sizeBytes == 0)
        throw BackupError(Kind::Empty, path);
    Header header{};
    file.read(header.data(), headerBytes);
    const auto got = static_cast<std::size_t>(file.gcount());
    const std::string_view start(header.data(), std::min(got, magic.size()));
    if (start != magic.substr(0, start.size()))
        throw BackupError(Kind::NotOurs, "it does not begin as a database");
    if (got < headerBytes)
        throw BackupError(Kind::Cut, std::to_string(got) + " bytes");
    if (numberAt(header, applicationIdAt, 4) != applicationId)
        throw BackupError(Kind::NotOurs, "another application id");
    form.keepsLog = header[readVersionAt] == readVersionOfLog;
    const std::int64_t pageSize = numberAt(header, pageSizeAt, 2);
    form.bytesByHeader = numberAt(header, pageCountAt, 4) * (pageSize == 1 ? 65536 : pageSize);
    if (form.sizeBytes < form.bytesByHeader)
        throw BackupError(Kind::Cut, std::to_string(form.sizeBytes) + " of " +
                                         std::to_string(form.bytesByHeader) + " bytes");
    return form;
}

std::unique_ptr<SQLite::Database> openForReading(const std::string& path, const FileForm& form) {
    // Without a log beside it nobody has it open, and all of it is in the file.
    const bool hasLog = form.keepsLog && fs::exists(path + "-wal");
    auto database =
        hasLog ? std::make_unique<SQLite::Database>(path, SQLite::OPEN_READONLY, busyTimeoutMs)
               : std::make_unique<SQLite::Database>(uriOf(path), SQLite::OPEN_READONLY | SQLite::OPEN_URI);
    database->exec("PRAGMA trusted_schema = OFF"); // the file may come from anywhere
    database->exec("PRAGMA cell_size_check = ON");
    return database;
}

} // namespace halfcup::store
