// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// A fuzzer without libFuzzer, for any compiler: tries each file it is given once, of a folder all files in
// it.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

namespace fs = std::filesystem;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

int main(int count, char** words) {
    std::vector<fs::path> files;
    for (int i = 1; i < count; ++i) {
        if (!fs::is_directory(words[i])) {
            files.emplace_back(words[i]);
            continue;
        }
        std::ranges::copy(fs::directory_iterator(words[i]), std::back_inserter(files));
    }
    std::ranges::sort(files);
    for (const fs::path& file : files) {
        std::fprintf(stderr, "%s\n", file.c_str()); // the last one named is the one that did it
        std::ifstream bytes(file, std::ios::binary);
        if (!bytes) {
            std::fprintf(stderr, "This file cannot be read.\n");
            return 1;
        }
        const std::vector<char> all{std::istreambuf_iterator<char>(bytes), {}};
        LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(all.data()), all.size());
    }
    std::printf("%zu files tried\n", files.size());
    return files.empty() ? 1 : 0;
}
