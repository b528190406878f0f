// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

// What a verb of the program without a screen is, and how it is run.
//
// Exit codes: 0 all answered, 1 something in the input could not be used (said in a sentence), 2 called
// wrongly. To add a verb: a function that returns a Verb, and a line in verbs().
#include <functional>
#include <istream>
#include <map>
#include <ostream>
#include <stdexcept>
#include <string>
#include <vector>

namespace halfcup::desk {

class UsageError : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

struct Streams {
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
};

struct Option {
    std::string name; // "--line"
    std::string byDefault;
    std::string meaning; // for --help
    bool flag = false;   // takes no value; given or not: Arguments::has()
};

// What stood on the command line behind the verb.
struct Arguments {
    std::map<std::string, std::string> options; // defaults filled in
    std::vector<std::string> words;             // what is no option

    bool has(const std::string& flag) const { return !options.at(flag).empty(); }
    // The option as a number; throws UsageError with a sentence.
    double number(const std::string& option, double low, double high, bool infinityAllowed = false,
                  bool lowIncluded = true) const;
};

struct Verb {
    std::string name;
    std::string summary; // one line, for the list of verbs
    std::string usage;   // what follows the verb, e.g. "[OPTIONS] [FILE]"
    std::string help;    // everything else --help has to say
    std::vector<Option> options = {};
    std::size_t mostWords = 1; // words taken besides options
    std::function<int(const Arguments&, Streams&)> run = {};
};

// All verbs, in the order in which --help lists them.
const std::vector<Verb>& verbs();

// Splits a command line; throws UsageError.
Arguments readArguments(const Verb& verb, const std::vector<std::string>& words);

// The whole program: words[0] is the verb. Never throws.
int runProgram(const std::vector<std::string>& words, Streams& streams);

} // namespace halfcup::desk
