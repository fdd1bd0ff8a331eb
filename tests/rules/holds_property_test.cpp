#include "core/rules/hold.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

namespace tests::rules {
namespace {

using support::CsvRow;
using support::CsvTables;

constexpr int kBooks = 60;

CsvTables tablesOf(const support::RandomBook& book) {
    CsvTables tables;
    for (const auto& [file, text] : book.files)
        tables[QString::fromStdString(file).chopped(4)] = support::rowsOfCsv(QString::fromStdString(text));
    return tables;
}

std::set<std::string> heldColonies(const CsvTables& tables, core::Day on) {
    const core::Snapshot s = support::snapshotOf(tables, on);
    std::set<std::string> held;
    for (const core::rules::Hold& hold : core::rules::holds(s)) held.insert(s.colony(hold.colony).shown.toStdString());
    return held;
}

// A record that only ever speaks against a colony, on a day of its life.
void addTrouble(CsvTables& tables, const QString& colony, core::Day day, size_t which) {
    CsvRow row{{"colony", colony}, {"date", isoText(day)}, {"by", "Ines"}, {"paper", "P-9"}};
    constexpr const char* kResults[][3] = {{"afb", "positive", "laboratory"},
                                           {"afb", "positive", "field"},
                                           {"efb", "positive", "laboratory"},
                                           {"afb", "order", "inspector"}};
    const auto& result = kResults[which % std::size(kResults)];
    row["disease"] = QString::fromLatin1(result[0]);
    row["result"] = QString::fromLatin1(result[1]);
    row["method"] = QString::fromLatin1(result[2]);
    tables["results"].push_back(row);
}

// Source: own calculation: nothing of rule 4.4 frees a colony for a record against it.
TEST(HoldProperty, APositiveOrAnOrderNeverFreesTheColonyItNames) {
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        const support::RandomBook book = support::randomBook(seed);
        const CsvTables tables = tablesOf(book);
        std::minstd_rand random(seed);
        const core::Day on = *core::parseIsoDay(QString::fromStdString(book.days[random() % book.days.size()]));
        const core::Snapshot s = support::snapshotOf(tables, on);
        const auto before = heldColonies(tables, on);
        for (size_t i = 0; i < s.livingCount(); ++i) {
            CsvTables more = tables;
            const core::SnapColony& colony = s.colonies[i];
            const auto life = static_cast<unsigned>(on - colony.since) + 1;
            const QString name = colony.label + u'@' + isoText(colony.since);
            addTrouble(more, name, colony.since + static_cast<int>(random() % life), random());
            const auto after = heldColonies(more, on);
            const std::string shown = colony.shown.toStdString();
            EXPECT_TRUE(!before.contains(shown) || after.contains(shown)) << "seed " << seed << ' ' << shown;
        }
    }
}

TEST(HoldProperty, ASignOrADoubtNeverFreesTheColonyItNames) {
    for (unsigned seed = 1; seed <= kBooks; ++seed) {
        const support::RandomBook book = support::randomBook(seed);
        const CsvTables tables = tablesOf(book);
        std::minstd_rand random(seed);
        const core::Day on = *core::parseIsoDay(QString::fromStdString(book.days[random() % book.days.size()]));
        const auto before = heldColonies(tables, on);
        const auto visits = tables.find(QStringLiteral("visits"));
        for (size_t i = 0; visits != tables.end() && i < visits->second.size(); i += 7) {
            CsvTables more = tables;
            constexpr const char* kSigns[] = {"afb", "efb", "brood-doubt"};
            CsvRow& row = more[QStringLiteral("visits")][i];
            row["signs"] = row["signs"] + u' ' + QString::fromLatin1(kSigns[random() % 3]);
            const auto after = heldColonies(more, on);
            for (const std::string& colony : before)
                if (colony == row["colony"].toStdString()) {
                    EXPECT_TRUE(after.contains(colony)) << "seed " << seed << " row " << i;
                }
        }
    }
}

TEST(HoldProperty, ASnapshotGivesTheSameHoldsTwice) {
    const CsvTables tables = tablesOf(support::randomBook(5));
    const core::Snapshot s = support::snapshotOf(tables, core::dayOf(2026, 6, 1));
    const auto first = core::rules::holds(s);
    const auto second = core::rules::holds(s);
    ASSERT_EQ(first.size(), second.size());
    ASSERT_FALSE(first.empty());
    for (size_t i = 0; i < first.size(); ++i) EXPECT_EQ(first[i].because(), second[i].because());
}

} // namespace
} // namespace tests::rules
