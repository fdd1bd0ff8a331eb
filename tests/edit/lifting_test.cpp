#include "core/edit/correction_guard.h"
#include "tests/support/csv_cells.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

namespace tests::edit {

namespace {

using namespace core;
using support::CsvTables;

CsvTables tablesOf(const support::RandomBook& book) {
    CsvTables tables;
    for (const auto& [file, text] : book.files)
        tables[QString::fromStdString(file).chopped(4)] = support::rowsOfCsv(QString::fromStdString(text));
    return tables;
}

bool harmlessCheck(const support::CsvRow& visit) {
    const QString signs = support::cell(visit, u"signs");
    for (const char* trouble : {"afb", "efb", "brood-doubt"})
        if (signs.contains(QLatin1StringView(trouble))) return false;
    return !support::cell(visit, u"brood_checked").isEmpty();
}

/// The guard lets the undo of a visit without a sign of brood disease pass unjudged. That is safe only while no hold of
/// the guarded kinds ends for want of a brood check.
TEST(LiftedHolds, NoneGoesWithABroodCheckThatIsTakenAway) {
    int tried = 0;
    int standing = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const auto book = support::randomBook(seed);
        CsvTables tables = tablesOf(book);
        for (size_t d = seed % 7; d < book.days.size(); d += 7) {
            const Day on = parseIsoDay(QString::fromStdString(book.days[d])).value();
            const auto before = core::edit::standingHolds(support::snapshotOf(tables, on));
            standing += static_cast<int>(before.size());
            for (size_t v = d % 5; v < tables["visits"].size(); v += 5) {
                if (!harmlessCheck(tables["visits"][v])) continue;
                CsvTables without = tables;
                without["visits"].erase(without["visits"].begin() + static_cast<std::ptrdiff_t>(v));
                const auto lifted = core::edit::liftedHolds(before, support::snapshotOf(without, on));
                EXPECT_TRUE(lifted.isEmpty()) << "seed " << seed << ", " << book.days[d] << ", visit " << v << ": "
                                              << lifted.join(u' ').toStdString();
                ++tried;
            }
        }
    }
    EXPECT_GT(tried, 500);
    EXPECT_GT(standing, 500);
}

} // namespace

} // namespace tests::edit
