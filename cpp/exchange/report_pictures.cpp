// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Which pictures are in a report. They show what was: no load ahead, nothing due.
#include "exchange/report_parts.h"
#include "exchange/report_words.h"
#include "pictures/comb.h"
#include "pictures/load_history.h"
#include "pictures/season_strip_of_records.h"
#include "pictures/yard_comparison_of_records.h"
#include "pictures/yard_plan.h"
#include "records/judgement.h"

#include <QCoreApplication>

namespace halfcup::exchange::report {

namespace {

constexpr double largeChartMm = 88;
constexpr double smallChartMm = 42;    // three rows of two on a page
constexpr double combMm = 40;          // wide; readable at that size, also without colours
constexpr std::size_t mostRows = 30;   // of colonies in one picture, so that it fits a page
constexpr std::size_t mostCharts = 40; // of colonies in a report of a yard: ten pages [own choice]

class ReportText {
    Q_DECLARE_TR_FUNCTIONS(Report)
};

/// A drawing that can be made again for any sheet, its data kept with it.
template <typename Picture, typename Draw>
ReportPicture pictureOf(Picture data, Draw draw) {
    ReportPicture picture;
    picture.legend = pictures::legendOf(data);
    picture.sentence = pictures::sentenceOf(data);
    picture.draw = [data = std::move(data), draw](const pictures::Sheet& sheet) { return draw(data, sheet); };
    return picture;
}

ReportPicture pictureOf(pictures::LoadChart chart, double heightMm) {
    ReportPicture picture =
        pictureOf(std::move(chart), [](const pictures::LoadChart& data, const pictures::Sheet& sheet) {
            return pictures::drawLoadChart(data, sheet);
        });
    picture.heightMm = heightMm;
    return picture;
}

pictures::LoadChart chartOf(const Making& making, const records::RecordId& colonyId) {
    return pictures::loadChartOf(
        {colonyId, making.records.samples, making.records.treatments, making.records.events},
        [&](const std::string& id) { // "formic acid" rather than "Formic acid, pads or strips"
            const handbook::Entry* active = making.handbook.find(id, "active");
            return clean(active && !active->words.empty() ? active->words
                                                          : substanceName(making.handbook, id));
        });
}

records::YardRecords kept(const Making& making, const records::Yard& yard,
                          const std::vector<Latest>& latest) {
    records::YardRecords kept;
    kept.yard = yard;
    for (const Latest& each : latest) {
        kept.colonies.push_back(*each.colony);
        if (each.sample)
            kept.latestWashes.push_back(*each.sample);
    }
    kept.events = making.records.events;
    kept.events.insert(kept.events.end(), making.records.before.begin(), making.records.before.end());
    kept.treatments = making.records.treatments;
    return kept;
}

/// The lines that the newest of these washes was held against; the yard's where there is none.
records::Lines linesOf(const records::YardRecords& kept) {
    const auto newest = std::ranges::max_element(
        kept.latestWashes, {}, [](const records::Sample& sample) { return momentOf(sample).utcMs; });
    return newest == kept.latestWashes.end() ? kept.yard.lines : newest->answer->lines;
}

void addComparison(const Making& making, const records::Yard& yard) {
    const records::YardRecords all = kept(making, yard, latestOf(making, yard.id));
    pictures::YardComparison whole =
        pictures::yardComparisonOf(all, linesOf(all), lastDayOf(making, yard.id));
    if (all.latestWashes.empty())
        return;
    for (pictures::ComparedColony& colony : whole.colonies)
        if (colony.load)
            colony.load->ageDays = 0; // the day itself stands in the table
    std::ranges::stable_sort(whole.colonies, std::greater(), [](const pictures::ComparedColony& colony) {
        return colony.load ? colony.load->middle : -1.0;
    });
    const std::size_t count = whole.colonies.size();
    for (std::size_t from = 0; from < count; from += mostRows) {
        const std::size_t to = std::min(from + mostRows, count);
        pictures::YardComparison part = whole;
        part.colonies.assign(whole.colonies.begin() + static_cast<std::ptrdiff_t>(from),
                             whole.colonies.begin() + static_cast<std::ptrdiff_t>(to));
        ReportPicture picture = pictureOf(std::move(part), pictures::drawYardComparison);
        const QString name = clean(yard.name);
        picture.caption =
            count <= mostRows
                ? ReportText::tr("%1: the last wash of each colony, mites per 100 bees with the 90 % range",
                                 "yard")
                      .arg(name)
                : ReportText::tr("%1: the last wash of each colony, mites per 100 bees with the 90 % range. "
                                 "Colonies %2 to %3 of %4, the highest loads first",
                                 "yard")
                      .arg(name, QString::number(from + 1), QString::number(to), QString::number(count));
        making.blocks.emplace_back(std::move(picture));
    }
}

void addSeason(const Making& making, const records::Yard& yard) {
    const auto season = making.request.seasons.find(yard.id);
    if (season == making.request.seasons.end())
        return;
    const records::YardRecords all = kept(making, yard, latestOf(making, yard.id));
    pictures::SeasonStrip strip =
        pictures::seasonStripOf({&all, 1}, pictures::washDaysOf(making.records.samples), season->second.first,
                                lastDayOf(making, yard.id));
    if (season->second.turnDate)
        strip.turnDates = {*season->second.turnDate};
    ReportPicture picture = pictureOf(std::move(strip), pictures::drawSeasonStrip);
    picture.caption = ReportText::tr("%1: twelve months from %2", "yard, day")
                          .arg(clean(yard.name), day(season->second.first));
    making.blocks.emplace_back(std::move(picture));
}

/// The hives as they stand. That tells no place on earth, but how the yard looks: only where exact positions
/// were asked for.
void addPlan(const Making& making, const records::Yard& yard) {
    if (making.request.detail != PositionDetail::Exact)
        return;
    pictures::YardPlan plan;
    bool placed = false;
    for (const Latest& each : latestOf(making, yard.id)) {
        placed = placed || each.colony->stand;
        plan.hives.push_back({.key = QString::fromStdString(each.colony->id),
                              .label = clean(each.colony->label),
                              .standing = each.sample ? records::graverStanding(*each.sample) : std::nullopt,
                              .stand = each.colony->stand});
    }
    if (!placed)
        return;
    ReportPicture picture = pictureOf(std::move(plan), pictures::drawYardPlan);
    picture.widthMm = 120;
    picture.caption = ReportText::tr("%1: where the hives stand, north up", "yard").arg(clean(yard.name));
    making.blocks.emplace_back(std::move(picture));
}

/// Charts of one yard, with one legend for all of them.
void addCharts(const Making& making, const records::Yard& yard) {
    std::vector<Latest> washed = latestOf(making, yard.id);
    std::erase_if(washed, [](const Latest& each) { return !each.sample; });
    const std::size_t all = washed.size();
    if (all > mostCharts) {
        std::ranges::stable_sort(washed, std::greater(),
                                 [](const Latest& each) { return each.sample->answer->loadQ50; });
        washed.resize(mostCharts);
    }
    if (washed.empty())
        return;
    making.blocks.emplace_back(ReportHeading{ReportText::tr("Load over time, colony by colony")});
    if (all > washed.size())
        making.blocks.emplace_back(ReportParagraph{
            ReportText::tr("Of the %1 colonies that were washed, the %2 with the highest loads at their last "
                           "wash. All washes are in the table.")
                .arg(QString::number(all), QString::number(washed.size())),
            {}});
    ReportPictures charts;
    pictures::LoadChart together; // whatever any of them shows
    for (const Latest& each : washed) {
        pictures::LoadChart chart = chartOf(making, each.colony->id);
        const auto append = [](auto& to, const auto& from) { to.insert(to.end(), from.begin(), from.end()); };
        append(together.washes, chart.washes);
        append(together.lines, chart.lines);
        append(together.treated, chart.treated);
        append(together.happenings, chart.happenings);
        ReportPicture picture = pictureOf(std::move(chart), smallChartMm);
        picture.caption = ReportText::tr("Colony %1").arg(making.colony(each.colony->id, yard.id));
        picture.legend = {};
        charts.pictures.push_back(std::move(picture));
    }
    charts.legend = pictures::legendOf(together);
    making.blocks.emplace_back(std::move(charts));
}

void addColony(const Making& making) {
    const records::RecordId& id = making.request.selection.colonyId;
    ReportPicture chart = pictureOf(chartOf(making, id), largeChartMm);
    making.blocks.emplace_back(ReportHeading{ReportText::tr("Load over time")});
    chart.caption = ReportText::tr("Mites per 100 bees, with the 90 % range of each wash");
    making.blocks.emplace_back(std::move(chart));
    const auto newest = std::ranges::find_if(making.records.samples.rbegin(), making.records.samples.rend(),
                                             [](const auto& sample) { return sample.answer.has_value(); });
    if (newest == making.records.samples.rend())
        return;
    ReportPicture comb = pictureOf(pictures::combOf(*newest->answer), pictures::drawComb);
    comb.widthMm = combMm;
    comb.heightMm = combMm * 2;
    comb.caption = ReportText::tr("The last wash as a comb of a hundred cells, %1").arg(dayOf(*newest));
    comb.sentence =
        ReportText::tr("%n mite(s) found: %1 per 100 bees. %2", "load and range; the comb in words",
                       static_cast<int>(newest->answer->mites))
            .arg(loadAndRange(*newest->answer), comb.sentence);
    making.blocks.emplace_back(std::move(comb));
}

} // namespace

void addPictures(const Making& making) {
    if (making.oneColony())
        return addColony(making);
    if (making.records.yards.empty())
        return;
    making.blocks.emplace_back(ReportHeading{making.manyYards() ? ReportText::tr("The yards in pictures")
                                                                : ReportText::tr("The yard in pictures")});
    for (const records::Yard& yard : making.records.yards)
        addComparison(making, yard);
    if (making.manyYards())
        return;
    const records::Yard& yard = making.records.yards.front();
    addSeason(making, yard);
    addPlan(making, yard);
    addCharts(making, yard);
}

} // namespace halfcup::exchange::report
