// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/own_scoops_controller.h"

#include "records/judgement.h"
#include "records/typed_input.h"
#include "touch/colony_entries.h"
#include "touch/scoop_controller.h"
#include "touch/words.h"

#include <QLocale>

#include <algorithm>
#include <cmath>

namespace halfcup::touch {

namespace {

constexpr double countedCv = 0.02; // nobody counts 300 bees without a slip [convention]
constexpr double reach90 = 1.6448536;
constexpr double lightestG = 1, heaviestG = 1000; // of the bees of one jar [convention]

QString whole(double figure) {
    return QLocale().toString(figure, 'f', 0);
}

double medianOf(const records::Scoop& scoop) { // as the pages name a scoop elsewhere
    return scoop.beesMean / std::sqrt(1 + scoop.beesCv * scoop.beesCv);
}

} // namespace

OwnScoopsController::OwnScoopsController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

ChoiceListModel* OwnScoopsController::bookFigures() {
    if (m_bookFigures.count() == 0) // the handbook is not read before a page shows it
        listBookFigures();
    return &m_bookFigures;
}

void OwnScoopsController::listBookFigures() {
    QList<ChoiceListModel::Entry> figures;
    for (const handbook::Entry* entry : m_services.handbook().topic("scoop")) {
        if (!entry->figure() || entry->unit != "bees" || !entry->id.starts_with("half-cup-"))
            continue;
        ChoiceListModel::Entry row;
        row.title = QString::fromStdString(entry->title);
        row.detail = tr("%1 bees").arg(whole(*entry->figure()));
        row.note = QString::fromStdString(entry->source);
        figures.append(row);
    }
    m_bookFigures.setEntries(figures);
}

bool OwnScoopsController::show(const QString& sampleId) {
    std::optional<records::Sample> found;
    QString label;
    m_services.kept([&] {
        found = m_services.store.sample(sampleId.toStdString());
        if (const auto colony = found ? m_services.store.colony(found->colonyId) : std::nullopt)
            label = QString::fromStdString(colony->label);
    });
    if (!found || !found->answer)
        return false;
    m_sample = *found;
    m_context =
        tr("Colony %1 · %2 in %3", "colony, mites, scoop")
            .arg(label, words::mites(m_sample.answer->mites), words::measure(m_sample.scoop.volumeMl));
    m_weighs = false;
    m_drained.reset();
    listStates();
    m_question.clear();
    m_problem.clear();
    emit changed();
    return true;
}

QString OwnScoopsController::expectedLine() const {
    return tr("It was taken to hold about %1 bees.").arg(whole(medianOf(m_sample.scoop)));
}

void OwnScoopsController::setWeighs(bool weighs) {
    m_weighs = weighs;
    m_problem.clear();
    m_question.clear();
    emit changed();
}

void OwnScoopsController::pickState(const QString& key) {
    m_drained = key == QLatin1String("drained");
    m_problem.clear();
    listStates();
    emit changed();
}

void OwnScoopsController::listStates() {
    ChoiceListModel::Entry drained, alive;
    drained.key = QStringLiteral("drained");
    drained.title = tr("Drained");
    drained.chosen = m_drained == true;
    alive.key = QStringLiteral("alive");
    alive.title = tr("Alive");
    alive.chosen = m_drained == false;
    m_states.setEntries({drained, alive});
}

QString OwnScoopsController::massLine() const {
    if (!m_drained)
        return tr("Drained bees weigh nearly twice what live ones do: say first which they are.");
    const handbook::Entry& entry = m_services.handbook().at(*m_drained ? "drained-bee-mg" : "live-bee-mg");
    return tr("%1 g are 100 bees. %2", "grams, source")
        .arg(QLocale().toString(*entry.figure() / 10, 'f', 1), QString::fromStdString(entry.source));
}

bool OwnScoopsController::fail(const QString& sentence) {
    m_problem = sentence;
    emit changed();
    return false;
}

bool OwnScoopsController::keep(const QString& typed) {
    m_problem.clear();
    m_question.clear();
    if (m_weighs)
        return keepMass(typed);
    const auto read = records::readBees(typed.toStdString());
    if (const auto* wrong = std::get_if<records::InputProblem>(&read))
        return fail(words::problem(*wrong, tr("The number of bees"), records::fewestBees, records::mostBees));
    const double bees = std::get<double>(read);
    bool odd = false;
    m_services.kept([&] {
        auto others = m_services.store.scoopCounts();
        std::erase_if(others, [this](const auto& each) { return each.sampleId == m_sample.id; });
        odd = records::isOdd(bees, others, m_sample.scoop.volumeMl, m_sample.scoop.packing,
                             bookDensity(m_services.handbook()));
    });
    if (!odd)
        return keepCount(bees, false);
    m_asked = bees;
    m_question =
        tr("%1 bees in %2 are far from the usual %3. Is that what you counted?")
            .arg(whole(bees), words::measure(m_sample.scoop.volumeMl), whole(medianOf(m_sample.scoop)));
    emit changed();
    return false;
}

QString OwnScoopsController::plus(const QString& soFar, int bees) {
    bool isNumber = true;
    const QString text = soFar.trimmed();
    const int before = text.isEmpty() ? 0 : text.toInt(&isNumber);
    if (!isNumber) {
        fail(words::problem(records::InputProblem::NotANumber, tr("The number of bees"), records::fewestBees,
                            records::mostBees));
        return soFar;
    }
    return QString::number(std::clamp(before + bees, 0, static_cast<int>(records::mostBees)));
}

bool OwnScoopsController::keepAllTheSame() {
    if (m_question.isEmpty())
        return false;
    m_question.clear();
    return keepCount(m_asked, true);
}

void OwnScoopsController::dropQuestion() {
    m_question.clear();
    emit changed();
}

bool OwnScoopsController::keepCount(double bees, bool odd) {
    records::ScoopCount count;
    const bool looked = m_services.kept([&] {
        count.id = m_services.store.newId();
        // One jar is one scoop: counted again, its count is corrected, and the history keeps the first.
        for (const records::ScoopCount& each : m_services.store.scoopCounts())
            if (each.sampleId == m_sample.id)
                count = each;
    });
    if (!looked)
        return false;
    count.sampleId = m_sample.id;
    count.volumeMl = m_sample.scoop.volumeMl;
    count.packing = m_sample.scoop.packing;
    count.bees = bees;
    count.countedAtMs = m_services.now().utcMs;
    count.odd = odd;
    count.demo = m_sample.demo;
    records::Scoop scoop = m_sample.scoop;
    const mites::BeesInScoop counted = mites::scoopCountedByHand(bees, countedCv);
    scoop.beesMean = counted.mean;
    scoop.beesCv = counted.cv;
    scoop.source = records::Scoop::BeesSource::Counted;
    return revise(scoop, &count);
}

bool OwnScoopsController::keepMass(const QString& typed) {
    if (!m_drained)
        return fail(tr("Say first whether the bees are drained or alive."));
    const auto read = records::readNumber(typed.toStdString());
    if (const auto* wrong = std::get_if<records::InputProblem>(&read))
        return fail(words::problem(*wrong, tr("The mass in grams"), lightestG, heaviestG));
    const double grams = std::get<double>(read);
    if (grams < lightestG || grams > heaviestG)
        return fail(words::problem(grams < lightestG ? records::InputProblem::TooSmall
                                                     : records::InputProblem::TooLarge,
                                   tr("The mass in grams"), lightestG, heaviestG));
    const mites::BeesInScoop bees =
        *m_drained ? mites::scoopFromDrainedMass(grams) : mites::scoopFromLiveMass(grams);
    records::Scoop scoop = m_sample.scoop;
    scoop.beesMean = bees.mean;
    scoop.beesCv = bees.cv;
    scoop.source = records::Scoop::BeesSource::Typed;
    return revise(scoop, nullptr); // by the book's mass of a bee: no scoop of the keeper's own
}

/// The wash is judged anew with what was counted, by the lines it was judged by; its history keeps what was
/// said.
bool OwnScoopsController::revise(const records::Scoop& scoop, const records::ScoopCount* count) {
    records::Sample revised = m_sample;
    revised.scoop = scoop;
    const bool done = m_services.kept([&] {
        revised.answer = records::answerOf(revised, m_sample.answer->mites, m_sample.answer->mitesSecondRinse,
                                           m_sample.answer->lines);
        m_services.store.inOneTransaction([&] {
            if (count)
                m_services.store.save(*count);
            m_services.store.save(revised);
        });
    });
    if (!done)
        return false;
    m_sample = revised;
    emit changed();
    emit kept(QString::fromStdString(m_sample.id));
    return true;
}

void OwnScoopsController::refresh() {
    std::vector<records::ScoopCount> counts;
    m_services.kept([&] { counts = m_services.store.scoopCounts(); });
    list(counts);
    const records::Scoop usual = m_services.settings.usualScoop();
    const records::BookDensity book = bookDensity(m_services.handbook());
    const QString measure = words::measure(usual.volumeMl);
    const auto own = records::ownScoops(counts, usual.volumeMl, usual.packing, book);
    const mites::BeesInScoop bees =
        own ? *own : mites::scoopFromVolume(usual.volumeMl, book.of(usual.packing));
    const double sd = std::hypot(bees.ownSd, bees.sharedSd);
    m_summary = own ? tr("%1 bees in %2, from %n counted scoop(s)", nullptr, own->countedScoops)
                          .arg(whole(bees.median), measure)
                    : tr("No scoop counted yet: %1 bees in %2, by the book").arg(whole(bees.median), measure);
    m_rangeLine =
        tr("Nine of ten scoops hold %1 to %2. The book says %3.")
            .arg(whole(bees.median * std::exp(-reach90 * sd)), whole(bees.median * std::exp(reach90 * sd)),
                 whole(mites::scoopFromVolume(usual.volumeMl, book.of(usual.packing)).median));
    emit changed();
}

void OwnScoopsController::list(const std::vector<records::ScoopCount>& counts) {
    QList<ChoiceListModel::Entry> entries;
    for (auto each = counts.rbegin(); each != counts.rend(); ++each) {
        ChoiceListModel::Entry row;
        row.key = QString::fromStdString(each->id);
        row.title = tr("%1 bees").arg(whole(each->bees));
        const QString day =
            words::dayAndYear(records::localDate({each->countedAtMs, m_services.now().offsetMinutes}));
        const QString measure = words::measure(each->volumeMl);
        const QString colony = colonyOf(*each);
        row.detail =
            colony.isEmpty()
                ? tr("%1, counted on %2", "scoop, day").arg(measure, day)
                : tr("Colony %1 · %2, counted on %3", "colony, scoop, day").arg(colony, measure, day);
        if (each->odd)
            row.note = tr("far from the usual, and you stood by it");
        entries.append(row);
    }
    m_counts.setEntries(entries);
}

QString OwnScoopsController::colonyOf(const records::ScoopCount& count) {
    QString label;
    m_services.kept([&] {
        const auto sample = count.sampleId.empty() ? std::nullopt : m_services.store.sample(count.sampleId);
        if (const auto colony = sample ? m_services.store.colony(sample->colonyId) : std::nullopt)
            label = QString::fromStdString(colony->label);
    });
    return label;
}

void OwnScoopsController::takeOut(const QString& countId) {
    m_services.kept([&] {
        for (records::ScoopCount& count : m_services.store.scoopCounts())
            if (count.id == countId.toStdString()) {
                count.removed = true;
                m_services.store.save(count);
            }
    });
    refresh();
}

} // namespace halfcup::touch
