// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/phrases.h"

#include "touch/words.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace halfcup::touch {

namespace {

constexpr auto context = "Phrase";
constexpr int sameSeasonDays = 180; // a date further off is told with its year

class Sayer {
public:
    explicit Sayer(const PhraseStyle& style)
        : m_style(style) {}

    QString operator()(const season::Celsius& celsius) const {
        return words::temperature(celsius.value, m_style.temperature);
    }
    QString operator()(const season::Days& days) const { return words::days(days.value); }
    QString operator()(const season::Share& share) const { return percent(share.value); }
    QString operator()(const season::Load& load) const {
        return QCoreApplication::translate("Phrase", "%1 per 100").arg(words::load(load.value));
    }
    QString operator()(const season::LoadSpan& span) const {
        return QCoreApplication::translate("Phrase", "%1 to %2")
            .arg(words::load(span.low), words::load(span.high));
    }
    QString operator()(const season::ShareSpan& span) const {
        if (span.low == span.high)
            return percent(span.high);
        return QCoreApplication::translate("Phrase", "%1 to %2")
            .arg(QLocale().toString(span.low * 100, 'g', 3), percent(span.high));
    }
    QString operator()(const season::Number& number) const {
        return QLocale().toString(number.value, 'f', 0);
    }
    QString operator()(const season::Words& typed) const { return QString::fromStdString(typed.value); }
    QString operator()(const season::Term& term) const {
        return QCoreApplication::translate(context, term.text);
    }
    QString operator()(const records::Date& date) const {
        const bool near =
            isValid(m_style.today) && std::abs(records::daysBetween(m_style.today, date)) <= sameSeasonDays;
        return near ? words::day(date) : words::dayAndYear(date);
    }

private:
    static QString percent(double fraction) {
        return QCoreApplication::translate("Phrase", "%1 %").arg(QLocale().toString(fraction * 100, 'g', 3));
    }

    const PhraseStyle& m_style;
};

} // namespace

QString said(const season::Phrase& phrase, const PhraseStyle& style) {
    if (phrase.empty())
        return {};
    const QString text = QCoreApplication::translate(context, phrase.text);
    QString out;
    for (qsizetype i = 0; i < text.size(); ++i) { // by hand: what is filled in may hold marks of its own
        const int mark = text[i] == u'%' && i + 1 < text.size() ? text[i + 1].digitValue() : -1;
        if (mark >= 1 && static_cast<std::size_t>(mark) <= phrase.arguments.size()) {
            out += std::visit(Sayer(style), phrase.arguments[static_cast<std::size_t>(mark) - 1]);
            ++i;
        } else {
            out += text[i];
        }
    }
    return out;
}

} // namespace halfcup::touch
