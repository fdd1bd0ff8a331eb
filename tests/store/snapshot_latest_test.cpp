#include "core/store/snapshot_reader.h"
#include "tests/store/test_book.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::store;

namespace {

/// One yard with colonies A and B since 1 May 2025, and visits by day.
class Latest : public testing::Test {
protected:
    TestBook book;
    Yard north = book.yard("North");
    Colony a = book.colony(north, "A", day("2025-05-01"));
    Colony b = book.colony(north, "B", day("2025-05-01"));

    void visited(const char* on, const std::function<void(Visit&)>& set) {
        Visit v;
        v.colony = a.id;
        v.day = day(on);
        set(v);
        book.visit(v);
    }
    SnapLatest on(const char* iso) { return readSnapshot(book.db(), day(iso)).latest[0]; }
};

TEST_F(Latest, IsEmptyWithoutVisits) {
    const SnapLatest l = on("2026-09-20");
    EXPECT_FALSE(l.visit || l.count || l.weight || l.stores || l.brood || l.mites);
    EXPECT_TRUE(l.queen.empty());
    EXPECT_EQ(l.boxes, 1);
}

TEST_F(Latest, TakesEachKindFromItsOwnVisit) {
    visited("2026-08-01", [](Visit& v) {
        v.beesTop = Quarters{13};
        v.upperBeesBottom = Quarters{0};
        v.stores = Quarters{20};
        v.broodFrames = 6;
        v.boxes = 2;
    });
    visited("2026-08-05", [](Visit& v) {
        v.gross = Decagrams{3250};
        v.supers = 1;
    });
    visited("2026-08-09", [](Visit& v) { v.upperStores = Quarters{0}; });
    visited("2026-08-10", [](Visit& v) {
        v.mites = 0;
        v.miteSample = 300;
    });
    visited("2026-08-11", [](Visit& v) { v.broodFrames = 0; });
    visited("2026-08-12", [](Visit& v) { v.signs.add(Sign::Nosema); });
    visited("2026-09-21", [](Visit& v) { // after the day
        v.beesTop = Quarters{1};
        v.gross = Decagrams{1};
        v.stores = Quarters{1};
        v.broodFrames = 1;
        v.mites = 1;
        v.miteSample = 1;
        v.queen = QueenSeen::None;
        v.boxes = 1;
    });
    const SnapLatest l = on("2026-09-20");
    EXPECT_EQ(l.visit, day("2026-08-12"));
    EXPECT_TRUE(l.visitSigns.has(Sign::Nosema));
    ASSERT_TRUE(l.count && l.weight && l.stores && l.brood && l.mites);
    EXPECT_EQ(l.count->day, day("2026-08-01"));
    EXPECT_EQ(l.count->top, Quarters{13});
    EXPECT_EQ(l.count->bottom, std::nullopt);
    EXPECT_EQ(l.count->upperTop, std::nullopt);
    EXPECT_EQ(l.count->upperBottom, Quarters{0});
    EXPECT_EQ(l.count->stores, Quarters{20});
    EXPECT_EQ(l.count->upperStores, std::nullopt);
    EXPECT_EQ(l.count->broodFrames, 6);
    EXPECT_EQ(l.count->boxes, 2);
    EXPECT_EQ(l.weight->day, day("2026-08-05"));
    EXPECT_EQ(l.weight->gross, Decagrams{3250});
    EXPECT_EQ(l.weight->supers, 1);
    EXPECT_EQ(l.stores->day, day("2026-08-09"));
    EXPECT_EQ(l.stores->stores, std::nullopt);
    EXPECT_EQ(l.stores->upper, Quarters{0});
    EXPECT_EQ(l.mites->mites, 0);
    EXPECT_EQ(l.mites->sample, 300);
    EXPECT_EQ(l.brood->day, day("2026-08-11"));
    EXPECT_EQ(l.brood->broodFrames, 0);
    EXPECT_TRUE(l.queen.empty());
    EXPECT_EQ(l.boxes, 2);
}

TEST_F(Latest, QueenGoesBackToWhatSettlesIt) {
    const auto queen = [&](const char* on, QueenSeen seen) { visited(on, [&](Visit& v) { v.queen = seen; }); };
    queen("2026-05-01", QueenSeen::Unknown);
    queen("2026-06-01", QueenSeen::None);
    EXPECT_EQ(on("2026-06-30").queen.size(), 2u); // none settles nothing: from the first on
    queen("2026-07-01", QueenSeen::LayingWorkers);
    queen("2026-08-01", QueenSeen::DroneLayer);
    queen("2026-08-10", QueenSeen::Unknown);
    const auto seen = on("2026-09-20").queen;
    ASSERT_EQ(seen.size(), 3u);
    EXPECT_EQ(seen[0].day, day("2026-07-01"));
    EXPECT_EQ(seen[0].seen, QueenSeen::LayingWorkers);
    EXPECT_EQ(seen[2].seen, QueenSeen::Unknown);
    for (const QueenSeen settled : {QueenSeen::Seen, QueenSeen::Eggs, QueenSeen::Virgin}) {
        TestBook other;
        const Colony c = other.colony(other.yard("North"), "C", day("2025-05-01"));
        Visit v;
        v.colony = c.id;
        v.day = day("2026-05-01");
        v.queen = QueenSeen::None;
        other.visit(v);
        v.day = day("2026-06-01");
        v.queen = settled;
        other.visit(v);
        EXPECT_EQ(readSnapshot(other.db(), day("2026-09-20")).latest[0].queen.size(), 1u);
    }
}

TEST_F(Latest, BoxesFollowVisitsAndUnions) {
    visited("2026-07-01", [](Visit& v) { v.boxes = 1; });
    visited("2026-08-01", [](Visit& v) { v.beesTop = Quarters{8}; });
    book.unite(b, a, day("2026-08-10"));
    EXPECT_EQ(on("2026-08-09").boxes, 1);
    EXPECT_EQ(on("2026-08-10").boxes, 2);
    EXPECT_EQ(on("2026-08-10").count->boxes, 1) << "on the day of the count it was in one";
    visited("2026-08-20", [](Visit& v) {
        v.boxes = 1;
        v.beesTop = Quarters{8};
    });
    EXPECT_EQ(on("2026-08-20").boxes, 1);
    EXPECT_EQ(on("2026-08-20").count->boxes, 1);
}

TEST_F(Latest, AtATieTheUnionSaysTheBoxes) {
    visited("2026-08-10", [](Visit& v) { v.boxes = 1; });
    book.unite(b, a, day("2026-08-10"));
    EXPECT_EQ(on("2026-08-10").boxes, 2);
}

TEST_F(Latest, BoxesAtFirstAreTheColonysOwn) {
    Colony c = book.colony(north, "C", day("2026-05-01"));
    Colony two = c;
    two.broodBoxes = 2;
    writeRow(book.db(), {Table::Colony, c.id.value, toRow(c), toRow(two)});
    EXPECT_EQ(readSnapshot(book.db(), day("2026-05-01")).latest[2].boxes, 2);
}

TEST_F(Latest, AnEndedColonyHasNone) {
    visited("2026-08-10", [](Visit& v) { v.beesTop = Quarters{8}; });
    book.end(a, day("2026-09-01"), EndKind::Dead);
    const Snapshot s = readSnapshot(book.db(), day("2026-09-01"));
    ASSERT_EQ(s.latest.size(), 2u);
    EXPECT_EQ(s.colonies[1].label, "A");
    EXPECT_FALSE(s.latest[1].visit || s.latest[1].count);
}

TEST_F(Latest, SignsOfDiseaseAreKeptForAllTime) {
    const auto sign = [&](const char* on, Sign first, Sign second) {
        visited(on, [&](Visit& v) {
            v.signs.add(first);
            v.signs.add(second);
        });
    };
    sign("2025-07-01", Sign::BroodDoubt, Sign::Chalkbrood);
    sign("2025-06-01", Sign::Afb, Sign::Efb);
    sign("2026-09-21", Sign::Afb, Sign::Afb);
    const Snapshot s = readSnapshot(book.db(), day("2026-09-20"));
    ASSERT_EQ(s.signs.size(), 2u);
    EXPECT_EQ(s.signs[0].day, day("2025-06-01"));
    EXPECT_TRUE(s.signs[0].signs.has(Sign::Afb) && s.signs[0].signs.has(Sign::Efb));
    EXPECT_TRUE(s.signs[1].signs.has(Sign::BroodDoubt) && s.signs[1].signs.has(Sign::Chalkbrood));
}

TEST_F(Latest, ChecksGoBackToTheLatestCleanOne) {
    const auto check = [&](const char* on, int checked, std::optional<int> brood, bool doubt = false) {
        visited(on, [&](Visit& v) {
            v.broodChecked = checked;
            v.broodFrames = brood;
            if (doubt) v.signs.add(Sign::Chalkbrood);
        });
    };
    check("2025-06-01", 5, 5);
    check("2025-07-01", 2, 2, true); // all there were: clean, chalkbrood or not
    check("2025-08-01", 2, 5);       // too few
    check("2025-09-01", 0, 5);       // none
    const Snapshot s = readSnapshot(book.db(), day("2026-09-20"));
    ASSERT_EQ(s.checks.size(), 2u);
    EXPECT_EQ(s.checks[0].day, day("2025-07-01"));
    EXPECT_EQ(s.checks[0].broodFrames, 2);
    EXPECT_TRUE(s.checks[0].signs.has(Sign::Chalkbrood));
    EXPECT_EQ(s.checks[1].day, day("2025-08-01"));
    EXPECT_EQ(readSnapshot(book.db(), day("2026-09-20"), Checks::All).checks.size(), 3u);
}

} // namespace
