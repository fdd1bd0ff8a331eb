#include "core/store/backup.h"
#include "core/store/database.h"
#include "core/store/history_rows.h"
#include "core/store/reads.h"
#include "core/store/row_store.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

using namespace core;
using namespace core::store;

namespace {

QStringList filesIn(const QTemporaryDir& dir) {
    return QDir(dir.path()).entryList(QDir::Files | QDir::Hidden | QDir::NoDotAndDotDot);
}

TEST(Database, CreatesAnEmptyBookWithTheShippedBoxKinds) {
    QTemporaryDir dir;
    const QString path = dir.filePath("a b?c#d%20é.yardwright");
    {
        const auto db = Database::create(path);
        EXPECT_FALSE(db->readOnly());
        EXPECT_EQ(db->bookId().size(), 36);
        const auto kinds = boxKinds(*db);
        ASSERT_EQ(kinds.size(), 5u);
        EXPECT_EQ(kinds[0].name, "dadant-12");
        EXPECT_EQ(kinds[1].name, "langstroth-8");
    }
    EXPECT_EQ(filesIn(dir), QStringList("a b?c#d%20é.yardwright"));
}

TEST(Database, WritesReadsChangesAndDeletesARow) {
    QTemporaryDir dir;
    const auto db = Database::create(dir.filePath("a.yardwright"));
    Yard yard;
    yard.id = {1};
    yard.name = "North";
    yard.latitudeDeg = 47.25;
    Transaction transaction(*db);
    writeRow(*db, {Table::Yard, 1, std::nullopt, toRow(yard)});
    EXPECT_EQ(find<Yard>(*db, 1), yard);
    Yard later = yard;
    later.note = "by the brook";
    writeRow(*db, {Table::Yard, 1, toRow(yard), toRow(later)});
    EXPECT_EQ(yardNamed(*db, u"NORTH"), later);
    writeRow(*db, {Table::Yard, 1, toRow(later), std::nullopt});
    EXPECT_EQ(find<Yard>(*db, 1), std::nullopt);
    transaction.commit();
}

} // namespace
