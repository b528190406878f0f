// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Text as it may be shown, and what a field may hold.
#include "records/clean_text.h"
#include "records/fields.h"

#include <QString>
#include <QTest>

#include <limits>

using namespace halfcup::records;

class RecordsCleanTest : public QObject {
    Q_OBJECT

private slots:
    void plainTextStaysAsItIs() {
        for (const char* text :
             {"", "Yard 4", "Bienenstand Süd", "巣箱", "two\nlines\tand a tab", "=cmd|' /C calc'!A0"})
            QCOMPARE(cleanText(text), std::string(text));
    }

    void unseenCharactersGo() {
        QCOMPARE(cleanText(std::string("a\0b\x1B[31m\x7F", 8)), std::string("ab[31m"));
        QCOMPARE(cleanText("ya\xE2\x80\xAE"
                           "drofs\xE2\x80\xAC"),
                 std::string("yadrofs")); // U+202E, U+202C
        QCOMPARE(cleanText("x\xE2\x81\xA6y\xE2\x81\xA9\xE2\x80\x8F\xD8\x9C"), std::string("xy"));
        QCOMPARE(cleanText("\xC2\x85next"), std::string("next")); // a control character of the second block
    }

    /// The Unicode Standard, section 3.9, table 3-8: ill-formed sequences. Each bad byte becomes one U+FFFD,
    /// as QString reads it too.
    void badBytesAreReplacedAsQtDoes() {
        for (const QByteArray& bytes :
             {QByteArray("a\xC0\xAF"), QByteArray("\xE0\x80\x80z"), QByteArray("\xED\xA0\x80"),
              QByteArray("\xF4\x91\x92\x93"), QByteArray("\x80"), QByteArray("caf\xE9"),
              QByteArray("\xF8\x88\x80\x80\x80")}) {
            const std::string clean = cleanText(bytes.toStdString());
            const QString read = QString::fromUtf8(clean.data(), static_cast<qsizetype>(clean.size()));
            QCOMPARE(read.toUtf8().toStdString(), clean); // valid now
            QVERIFY(read.contains(QChar(0xFFFD)));
        }
    }

    void cleaningTwiceChangesNothing() {
        std::string text;
        for (int i = 0; i < 4000; ++i)
            text += static_cast<char>((i * 2654435761U) >> 24);
        QCOMPARE(cleanText(cleanText(text)), cleanText(text));
    }

    void aFieldHoldsItsTypeOnly() {
        const double endless = std::numeric_limits<double>::infinity();
        for (const FieldType type :
             {FieldType::Whole, FieldType::Real, FieldType::Text, FieldType::Flag, FieldType::Id})
            QVERIFY(fits(Value{}, type));
        QVERIFY(fits(std::int64_t{7}, FieldType::Whole) && !fits(7.0, FieldType::Whole));
        QVERIFY(fits(7.5, FieldType::Real) && fits(std::int64_t{7}, FieldType::Real) &&
                !fits(endless, FieldType::Real));
        QVERIFY(fits(std::int64_t{1}, FieldType::Flag) && !fits(std::int64_t{2}, FieldType::Flag));
        QVERIFY(fits(std::string("x"), FieldType::Text) && !fits(std::int64_t{1}, FieldType::Text));
        QVERIFY(!fits(std::string("7"), FieldType::Real));
    }

    void everyFieldHasATypeAndEveryIdAKind() {
        for (const Kind kind : allKinds) {
            QCOMPARE(kindFrom(nameOf(kind)).value(), kind);
            for (const std::string_view name : fieldNames(kind)) {
                const auto type = typeOf(kind, name);
                QVERIFY(type.has_value());
                QCOMPARE(referredKind(kind, name).has_value(), *type == FieldType::Id);
            }
            QVERIFY(!typeOf(kind, "no_such_field") && !typeOf(kind, "") && !typeOf(kind, "zzz"));
        }
        QVERIFY(!kindFrom("hive") && !kindFrom(""));
    }
};

QTEST_APPLESS_MAIN(RecordsCleanTest)
#include "records_clean.moc"
