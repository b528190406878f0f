// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "mites/season_model.h"

#include "mites/checks.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace halfcup::mites {

namespace {

constexpr double kYearDays = 365;
constexpr int kMostDays = 3660;

// Mothers in cells by the day they entered; the oldest leaves.
class Cells {
public:
    explicit Cells(int days)
        : m_entered(static_cast<std::size_t>(days), 0.0) {}
    // Those that entered `days` ago leave, the new ones take their place.
    double exchange(double entering) {
        const double leaving = m_entered[m_next];
        m_entered[m_next] = entering;
        m_next = (m_next + 1) % m_entered.size();
        return leaving;
    }
    void scale(double factor) {
        for (double& mites : m_entered)
            mites *= factor;
    }
    double sum() const { return std::accumulate(m_entered.begin(), m_entered.end(), 0.0); }

private:
    std::vector<double> m_entered;
    std::size_t m_next = 0;
};

struct Colony {
    double onBees = 1;
    Cells worker{kCappedWorkerDays};
    Cells drone{kCappedDroneDays};

    double total() const { return onBees + worker.sum() + drone.sum(); }
    void scale(double factor) {
        onBees *= factor;
        worker.scale(factor);
        drone.scale(factor);
    }
    // Steps 1 to 3.
    void breed(const ColonyDay& day, double band) {
        const double grams = kBeeGrams * day.adultBees;
        const double inWorker = kInvasionWorker * (day.workerCells / kCappedWorkerDays) / grams;
        const double inDrone = kInvasionDrone * (day.droneCells / kCappedDroneDays) / grams;
        const double rate = inWorker + inDrone;
        const double entering = rate > 0 ? onBees * -std::expm1(-rate) : 0;
        const double enteringWorker = rate > 0 ? entering * inWorker / rate : 0;
        const double death = day.workerCells > 0 ? kMiteDeathBrood : kMiteDeathNoBrood;
        onBees = (onBees - entering) * (1 - death) + band * kLeavingWorker * worker.exchange(enteringWorker) +
                 band * kLeavingDrone * drone.exchange(entering - enteringWorker);
    }
};

void checkCourse(const ColonyCourse& course) {
    for (std::size_t i = 0; i < course.adultBees.size(); ++i) {
        require(course.adultBees[i] > 0 && course.adultBees[i] <= 1e6,
                "The bees of a month have to be above zero.");
        require(course.workerCells[i] >= 0 && course.workerCells[i] <= 1e6 && course.droneCells[i] >= 0 &&
                    course.droneCells[i] <= 1e6,
                "The capped cells of a month have to be zero or more.");
    }
    require(std::isfinite(course.shiftDays), "The shift of the season has to be a number of days.");
}

void checkRun(const SeasonRun& run) {
    checkCourse(run.course);
    require(run.load >= 0 && run.load <= 1000, "The load has to be between 0 and 1000 per 100 bees.");
    require(run.days >= 0 && run.days <= kMostDays, "The outlook has to be between 0 and 3660 days.");
    require(std::abs(run.startDay) <= 1000000, "The day of the wash is not a day.");
    for (const SeasonTreatment& treatment : run.treatments) {
        require(treatment.efficacy >= 0 && treatment.efficacy < 1,
                "An efficacy has to be 0 or more and below 1.");
        require(treatment.days >= 1 && treatment.days <= kMostDays,
                "A treatment has to last at least one day.");
    }
    for (const MitesCarriedIn& carried : run.carriedIn) {
        require(carried.perDay >= 0 && carried.perDay <= 1e6,
                "Mites carried in have to be zero or more a day.");
        require(carried.lastDay >= carried.firstDay, "Mites carried in have to end after they begin.");
    }
}

double interpolate(const std::array<double, 12>& anchors, double day) {
    day = std::fmod(day, kYearDays);
    if (day < kSeasonMidMonth.front())
        day += kYearDays;
    for (std::size_t i = 0; i < anchors.size(); ++i) {
        const std::size_t next = (i + 1) % anchors.size();
        const double from = kSeasonMidMonth[i];
        const double to = kSeasonMidMonth[next] + (next == 0 ? kYearDays : 0);
        if (day <= to)
            return anchors[i] + (anchors[next] - anchors[i]) * (day - from) / (to - from);
    }
    return anchors.front();
}

} // namespace

ColonyDay colonyOn(const ColonyCourse& course, double dayOfYear) {
    require(std::isfinite(dayOfYear), "The day of the year has to be a number.");
    const double shifted = dayOfYear - course.shiftDays;
    const double day = shifted - kYearDays * std::floor(shifted / kYearDays);
    return {interpolate(course.adultBees, day), interpolate(course.workerCells, day),
            interpolate(course.droneCells, day)};
}

