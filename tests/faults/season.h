// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// What a keeper does over a season, as acts that may fail, and what has to be on the disk after each. Read
// with SQLite alone. For the tests of full and failing disks.
#pragma once

#include "store_kit.h"

#include "exchange/safe_file.h"
#include "store/backup.h"

#include <QString>

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace halfcup::faults {

/// All that a database keeps, by names that are there once.
struct Kept {
    std::multiset<std::string> yards;
    std::multiset<std::string> colonies;           // yard/label
    std::map<std::string, std::string> jars;       // label -> state and number of taps
    std::map<std::string, std::string> treatments; // batch -> day of removal, labels of colonies
    int earlierWashes = 0;                         // out of tables
    std::string trouble;                           // what SQLite's checks find; empty: nothing

    bool operator==(const Kept&) const = default;
};

[[nodiscard]] Kept keptIn(const QString& path);
[[nodiscard]] std::string inWords(const Kept& kept);

/// What came of an act.
struct Outcome {
    bool done = false;
    std::optional<store::StoreError::Kind> trouble; // what the sentence would be chosen by
    std::optional<store::BackupError::Kind> backup; // ... or by this
    std::optional<exchange::FileProblem> file;      // ... or by this
    std::string technical;
};

enum class Act {
    Yard,
    Scoop,
    Tap,
    Finish,
    Treat,
    Remove,
    Merge,
    Backup,
    Restore,
    Import,
    Table,
    Out,
    Reopen
};
constexpr int acts = 13;

class Season {
public:
    /// folder: where the phone keeps its files. workshop: another one, on a sound disk, for what the other
    /// phone and the spreadsheet write.
    Season(QString folder, QString workshop);
    ~Season();

    /// Does it; what fails is told, and everything is as before or as after.
    Outcome tryTo(Act act);
    /// Empty, or what is wrong: the disk holds neither what was acknowledged nor, where acts have failed
    /// since, that with one of them whole.
    [[nodiscard]] QString fault();
    /// The same for files that nobody asked for. Not after an act that failed: its pieces may wait for the
    /// next try.
    [[nodiscard]] QString leftovers() const;
    /// Ends the program: the next act starts it again.
    void close();

private:
    void perform(Act act, Kept& after);
    store::Store& open();
    void addYard(Kept& after);
    void scoop(Kept& after);
    void count(Kept& after);
    void finish(Kept& after);
    void treat(Kept& after);
    void removeTreatment(Kept& after);
    void merge(Kept& after);
    void backUp();
    void restore(Kept& after);
    void import(Kept& after);
    void write(const QString& name, const std::function<void(const exchange::ByteSink&)>& content);

    QString m_folder;
    QString m_workshop;
    QString m_path;
    storetest::Host m_host;
    storetest::Host m_otherHost;
    std::unique_ptr<store::Store> m_store;
    Kept m_kept;
    std::vector<Kept> m_refused; // what the acts that failed since would have made of it
    std::optional<records::Sample> m_jar;
    std::optional<records::GivenTreatment> m_treatment;
    std::vector<std::pair<QString, Kept>> m_backups;
    std::set<QString> m_asked; // names of files
    QString m_wrong;           // what an act saw that must not be
    int m_number = 0;
    int m_backupsMade = 0;
};

} // namespace halfcup::faults
