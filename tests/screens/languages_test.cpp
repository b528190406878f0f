// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Every screen in every language, and in one with longer words: nothing cut, nothing over another, nothing
// small, nothing without its words. HALFCUP_PICTURES=FOLDER keeps pictures.
#include "measure.h"
#include "screens.h"
#include "touch/languages.h"

#include <QDir>
#include <QSet>
#include <QTest>
#include <QTranslator>

#include <span>

using namespace halfcup;
using namespace halfcup::screens;

namespace {

/// Asked last, so what comes here has no words in the language.
class Missing : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* comment, int) const override {
        if (m_listening && qstrncmp(context, "Q", 1) != 0 && QByteArray(source) != "%1")
            m_missing.insert(
                QStringLiteral("%1: \"%2\" %3")
                    .arg(QLatin1String(context), QString::fromUtf8(source), QString::fromUtf8(comment)));
        return {};
    }
    void listen(bool on) { m_listening = on; }
    QStringList take() {
        QStringList all(m_missing.cbegin(), m_missing.cend());
        all.sort();
        m_missing.clear();
        return all;
    }

private:
    bool m_listening = false;
    mutable QSet<QString> m_missing;
};

struct Hand {
    bool left, thickGloves;
    int textPercent;
};

/// First what is looked at in every run, on the smallest glass: the usual, and the largest targets with the
/// largest letters. The rest is asked for: HALFCUP_ALL_HANDS=1 for all of these, HALFCUP_ALL_SIZES=1 for all
/// of these on all of the windows, in both themes.
constexpr Hand hands[] = {{false, false, 100}, {false, true, 200}, {false, true, 100},
                          {true, false, 100},  {true, true, 100},  {false, false, 200}};
constexpr int inEveryRun = 2;
constexpr QSize windows[] = {{320, 568}, {360, 740}, {412, 915}, {800, 1280}};

bool wantsAll() {
    return qEnvironmentVariableIsSet("HALFCUP_ALL_SIZES");
}
bool wantsHands() {
    return wantsAll() || qEnvironmentVariableIsSet("HALFCUP_ALL_HANDS");
}

} // namespace

class LanguagesTest : public QObject {
    Q_OBJECT

    Missing m_missing;

    static void keep(Stage& stage, const QString& name) {
        const QString folder = qEnvironmentVariable("HALFCUP_PICTURES");
        if (folder.isEmpty())
            return;
        QString file = name;
        file.replace(QLatin1String(": "), QLatin1String("-")).replace(QLatin1Char(' '), QLatin1Char('-'));
        file.remove(QLatin1Char(',')).remove(QLatin1Char('?'));
        QVERIFY(QDir().mkpath(folder) &&
                stage.picture().save(QDir(folder).filePath(file + QLatin1String(".png"))));
    }

    static QStringList laidOutWrong(Stage& stage, const Screen& screen) {
        return wrongSizes(stage) + wrongTexts(stage) + wrongNames(stage) +
               wrongMainActions(stage, screen.mainActions);
    }

    /// At one size of the window, for all hands; contrast and words are measured once a theme.
    static QStringList lookAt(Stage& stage, const Screen& screen, const QString& language,
                              const QSize& size) {
        QStringList wrong;
        stage.resize(size);
        for (const Hand& hand : std::span(hands).first(wantsHands() ? std::size(hands) : inEveryRun)) {
            stage.setLeftHand(hand.left);
            stage.setThickGloves(hand.thickGloves);
            stage.setTextPercent(hand.textPercent);
            const QString name = QStringLiteral("%1 %2 %3x%4%5%6%7")
                                     .arg(language, QLatin1String(screen.name))
                                     .arg(size.width())
                                     .arg(size.height())
                                     .arg(QLatin1String(hand.left ? " left" : ""),
                                          QLatin1String(hand.thickGloves ? " gloves" : ""),
                                          QLatin1String(hand.textPercent > 100 ? " 200" : ""));
            QStringList here = laidOutWrong(stage, screen);
            if (!here.isEmpty()) { // a list may still be on its way from the last size to this one
                QTest::qWait(100);
                stage.settle();
                here = laidOutWrong(stage, screen);
            }
            for (const bool dusk : {false, true})
                if (wantsAll() && &hand == hands) { // all of them have the same colours
                    stage.setDusk(dusk);
                    here += wrongContrasts(stage);
                }
            for (QString& each : here)
                each.prepend(name + QStringLiteral(": "));
            wrong += here;
            stage.setDusk(false);
            if (!hand.left)
                keep(stage, name);
        }
        stage.setLeftHand(false);
        stage.setThickGloves(false);
        stage.setTextPercent(100);
        return wrong;
    }

private slots:
    void initTestCase() { QCoreApplication::installTranslator(&m_missing); }

    void screen_data() {
        QTest::addColumn<QString>("language");
        QTest::addColumn<int>("index");
        QStringList codes{QStringLiteral("pseudo")};
        for (const touch::Language& each : touch::languages())
            codes.append(each.code);
        const QString only = qEnvironmentVariable("HALFCUP_LANGUAGE"); // ctest runs them beside each other
        for (const QString& code : codes)
            for (std::size_t i = 0; i < allScreens().size(); ++i)
                if (only.isEmpty() || only == code)
                    QTest::newRow(
                        qPrintable(code + QStringLiteral(" ") + QLatin1String(allScreens()[i].name)))
                        << code << static_cast<int>(i);
    }

    void screen() {
        QFETCH(const QString, language);
        QFETCH(const int, index);
        const Screen& screen = allScreens()[static_cast<std::size_t>(index)];
        QStringList wrong;
        m_missing.listen(language != QLatin1String("en"));
        {
            Stage stage(screen.records, {360, 740}, language);
            QVERIFY2(screen.open(stage), "the way to this screen is blocked");
            for (const QSize& size : std::span(windows).first(wantsAll() ? std::size(windows) : 1))
                wrong += lookAt(stage, screen, language, size);
            if (!stage.program().qmlWarnings().isEmpty())
                wrong += stage.program().qmlWarnings();
        }
        m_missing.listen(false);
        for (const QString& each : m_missing.take())
            wrong.append(QStringLiteral("%1: no words for %2").arg(language, each));
        for (const QString& each : wrong)
            qWarning("%s", qPrintable(each));
        QVERIFY2(wrong.isEmpty(), qPrintable(QStringLiteral("%1 complaints").arg(wrong.size())));
    }
};

QTEST_MAIN(LanguagesTest)
#include "languages_test.moc"
