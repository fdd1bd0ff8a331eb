#include "core/rules/holds_over_time.h"
#include "core/rules/holds_then.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

namespace tests::rules {
namespace {

using namespace core;
using namespace core::rules;

Snapshot wholeOf(const support::RandomBook& book) {
    support::CsvTables tables;
    for (const auto& [file, text] : book.files)
        tables[QString::fromStdString(file).chopped(4)] = support::rowsOfCsv(QString::fromStdString(text));
    return support::snapshotOf(tables, dayOf(9999, 12, 31));
}

bool within(const std::vector<HoldSpan>& spans, HoldKind kind, Day on) {
    return std::ranges::any_of(spans, [&](const HoldSpan& s) { return s.kind == kind && s.from <= on && on <= s.to; });
}

// Source: own calculation: the rules themselves on each of the days.
TEST(HoldsOverTime, AreThoseOfEachDay) {
    size_t held = 0;
    for (std::uint64_t seed = 1; seed <= 2; ++seed) {
        const support::RandomBook book = support::randomBook(seed);
        const Snapshot whole = wholeOf(book);
        const Day last = parseIsoDay(QString::fromStdString(book.days.back())).value();
        const Day first = last - 70;
        for (size_t i = 0; i < whole.colonies.size(); i += 9) {
            const ColonyId colony = whole.colonies[i].id;
            const auto each = holdsOverTime(whole, colony, first, last, 1);
            const auto weekly = holdsOverTime(whole, colony, first, last, 7);
            for (Day on = first; on <= last; on = on + 1) {
                const auto all = holdsThen(whole, on);
                for (int kind = 0; kind < kHoldKindCount; ++kind) {
                    const HeldThen asked{colony, static_cast<HoldKind>(kind)};
                    const bool is = std::ranges::find(all, asked) != all.end();
                    held += is;
                    EXPECT_EQ(within(each, asked.kind, on), is)
                        << "seed " << seed << ", day " << isoText(on).toStdString();
                    if (on == first || on == last) {
                        EXPECT_EQ(within(weekly, asked.kind, on), is);
                    }
                }
            }
            for (const HoldSpan& span : weekly) {
                const auto edge = [&](Day on) {
                    const auto all = holdsThen(whole, on);
                    return std::ranges::find(all, HeldThen{colony, span.kind}) != all.end();
                };
                EXPECT_TRUE(edge(span.from) && edge(span.to)) << "its first and last day are exact";
                EXPECT_TRUE(span.from == first || !edge(span.from - 1));
                EXPECT_TRUE(span.to == last || !edge(span.to + 1));
            }
        }
    }
    EXPECT_GT(held, 100u); // else nothing was tried
}

TEST(HoldsOverTime, EndAtOnceWhereTheyAreStopped) {
    const support::RandomBook book = support::randomBook(3);
    const Snapshot whole = wholeOf(book);
    int asked = 0;
    const auto spans = holdsOverTime(whole, whole.colonies[0].id, dayOf(2024, 1, 1), dayOf(2026, 1, 1), 1,
                                     [&] { return ++asked > 3; });
    EXPECT_TRUE(spans.empty());
    EXPECT_EQ(asked, 4);
    EXPECT_TRUE(holdsOverTime(whole, {987654}, dayOf(2024, 1, 1), dayOf(2026, 1, 1), 7).empty());
}

} // namespace
} // namespace tests::rules
