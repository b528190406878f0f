// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "handbook_files.h"

#include <QTest>

#include <limits>

using namespace halfcup::handbook;

namespace {

constexpr std::string_view kGood = R"({"topic": "lines", "title": "Lines", "entries": [
  {"id": "a", "title": "A line", "value": 3, "unit": "mites per 100 bees", "source": "Somebody", "year": null,
   "mark": "common practice"},
  {"id": "b", "title": "Another", "low": 1, "high": 2, "unit": "C", "source": "S", "year": 1999,
   "mark": "published", "subject": "x", "property": "y", "note": "n"},
  {"id": "c", "title": "Words", "words": "by label", "unit": "words", "source": "S", "year": 2001, "mark": "quoted",
   "subject": "x", "property": "z"}]})";

// The good file with one piece replaced, and the sentence that comes back; empty where it was taken.
QString refusal(std::string_view piece, std::string_view by) {
    std::string text(kGood);
    const auto at = text.find(piece);
    if (at == std::string::npos)
        return QStringLiteral("the test itself is wrong: nothing to replace");
    text.replace(at, piece.size(), by);
    const std::string_view one = text;
    try {
        Handbook::fromTexts({&one, 1});
    } catch (const HandbookError& error) {
        return QString::fromUtf8(error.what());
    }
    return {};
}

} // namespace

class HandbookRead : public QObject {
    Q_OBJECT

private slots:
    void givesWhatTheFileSays() {
        const Handbook book = Handbook::fromTexts({&kGood, 1});
        QCOMPARE(book.size(), std::size_t(3));
        QCOMPARE(book.topics(), std::vector<std::string>{"lines"});
        QCOMPARE(book.topicTitle("lines"), std::string("Lines"));
        const Entry* a = book.find("a");
        QVERIFY(a);
        QCOMPARE(a->value.value(), 3.0);
        QVERIFY(!a->low && !a->high && !a->year);
        QCOMPARE(a->mark, Mark::CommonPractice);
        QCOMPARE(a->topic, std::string("lines"));
        const Entry& b = book.at("b");
        QCOMPARE(b.figure().value(), 1.5);
        QCOMPARE(b.year.value(), 1999);
        QCOMPARE(b.note, std::string("n"));
        QCOMPARE(book.find("x", "z")->words, std::string("by label"));
        QCOMPARE(book.about("x").size(), std::size_t(2));
        QCOMPARE(book.subjects("lines"), std::vector<std::string>{"x"});
        QVERIFY(!book.find("nothing"));
        QVERIFY(!book.at("c").figure());
    }

    void aMissingEntryIsNamedWhereTheProgramNeedsIt() {
        const Handbook book = Handbook::fromTexts({&kGood, 1});
        QVERIFY_EXCEPTION_THROWN((void)book.at("nothing"), HandbookError);
        QVERIFY_EXCEPTION_THROWN((void)book.figureAt("c"), HandbookError);
        QCOMPARE(book.figureAt("a"), 3.0);
    }

    void everyHoleIsRefusedInASentence_data() {
        QTest::addColumn<QByteArray>("piece");
        QTest::addColumn<QByteArray>("by");
        QTest::addColumn<QByteArray>("says");
        const auto row = [](const char* name, const char* piece, const char* by, const char* says) {
            QTest::newRow(name) << QByteArray(piece) << QByteArray(by) << QByteArray(says);
        };
        row("no source", R"("source": "Somebody", )", "",
            "\"a\" (entry 1 of the file \"lines\") has no 'source'");
        row("blank source", R"("source": "Somebody")", R"("source": "  ")",
            "'source' that is not a text or is blank");
        row("no mark", ",\n   \"mark\": \"common practice\"", "", "has no 'mark'");
        row("unknown mark", R"("mark": "published")", R"("mark": "surely")", "unknown 'mark' \"surely\"");
        row("no unit", R"("unit": "mites per 100 bees", )", "", "has no 'unit'");
        row("no year", R"("year": null,)", "", "has no 'year'");
        row("year as text", R"("year": 1999)", R"("year": "1999")", "not a year");
        row("year out of range", R"("year": 1999)", R"("year": 19999)", "not a year");
        row("no id", R"("id": "a", )", "", "entry 1 of the file \"lines\" has no 'id'");
        row("same id", R"("id": "b")", R"("id": "a")",
            "the id \"a\" (entry 2 of the file \"lines\") is given twice");
        row("no title", R"("title": "A line", )", "", "has no 'title'");
        row("value as text", R"("value": 3)", R"("value": "3")", "'value' that is not a number");
        row("no figure and no words", R"("value": 3, )", "", "neither a 'value'");
        row("low above high", R"("low": 1)", R"("low": 4)", "'low' above its 'high'");
        row("value outside", R"("low": 1)", R"("value": 9, "low": 1)", "'value' outside");
        row("words with a unit", R"("unit": "words")", R"("unit": "C")", "'unit' that does not fit");
        row("figure in words", R"("unit": "C")", R"("unit": "words")", "'unit' that does not fit");
        row("subject alone", R"(, "property": "y")", "", "'subject' and 'property' together");
        row("property twice", R"("property": "z")", R"("property": "y")", "a second time");
        row("unknown field", R"("note": "n")", R"("remark": "n")", "unknown field 'remark'");
        row("field twice", R"("note": "n")", R"("note": "n", "id": "b2")", "gives the field 'id' twice");
        row("no topic", R"("topic": "lines", )", "", "file 1 has no 'topic'");
        row("no entries", R"("entries")", R"("entry")", "no list of 'entries'");
        row("entry is no object", R"("entries": [)", R"("entries": [7,)",
            "entry 1 of the file \"lines\" is not an object");
        row("cut off", R"("mark": "quoted",)", "", "\"c\" (entry 3 of the file \"lines\") has no 'mark'");
        row("not JSON", "]}", "", "file 1 is not valid JSON");
    }
    void everyHoleIsRefusedInASentence() {
        QFETCH(QByteArray, piece);
        QFETCH(QByteArray, by);
        QFETCH(QByteArray, says);
        const QString said = refusal(piece.toStdString(), by.toStdString());
        QVERIFY2(said.contains(QString::fromUtf8(says)), qPrintable("said: " + said));
        QVERIFY2(said.startsWith(QLatin1String("In the handbook, ")), qPrintable(said));
    }

    void aHugeNumberIsNoValue() { QVERIFY(!refusal("\"value\": 3", "\"value\": 1e999").isEmpty()); }

    void oneTopicHasOneFile() {
        const std::vector<std::string_view> twice{kGood, kGood};
        QVERIFY_EXCEPTION_THROWN(Handbook::fromTexts(twice), HandbookError);
    }

    void foreignBytesAreRefused() {
        for (const std::string_view text : {"", "null", "[]", "3", "\"x\"", "\xff\xfe", "{", "\xef\xbb\xbf"})
            QVERIFY_EXCEPTION_THROWN(Handbook::fromTexts({&text, 1}), HandbookError);
    }

    void everyMarkHasAName() {
        for (const Mark mark : {Mark::Published, Mark::Quoted, Mark::FromMemory, Mark::CommonPractice,
                                Mark::Computed, Mark::OwnChoice})
            QVERIFY(!markName(mark).empty());
    }
};

QTEST_APPLESS_MAIN(HandbookRead)
#include "handbook_read.moc"
