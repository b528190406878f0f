// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/picture_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <cmath>

namespace halfcup::pictures::words {

namespace {

class PictureWords {
    Q_DECLARE_TR_FUNCTIONS(PictureWords)
};

} // namespace

QString load(double per100) {
    const QLocale locale;
    if (per100 >= 9.95)
        return locale.toString(std::round(per100), 'f', 0);
    if (per100 > 0 && per100 < 0.05)
        return PictureWords::tr("under %1").arg(locale.toString(0.1, 'f', 1));
    return locale.toString(per100, 'f', per100 == 0 ? 0 : 1);
}

QString day(const records::Date& date) {
    return QLocale().toString(QDate(date.year, date.month, date.day),
                              PictureWords::tr("d MMMM", "date format without year, as in 18 May"));
}

QString standing(mites::Standing standing) {
    switch (standing) {
    case mites::Standing::Under:
        return PictureWords::tr("Under your line");
    case mites::Standing::Close:
        return PictureWords::tr("Close to your line");
    case mites::Standing::Over:
        return PictureWords::tr("Over your line");
    case mites::Standing::CannotTell:
        break;
    }
    return PictureWords::tr("Can't tell yet");
}

} // namespace halfcup::pictures::words
