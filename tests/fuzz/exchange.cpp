// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Any bytes as an exchange file: read, planned, dropped, taken in for good, and handed on to a third phone.
// Once as they are, and once with the check sum of each line put right, because no guessed one ever is.
#include "exchange/exchange_sentence.h"
#include "exchange/keep_exchange.h"
#include "exchange/line_sum.h"
#include "fuzz_kit.h"
#include "store/merge.h"
#include "store/outgoing.h"

#include <QBuffer>

#include <memory>
#include <optional>

using namespace halfcup;
using namespace halfcup::fuzz;

namespace {

class Phone {
public:
    Phone(const Folder& folder, const std::string& name, std::string_view database, std::uint64_t chance)
        : m_chance(chance) {
        const std::string path = folder.file(name);
        if (!database.empty())
            putBytes(path, database);
        m_store = std::make_unique<store::Store>(path, host(m_chance));
    }

    store::Store& store() { return *m_store; }

    std::string file() {
        std::string bytes;
        store::Outgoing outgoing(*m_store);
        exchange::writeExchange(
            outgoing, [&bytes](std::string_view some) { bytes += some; }, nowMs);
        return bytes;
    }

private:
    std::uint64_t m_chance;
    std::unique_ptr<store::Store> m_store;
};

struct Taken {
    exchange::ExchangeReport report;
    store::MergePlan plan;
};

Taken take(store::Store& store, std::string_view bytes, bool keep) {
    QBuffer buffer;
    buffer.setData(bytes.data(), static_cast<int>(bytes.size()));
    buffer.open(QIODevice::ReadOnly);
    store::Merge merge(store);
    merge.from({"file", {}, false});
    Taken taken;
    taken.report = exchange::readExchange(buffer, exchange::takerFor(merge, "file"));
    taken.plan = merge.finish();
    if (keep)
        merge.keep();
    return taken;
}

bool same(const store::MergePlan& a, const store::MergePlan& b) {
    return a.counts == b.counts && a.unknownKinds == b.unknownKinds && a.waiting == b.waiting &&
           a.newRevisions == b.newRevisions && a.newCounts == b.newCounts && a.items.size() == b.items.size();
}

/// The records of a file, without its first and its last line, which name the phone.
std::string partsOf(const std::string& file) {
    const std::size_t first = file.find('\n');
    const std::size_t last = file.rfind('\n', file.size() - 2);
    return first < last ? file.substr(first, last - first) : std::string();
}

const Folder& folder() {
    static const Folder one;
    return one;
}

/// Stays from try to try until something was kept in it.
std::unique_ptr<Phone>& phone() {
    static const std::string database = smallDatabase();
    static std::unique_ptr<Phone> one;
    if (!one) {
        folder().clear();
        one = std::make_unique<Phone>(folder(), "here.db", database, 7);
    }
    return one;
}

void tryOut(std::string_view bytes) {
    store::Store& here = phone()->store();
    const std::string before = phone()->file();
    const Taken planned = take(here, bytes, false);
    require(phone()->file() == before, "a plan that was dropped left something behind");
    require(!exchange::sentenceFor(planned.report).empty(), "a report without a sentence");
    static_cast<void>(exchange::damagedLineSentences(planned.report));
    if (planned.report.refusal != exchange::ExchangeRefusal::None || planned.plan.nothingNew())
        return;

    require(same(take(here, bytes, true).plan, planned.plan), "what was kept is not what was planned");
    require(take(here, bytes, false).plan.nothingNew(), "the same file brings something a second time");
    require(here.integrityReport() == "ok", "the database fails its check: " + here.integrityReport());
    readAllOf(here);
    const std::string after = phone()->file();
    Phone third(folder(), "third.db", {}, 99);
    const Taken handedOn = take(third.store(), after, true);
    require(handedOn.report.isWhole(), "a file of our own is not taken whole");
    require(partsOf(third.file()) == partsOf(after), "not all is handed on");
    phone().reset();
}

/// The same lines, each with the check sum it should have.
std::string withSums(std::string_view bytes) {
    constexpr std::string_view beforeSum = R"(,"sum":")";
    constexpr std::size_t sumLength = beforeSum.size() + 8 + 2;
    std::string summed;
    for (std::size_t at = 0; at < bytes.size();) {
        const std::size_t end = std::min(bytes.find('\n', at), bytes.size());
        std::string_view line = bytes.substr(at, end - at);
        at = end + 1;
        if (line.ends_with('}')) {
            const bool hasSum =
                line.size() > sumLength && line.substr(line.size() - sumLength).starts_with(beforeSum);
            line.remove_suffix(hasSum ? sumLength : 1);
            summed += line;
            summed += beforeSum;
            summed += exchange::lineSum(line);
            summed += "\"}";
        } else {
            summed += line;
        }
        summed += '\n';
    }
    return summed;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view bytes = textOf(data, size);
    tryOut(bytes);
    if (const std::string summed = withSums(bytes); summed != bytes)
        tryOut(summed);
    return 0;
}
