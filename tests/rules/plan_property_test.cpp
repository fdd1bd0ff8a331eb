#include "core/base/error.h"
#include "core/base/natural_order.h"
#include "core/rules/plan.h"
#include "tests/rules/plan_digest.h"
#include "tests/rules/random_operation.h"
#include "tests/support/csv_snapshot.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <random>
#include <set>

// What must hold of every plan, whatever is in the book: seeded books in and out of each season.

namespace tests::rules {
namespace {

using namespace core;
using namespace core::rules;
using support::CsvRow;
using support::CsvTables;

constexpr unsigned kBooks = 150;

/// One seeded book, and its plan.
struct Planned {
    explicit Planned(unsigned number) : seed(number) {
        const Day days[] = {dayOf(2026, 9, 15), dayOf(2026, 9, 15), dayOf(2026, 9, 15),
                            dayOf(2026, 5, 20), dayOf(2026, 6, 24), dayOf(2026, 11, 20)};
        on = days[number % std::size(days)];
        tables = randomOperation(number, on);
        s = support::snapshotOf(tables, on);
        plan = advise(s, {});
    }

    unsigned seed;
    Day on;
    CsvTables tables;
    Snapshot s;
    Plan plan;
};

std::set<ColonyIx> heldIn(const Plan& plan) {
    std::set<ColonyIx> held;
    for (const Hold& hold : plan.holds) held.insert(hold.colony);
    return held;
}

/// All that a plan lays hands on: unions, shake-outs, divides, on either side.
std::set<ColonyIx> touchedBy(const Plan& plan) {
    std::set<ColonyIx> touched;
    for (const Union& u : plan.unions) touched.insert({u.moved, u.host, u.lower, u.upper});
    for (const ShakeOut& so : plan.shakeOuts) touched.insert({so.colony, so.into});
    for (const Divide& d : plan.divides) touched.insert(d.colony);
    return touched;
}

void expectHeldAreLeftAlone(const Plan& plan) {
    const std::set<ColonyIx> held = heldIn(plan);
    for (const ColonyIx c : touchedBy(plan)) EXPECT_FALSE(held.contains(c)) << "colony " << c.value;
}

TEST(PlanProperty, TheBooksHaveSomethingToPlan) {
    std::map<QString, int> lines;
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        const Planned p(seed);
        for (const QString& line : digestOf(p.s, p.plan)) ++lines[line.section(u' ', 0, 0)];
    }
    for (const char* kind :
         {"hold", "union", "shake-out", "separate", "alone", "unresolved", "boxes", "feed", "caution", "divide", "due"})
        EXPECT_GE(lines[QString::fromLatin1(kind)], 30) << kind;
}

TEST(PlanProperty, AHeldColonyIsInNoUnionShakeOutOrDivide) {
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        expectHeldAreLeftAlone(Planned(seed).plan);
    }
}

// Whoever the plan would lay hands on, once held, is left alone.
TEST(PlanProperty, AColonyOfThePlanIsLeftOutOnceItIsHeld) {
    int tried = 0;
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        const Planned p(seed);
        for (const ColonyIx c : touchedBy(p.plan)) {
            if ((static_cast<unsigned>(c.value) + seed) % 3 != 0) continue;
            CsvTables more = p.tables;
            more["results"].push_back({{"colony", p.s.colony(c).label},
                                       {"date", isoText(p.on)},
                                       {"disease", seed % 2 ? "afb" : "efb"},
                                       {"result", "order"},
                                       {"method", "inspector"},
                                       {"by", "Ines"},
                                       {"paper", "P-9"}});
            const Plan plan = advise(support::snapshotOf(more, p.on), {});
            EXPECT_TRUE(heldIn(plan).contains(c)) << "seed " << seed;
            expectHeldAreLeftAlone(plan);
            ++tried;
        }
    }
    EXPECT_GT(tried, 200);
}

TEST(PlanProperty, APinOfAHeldColonyIsRefused) {
    int refused = 0;
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        const Planned p(seed);
        const std::set<ColonyIx> held = heldIn(p.plan);
        for (const Union& u : p.plan.unions)
            for (const ColonyIx c : held) {
                if (p.s.placeOf(c)->yard != u.yard || ++refused % 5 != 0) continue;
                PlanRequest request;
                request.pins = {{u.moved, c}};
                EXPECT_THROW(advise(p.s, request), Error) << "seed " << seed;
            }
    }
    EXPECT_GT(refused, 300);
}

/// Each book changed by `change` has, by `names`, the plan that it had.
void expectSamePlan(const std::function<void(CsvTables&, Day&, unsigned)>& change,
                    const std::function<std::map<QString, QString>(const CsvTables&)>& names = {}) {
    int unions = 0;
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        const Planned p(seed);
        CsvTables changed = p.tables;
        Day on = p.on;
        change(changed, on, seed);
        const Snapshot s = support::snapshotOf(changed, on);
        const Plan plan = advise(s, {});
        EXPECT_EQ(digestOf(s, plan, names ? names(p.tables) : std::map<QString, QString>()).join(u'\n').toStdString(),
                  digestOf(p.s, p.plan).join(u'\n').toStdString())
            << "seed " << seed;
        unions += plan.totals.unions;
        if (testing::Test::HasFailure()) return;
    }
    EXPECT_GT(unions, 200);
}

