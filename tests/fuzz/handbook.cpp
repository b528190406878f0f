// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Any bytes as a file of the handbook: it is refused with a sentence, or every value in it can be used.
#include "handbook/measure.h"
#include "handbook/substance.h"

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

using namespace halfcup::handbook;

namespace {

void require(bool holds, const char* sentence) {
    if (holds)
        return;
    std::fprintf(stderr, "A finding: %s\n", sentence);
    std::abort();
}

void readAllOf(Handbook& book) {
    book.sayIn([](const std::string& text) { return text + text; });
    for (const std::string& topic : book.topics()) {
        require(!book.topicTitle(topic).empty(), "a topic has no title");
        for (const Entry* entry : book.topic(topic)) {
            require(book.find(entry->id) == entry, "an entry is not found by its id");
            require(entry->figure() || !entry->words.empty(), "an entry holds nothing");
            require(std::isfinite(entry->figure().value_or(0)), "a figure is none");
            static_cast<void>(markName(entry->mark));
        }
        for (const std::string& subject : book.subjects(topic))
            require(!book.about(subject).empty(), "nothing is said about a subject");
    }
    static_cast<void>(substances(book));
    static_cast<void>(measures(book));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    try {
        Handbook book = Handbook::fromTexts({&text, 1});
        readAllOf(book);
    } catch (const HandbookError& error) {
        require(error.what()[0] != '\0', "a refusal without a sentence");
    }
    return 0;
}
