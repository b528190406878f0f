// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/exchange_reader.h"
#include "exchange/safe_file.h"

#include <QString>

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// The exchange folder: each phone adds to a file of its own and reads the files of all others; something
/// else, any synchroniser of folders, carries them from phone to phone. No two phones ever write one file, so
/// a synchroniser has nothing to decide.
namespace halfcup::exchange {

/// What a phone remembers of a folder between two looks; kept as text among its settings. Belongs to one
/// folder and one phone: for another of either, begin with an empty one.
struct FolderState {
    struct Other {
        std::int64_t done = 0; // bytes from the start that were complete and were taken
        std::int64_t size = 0; // as it was at the last look
        std::int64_t modifiedMs = 0;
        bool rest = false; // what stands behind `done` was taken too, though it is damaged
    };
    std::string folder;
    std::string device;
    std::map<std::string, Other> others; // by file name
    std::int64_t ownSize = 0;            // of the phone's own file, as this phone left it
    std::string ownStamp;                // how far it goes; see store::Outgoing::Mark
    std::int64_t merge = 0;

    [[nodiscard]] std::string toText() const;
    /// An empty state where the text is none, or of another folder or phone.
    static FolderState from(const std::string& text, const std::string& folder, const std::string& device);
};

/// A file of another phone with something to take.
struct Arrival {
    std::string name;
    std::int64_t from = 0;
    std::int64_t until = 0;
    FolderState::Other then; // what to remember of it once this is taken
};

enum class FolderTrouble { None, NotThere, CannotRead };

class ExchangeFolder {
public:
    ExchangeFolder(QString path, std::string device);

    [[nodiscard]] FolderTrouble trouble() const;
    /// "halfcup-<device>.halfcup".
    [[nodiscard]] QString ownFile() const;

    /// What has come since. A file that is not complete is still on its way: its complete sections are taken,
    /// the rest is waited for. Only where it lies there unchanged since the look before, and for
    /// patienceMs, is it taken as a damaged file is: each intact line. waiting: the names of files on their
    /// way. A file that vanished is not mentioned: what it brought is here.
    [[nodiscard]] std::vector<Arrival> look(FolderState& state, std::int64_t nowMs,
                                            std::vector<std::string>& waiting) const;
    [[nodiscard]] ExchangeReport read(const Arrival& arrival, const ExchangeTaker& taker) const;

    /// Whether the phone's own file is as it was left; else it has to be written anew.
    [[nodiscard]] bool ownFileIsAsLeft(const FolderState& state) const;
    /// Adds to the own file and brings it to the disk. After an error it is as before.
    [[nodiscard]] std::optional<FileError> append(FolderState& state,
                                                  const std::function<void(const ByteSink&)>& content) const;
    /// Writes it anew, whole or not at all.
    [[nodiscard]] std::optional<FileError>
    writeAnew(FolderState& state, const std::function<void(const ByteSink&)>& content) const;

    static constexpr std::int64_t patienceMs = 60'000; // [convention] a phone's file is copied long before

private:
    QString m_path;
    std::string m_device;
};

} // namespace halfcup::exchange
