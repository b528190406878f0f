// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What the fuzzers share: an abort with a sentence, and a folder for databases.
#pragma once

#include "store/store.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

/// One try: whatever the bytes are, it returns 0, or the program ends with a finding.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace halfcup::fuzz {

inline constexpr std::int64_t nowMs = 1'781'514'000'000; // 2026-06-15 09:00 UTC

inline std::string_view textOf(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

/// A finding that no sanitizer sees: something that has to hold does not.
inline void require(bool holds, const std::string& sentence) {
    if (holds)
        return;
    std::fprintf(stderr, "A finding: %s\n", sentence.c_str());
    std::abort();
}

/// A folder that goes with the program.
class Folder {
public:
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "halfcup-fuzz-XXXXXX").string();
        require(mkdtemp(name.data()) != nullptr, "no folder can be made for the databases");
        m_path = name;
    }
    ~Folder() {
        std::error_code error;
        std::filesystem::remove_all(m_path, error);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    [[nodiscard]] std::string file(const std::string& name) const { return m_path + "/" + name; }
    /// Nothing is left in it.
    void clear() const {
        for (const auto& each : std::filesystem::directory_iterator(m_path))
            std::filesystem::remove_all(each.path());
    }

private:
    std::string m_path;
};

inline void putBytes(const std::string& path, std::string_view bytes) {
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    require(file.good(), "the file for a try cannot be written");
}

inline std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// Time stands still, chance counts: the same bytes do the same every time.
inline store::StoreHost host(std::uint64_t& chance) {
    return {[] { return nowMs; }, [&chance] { return chance += 0x9E3779B97F4A7C15U; }};
}

/// A database of this program with one yard, two colonies and a wash; its bytes.
std::string smallDatabase();

/// Reads all that a store keeps, as the screens do, makes the tables and the map of it, and asks what is due:
/// a record that was let in must not harm where it is shown.
void readAllOf(store::Store& store);

} // namespace halfcup::fuzz
