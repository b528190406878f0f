// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
// Named values beside the standard library's std::map, which they stand in for: the same steps, the same
// content.
#include "records/named_values.h"

#include <QTest>

#include <map>
#include <random>

using namespace halfcup::records;

class NamedValuesTest : public QObject {
    Q_OBJECT

    using Map = std::map<std::string, Value, std::less<>>;

    static bool same(const NamedValues& values, const Map& map) {
        return values.size() == map.size() && values.empty() == map.empty() &&
               std::equal(values.begin(), values.end(), map.begin(), [](const auto& one, const auto& other) {
                   return one.first == other.first && one.second == other.second;
               });
    }

private slots:
    void holdWhatAMapHolds() {
        std::mt19937 random(20260615);
        const auto below = [&](std::uint32_t bound) { return random() % bound; };
        for (int run = 0; run < 200; ++run) {
            NamedValues values;
            Map map;
            for (int step = 0; step < 60; ++step) {
                const std::string name(1 + below(3), static_cast<char>('a' + below(5)));
                QCOMPARE(values.contains(name), map.contains(name));
                switch (below(4)) {
                case 0:
                    QCOMPARE(values.erase(name), map.erase(name));
                    break;
                case 1: // made empty where it is new, left as it is otherwise
                    QVERIFY(values[name] == map[name]);
                    break;
                default: {
                    const Value value = below(2) ? Value{std::int64_t{step}} : Value{name + "'s"};
                    values[name] = value;
                    map[name] = value;
                }
                }
                QVERIFY(same(values, map));
                const NamedValues& asConst = values;
                QCOMPARE(asConst.find(name) == asConst.end(), map.find(name) == map.end());
                if (const auto found = values.find(name); found != values.end())
                    QVERIFY(found->second == map.find(name)->second);
            }
        }
    }

    void ofTwoWithOneNameTheFirstCounts() {
        const NamedValues values{{"b", 1.5}, {"a", std::int64_t{1}}, {"b", 2.5}};
        QVERIFY(same(values, Map{{"b", 1.5}, {"a", std::int64_t{1}}, {"b", 2.5}}));
        QVERIFY(values == (NamedValues{{"a", std::int64_t{1}}, {"b", 1.5}}));
        QVERIFY(values != (NamedValues{{"a", std::int64_t{1}}, {"b", 2.5}}));
    }
};

QTEST_APPLESS_MAIN(NamedValuesTest)
#include "records_named_values.moc"
