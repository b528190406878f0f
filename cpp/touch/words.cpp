// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/words.h"

#include "records/judgement.h"
#include "records/method.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QTime>

#include <cmath>

namespace halfcup::touch::words {

namespace {

/// The context that translators find these sentences under.
class Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

QDate qDate(const records::Date& date) {
    return {date.year, date.month, date.day};
}

} // namespace

QString load(double per100) {
    const QLocale locale;
    if (per100 >= 9.95)
        return locale.toString(std::round(per100), 'f', 0);
    if (per100 > 0 && per100 < 0.05)
        return Words::tr("under %1").arg(locale.toString(0.1, 'f', 1));
    return locale.toString(per100, 'f', per100 == 0 ? 0 : 1);
}

QString loadRange(const records::Answer& answer) {
    const double low = answer.mites == 0 ? 0.0 : answer.loadQ05;
    return Words::tr("%1 to %2", "a range of loads").arg(load(low), load(answer.loadQ95));
}

QString line(double per100) {
    return QLocale().toString(per100, 'g', 4);
}

QString chance(double chance) {
    const double percent = 100 * chance;
    const auto nearBoundary = [percent](double boundary) { return std::abs(percent - boundary) < 0.95; };
    const int decimals = nearBoundary(20) || nearBoundary(50) ? 1 : 0;
    if (percent < 0.5)
        return Words::tr("under 1 %", "a chance");
    if (percent > 99.5)
        return Words::tr("over 99 %", "a chance");
    return Words::tr("%1 %", "a chance").arg(QLocale().toString(percent, 'f', decimals));
}

QString standing(StandingWord::Value value) {
    switch (value) {
    case StandingWord::Under:
        return Words::tr("Under your line");
    case StandingWord::Close:
        return Words::tr("Close to your line");
    case StandingWord::Over:
        return Words::tr("Over your line");
    case StandingWord::CannotTell:
        return Words::tr("Can't tell yet");
    case StandingWord::Unknown:
        break;
    }
    return Words::tr("Not washed yet");
}

StandingWord::Value headlineOf(const records::Sample& sample) {
    const auto standing = records::graverStanding(sample);
    return standing ? StandingWord::from(*standing) : StandingWord::Unknown;
}

QString mites(qint64 count) {
    return Words::tr("%n mite(s)", nullptr, static_cast<int>(count));
}

QString cells(qint64 count) {
    return Words::tr("%n cell(s)", nullptr, static_cast<int>(count));
}

QString bees(double count) {
    return Words::tr("about %1 bees").arg(QLocale().toString(count, 'f', 0));
}

QString seconds(int count) {
    return Words::tr("%1 s", "seconds").arg(QLocale().toString(count));
}

QString days(int count) {
    return Words::tr("%n day(s)", nullptr, count);
}

QString temperature(double celsius, season::TemperatureUnit unit) {
    const double shown = std::round(season::fromCelsius(celsius, unit) * 10) / 10;
    const QString figure = QLocale().toString(shown, 'f', shown == std::round(shown) ? 0 : 1);
    return unit == season::TemperatureUnit::Celsius ? Words::tr("%1 °C", "degrees Celsius").arg(figure)
                                                    : Words::tr("%1 °F", "degrees Fahrenheit").arg(figure);
}

QString distance(double metres, Units units) {
    if (units == Units::UsCustomary) {
        const double feet = metres / metresPerFoot;
        const double miles = feet / feetPerMile;
        return feet < 1000
                   ? Words::tr("%1 ft", "feet").arg(QLocale().toString(std::ceil(feet), 'f', 0))
                   : Words::tr("%1 mi", "miles").arg(QLocale().toString(miles, 'f', miles < 10 ? 1 : 0));
    }
    if (metres < 1000)
        return Words::tr("%1 m", "metres").arg(QLocale().toString(std::ceil(metres), 'f', 0));
    return Words::tr("%1 km").arg(QLocale().toString(metres / 1000, 'f', metres < 10'000 ? 1 : 0));
}

QString day(const records::Date& date) {
    return QLocale().toString(qDate(date), Words::tr("d MMMM", "date format without year, as in 18 May"));
}

QString dayAndYear(const records::Date& date) {
    return QLocale().toString(qDate(date), Words::tr("d MMMM yyyy", "date format, as in 18 May 2026"));
}

QString timeOfDay(const records::Moment& moment) {
    const auto minutes = (moment.utcMs / 60'000 + moment.offsetMinutes) % (24 * 60);
    const QTime time(static_cast<int>(minutes / 60), static_cast<int>(minutes % 60));
    return QLocale().toString(time, QLocale::ShortFormat);
}

QString coordinates(const records::Position& position) {
    const QLocale locale;
    const auto part = [&](double degrees, const QString& positive, const QString& negative) {
        return locale.toString(std::abs(degrees), 'f', 5) + u' ' + (degrees < 0 ? negative : positive);
    };
    const QString text = part(position.latitudeDeg, Words::tr("N", "north"), Words::tr("S", "south")) + u' ' +
                         part(position.longitudeDeg, Words::tr("E", "east"), Words::tr("W", "west"));
    return position.accuracyM ? Words::tr("%1, within %2", "a position and its accuracy")
                                    .arg(text, distance(*position.accuracyM, Units::Metric))
                              : text;
}

QString measure(double millilitres) {
    if (std::abs(millilitres - records::halfCupMl) < 0.5)
        return Words::tr("half a cup");
    if (std::abs(millilitres - records::halfCupMl * 2 / 3) < 0.5)
        return Words::tr("a third of a cup");
    return Words::tr("%1 ml").arg(
        QLocale().toString(millilitres, 'f', millilitres == std::round(millilitres) ? 0 : 1));
}

QString fromHandbook(const std::string& text) {
    return text.empty() ? QString() : QCoreApplication::translate("Handbook", text.c_str());
}

QString ofMethod(const char* text) {
    return *text ? QCoreApplication::translate("Method", text) : QString();
}

QString method(const QString& methodId) {
    const records::Method* known = records::findMethod(methodId.toStdString());
    return known ? ofMethod(known->name) : Words::tr("another method (%1)").arg(methodId);
}

QString begin(const std::string& methodId, const QString& colonyLabel) {
    const records::Method* known = records::findMethod(methodId);
    return ofMethod((known ? *known : records::alcoholWash()).begin).arg(colonyLabel);
}

QString step(records::Step step) {
    switch (step) {
    case records::Step::Colony:
        return Words::tr("pick the colony");
    case records::Step::Safety:
        return Words::tr("find the queen");
    case records::Step::Scoop:
        return Words::tr("scoop");
    case records::Step::Pour:
        return Words::tr("close the jar");
    case records::Step::Shake:
        return Words::tr("shake");
    case records::Step::Settle:
        return Words::tr("let it settle");
    case records::Step::Count:
        return Words::tr("count");
    case records::Step::SecondRinse:
        return Words::tr("second rinse");
    case records::Step::LayBoard:
        return Words::tr("lay the board");
    case records::Step::PullBoard:
        return Words::tr("pull the board");
    case records::Step::BoardCells:
        return Words::tr("how much of the board");
    case records::Step::OpenedCells:
        return Words::tr("how many cells opened");
    case records::Step::Answer:
        break;
    }
    return Words::tr("the answer");
}

QString problem(records::InputProblem problem, const QString& what, double smallest, double largest) {
    const QLocale locale;
    const auto number = [&](double value) { return locale.toString(value, 'g', 6); };
    switch (problem) {
    case records::InputProblem::Empty:
        return Words::tr("%1 is empty. Type it, or leave the page as it was.").arg(what);
    case records::InputProblem::NotANumber:
        return Words::tr("%1 must be a number, such as %2.").arg(what, number(std::max(smallest, 3.0)));
    case records::InputProblem::Negative:
        return Words::tr("%1 cannot be less than 0.").arg(what);
    case records::InputProblem::NotWhole:
        return Words::tr("%1 must be a whole number.").arg(what);
    case records::InputProblem::TooLarge:
        return Words::tr("%1 can be %2 at the most. Nothing was changed.").arg(what, number(largest));
    case records::InputProblem::TooSmall:
        return smallest > 0
                   ? Words::tr("%1 must be %2 at the least. Nothing was changed.").arg(what, number(smallest))
                   : Words::tr("%1 must be more than 0. Nothing was changed.").arg(what);
    case records::InputProblem::TooLong:
        return Words::tr("%1 is too long: %2 letters fit on a label.").arg(what, number(largest));
    case records::InputProblem::AlreadyThere:
        return Words::tr("%1 is already taken here. Choose another.").arg(what);
    case records::InputProblem::InTheFuture:
        return Words::tr("%1 lies in the future. Look at the phone's date.").arg(what);
    }
    return {};
}

QString trouble(store::StoreError::Kind kind, const QString& path) {
    using Kind = store::StoreError::Kind;
    switch (kind) {
    case Kind::FolderMissing:
        return Words::tr("The folder for your records is not there: %1. Nothing was written. Put the folder "
                         "back, or start "
                         "with another.")
            .arg(path);
    case Kind::NotAllowed:
        return Words::tr("Your records cannot be written here: %1 is read-only, or this user may not write "
                         "there. What is in "
                         "it is unchanged.")
            .arg(path);
    case Kind::NotOurs:
        return Words::tr("%1 is not a Halfcup database. It was left as it is. Move it aside, or start with "
                         "another file.")
            .arg(path);
    case Kind::Newer:
        return Words::tr("Your records were written by a newer Halfcup. They are safe and unchanged; this "
                         "version cannot read "
                         "them. Install the newer version again.");
    case Kind::Damaged:
        return Words::tr("The database %1 is damaged. It was left as it is. Keep a copy of it before "
                         "anything else is tried.")
            .arg(path);
    case Kind::DiskFull:
        return Words::tr("The phone's storage is full. This was not written; everything before it is safe. "
                         "Make room, then do "
                         "it again.");
    case Kind::Busy:
        return Words::tr("Another program is using your records. This was not written. Close the other "
                         "program, then do it "
                         "again.");
    case Kind::CopyFailed:
        return Words::tr("Your records must be brought to a new form, and the copy that is made first could "
                         "not be written. "
                         "Nothing was changed. Make room in %1, then start again.")
            .arg(path);
    case Kind::Failed:
        break;
    }
    return Words::tr("Your records could not be written. Everything before this is safe. Try it again; if it "
                     "stays, start the "
                     "app anew.");
}

} // namespace halfcup::touch::words
