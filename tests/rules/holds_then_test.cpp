#include "core/rules/holds_then.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

namespace tests::rules {
namespace {

using namespace core;
using namespace core::rules;

support::CsvTables tablesOf(const support::RandomBook& book) {
    support::CsvTables tables;
    for (const auto& [file, text] : book.files)
        tables[QString::fromStdString(file).chopped(4)] = support::rowsOfCsv(QString::fromStdString(text));
    return tables;
}

std::string nameOf(const SnapColony& c) { return (c.label + u'@' + isoText(c.since)).toStdString(); }

std::vector<std::string> linesOf(const Snapshot& s, const std::vector<Hold>& holds) {
    std::vector<std::string> out;
    for (const Hold& h : holds) out.push_back(nameOf(s.colony(h.colony)) + ' ' + holdWord(h.kind).toStdString());
    std::ranges::sort(out);
    return out;
}

// Source: own calculation: the rules themselves on the snapshot of each day.
TEST(HoldsThen, AreThoseOfEachDaysOwnSnapshot) {
    size_t held = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const support::RandomBook book = support::randomBook(seed);
        const support::CsvTables tables = tablesOf(book);
        const Snapshot whole = support::snapshotOf(tables, dayOf(9999, 12, 31));
        for (size_t i = seed % 3; i < book.days.size(); i += 3) {
            const Day on = parseIsoDay(QString::fromStdString(book.days[i])).value();
            const Snapshot own = support::snapshotOf(tables, on);
            const Snapshot then = forHoldsThen(whole, on);
            const auto expected = linesOf(own, holds(own));
            ASSERT_EQ(linesOf(then, holds(then)), expected) << "seed " << seed << " on " << book.days[i];
            ASSERT_EQ(holdsThen(whole, on).size(), expected.size());
            held += expected.size();
        }
    }
    EXPECT_GT(held, 1000u); // else nothing was tried
}

} // namespace
} // namespace tests::rules
