#include "core/rules/hold.h"
#include "core/store/check_reach.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace core;
using tests::support::CsvTables;
using tests::support::randomBook;
using tests::support::RandomBook;

namespace {

CsvTables tablesOf(const RandomBook& book) {
    CsvTables tables;
    for (const auto& [name, text] : book.files) {
        const QString kind = QString::fromStdString(name).chopped(4); // ".csv"
        tables[kind] = tests::support::rowsOfCsv(QString::fromStdString(text));
    }
    return tables;
}

/// The snapshot as the store would read it: without the checks that are not needed.
Snapshot withNeededChecks(const Snapshot& all) {
    const std::vector<Day> from = store::checksNeededFrom(all);
    const auto clean = [&](const SnapCheck& c) {
        const int asked =
            c.broodFrames < 0 ? all.settings.checkMinFrames : std::min<int>(all.settings.checkMinFrames, c.broodFrames);
        return c.checked >= asked && !c.signs.broodTrouble();
    };
    Snapshot needed = all;
    std::erase_if(needed.checks, [&](const SnapCheck& c) {
        if (c.day >= from[static_cast<size_t>(c.colony.value)]) return false;
        const auto own = all.checksOf(c.colony);
        const auto later =
            std::find_if(own.begin(), own.end(), [&](const SnapCheck& o) { return o.day > c.day && clean(o); });
        return !all.colony(c.colony).living() || later != own.end();
    });
    return needed;
}

std::string text(const Snapshot& s, const std::vector<rules::Hold>& holds) {
    QStringList lines;
    for (const rules::Hold& h : holds)
        lines << s.colony(h.colony).shown + u' ' + rules::holdWord(h.kind) + QStringLiteral(": ") + h.because();
    return lines.join(u'\n').toStdString();
}

// A hold must never be lifted, nor one be kept, nor its reason change, because a check was not read.
TEST(CheckReach, HoldsAreTheSameWithoutTheChecksLeftOut) {
    size_t left = 0;
    size_t kept = 0;
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        const RandomBook book = randomBook(seed);
        const CsvTables tables = tablesOf(book);
        for (size_t i = 0; i < book.days.size(); i += 2) {
            const Day on = parseIsoDay(QString::fromStdString(book.days[i])).value();
            const Snapshot all = tests::support::snapshotOf(tables, on);
            const Snapshot needed = withNeededChecks(all);
            left += all.checks.size() - needed.checks.size();
            kept += needed.checks.size();
            ASSERT_EQ(text(all, rules::holds(all)), text(needed, rules::holds(needed)))
                << "seed " << seed << " on " << book.days[i];
        }
    }
    EXPECT_GT(left, 0u); // else nothing was tried
    EXPECT_GT(kept, 0u);
}

TEST(CheckReach, LeavesOutOldChecksOfColoniesThatNothingLinks) {
    Snapshot s;
    s.on = dayOf(2026, 9, 20);
    s.boxKinds.push_back({});
    s.yards.resize(2);
    s.colonies.resize(4);
    s.colonies[3].ended = dayOf(2026, 8, 1);
    for (qint32 i = 0; i < 4; ++i) {
        SnapStay stay;
        stay.colony = {i};
        stay.yard = {i == 2 ? 1 : 0};
        s.stays.push_back(stay);
    }
    const Day never = s.on + 1;
    EXPECT_EQ(store::checksNeededFrom(s), (std::vector<Day>{s.on - 150, s.on - 150, s.on - 150, never}));
    // Feed spoils no check; bees do, and ask for the giver's checks of 150 days before the gift.
    s.transfers = {{dayOf(2026, 7, 1), {3}, {0}, TransferKind::Feed}};
    EXPECT_EQ(store::checksNeededFrom(s)[3], never);
    s.transfers = {{dayOf(2026, 7, 1), {3}, {0}, TransferKind::Bees}};
    EXPECT_EQ(store::checksNeededFrom(s)[3], dayOf(2026, 7, 1) - 150);
    s.transfers = {{s.on - 151, {3}, {0}, TransferKind::Bees}};
    EXPECT_EQ(store::checksNeededFrom(s)[3], never);
    // A sign asks for all of its yard, from 548 days before it.
    s.transfers.clear();
    Signs afb;
    afb.add(Sign::Afb);
    s.signs = {{{0}, dayOf(2026, 7, 1), afb}};
    const Day window = dayOf(2026, 7, 1) - 548;
    EXPECT_EQ(store::checksNeededFrom(s), (std::vector<Day>{window, window, s.on - 150, window}));
}

} // namespace
