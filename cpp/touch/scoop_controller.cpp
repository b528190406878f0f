// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/scoop_controller.h"

#include "mites/scoop.h"
#include "records/typed_input.h"
#include "touch/words.h"

#include <QLocale>

#include <array>
#include <cmath>

namespace halfcup::touch {

namespace {

struct Measure {
    const char* key;
    double millilitres;
};
// What keepers scoop with: the trade's half cup, a metric measure, a third and two thirds of a cup.
constexpr std::array measures{Measure{"half-cup", records::halfCupMl}, Measure{"100-ml", 100.0},
                              Measure{"third-cup", records::halfCupMl * 2 / 3}, Measure{"150-ml", 150.0}};

} // namespace

records::BookDensity bookDensity(const handbook::Handbook& handbook) {
    records::BookDensity book;
    book.settledPerMl = handbook.figureAt("bees-per-ml-settled");
    return book;
}

ScoopController::ScoopController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString ScoopController::measure() const {
    return words::measure(m_scoop.volumeMl);
}

QString ScoopController::packing() const {
    return isSettled() ? tr("rapped to settle") : tr("not rapped");
}

QString ScoopController::beesLine() const {
    const QLocale locale;
    const double logSd = std::sqrt(std::log1p(m_scoop.beesCv * m_scoop.beesCv));
    const double median = m_scoop.beesMean * std::exp(-logSd * logSd / 2);
    const double reach = 1.6448536 * logSd; // 90 % of a normal distribution
    return tr("about %1 bees, %2 to %3")
        .arg(locale.toString(median, 'f', 0), locale.toString(median * std::exp(-reach), 'f', 0),
             locale.toString(median * std::exp(reach), 'f', 0));
}

QString ScoopController::sourceLine() const {
    switch (m_scoop.source) {
    case records::Scoop::BeesSource::Typed:
        return tr("your own figure for this jar");
    case records::Scoop::BeesSource::Counted:
        return tr("counted bee by bee");
    case records::Scoop::BeesSource::OwnScoops:
        return tr("from your %n counted scoop(s)", nullptr, m_ownScoops);
    case records::Scoop::BeesSource::Book:
        break;
    }
    return tr("by the book");
}

void ScoopController::setValue(const records::Scoop& scoop) {
    m_scoop = scoop;
    m_problem.clear();
    if (m_scoop.beesMean <= 0)
        estimate();
    else if (m_scoop.source == records::Scoop::BeesSource::OwnScoops)
        m_services.kept([&] {
            m_ownScoops =
                records::scoopsAlike(m_services.store.scoopCounts(), m_scoop.volumeMl, m_scoop.packing);
        });
    refreshChoices();
    emit changed();
}

void ScoopController::useUsual() {
    setValue(m_services.settings.usualScoop());
}

void ScoopController::estimate() {
    const records::BookDensity book = bookDensity(m_services.handbook());
    std::optional<mites::BeesInScoop> own;
    m_services.kept([&] {
        const auto counts = m_services.store.scoopCounts();
        own = records::ownScoops(counts, m_scoop.volumeMl, m_scoop.packing, book);
    });
    const mites::BeesInScoop bees =
        own ? *own : mites::scoopFromVolume(m_scoop.volumeMl, book.of(m_scoop.packing));
    m_scoop.beesMean = bees.mean;
    m_scoop.beesCv = bees.cv;
    m_scoop.source = own ? records::Scoop::BeesSource::OwnScoops : records::Scoop::BeesSource::Book;
    m_ownScoops = bees.countedScoops;
}

void ScoopController::refreshChoices() {
    QList<ChoiceListModel::Entry> entries;
    for (const Measure& each : measures) {
        ChoiceListModel::Entry entry;
        entry.key = QLatin1String(each.key);
        entry.title = words::measure(each.millilitres);
        entry.chosen = std::abs(m_scoop.volumeMl - each.millilitres) < 0.5;
        entries.append(entry);
    }
    m_choices.setEntries(entries);
}

void ScoopController::choose(const QString& key) {
    for (const Measure& each : measures)
        if (key == QLatin1String(each.key))
            m_scoop.volumeMl = each.millilitres;
    estimate();
    m_problem.clear();
    refreshChoices();
    emit changed();
    emit edited();
}

void ScoopController::setSettled(bool settled) {
    m_scoop.packing = settled ? records::Packing::Settled : records::Packing::Loose;
    estimate();
    emit changed();
    emit edited();
}

bool ScoopController::typeVolume(const QString& millilitres) {
    const auto read = records::readVolumeMl(millilitres.toStdString());
    if (const auto* problem = std::get_if<records::InputProblem>(&read)) {
        m_problem = words::problem(*problem, tr("The scoop in millilitres"), records::smallestScoopMl,
                                   records::largestScoopMl);
        emit changed();
        return false;
    }
    m_scoop.volumeMl = std::get<double>(read);
    estimate();
    m_problem.clear();
    refreshChoices();
    emit changed();
    emit edited();
    return true;
}

bool ScoopController::typeBees(const QString& bees) {
    const auto read = records::readBees(bees.toStdString());
    if (const auto* problem = std::get_if<records::InputProblem>(&read)) {
        m_problem =
            words::problem(*problem, tr("The number of bees"), records::fewestBees, records::mostBees);
        emit changed();
        return false;
    }
    const mites::BeesInScoop typed = mites::scoopCountedByHand(std::get<double>(read), records::typedBeesCv);
    m_scoop.beesMean = typed.mean;
    m_scoop.beesCv = typed.cv;
    m_scoop.source = records::Scoop::BeesSource::Typed;
    m_problem.clear();
    emit changed();
    emit edited();
    return true;
}

} // namespace halfcup::touch
