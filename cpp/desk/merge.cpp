// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "store/merge.h"
#include "desk/keeper_verbs.h"
#include "desk/open_store.h"
#include "desk/table.h"
#include "exchange/exchange_sentence.h"
#include "exchange/keep_folder.h"
#include "store/outgoing.h"

#include <QDir>

namespace halfcup::desk {

namespace {

using exchange::ExchangeReport;
using store::Change;

std::string_view wordFor(Change change) {
    switch (change) {
    case Change::New:
        return "new";
    case Change::Same:
        return "same";
    case Change::Changed:
        return "changed";
    case Change::BothChanged:
        return "changed on both sides";
    case Change::RemovedThere:
        break;
    }
    return "removed there";
}

void writePlan(const store::MergePlan& plan, std::ostream& out) {
    out << "kind,change,records\n";
    for (const auto& [what, records] : plan.counts)
        out << records::nameOf(what.first) << "," << wordFor(what.second) << "," << records << "\n";
    if (plan.unknownKinds > 0)
        out << "of a newer version,new," << plan.unknownKinds << "\n";
    if (plan.waiting > 0)
        out << "any,waiting for what they belong to," << plan.waiting << "\n";
}

// Says what is wrong with a file; true where anything is.
bool tell(const std::string& file, const ExchangeReport& report, std::ostream& err) {
    if (report.isWhole())
        return false;
    for (const std::string& sentence : exchange::damagedLineSentences(report))
        err << file << ": " << sentence << "\n";
    err << file << ": " << exchange::sentenceFor(report) << "\n";
    return true;
}

int runMerge(const Arguments& arguments, Streams& streams) {
    if (arguments.words.size() < 2)
        throw UsageError("Into which database, and which files?");
    const auto store = openStore(arguments.words[0]);
    bool trouble = false;
    store::Merge merge(*store);
    for (std::size_t i = 1; i < arguments.words.size(); ++i) {
        const std::string& file = arguments.words[i];
        const auto report = exchange::takeExchangeFile(merge, QString::fromLocal8Bit(file.c_str()));
        trouble = tell(file, report, streams.err) || trouble;
    }
    writePlan(merge.finish(), streams.out);
    if (!arguments.has("--plan"))
        merge.keep();
    return trouble ? 1 : 0;
}

int runFolder(const Arguments& arguments, Streams& streams) {
    if (arguments.words.size() < 2)
        throw UsageError("Which database, and which folder?");
    const auto store = openStore(arguments.words[0]);
    const QString path =
        QDir::cleanPath(QDir().absoluteFilePath(QString::fromLocal8Bit(arguments.words[1].c_str())));
    const std::string device = store::Outgoing(*store).device();
    const exchange::ExchangeFolder folder(path, device);
    constexpr const char* kept = "exchange_folder_state";
    const records::Value text = store->setting(kept);
    const auto* before = std::get_if<std::string>(&text);
    auto state = exchange::FolderState::from(before ? *before : std::string(), path.toStdString(), device);
    const auto look = exchange::exchangeThrough<store::Merge, store::Outgoing, store::MergePlan>(
        folder, state, *store, utcNowMs());
    if (look.trouble != exchange::FolderTrouble::None)
        throw std::runtime_error("There is no folder " + shown(arguments.words[1]) + " that can be read.");
    store->setSetting(kept, state.toText());
    bool trouble = false;
    for (const auto& file : look.taken)
        trouble = tell(file.name, file.report, streams.err) || trouble;
    for (const std::string& name : look.waiting)
        streams.err << name << ": still on its way.\n";
    writePlan(look.plan, streams.out);
    if (look.writing)
        throw std::runtime_error("This database's own file could not be written: " +
                                 look.writing->technical.toStdString());
    return trouble ? 1 : 0;
}

} // namespace

Verb mergeVerb() {
    return {.name = "merge",
            .summary = "Takes in exchange files of other phones.",
            .usage = "[--plan] DATABASE FILE...",
            .help = "Writes how many records of each kind are new, same, changed, changed on both sides or\n"
                    "removed there. Before anything is kept a checked copy DATABASE.before-merge is made.\n"
                    "Of a damaged file every intact line is taken and every damaged one named.\n",
            .options = {{"--plan", "", "say what would be taken, and take nothing", true}},
            .mostWords = 10'000,
            .run = runMerge};
}

Verb folderVerb() {
    return {.name = "folder",
            .summary = "Exchanges with other phones through a folder that is synchronised.",
            .usage = "DATABASE FOLDER",
            .help = "Takes in what the others put there, then adds to this database's own file in it.\n"
                    "Positions go out exact. Run it again whenever the folder may have changed.\n",
            .mostWords = 2,
            .run = runFolder};
}

} // namespace halfcup::desk
