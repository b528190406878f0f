// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/load_chart_controller.h"

#include "touch/story.h"
#include "touch/words.h"

#include <algorithm>

namespace halfcup::touch {

namespace {

constexpr int seasonDays = 400; // [convention] the last season, and the same weeks of the one before

} // namespace

LoadChartController::LoadChartController(const Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

PictureLegend LoadChartController::legend() const {
    return {pictures::legendOf(m_picture.chart)};
}

QString LoadChartController::spoken() const {
    return pictures::sentenceOf(m_picture.chart);
}

QString LoadChartController::chosenLine() const {
    if (m_chosen >= m_picture.chart.washes.size())
        return {};
    const pictures::LoadWash& wash = m_picture.chart.washes[m_chosen];
    const QString day = story::day(m_services, wash.day);
    const QString method = story::capitalised(m_methods.value(wash.key));
    if (wash.noneFound)
        return tr("%1: none found, at most %2 per 100. %3.", "day, load, method")
            .arg(day, words::load(wash.high), method);
    return tr("%1: %2 per 100, between %3 and %4. %5.", "day, load, lower end, upper end, method")
        .arg(day, words::load(wash.middle), words::load(wash.low), words::load(wash.high), method);
}

void LoadChartController::show(const pictures::LoadChart& chart, const records::RecordId& colonyId,
                               std::span<const records::Sample> samples) {
    if (colonyId != m_colonyId) {
        m_picture.chosen.clear();
        m_showsAll = false;
    }
    m_colonyId = colonyId;
    m_whole = chart;
    std::ranges::stable_sort(m_whole.washes, {}, &pictures::LoadWash::day);
    m_methods.clear();
    for (const records::Sample& sample : samples)
        m_methods.insert(QString::fromStdString(sample.id),
                         words::method(QString::fromStdString(sample.method)));
    put();
}

void LoadChartController::put() {
    m_picture.chart = m_whole;
    std::vector<pictures::LoadWash>& washes = m_picture.chart.washes;
    const auto isOld = [&](const pictures::LoadWash& wash) {
        return records::daysBetween(wash.day, m_whole.washes.back().day) > seasonDays;
    };
    m_hasYears = std::ranges::any_of(m_whole.washes, isOld);
    if (!m_showsAll)
        std::erase_if(washes, isOld);
    const auto kept = std::ranges::find(washes, m_picture.chosen, &pictures::LoadWash::key);
    if (kept != washes.end() || washes.empty())
        m_chosen = static_cast<std::size_t>(kept - washes.begin());
    else
        m_chosen = washes.size() - 1;
    m_picture.chosen = washes.empty() ? QString() : washes[m_chosen].key;
    emit changed();
}

void LoadChartController::chooseAt(std::size_t place) {
    m_chosen = place;
    m_picture.chosen = m_picture.chart.washes[place].key;
    emit changed();
}

void LoadChartController::choose(const QString& key) {
    const auto& washes = m_picture.chart.washes;
    const auto found = std::ranges::find(washes, key, &pictures::LoadWash::key);
    if (found != washes.end() && key != m_picture.chosen)
        chooseAt(static_cast<std::size_t>(found - washes.begin()));
}

void LoadChartController::earlier() {
    if (canGoEarlier())
        chooseAt(m_chosen - 1);
}

void LoadChartController::later() {
    if (canGoLater())
        chooseAt(m_chosen + 1);
}

void LoadChartController::setShowsAll(bool all) {
    if (m_showsAll == all)
        return;
    m_showsAll = all;
    put();
}

} // namespace halfcup::touch