void shuffle(std::vector<CsvRow>& rows, std::mt19937& random) {
    for (size_t left = rows.size(); left > 1; --left) std::swap(rows[left - 1], rows[random() % left]);
}

TEST(PlanProperty, TheOrderOfRowsMeansNothing) {
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        const Planned p(seed);
        CsvTables shuffled = p.tables;
        std::mt19937 random(seed);
        for (auto& [kind, rows] : shuffled) shuffle(rows, random);
        const Snapshot s = support::snapshotOf(shuffled, p.on);
        const Plan plan = advise(s, {});
        EXPECT_EQ(digestOf(s, plan).join(u'\n').toStdString(), digestOf(p.s, p.plan).join(u'\n').toStdString())
            << "seed " << seed;
        EXPECT_EQ(sentencesOf(plan).join(u'\n').toStdString(), sentencesOf(p.plan).join(u'\n').toStdString())
            << "seed " << seed;
    }
}

/// The values of `columns` → new ones in the same natural order.
std::map<QString, QString> newNames(const CsvTables& tables, const char* kind, const char* column, const char* word) {
    std::set<QString, NaturalLess> old;
    for (const CsvRow& row : tables.at(QString::fromLatin1(kind))) old.insert(row.at(QString::fromLatin1(column)));
    std::map<QString, QString> names;
    int number = 7;
    for (const QString& name : old) names[name] = QString::fromLatin1(word) + QString::number(number += 13);
    return names;
}

std::map<QString, QString> allNewNames(const CsvTables& tables) {
    auto names = newNames(tables, "colonies", "colony", "Hive ");
    names.merge(newNames(tables, "yards", "yard", "Site "));
    return names;
}

std::map<QString, QString> backwards(const std::map<QString, QString>& names) {
    std::map<QString, QString> old;
    for (const auto& [from, to] : names) old[to] = from;
    return old;
}

TEST(PlanProperty, OtherNamesInTheSameOrderChangeNamesAlone) {
    expectSamePlan(
        [](CsvTables& tables, Day&, unsigned) {
            const auto names = allNewNames(tables);
            for (auto& [kind, rows] : tables)
                for (CsvRow& row : rows)
                    for (const char* column : {"colony", "from", "to", "into", "yard"})
                        if (const auto found = names.find(row[QString::fromLatin1(column)]); found != names.end())
                            row[QString::fromLatin1(column)] = found->second;
        },
        [](const CsvTables& tables) { return backwards(allNewNames(tables)); });
}

using Place = std::pair<qint64, qint64>; ///< millimetres

/// Puts each place of each yard elsewhere, its gate too.
void place(CsvTables& tables, const std::function<Place(const QString&, Place)>& elsewhere) {
    const auto put = [&](CsvRow& row, const QString& x, const QString& y) {
        const auto millimetres = [&](const QString& column) { return qRound64(row[column].toDouble() * 1000); };
        const Place to = elsewhere(row["yard"], {millimetres(x), millimetres(y)});
        row[x] = QString::number(static_cast<double>(to.first) / 1000, 'f', 3);
        row[y] = QString::number(static_cast<double>(to.second) / 1000, 'f', 3);
    };
    for (CsvRow& row : tables["yards"]) put(row, "gate_x_m", "gate_y_m");
    for (const char* kind : {"colonies", "placements"})
        for (CsvRow& row : tables[QString::fromLatin1(kind)]) put(row, "x_m", "y_m");
}

TEST(PlanProperty, AYardMovedByWholeMillimetresHasTheSamePlan) {
    expectSamePlan([](CsvTables& tables, Day&, unsigned seed) {
        const qint64 by = 1 + 7919 * static_cast<qint64>(seed);
        place(tables, [&](const QString& yard, Place at) {
            return Place{at.first + by + yard.size(), at.second - 2 * by};
        });
    });
}

TEST(PlanProperty, AYardTurnedByQuarterTurnsHasTheSamePlan) {
    expectSamePlan([](CsvTables& tables, Day&, unsigned seed) {
        const int turns = 1 + static_cast<int>(seed % 3);
        place(tables, [&](const QString&, Place at) {
            for (int i = 0; i < turns; ++i) at = {-at.second, at.first};
            return at;
        });
        for (CsvRow& row : tables["colonies"])
            row["heading_deg"] = QString::number((row["heading_deg"].toInt() + 360 - 90 * turns) % 360);
    });
}

// From the first of May to the first of November there are 184 days in each year, as from August 20 to February 20.
TEST(PlanProperty, TheOtherHalfOfTheWorldHalfAYearLaterHasTheSamePlan) {
    expectSamePlan([](CsvTables& tables, Day& on, unsigned) {
        constexpr int kHalfYear = 184;
        on = on + kHalfYear;
        for (CsvRow& yard : tables["yards"]) yard["latitude_deg"].prepend(u'-');
        for (auto& [kind, rows] : tables)
            for (CsvRow& row : rows)
                for (const char* column : {"date", "since", "ended"})
                    if (QString& cell = row[QString::fromLatin1(column)]; !cell.isEmpty())
                        cell = isoText(*parseIsoDay(cell) + kHalfYear);
    });
}

} // namespace
} // namespace tests::rules
