// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/yards_controller.h"

#include "records/typed_input.h"
#include "season/natural_order.h"
#include "touch/lines_controller.h"
#include "touch/words.h"

#include <QRegularExpression>

#include <algorithm>

namespace halfcup::touch {

namespace {

constexpr int mostAtOnce = 200; // colonies in one run of numbers: a slip such as 1-1000 is asked about

QString lineOf(const std::optional<double>& line) {
    return line ? words::line(*line) : QString();
}

} // namespace

YardsController::YardsController(Services& services, QObject* parent)
    : QObject(parent)
    , m_services(services) {}

QString YardsController::name() const {
    return QString::fromStdString(m_yard.name);
}

QString YardsController::treatLine() const {
    return words::line(m_yard.lines.treat);
}

QString YardsController::treatLineSource() const {
    return lineSource(m_services, m_yard.lines);
}

QString YardsController::ownLine() const {
    return lineOf(m_yard.lines.own);
}

QString YardsController::positionLine() const {
    return m_yard.position ? words::coordinates(*m_yard.position) : tr("No position yet");
}

QString YardsController::coloniesLine() const {
    std::vector<std::string> labels;
    m_services.kept([&] {
        for (const records::Colony& colony : m_services.store.colonies(m_yard.id))
            labels.push_back(colony.label);
    });
    std::ranges::sort(labels, [](const auto& a, const auto& b) { return season::naturalOrder(a, b) < 0; });
    QStringList names;
    for (const std::string& label : labels)
        names.append(QString::fromStdString(label));
    if (names.isEmpty())
        return tr("No colonies yet");
    return tr("%n colony(ies): %1", nullptr, static_cast<int>(names.size()))
        .arg(names.join(QStringLiteral(", ")));
}

void YardsController::refresh() {
    QList<ChoiceListModel::Entry> entries;
    m_services.kept([&] {
        for (const records::Yard& yard : m_services.store.yards()) {
            ChoiceListModel::Entry entry;
            entry.key = QString::fromStdString(yard.id);
            entry.title = QString::fromStdString(yard.name);
            entry.detail =
                tr("%n colony(ies)", nullptr, static_cast<int>(m_services.store.colonies(yard.id).size()));
            entry.note = yard.position ? QString() : tr("no position");
            entries.append(entry);
        }
    });
    m_yards.setEntries(entries);
    emit changed();
}

void YardsController::startNew() {
    m_yard = {};
    m_yard.id = m_services.store.newId();
    m_isNew = true;
    m_problem.clear();
    emit loaded();
    useThisPlace();
}

void YardsController::makeNew() {
    startNew();
    emit editWanted();
}

void YardsController::edit(const QString& yardId) {
    std::optional<records::Yard> yard;
    m_services.kept([&] { yard = m_services.store.yard(yardId.toStdString()); });
    if (!yard)
        return;
    m_yard = *yard;
    m_isNew = false;
    m_problem.clear();
    emit loaded();
    emit changed();
    emit editWanted();
}

void YardsController::reload() {
    m_services.kept([&] {
        if (const auto kept = m_services.store.yard(m_yard.id))
            m_yard = *kept;
    });
    emit loaded();
    emit changed();
}

void YardsController::treatAll() {
    emit treatWanted(yardId());
}

void YardsController::supersForAll(bool on) {
    emit supersWanted(yardId(), on);
}

void YardsController::openDay() {
    emit dayWanted(yardId());
}

void YardsController::openLines() {
    emit linesWanted(yardId());
}

void YardsController::openPlan() {
    emit planWanted(yardId());
}

void YardsController::openHistory() {
    emit historyWanted(yardId());
}

void YardsController::useThisPlace() {
    if (const auto stamp = m_services.position.best())
        m_yard.position = records::Position{stamp->latitudeDeg, stamp->longitudeDeg, stamp->accuracyM};
    else
        m_services.position.want();
    emit changed();
}

bool YardsController::fail(const QString& problem) {
    m_problem = problem;
    emit changed();
    return false;
}

bool YardsController::save(const QString& name, const QString& treatLine, const QString& ownLine) {
    return write(m_yard, name, treatLine, ownLine);
}

bool YardsController::write(records::Yard changed, const QString& name, const QString& treatLine,
                            const QString& ownLine) {
    m_services.kept([&] { // written elsewhere while this page was open
        if (const auto kept = m_services.store.yard(m_yard.id)) {
            changed.visitedOn = kept->visitedOn;
            changed.lineRegion = kept->lineRegion;
        }
    });
    const QString trimmed = name.trimmed();
    if (const auto problem = records::checkName(trimmed.toStdString()))
        return fail(words::problem(*problem, tr("The yard's name"), 0, records::longestName));
    changed.name = trimmed.toStdString();

    const auto treat = records::readLine(treatLine.toStdString());
    if (const auto* problem = std::get_if<records::InputProblem>(&treat))
        return fail(words::problem(*problem, tr("The treat line"), 0, records::largestLine));
    if (std::get<double>(treat) != m_yard.lines.treat) {
        changed.lines.treat = std::get<double>(treat);
        changed.lines.treatSource = "own";
    }
    changed.lines.own.reset();
    if (!ownLine.trimmed().isEmpty()) {
        const auto own = records::readLine(ownLine.toStdString());
        if (const auto* problem = std::get_if<records::InputProblem>(&own))
            return fail(words::problem(*problem, tr("Your own line"), 0, records::largestLine));
        changed.lines.own = std::get<double>(own);
    }
    if (!m_services.kept([&] { m_services.store.save(changed); }))
        return false;
    m_yard = changed;
    m_isNew = false;
    m_problem.clear();
    emit loaded();
    refresh();
    emit saved(QString::fromStdString(m_yard.id));
    return true;
}

bool YardsController::addColonies(const QString& labels) {
    if (m_isNew)
        return fail(tr("Save the yard first, then add its colonies."));
    QStringList wanted;
    static const QRegularExpression run(QStringLiteral("^\\s*(\\d{1,6})\\s*[-\u2013]\\s*(\\d{1,6})\\s*$"));
    if (const auto match = run.match(labels); match.hasMatch()) {
        const int first = match.captured(1).toInt();
        const int last = match.captured(2).toInt();
        if (last < first)
            return fail(tr("%1 comes after %2. Type the smaller number first.").arg(first).arg(last));
        if (last - first >= mostAtOnce)
            return fail(tr("That would be %n colonies at once. %1 is the most.", nullptr, last - first + 1)
                            .arg(mostAtOnce));
        for (int number = first; number <= last; ++number)
            wanted.append(QString::number(number));
    } else {
        for (const QString& part : labels.split(u','))
            wanted.append(part.trimmed());
    }
    QStringList there;
    m_services.kept([&] {
        for (const records::Colony& colony : m_services.store.colonies(m_yard.id))
            there.append(QString::fromStdString(colony.label));
    });
    for (const QString& label : wanted) {
        if (const auto problem = records::checkName(label.toStdString()))
            return fail(words::problem(*problem, tr("The label"), 0, records::longestName));
        if (there.contains(label))
            return fail(tr("There is a colony %1 in this yard already. Nothing was added.").arg(label));
        there.append(label);
    }
    const bool done = m_services.kept([&] {
        m_services.store.inOneTransaction([&] {
            for (const QString& label : wanted) {
                records::Colony colony;
                colony.id = m_services.store.newId();
                colony.yardId = m_yard.id;
                colony.label = label.toStdString();
                colony.demo = m_yard.demo;
                m_services.store.save(colony);
            }
        });
    });
    m_problem.clear();
    refresh();
    return done;
}

} // namespace halfcup::touch