double growthBandFactor(GrowthBand band) {
    return band == GrowthBand::Low ? kLowBand : band == GrowthBand::High ? kHighBand : 1.0;
}

std::vector<SeasonDay> runSeason(const SeasonRun& run) {
    checkRun(run);
    const double band = growthBandFactor(run.band);
    Colony colony;
    for (int day = run.startDay - kSettlingDays; day < run.startDay; ++day)
        colony.breed(colonyOn(run.course, day), band);
    ColonyDay today = colonyOn(run.course, run.startDay);
    colony.scale(run.load / 100 * today.adultBees / colony.onBees);

    std::vector<SeasonDay> days;
    days.reserve(static_cast<std::size_t>(run.days) + 1);
    for (int day = run.startDay;; ++day) {
        today = colonyOn(run.course, day);
        const double total = colony.total();
        days.push_back({day, 100 * colony.onBees / today.adultBees, colony.onBees, total,
                        total > 0 ? colony.onBees / total : 1});
        if (day - run.startDay == run.days)
            return days;
        colony.breed(today, band);
        for (const SeasonTreatment& treatment : run.treatments) {
            if (day < treatment.firstDay || day >= treatment.firstDay + treatment.days)
                continue;
            const double survive = std::pow(1 - treatment.efficacy, 1.0 / treatment.days);
            if (treatment.reach == TreatmentReach::Whole)
                colony.scale(survive);
            else
                colony.onBees *= survive;
        }
        for (const MitesCarriedIn& carried : run.carriedIn)
            if (day >= carried.firstDay && day <= carried.lastDay)
                colony.onBees += carried.perDay;
    }
}

SeasonOutlook seasonOutlook(SeasonRun run, double loadLow, double loadBase, double loadHigh) {
    require(loadLow <= loadBase && loadBase <= loadHigh,
            "The range of the load has to run from its lower to its upper end.");
    const auto with = [&run](double load, GrowthBand band) {
        run.load = load;
        run.band = band;
        return runSeason(run);
    };
    return {with(loadLow, GrowthBand::Low), with(loadBase, GrowthBand::Base),
            with(loadHigh, GrowthBand::High)};
}

double steadyShareOnBees(double adultBees, double workerCells, double droneCells, GrowthBand band) {
    require(adultBees > 0 && adultBees <= 1e6, "The number of bees has to be above zero.");
    require(workerCells >= 0 && workerCells <= 1e6 && droneCells >= 0 && droneCells <= 1e6,
            "The capped cells have to be zero or more.");
    const ColonyDay same{adultBees, workerCells, droneCells};
    const double factor = growthBandFactor(band);
    Colony colony;
    double share = 1;
    for (int day = 0; day < kMostDays; ++day) {
        colony.breed(same, factor);
        const double total = colony.total();
        const double now = colony.onBees / total;
        colony.scale(1 / total); // only the shares matter; keeps the numbers in range
        if (day > 10 * kCappedDroneDays && std::abs(now - share) < 1e-12)
            return now;
        share = now;
    }
    return share;
}

std::vector<double> untreatedLoadGrowth(const ColonyCourse& course, GrowthBand band) {
    // Second year of an untreated run, so that the start is forgotten; r of day d from the step d to d + 1.
    SeasonRun run;
    run.startDay = 1;
    run.load = 1e-6;
    run.days = 2 * static_cast<int>(kYearDays) + 1;
    run.band = band;
    run.course = course;
    const std::vector<SeasonDay> days = runSeason(run);
    std::vector<double> growth;
    for (std::size_t i = static_cast<std::size_t>(kYearDays); i + 1 < days.size() && growth.size() < 365; ++i)
        growth.push_back(std::log(days[i + 1].load / days[i].load));
    return growth;
}

std::function<double(double)> loadDrift(const ColonyCourse& course, GrowthBand band) {
    const std::vector<double> growth = untreatedLoadGrowth(course, band);
    std::vector<double> sum(growth.size() + 1, 0.0);
    for (std::size_t i = 0; i < growth.size(); ++i)
        sum[i + 1] = sum[i] + growth[i];
    return [sum](double day) {
        const double fromNewYear = day - 1;
        const double years = std::floor(fromNewYear / kYearDays);
        const double within = fromNewYear - years * kYearDays;
        const auto i = std::min(static_cast<std::size_t>(within), sum.size() - 2);
        const double part = within - static_cast<double>(i);
        return years * sum.back() + sum[i] + part * (sum[i + 1] - sum[i]);
    };
}

} // namespace halfcup::mites
