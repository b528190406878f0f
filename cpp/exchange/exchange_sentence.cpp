// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "exchange/exchange_sentence.h"

namespace halfcup::exchange {

namespace {

std::string manyOf(std::int64_t number, const char* one, const char* many) {
    return std::to_string(number) + " " + (number == 1 ? one : many);
}

std::string refusal(ExchangeRefusal refusal) {
    switch (refusal) {
    case ExchangeRefusal::NotThere:
        return "There is no such file.";
    case ExchangeRefusal::CannotRead:
        return "The file cannot be read.";
    case ExchangeRefusal::Empty:
        return "The file is empty.";
    case ExchangeRefusal::TooLarge:
        return "The file is larger than " + std::to_string(largestExchangeFile / 1'000'000) +
               " MB: no exchange file is so large.";
    case ExchangeRefusal::NotOurs:
        return "This is no exchange file of Halfcup.";
    case ExchangeRefusal::Newer:
        return "The file was written for a newer Halfcup: this one is too old to read it.";
    case ExchangeRefusal::None:
        break;
    }
    return {};
}

std::string trouble(const DamagedLine& line) {
    switch (line.trouble) {
    case LineTrouble::Damaged:
        return "damaged: it is not as it was written.";
    case LineTrouble::TooLong:
        return "longer than " + std::to_string(longestLine / 1024) + " kB, as no line is.";
    case LineTrouble::TooDeep:
        return "brackets inside brackets, deeper than in any exchange file.";
    case LineTrouble::BadId:
        return "the id of its record is none.";
    case LineTrouble::BadStamp:
        return "a stamp in it is none, or of a time that cannot be.";
    case LineTrouble::BadField:
        return "\"" + line.field + "\" has a name or a value that cannot be.";
    case LineTrouble::BadCount:
        return "an act of counting in it cannot be.";
    case LineTrouble::OtherKind:
        return "its record is known here as one of another kind.";
    case LineTrouble::TooMuch:
        return "it brings more of one record than any has.";
    }
    return {};
}

} // namespace

std::string sentenceFor(const ExchangeReport& report) {
    if (report.refusal != ExchangeRefusal::None)
        return refusal(report.refusal);
    std::string text = manyOf(report.parts, "record read", "records read");
    if (report.isWhole())
        return text + ".";
    if (report.damagedCount > 0)
        text += ", " + manyOf(report.damagedCount, "line", "lines") + " left out";
    text += ".";
    if (report.cut)
        text += " The end of the file is missing.";
    if (report.incomplete)
        text += " Lines are missing from the middle, or are not where they were written.";
    if (report.damagedCount > 0 || report.cut || report.incomplete)
        text += " A good copy of the file completes it.";
    if (report.partlyNewer)
        text += " Some of it is for a newer Halfcup alone and was passed over.";
    return text;
}

std::vector<std::string> damagedLineSentences(const ExchangeReport& report) {
    std::vector<std::string> sentences;
    if (report.refusal != ExchangeRefusal::None)
        return sentences;
    for (const DamagedLine& line : report.damaged)
        sentences.push_back("Line " + std::to_string(line.number) + ": " + trouble(line));
    const std::int64_t more = report.damagedCount - static_cast<std::int64_t>(report.damaged.size());
    if (more > 0)
        sentences.push_back("And " + manyOf(more, "line", "lines") + " more.");
    return sentences;
}

} // namespace halfcup::exchange
