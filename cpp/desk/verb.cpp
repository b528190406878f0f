// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "desk/verb.h"

#include "desk/calculators.h"
#include "desk/csv_line.h"
#include "desk/keeper_verbs.h"
#include "desk/table.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace halfcup::desk {

namespace {

constexpr int kDone = 0, kBadInput = 1, kBadUsage = 2;

void writeOverview(std::ostream& out) {
    out << "halfcup-desk: Halfcup's arithmetic without a screen.\n\n"
           "usage: halfcup-desk VERB [OPTIONS] [FILE]\n\n";
    for (const Verb& verb : verbs())
        out << "  " << verb.name << std::string(verb.name.size() < 10 ? 10 - verb.name.size() : 1, ' ')
            << verb.summary << "\n";
    out << "\nhalfcup-desk VERB --help says more. Exit code 1: some of the input could not be used; 2: "
           "called wrongly.\n";
}

void writeHelp(const Verb& verb, std::ostream& out) {
    out << "usage: halfcup-desk " << verb.name << " " << verb.usage << "\n\n"
        << verb.summary << "\n\n"
        << verb.help;
    if (!verb.options.empty()) {
        out << "\nOptions:\n";
        for (const Option& option : verb.options)
            out << "  " << option.name << (option.byDefault.empty() ? "" : " ") << option.byDefault
                << "\n      " << option.meaning << "\n";
    }
}

} // namespace

double Arguments::number(const std::string& option, double low, double high, bool infinityAllowed,
                         bool lowIncluded) const {
    const std::string& text = options.at(option);
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || std::isnan(value))
        throw UsageError(option + " " + shown(text) + " is not a number.");
    if (infinityAllowed && std::isinf(value) && value > 0)
        return value;
    if (!(value >= low) || (!lowIncluded && value == low) || !(value <= high))
        throw UsageError(option + " " + shown(text) + " has to be " + (lowIncluded ? "at least " : "above ") +
                         numberText(low) + " and at most " + numberText(high) + ".");
    return value;
}

const std::vector<Verb>& verbs() {
    static const std::vector<Verb> all{assessVerb(), outlookVerb(), efficacyVerb(), yardVerb(),
                                       seasonVerb(), dueVerb(),     choicesVerb(),  demoVerb(),
                                       exportVerb(), importVerb(),  mergeVerb(),    folderVerb(),
                                       backupVerb(), restoreVerb(), rescueVerb(),   checkVerb()};
    return all;
}

Arguments readArguments(const Verb& verb, const std::vector<std::string>& words) {
    Arguments arguments;
    for (const Option& option : verb.options)
        arguments.options[option.name] = option.byDefault;
    bool onlyWords = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string& word = words[i];
        if (onlyWords || word == "-" || !word.starts_with("-")) {
            arguments.words.push_back(word);
            continue;
        }
        if (word == "--") {
            onlyWords = true;
            continue;
        }
        const auto equals = word.find('=');
        const std::string name = word.substr(0, equals);
        if (!arguments.options.contains(name))
            throw UsageError("There is no option " + shown(name) + ".");
        const bool flag = std::ranges::any_of(
            verb.options, [&](const Option& option) { return option.flag && option.name == name; });
        if (flag && equals != std::string::npos)
            throw UsageError(name + " takes no value.");
        if (flag)
            arguments.options[name] = "yes";
        else if (equals != std::string::npos)
            arguments.options[name] = word.substr(equals + 1);
        else if (i + 1 < words.size())
            arguments.options[name] = words[++i];
        else
            throw UsageError(name + " needs a value behind it.");
    }
    if (arguments.words.size() > verb.mostWords)
        throw UsageError(shown(arguments.words[verb.mostWords]) + " is one word too many.");
    return arguments;
}

int runProgram(const std::vector<std::string>& words, Streams& streams) {
    if (words.empty()) {
        writeOverview(streams.err);
        return kBadUsage;
    }
    if (words[0] == "--help" || words[0] == "-h" || words[0] == "help") {
        writeOverview(streams.out);
        return kDone;
    }
    const auto found =
        std::find_if(verbs().begin(), verbs().end(), [&](const Verb& v) { return v.name == words[0]; });
    const std::string called = "halfcup-desk" + (found == verbs().end() ? "" : " " + found->name);
    try {
        if (found == verbs().end())
            throw UsageError("There is no verb " + shown(words[0]) + ".");
        const std::vector<std::string> rest(words.begin() + 1, words.end());
        if (std::find(rest.begin(), rest.end(), "--help") != rest.end()) {
            writeHelp(*found, streams.out);
            return kDone;
        }
        const int code = found->run(readArguments(*found, rest), streams);
        if (!streams.out.flush()) {
            streams.err << called << ": the answer could not be written out in full.\n";
            return kBadInput;
        }
        return code;
    } catch (const UsageError& error) {
        streams.err << called << ": " << error.what() << " " << called << " --help says what there is.\n";
        return kBadUsage;
    } catch (const std::exception& error) {
        streams.err << called << ": " << error.what() << "\n";
        return kBadInput;
    }
}

} // namespace halfcup::desk
