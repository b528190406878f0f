// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/csv_line.h"
#include "desk/keeper_verbs.h"
#include "desk/open_store.h"
#include "desk/table.h"
#include "store/rescue.h"
#include "store/restore.h"

#include <chrono>
#include <ctime>
#include <filesystem>
#include <random>

namespace halfcup::desk {

namespace {

std::string sentenceFor(const store::BackupError& error) {
    using Kind = store::BackupError::Kind;
    switch (error.kind()) {
    case Kind::NotThere:
        return "there is no such file.";
    case Kind::NotAFile:
        return "it is no file.";
    case Kind::NotAllowed:
        return "there is no permission to read it.";
    case Kind::Empty:
        return "it is empty.";
    case Kind::NotOurs:
        return "it is neither a backup nor a database of Halfcup.";
    case Kind::Cut:
        return "its end is missing (" + std::string(error.what()) + "). Copy it again.";
    case Kind::Damaged:
        return "it is damaged: " + std::string(error.what()) + ".";
    case Kind::Newer:
        return "it was written by a newer Halfcup.";
    case Kind::SameFile:
        break;
    }
    return "it is the database itself.";
}

std::string sentenceFor(const store::StoreError& error) {
    using Kind = store::StoreError::Kind;
    switch (error.kind()) {
    case Kind::FolderMissing:
        return "the folder is not there.";
    case Kind::NotAllowed:
        return "there is no permission to write it.";
    case Kind::NotOurs:
        return "there is a file of another program in its place.";
    case Kind::DiskFull:
        return "the disk is full.";
    case Kind::Busy:
        return "another program has the database open. Close it first.";
    default:
        return error.what() + std::string(".");
    }
}

/// Runs work and lets nothing out but a sentence about the file.
template <typename Work>
auto told(const std::string& file, const std::string& failed, Work&& work) {
    try {
        return work();
    } catch (const store::BackupError& error) {
        throw std::runtime_error(shown(file) + " " + failed + ": " + sentenceFor(error));
    } catch (const store::StoreError& error) {
        throw std::runtime_error(shown(file) + " " + failed + ": " + sentenceFor(error));
    }
}

records::Moment now() {
    const std::time_t seconds = std::time(nullptr);
    std::tm local{};
    localtime_r(&seconds, &local);
    return {std::int64_t{seconds} * 1000, static_cast<int>(local.tm_gmtoff / 60)};
}

std::string summary(const store::BackupContents& contents) {
    return std::to_string(contents.yards) + " yards, " + std::to_string(contents.colonies) + " colonies, " +
           std::to_string(contents.washes) + " finished washes, " + std::to_string(contents.treatments) +
           " treatments";
}

void needTwo(const Arguments& arguments, const char* which) {
    if (arguments.words.size() < 2)
        throw UsageError(which);
}

int runBackup(const Arguments& arguments, Streams& streams) {
    needTwo(arguments, "Which database, and into which file?");
    const std::string& path = arguments.words[0];
    const std::string& place = arguments.words[1];
    std::error_code error;
    if (std::filesystem::exists(std::filesystem::symlink_status(place, error)))
        throw std::runtime_error("There is something called " + shown(place) +
                                 " already. Give the backup another name.");
    const auto store = openStore(path);
    const records::Moment made = now();
    const store::BackupContents contents =
        told(place, "was not written", [&] { return store::makeBackup(path, place, made); });
    store->inOneTransaction([&] {
        store->setSetting(store::lastBackupAtSetting, made.utcMs);
        store->setSetting(store::lastBackupWashesSetting, contents.washes);
        store->setSetting(store::lastBackupPlaceSetting, std::filesystem::absolute(place).string());
    });
    streams.out << shown(place) << " holds " << summary(contents) << ", and the exact places of the yards.\n";
    return 0;
}

int runRestore(const Arguments& arguments, Streams& streams) {
    needTwo(arguments, "Which backup, and in the place of which database?");
    const std::string& backup = arguments.words[0];
    const std::string& path = arguments.words[1];
    std::random_device chance;
    const store::StoreHost host{[] { return now().utcMs; },
                                [&] { return (std::uint64_t{chance()} << 32) | chance(); }};
    const store::Restored restored =
        told(backup, "was not put back", [&] { return store::restoreBackup(backup, path, host); });
    streams.out << shown(path) << " holds " << summary(restored.contents) << " now.\n";
    if (!restored.keptAside.empty())
        streams.out << "What was there before is kept as " << restored.keptAside << "\n";
    return 0;
}

int runRescue(const Arguments& arguments, Streams& streams) {
    if (arguments.words.empty())
        throw UsageError("Which damaged database?");
    const std::string& path = arguments.words[0];
    std::random_device chance;
    const store::StoreHost host{[] { return now().utcMs; },
                                [&] { return (std::uint64_t{chance()} << 32) | chance(); }};
    const store::Rescued rescued = told(path, "was left as it is", [&] {
        return store::rescue(path, host, {"Yard whose name is lost", "?"});
    });
    streams.out << shown(path) << " holds what could be read: " << summary(rescued.contents) << ".\n"
                << rescued.values << " values and acts of counting were read, " << rescued.lost
                << " are known to be lost, " << rescued.badPages << " pages could not be read in full.\n";
    if (rescued.standIns > 0)
        streams.out << rescued.standIns
                    << " yards or colonies have lost their own entry and stand under another name.\n";
    if (rescued.waiting > 0)
        streams.out
            << "Of " << rescued.waiting
            << " records too little was read to show them; a merge with another phone may complete them.\n";
    streams.out << "The damaged file is kept as " << rescued.keptAside << "\n";
    return 0;
}

int runCheck(const Arguments& arguments, Streams& streams) {
    if (arguments.words.empty())
        throw UsageError("Which database or backup?");
    const std::string& path = arguments.words[0];
    const store::BackupContents contents = told(path, "does not pass", [&] { return store::lookInto(path); });
    CsvLine line;
    const auto say = [&](const std::string& what, const std::string& value) {
        line.clear();
        line.add(what).add(value);
        streams.out << line.text() << "\r\n";
    };
    say("what", "value");
    say("kind", contents.isBackup ? "backup" : "database");
    say("made_at", contents.madeAt ? records::toRfc3339(*contents.madeAt) : std::string());
    say("schema", std::to_string(contents.schema));
    say("newest_wash", contents.newestWash ? records::toIso(*contents.newestWash) : std::string());
    for (const auto& [table, rows] : contents.rows)
        say("rows " + table, std::to_string(rows));
    say("sha256", contents.sha256);
    return 0;
}

} // namespace

Verb backupVerb() {
    return {.name = "backup",
            .summary = "Writes all that a database holds into one checked file.",
            .usage = "DATABASE FILE",
            .help =
                "FILE is a SQLite database with a note of what is in it and a hash over every row; call it\n"
                "something.halfcup-backup. It holds exact positions. A file that is there is not replaced.\n",
            .mostWords = 2,
            .run = runBackup};
}

Verb restoreVerb() {
    return {.name = "restore",
            .summary = "Puts a backup in the place of a database, which is kept aside.",
            .usage = "BACKUP DATABASE",
            .help = "The backup is checked first. The database that is there is kept beside it as\n"
                    "DATABASE.before-restore- and the time. A plain database can be put back too.\n",
            .mostWords = 2,
            .run = runRestore};
}

Verb rescueVerb() {
    return {.name = "rescue",
            .summary = "Reads what can be read of a damaged database into a new one in its place.",
            .usage = "DATABASE",
            .help =
                "The damaged file is kept beside it as DATABASE.damaged- and the time. Close the app first.\n"
                "Exit code 1, and nothing changed, where no record can be read.\n",
            .mostWords = 1,
            .run = runRescue};
}

Verb checkVerb() {
    return {.name = "check",
            .summary = "Checks a database or a backup, and says what is in it.",
            .usage = "FILE",
            .help = "Integrity, foreign keys and, in a backup, every row against its hash. Columns out: "
                    "what, value.\n"
                    "Exit code 1 where anything is wrong. Nothing is changed.\n",
            .mostWords = 1,
            .run = runCheck};
}

} // namespace halfcup::desk
