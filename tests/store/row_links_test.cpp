#include "core/model/references.h"
#include "core/store/row_links.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

using namespace core;
using namespace core::store;

namespace {

std::string columnOf(Table table, size_t column) {
    return std::string(tableName(table)) + '.' + columnsOf(table)[column];
}

TEST(References, AreThoseOfTheSchema) {
    TestBook book;
    std::set<std::string> said;
    for (const Reference& r : references()) said.insert(columnOf(r.from, r.column) + " to " + tableName(r.to));
    EXPECT_EQ(said.size(), references().size());
    std::set<std::string> found;
    for (int i = 0; i < kTableCount; ++i) {
        const std::string table = tableName(static_cast<Table>(i));
        Statement keys = book.db().prepare("PRAGMA foreign_key_list(" + table + ")");
        while (keys.step())
            found.insert(table + '.' + keys.text(3).toStdString() + " to " + keys.text(2).toStdString());
    }
    EXPECT_EQ(said, found);
}

/// But for the end of a colony by its lineage, which is refused by the colony's own row.
TEST(UniqueKeys, AreThoseOfTheSchema) {
    TestBook book;
    std::multiset<std::string> said;
    for (const UniqueKey& key : uniqueKeys()) {
        std::string name = tableName(key.table);
        for (const size_t column : key.columns) name += std::string(" ") + columnsOf(key.table)[column];
        said.insert(name + (key.onlyColumn >= 0 ? " partly" : ""));
    }
    std::multiset<std::string> found;
    for (int i = 0; i < kTableCount; ++i) {
        const std::string table = tableName(static_cast<Table>(i));
        Statement indexes = book.db().prepare("PRAGMA index_list(" + table + ")");
        while (indexes.step()) {
            if (indexes.integer(2) == 0 || indexes.text(1) == "lineage_end") continue;
            std::string name = table;
            Statement columns = book.db().prepare("PRAGMA index_info(" + indexes.text(1).toStdString() + ")");
            while (columns.step()) name += ' ' + columns.text(2).toStdString();
            found.insert(name + (indexes.integer(4) != 0 ? " partly" : ""));
        }
    }
    EXPECT_EQ(said, found);
}

TEST(RowLinks, FindsWhatPointsToARowButNotWhatGoesWithIt) {
    TestBook book;
    const Yard yard = book.yard("North");
    const Colony colony = book.colony(yard, "1", day("2026-05-01"));
    const Visit first = book.visit(colony, day("2026-06-01"));
    const IdRange it{Table::Colony, colony.id.value, 1};
    RowGroup with;
    with.rows = {{Table::Placement, 1}};
    EXPECT_EQ(rowPointingTo(book.db(), it, with), (RowKey{Table::Visit, first.id.value}));
    with.ranges = {{Table::Visit, 1, 1}};
    EXPECT_EQ(rowPointingTo(book.db(), it, with), std::nullopt);
    book.visit(colony, day("2026-06-02"));
    EXPECT_EQ(rowPointingTo(book.db(), it, with), (RowKey{Table::Visit, 2}));
}

TEST(RowLinks, FindsWhatIsMissingAndWhatIsInTheWay) {
    TestBook book;
    const Yard yard = book.yard("North");
    const Colony colony = book.colony(yard, "1", day("2026-05-01"));
    Visit visit = book.visit(colony, day("2026-06-01"));
    EXPECT_EQ(rowInPlaceOf(book.db(), {Table::Visit, 9}, toRow(visit), {}), (RowKey{Table::Visit, 1}));
    EXPECT_EQ(rowInPlaceOf(book.db(), {Table::Visit, 1}, toRow(visit), {}), std::nullopt) << "itself";
    EXPECT_EQ(missingTarget(book.db(), Table::Visit, toRow(visit), {}), std::nullopt);
    visit.colony = {7};
    EXPECT_EQ(missingTarget(book.db(), Table::Visit, toRow(visit), {}), (RowKey{Table::Colony, 7}));
    RowGroup with;
    with.rows = {{Table::Colony, 7}};
    EXPECT_EQ(missingTarget(book.db(), Table::Visit, toRow(visit), with), std::nullopt);
    Colony heir = colony;
    heir.since = day("2026-08-01");
    EXPECT_EQ(rowInPlaceOf(book.db(), {Table::Colony, 9}, toRow(heir), {}), (RowKey{Table::Colony, 1}))
        << "two living ones of one label";
    heir.ended = day("2026-09-01");
    heir.end = EndKind::Dead;
    EXPECT_EQ(rowInPlaceOf(book.db(), {Table::Colony, 9}, toRow(heir), {}), std::nullopt);
}

} // namespace
