// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "records/judgement.h"

#include "mites/wash_load.h"
#include "records/method.h"

#include <stdexcept>

namespace halfcup::records {

namespace {

std::optional<mites::Standing> against(const Sample& sample, double line, double chanceOver) {
    const Answer& answer = *sample.answer;
    try {
        return mites::standing(answer.loadQ50, chanceOver, answer.loadQ05, answer.loadQ95, line,
                               sample.scoop.beesMean);
    } catch (const std::domain_error&) {
        return std::nullopt; // figures no wash can have: kept as they are, but nothing is said of them
    }
}

int gravity(mites::Standing standing) {
    switch (standing) {
    case mites::Standing::Over:
        return 3;
    case mites::Standing::Close:
        return 2;
    case mites::Standing::CannotTell:
        return 1;
    case mites::Standing::Under:
        break;
    }
    return 0;
}

} // namespace

Answer answerOf(const Sample& sample, std::int64_t mites, std::optional<std::int64_t> mitesSecondRinse,
                const Lines& lines) {
    const Method* method = findMethod(sample.method);
    if (!method)
        throw std::domain_error("This version does not know the method \"" + sample.method + "\".");
    mites::Wash wash;
    wash.mites = mites;
    wash.beesMean = sample.scoop.beesMean;
    wash.beesCv = sample.scoop.beesCv;
    wash.recovery = method->recovery;
    wash.recoverySd = method->recoverySd;
    const mites::LoadPosterior posterior(wash);
    const mites::LoadEstimate estimate = posterior.estimate();

    Answer answer;
    answer.mites = mites;
    answer.mitesSecondRinse = mitesSecondRinse;
    answer.loadQ05 = estimate.q05;
    answer.loadQ50 = estimate.q50;
    answer.loadQ95 = estimate.q95;
    answer.lines = lines;
    answer.chanceOver = posterior.chanceOver(lines.treat);
    if (lines.own)
        answer.chanceOverOwn = posterior.chanceOver(*lines.own);
    answer.recovery = wash.recovery;
    answer.recoverySd = wash.recoverySd;
    answer.jarShape = wash.jarShape;
    return answer;
}

std::optional<mites::Standing> standingAgainstTreatLine(const Sample& sample) {
    if (!sample.answer)
        return std::nullopt;
    return against(sample, sample.answer->lines.treat, sample.answer->chanceOver);
}

std::optional<mites::Standing> standingAgainstOwnLine(const Sample& sample) {
    if (!sample.answer || !sample.answer->lines.own || !sample.answer->chanceOverOwn)
        return std::nullopt;
    return against(sample, *sample.answer->lines.own, *sample.answer->chanceOverOwn);
}

std::optional<mites::Standing> graverStanding(const Sample& sample) {
    const auto treat = standingAgainstTreatLine(sample);
    const auto own = standingAgainstOwnLine(sample);
    if (!treat || !own)
        return treat ? treat : own;
    return gravity(*own) > gravity(*treat) ? own : treat;
}

} // namespace halfcup::records
