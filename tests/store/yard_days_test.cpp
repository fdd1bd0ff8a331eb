#include "core/store/snapshot_reader.h"
#include "core/store/yard_days.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

using namespace core;
using namespace core::store;

namespace {

std::map<std::pair<Day, Recorded>, int> countsOf(TestBook& book, const Yard& yard) {
    std::map<std::pair<Day, Recorded>, int> out;
    Day before{};
    for (const RecordedDay& r : recordedDays(book.db(), yard.id)) {
        EXPECT_LE(before, r.day);
        before = r.day;
        const bool first = out.emplace(std::pair(r.day, r.what), r.count).second;
        EXPECT_TRUE(first) << "a day and kind comes once";
    }
    return out;
}

TEST(YardDays, CountWhatIsRecordedOfTheHivesThatStoodThere) {
    TestBook book;
    const Yard kiln = book.yard("Kiln Field");
    const Yard salt = book.yard("Salt Lane");
    const Colony a = book.colony(kiln, "A", day("2026-05-01"));
    Colony b = book.colony(kiln, "B", day("2026-05-01"));
    Colony s = book.colony(salt, "S", day("2026-05-02"));
    book.visit(a, day("2026-06-01"));
    book.visit(b, day("2026-06-01"));
    book.visit(s, day("2026-06-01"));
    book.carry(a, book.stand(kiln, "9", {5000, 0}), day("2026-06-10"));
    book.carry(a, book.stand(salt, "8", {5000, 0}), day("2026-07-01"));
    book.visit(a, day("2026-07-01")); // stood in both yards that day
    book.visit(a, day("2026-07-02"));
    book.unite(b, a, day("2026-07-01"));
    book.end(s, day("2026-08-01"), EndKind::Dead);
    Result order;
    order.yard = kiln.id;
    order.day = day("2026-08-05");
    order.verdict = Verdict::Order;
    order.method = Method::Inspector;
    order.by = "Ines";
    order.paper = "P-1";
    book.add(order);

    const std::map<std::pair<Day, Recorded>, int> atKiln{
        {{day("2026-05-01"), Recorded::Began}, 2},      {{day("2026-06-01"), Recorded::Visit}, 2},
        {{day("2026-06-10"), Recorded::Carried}, 1},    {{day("2026-07-01"), Recorded::Visit}, 1},
        {{day("2026-07-01"), Recorded::CarriedOut}, 1}, {{day("2026-07-01"), Recorded::United}, 1},
        {{day("2026-08-05"), Recorded::Result}, 1}};
    EXPECT_EQ(countsOf(book, kiln), atKiln);
    const std::map<std::pair<Day, Recorded>, int> atSalt{
        {{day("2026-05-02"), Recorded::Began}, 1},  {{day("2026-06-01"), Recorded::Visit}, 1},
        {{day("2026-07-01"), Recorded::Visit}, 1},  {{day("2026-07-01"), Recorded::CarriedIn}, 1},
        {{day("2026-07-01"), Recorded::United}, 1}, {{day("2026-07-02"), Recorded::Visit}, 1},
        {{day("2026-08-01"), Recorded::Ended}, 1}};
    EXPECT_EQ(countsOf(book, salt), atSalt);

    const auto uses = standUses(book.db(), kiln.id);
    ASSERT_EQ(uses.size(), 3u);
    EXPECT_TRUE(std::ranges::any_of(
        uses, [](const StandUse& u) { return u.first == day("2026-06-10") && u.last == day("2026-07-01"); }));
}

TEST(YardDays, AGlanceHoldsTheHivesOfItsYard) {
    TestBook book;
    const Yard kiln = book.yard("Kiln Field");
    const Yard salt = book.yard("Salt Lane");
    Colony old = book.colony(kiln, "A", day("2026-05-01"));
    book.end(old, day("2026-05-20"), EndKind::Dead);
    const Colony a = book.colony(kiln, "A", day("2026-05-21"));
    const Colony s = book.colony(salt, "S", day("2026-05-02"));
    book.carry(s, book.stand(kiln, "9", {5000, 0}), day("2026-06-10"), 90);
    for (const char* on : {"2026-05-10", "2026-06-01", "2026-06-10", "2026-07-01"}) {
        const Snapshot all = readSnapshot(book.db(), day(on));
        const Snapshot part = readYardGlance(book.db(), kiln.id, day(on));
        size_t here = 0;
        for (size_t i = 0; i < all.livingCount(); ++i) {
            const SnapStay* stay = all.placeOf({static_cast<qint32>(i)});
            if (all.yard(stay->yard).id != kiln.id) continue;
            ++here;
            const auto found = part.livingNamed(all.colonies[i].shown);
            ASSERT_TRUE(found) << on;
            EXPECT_EQ(part.colony(*found).shown, all.colonies[i].shown);
            ASSERT_NE(part.placeOf(*found), nullptr);
            EXPECT_EQ(part.placeOf(*found)->stand, stay->stand);
            EXPECT_EQ(part.placeOf(*found)->headingDeg, stay->headingDeg);
            EXPECT_EQ(part.latestOf(*found).boxes, all.latest[i].boxes);
        }
        EXPECT_GT(here, 0u);
    }
}

} // namespace
