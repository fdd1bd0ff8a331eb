#include "tests/rules/hold_book.h"

#include <gtest/gtest.h>

// Each limit of rule 4.4 a day below, at and above it.
// Source of every expectation here: own calculation, days counted from the limits of core/rules/README.md.

namespace tests::rules {
namespace {

constexpr const char* kDay = "2026-09-20";

// A confirmed and destroyed in Home on 2026-07-10.
HoldBook withSource() {
    HoldBook book;
    book.ended("A", "Home", "2026-07-10").result("A", "2026-07-10", "positive");
    return book;
}

bool uncheckedAfter(const QString& check, const QString& on, const char* yard = "Home") {
    return HoldBook().colony("B", yard).check("B", check).held("B", "brood-not-checked", on);
}

TEST(CheckLimits, ACheckCountsFor150Days) {
    EXPECT_FALSE(uncheckedAfter(moved("2026-10-15", -149), "2026-10-15"));
    EXPECT_FALSE(uncheckedAfter(moved("2026-10-15", -150), "2026-10-15"));
    EXPECT_TRUE(uncheckedAfter(moved("2026-10-15", -151), "2026-10-15"));
}

TEST(CheckLimits, ACheckBeforeTheSeasonCountsFor30Days) {
    EXPECT_FALSE(uncheckedAfter(moved("2026-05-20", -29), "2026-05-20"));
    EXPECT_FALSE(uncheckedAfter(moved("2026-05-20", -30), "2026-05-20"));
    EXPECT_TRUE(uncheckedAfter(moved("2026-05-20", -31), "2026-05-20"));
}

TEST(CheckLimits, TheSeasonBeginsInMayOrInNovember) {
    EXPECT_TRUE(uncheckedAfter("2026-04-30", "2026-07-01"));
    EXPECT_FALSE(uncheckedAfter("2026-05-01", "2026-07-01"));
    EXPECT_TRUE(uncheckedAfter("2026-10-31", "2027-01-10", "South"));
    EXPECT_FALSE(uncheckedAfter("2026-11-01", "2027-01-10", "South"));
    EXPECT_FALSE(uncheckedAfter("2026-05-02", "2026-07-01", "South")); // of the season that began on 2025-11-01
}

TEST(CheckLimits, NoSettingMovesTheSeasonOfChecks) {
    HoldBook book;
    book.colony("B").check("B", "2026-04-30").set("season.start", "04-01");
    EXPECT_TRUE(book.held("B", "brood-not-checked", "2026-07-01"));
}

TEST(CheckLimits, ThreeFramesOrAllWhereThereAreFewer) {
    const auto held = [](int checked, int frames) {
        return HoldBook().colony("B").check("B", "2026-09-01", checked, frames).held("B", "brood-not-checked", kDay);
    };
    EXPECT_TRUE(held(2, 7));
    EXPECT_FALSE(held(3, 7));
    EXPECT_TRUE(held(1, 2));
    EXPECT_FALSE(held(2, 2));
    EXPECT_FALSE(held(1, 1));
    EXPECT_TRUE(held(0, 0));
    EXPECT_TRUE(held(2, -1));
    EXPECT_FALSE(held(3, -1));
}

TEST(CheckLimits, ASettingMakesThemStricterOnly) {
    HoldBook book;
    book.colony("B").check("B", "2026-09-01", 3, 7).set("check.min_frames", "4");
    EXPECT_TRUE(book.held("B", "brood-not-checked", kDay));
    HoldBook older;
    older.colony("B").check("B", moved(kDay, -41)).set("check.max_age_days", "40");
    EXPECT_TRUE(older.held("B", "brood-not-checked", kDay));
    core::Snapshot lax = HoldBook().colony("B").check("B", "2026-09-01", 2, 7).on(kDay);
    lax.settings.checkMinFrames = 1; // as no setting can, but a damaged book may
    EXPECT_EQ(core::rules::holds(lax).size(), 1u);
}

TEST(ContactLimits, TheWindowOpens365DaysBefore) {
    const auto held = [](int days) {
        return withSource()
            .colony("E", "Hill")
            .gift("E", "A", moved("2026-07-10", days))
            .held("E", "afb-contact", kDay);
    };
    EXPECT_TRUE(held(-364));
    EXPECT_TRUE(held(-365));
    EXPECT_FALSE(held(-366));
}

TEST(ContactLimits, ThatOfATreatedSource548) {
    const auto held = [](int treated, int gift) {
        HoldBook book = withSource();
        book.colony("E", "Hill").antibiotic("A", moved("2026-07-10", treated));
        return book.gift("E", "A", moved("2026-07-10", gift)).held("E", "afb-contact", kDay);
    };
    EXPECT_TRUE(held(-548, -548));
    EXPECT_FALSE(held(-548, -549));
    EXPECT_FALSE(held(-549, -548));
    EXPECT_TRUE(held(0, -547));
}

TEST(ContactLimits, ATreatmentInItsYardOrInWhatItReceivedCounts) {
    HoldBook yard = withSource();
    yard.colony("E", "Hill").gift("E", "A", "2025-01-20").antibioticInYard("Home", "2026-01-01");
    EXPECT_TRUE(yard.held("E", "afb-contact", kDay));
    HoldBook received = withSource();
    received.colony("E", "Hill").colony("F", "Hill").gift("E", "A", "2025-01-20").antibiotic("F", "2026-01-01");
    EXPECT_FALSE(received.held("E", "afb-contact", kDay));
    received.gift("F", "A", "2026-01-01", "bees");
    EXPECT_TRUE(received.held("E", "afb-contact", kDay));
    HoldBook before = withSource();
    before.colony("E", "Hill").colony("F", "Hill").gift("E", "A", "2025-01-20").antibiotic("F", "2026-01-02");
    before.gift("F", "A", "2026-01-01", "bees"); // given before the treatment
    EXPECT_FALSE(before.held("E", "afb-contact", kDay));
}

TEST(ContactLimits, OwnResult42AndCheck60DaysAfterTheLastContact) {
    const auto book = [] {
        HoldBook b = withSource();
        b.colony("E", "Hill").gift("A", "E", "2026-06-01", "feed");
        return b;
    };
    EXPECT_TRUE(book().result("E", moved("2026-06-01", 41), "negative").held("E", "afb-contact", kDay));
    EXPECT_FALSE(book().result("E", moved("2026-06-01", 42), "negative").held("E", "afb-contact", kDay));
    EXPECT_FALSE(book().result("E", moved("2026-06-01", 42), "negative", "inspector").held("E", "afb-contact", kDay));
    EXPECT_TRUE(book().result("E", moved("2026-06-01", 42), "negative", "field").held("E", "afb-contact", kDay));
    EXPECT_TRUE(book().check("E", moved("2026-06-01", 59)).held("E", "afb-contact", kDay));
    EXPECT_FALSE(book().check("E", moved("2026-06-01", 60)).held("E", "afb-contact", kDay));
    EXPECT_TRUE(book().check("E", moved("2026-06-01", 60), 5, 6).held("E", "afb-contact", kDay));
    EXPECT_TRUE(book().check("E", moved("2026-06-01", 60), 2, 2).held("E", "afb-contact", kDay));
    EXPECT_FALSE(book().check("E", moved("2026-06-01", 60), 3, 3).held("E", "afb-contact", kDay));
    EXPECT_TRUE(book().check("E", moved("2026-06-01", 60), 6, -1).held("E", "afb-contact", kDay));
}

TEST(ContactLimits, AnAntibioticMasksACheckFor548Days) {
    const auto held = [](int days) {
        HoldBook b = withSource();
        b.colony("E", "Hill").gift("A", "E", "2026-06-01", "feed").check("E", "2026-08-10");
        return b.antibiotic("E", moved("2026-08-10", days)).held("E", "afb-contact", kDay);
    };
    EXPECT_TRUE(held(0));
    EXPECT_TRUE(held(-548));
    EXPECT_FALSE(held(-549));
    EXPECT_FALSE(held(1));
}

TEST(ContactLimits, AReleaseCountsAfterTheContactOnly) {
    const auto held = [](const char* day) {
        HoldBook b = withSource();
        b.colony("E", "Hill").gift("A", "E", "2026-07-10", "feed");
        return b.result("E", day, "release", "inspector").held("E", "afb-contact", kDay);
    };
    EXPECT_TRUE(held("2026-07-10"));
    EXPECT_FALSE(held("2026-07-11"));
}

TEST(ContactLimits, AReleaseBeforeTheSourcesDateIsNone) {
    HoldBook b = withSource();
    b.colony("E", "Hill").gift("A", "E", "2026-06-01", "feed").result("E", "2026-07-09", "release", "inspector");
    EXPECT_TRUE(b.held("E", "afb-contact", kDay));
    b.result("E", "2026-07-10", "release", "inspector");
    EXPECT_FALSE(b.held("E", "afb-contact", kDay));
}

TEST(ReachLimits, TheYardCounts60DaysBack) {
    const auto held = [](int days) {
        return withSource().colony("B").carried("B", moved("2026-07-10", days), "Hill").held("B", "afb-yard", kDay);
    };
    EXPECT_TRUE(held(-59));
    EXPECT_TRUE(held(-60));
    EXPECT_FALSE(held(-61));
}

TEST(ReachLimits, TheYardCounts365DaysOn) {
    const auto held = [](int days) {
        HoldBook b = withSource();
        return b.colony("B", "Hill")
            .carried("B", moved("2026-07-10", days), "Home")
            .held("B", "afb-yard", "2027-09-01");
    };
    EXPECT_TRUE(held(364));
    EXPECT_TRUE(held(365));
    EXPECT_FALSE(held(366));
}

TEST(ReachLimits, OwnResult42AndCheck60DaysAfterTheLastReach) {
    const auto book = [] { return withSource().colony("B"); };
    EXPECT_TRUE(book().result("B", moved("2026-07-10", 41), "negative").held("B", "afb-yard", kDay));
    EXPECT_FALSE(book().result("B", moved("2026-07-10", 42), "negative").held("B", "afb-yard", kDay));
    EXPECT_TRUE(book().check("B", moved("2026-07-10", 59)).held("B", "afb-yard", kDay));
    EXPECT_FALSE(book().check("B", moved("2026-07-10", 60)).held("B", "afb-yard", kDay));
    EXPECT_FALSE(book().ofYard("Home", "2026-07-10", "release").held("B", "afb-yard", kDay));
    EXPECT_TRUE(book().ofYard("Hill", "2026-07-11", "release").held("B", "afb-yard", kDay));
}

TEST(ReachLimits, AGiftCountsFrom60DaysBefore) {
    const auto held = [](int days, const char* what) {
        HoldBook b = withSource();
        return b.colony("E", "Hill").gift("A", "E", moved("2026-07-10", days), what).held("E", "afb-yard", kDay);
    };
    EXPECT_TRUE(held(-60, "bees"));
    EXPECT_FALSE(held(-61, "bees"));
    EXPECT_FALSE(held(-60, "feed"));
}

TEST(ReachLimits, ASourceCarriedOnItsLastDayStoodLastInBothYards) {
    HoldBook book;
    book.ended("A", "Home", "2025-06-01").carried("A", "2025-06-01", "Hill").result("A", "2026-01-10", "positive");
    book.colony("B", "Home").colony("E", "Hill");
    EXPECT_TRUE(book.held("B", "afb-yard", "2026-02-01"));
    EXPECT_TRUE(book.held("E", "afb-yard", "2026-02-01"));
}

TEST(EfbLimits, ClearAfter42Days) {
    const auto book = [] { return HoldBook().colony("B").sign("B", "2026-07-01", "efb"); };
    EXPECT_TRUE(book().check("B", moved("2026-07-01", 41)).held("B", "efb", kDay));
    EXPECT_FALSE(book().check("B", moved("2026-07-01", 42)).held("B", "efb", kDay));
    EXPECT_TRUE(book().check("B", moved("2026-07-01", 42), 2, 2).held("B", "efb", kDay));
    const auto negative = [&](int days, const char* method) {
        return book().result("B", moved("2026-07-01", days), "negative", method, "efb").held("B", "efb", kDay);
    };
    EXPECT_TRUE(negative(41, "laboratory"));
    EXPECT_FALSE(negative(42, "laboratory"));
    EXPECT_TRUE(negative(42, "field"));
    EXPECT_TRUE(book().result("B", "2026-07-01", "release", "inspector", "efb").held("B", "efb", kDay));
    EXPECT_FALSE(book().result("B", "2026-07-02", "release", "inspector", "efb").held("B", "efb", kDay));
    EXPECT_TRUE(book().result("B", "2026-07-02", "release", "inspector", "afb").held("B", "efb", kDay));
}

TEST(EfbLimits, AnAntibioticHidesItFor42Days) {
    const auto held = [](int days) {
        HoldBook b;
        b.colony("B").sign("B", "2026-06-01", "efb").check("B", "2026-08-20");
        return b.antibiotic("B", moved("2026-08-20", days)).held("B", "efb", kDay);
    };
    EXPECT_TRUE(held(0));
    EXPECT_TRUE(held(-42));
    EXPECT_FALSE(held(-43));
}

TEST(EfbLimits, AGiftCounts42DaysBeforeTheFinding) {
    const auto held = [](int days) {
        HoldBook b;
        b.colony("B").colony("C").gift("B", "C", moved("2026-08-20", days), "bees");
        return b.result("B", "2026-08-20", "positive", "field", "efb").held("C", "efb", kDay);
    };
    EXPECT_TRUE(held(0));
    EXPECT_TRUE(held(-42));
    EXPECT_FALSE(held(-43));
}

TEST(DoubtLimits, ClearAfter21Days) {
    const auto book = [] { return HoldBook().colony("B").sign("B", "2026-07-01", "brood-doubt"); };
    EXPECT_TRUE(book().check("B", moved("2026-07-01", 20)).held("B", "brood-doubt", kDay));
    EXPECT_FALSE(book().check("B", moved("2026-07-01", 21)).held("B", "brood-doubt", kDay));
    EXPECT_TRUE(book().result("B", "2026-06-30", "negative").held("B", "brood-doubt", kDay));
    EXPECT_FALSE(book().result("B", "2026-07-01", "negative").held("B", "brood-doubt", kDay));
    EXPECT_TRUE(book().result("B", "2026-07-01", "release", "inspector").held("B", "brood-doubt", kDay));
    EXPECT_FALSE(book().result("B", "2026-07-02", "release", "inspector").held("B", "brood-doubt", kDay));
}

TEST(DoubtLimits, AGiftCounts42DaysBeforeAndNeedsANegative21DaysAfter) {
    const auto book = [](int days) {
        HoldBook b;
        b.colony("B").colony("C").gift("B", "C", moved("2026-08-20", days), "brood");
        return b.sign("B", "2026-08-20", "brood-doubt");
    };
    EXPECT_TRUE(book(-42).held("C", "brood-doubt", kDay));
    EXPECT_FALSE(book(-43).held("C", "brood-doubt", kDay));
    EXPECT_TRUE(book(0).result("C", moved("2026-08-20", 20), "negative").held("C", "brood-doubt", kDay));
    EXPECT_FALSE(book(0).result("C", moved("2026-08-20", 21), "negative").held("C", "brood-doubt", kDay));
    EXPECT_FALSE(book(-10).result("B", "2026-08-20", "negative").held("C", "brood-doubt", kDay));
    // Seen in its own brood on the day of the gift: the gift's limit holds.
    HoldBook both = book(-5).sign("C", moved("2026-08-20", -5), "brood-doubt");
    EXPECT_TRUE(both.result("C", moved("2026-08-20", -5), "negative").held("C", "brood-doubt", kDay));
}

TEST(OrderLimits, FromItsOwnDayToARelease) {
    HoldBook book;
    book.colony("A").colony("B", "Hill").colony("C", "Hill").colony("D", "Hill");
    book.result("A", "2026-08-01", "order", "inspector");
    book.gift("A", "B", "2026-07-31").gift("A", "C", "2026-08-01").gift("A", "D", "2026-08-01", "feed");
    EXPECT_FALSE(book.held("A", "order", "2026-07-31"));
    EXPECT_TRUE(book.held("A", "order", kDay));
    EXPECT_FALSE(book.held("B", "order", kDay));
    EXPECT_TRUE(book.held("C", "order", kDay));
    EXPECT_FALSE(book.held("D", "order", kDay));
    book.result("A", "2026-09-01", "release", "inspector", "efb").result("C", "2026-09-01", "release", "inspector");
    EXPECT_TRUE(book.held("C", "order", kDay));
    book.result("A", "2026-09-02", "release", "inspector");
    EXPECT_FALSE(book.held("A", "order", kDay));
    EXPECT_FALSE(book.held("C", "order", kDay));
}

} // namespace
} // namespace tests::rules
