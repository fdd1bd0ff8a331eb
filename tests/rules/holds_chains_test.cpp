#include "tests/rules/hold_book.h"

#include <gtest/gtest.h>

// Where chains of gifts, windows and releases meet.
// Source of every expectation here: own calculation, by the text of rule 4.4 in core/rules/README.md.

namespace tests::rules {
namespace {

constexpr const char* kDay = "2026-09-20";

// B is looked at for its own doubt from 42 days before it on; what it received long before must be passed on too.
TEST(HoldChains, GiftsOfOneDayReachAColonyWithAnEventOfItsOwnLater) {
    HoldBook book;
    book.colony("A").colony("B").colony("C").sign("A", "2026-05-20", "brood-doubt");
    book.gift("B", "C", "2026-06-01").gift("A", "B", "2026-06-01"); // either may have come first
    EXPECT_TRUE(book.held("C", "brood-doubt", kDay));
    book.sign("B", "2026-09-01", "brood-doubt");
    EXPECT_TRUE(book.held("C", "brood-doubt", kDay));
}

TEST(HoldChains, OfOneDayInAnyOrderThroughFourColonies) {
    for (const char* first : {"A", "B", "C"}) {
        HoldBook book;
        book.colony("A")
            .colony("B", "Hill")
            .colony("C", "Hill")
            .colony("D", "Hill")
            .result("A", "2026-08-20", "positive");
        const std::map<QString, const char*> next{{"A", "B"}, {"B", "C"}, {"C", "D"}};
        book.gift(first, next.at(QString::fromLatin1(first)), "2026-08-01", "feed");
        for (const auto& [from, to] : next)
            if (from != QLatin1StringView(first)) book.gift(from.toLatin1().constData(), to, "2026-08-01", "feed");
        EXPECT_TRUE(book.held("D", "afb-contact", kDay));
    }
}

TEST(HoldChains, FollowTheOrderOfDays) {
    HoldBook book;
    book.colony("A").colony("B", "Hill").colony("C", "Hill").result("A", "2026-08-20", "positive");
    book.gift("A", "B", "2026-08-02", "feed").gift("B", "C", "2026-08-01", "feed");
    EXPECT_TRUE(book.held("B", "afb-contact", kDay));
    EXPECT_FALSE(book.held("C", "afb-contact", kDay));
}

TEST(HoldChains, AnAnswerIsJudgedOnTheDayOfEachGift) {
    HoldBook book;
    book.colony("A").colony("B", "Hill").colony("C", "Hill").colony("D", "Hill").result("A", "2026-08-20", "positive");
    book.gift("A", "B", "2026-06-01", "feed").result("B", "2026-07-13", "negative");
    book.gift("B", "C", "2026-07-12", "feed").gift("B", "D", "2026-07-13", "feed");
    EXPECT_FALSE(book.held("B", "afb-contact", kDay));
    EXPECT_TRUE(book.held("C", "afb-contact", kDay));
    EXPECT_FALSE(book.held("D", "afb-contact", kDay));
}

// E answered, then gave to the source: what it gave away before that counts again.
TEST(HoldChains, ALaterGiftToTheSourceUndoesAnAnswer) {
    HoldBook book;
    book.colony("A").colony("E", "Hill").colony("F", "Hill").result("A", "2026-08-20", "positive");
    book.gift("A", "E", "2026-04-01", "feed")
        .result("E", "2026-05-13", "negative")
        .gift("E", "F", "2026-05-20", "feed");
    EXPECT_FALSE(book.held("F", "afb-contact", kDay));
    book.gift("E", "A", "2026-06-01", "feed");
    EXPECT_TRUE(book.held("E", "afb-contact", kDay));
    EXPECT_TRUE(book.held("F", "afb-contact", kDay));
}

TEST(HoldChains, EachSourceMustBeAnsweredForItself) {
    HoldBook book;
    book.ended("P", "Home", "2026-07-01").ended("Q", "South", "2026-07-01").colony("E", "Hill");
    book.result("P", "2026-07-01", "positive").result("Q", "2026-07-01", "positive");
    book.gift("P", "E", "2026-05-20", "feed")
        .gift("Q", "E", "2026-06-20", "feed")
        .result("E", "2026-07-02", "negative");
    EXPECT_TRUE(book.held("E", "afb-contact", kDay));
    book.result("E", "2026-08-01", "negative");
    EXPECT_FALSE(book.held("E", "afb-contact", kDay));
}

// By the default window A's hive had not stood in Home; the wider one must not let Home's release count.
TEST(HoldChains, AWiderWindowLetsNoMoreYardsRelease) {
    HoldBook book;
    book.colony("A", "Home").carried("A", "2025-01-10", "Hill").result("A", "2026-02-01", "positive");
    book.colony("B", "Home").gift("A", "B", "2026-01-20", "feed").ofYard("Home", "2026-07-01", "release");
    EXPECT_TRUE(book.held("B", "afb-contact", kDay));
    book.set("trace.days", "500");
    EXPECT_TRUE(book.held("B", "afb-contact", kDay));
}

// What a past source took in after its release may widen its window, but lets no more yards release for it.
TEST(HoldChains, ATreatmentThatCameAfterTheReleaseLetsNoMoreYardsRelease) {
    HoldBook book;
    book.colony("A", "Hill").carried("A", "2024-06-04", "Home").colony("E", "Hill").colony("F", "Hill");
    book.result("A", "2025-07-29", "positive").result("A", "2025-10-01", "release", "inspector");
    book.gift("A", "E", "2025-07-30", "feed").ofYard("Hill", "2026-06-01", "release");
    EXPECT_TRUE(book.held("E", "afb-contact", kDay));
    book.antibiotic("F", "2025-01-01").gift("F", "A", "2026-05-01", "bees");
    EXPECT_TRUE(book.held("E", "afb-contact", kDay));
}

TEST(HoldChains, AGiftToAReleasedColonyMovesWhatAnExposedGiverMustAnswer) {
    HoldBook book;
    book.colony("A").colony("E", "Hill").colony("F", "Hill");
    book.result("A", "2026-04-01", "positive").result("A", "2026-05-01", "release", "inspector");
    book.gift("A", "E", "2026-03-01", "feed").result("E", "2026-05-10", "negative");
    EXPECT_FALSE(book.held("E", "afb-contact", kDay));
    book.gift("E", "A", "2026-08-20", "feed").gift("F", "A", "2026-08-21", "feed");
    EXPECT_TRUE(book.held("E", "afb-contact", kDay));
    EXPECT_FALSE(book.held("F", "afb-contact", kDay)); // never exposed
}

// A sign on the day of the release is of the time after it: the release ended nothing, so A is no past source that
// could take in again what it gave.
TEST(HoldChains, ASignOnTheDayOfAReleaseMakesNoPastSource) {
    HoldBook book;
    book.colony("A").colony("B", "Hill").sign("A", "2026-05-01").result("A", "2026-05-01", "release", "inspector");
    book.gift("A", "B", "2026-04-01", "feed").gift("B", "A", "2026-06-01");
    EXPECT_TRUE(book.held("A", "afb-suspected", kDay));
    EXPECT_TRUE(book.held("B", "afb-contact", kDay));
    EXPECT_FALSE(book.held("A", "afb-contact", kDay));
}

TEST(HoldChains, ACircleOfGiftsMakesNobodyUncheckedButOneUncheckedGiverAll) {
    HoldBook book;
    book.colony("A").colony("B").colony("C").colony("D");
    for (const char* colony : {"A", "B", "C"}) book.check(colony, "2026-08-01");
    book.gift("A", "B", "2026-08-10").gift("B", "C", "2026-08-10").gift("C", "A", "2026-08-10");
    EXPECT_FALSE(book.held("A", "brood-not-checked", kDay));
    book.gift("D", "B", "2026-08-10");
    for (const char* colony : {"A", "B", "C"}) EXPECT_TRUE(book.held(colony, "brood-not-checked", kDay)) << colony;
}

TEST(HoldChains, AnOrderOnAYardMeetsThoseWhoCameAndLeftAndWhatTheyGave) {
    HoldBook book;
    book.colony("A").colony("B").colony("C", "Hill").colony("D", "Hill").colony("E", "Hill").colony("F", "Hill");
    book.ofYard("Home", "2026-08-01", "order").carried("B", "2026-08-01", "Hill").carried("C", "2026-08-10", "Home");
    book.gift("C", "D", "2026-08-09").gift("C", "E", "2026-08-10").gift("E", "F", "2026-08-11", "bees");
    EXPECT_TRUE(book.held("B", "order", kDay));
    EXPECT_TRUE(book.held("C", "order", kDay));
    EXPECT_FALSE(book.held("D", "order", kDay));
    EXPECT_TRUE(book.held("E", "order", kDay));
    EXPECT_TRUE(book.held("F", "order", kDay));
}

TEST(HoldChains, OnTheDayOfACarryAHiveStandsInBothYards) {
    HoldBook book;
    book.ended("A", "Home", "2026-07-16").result("A", "2026-07-16", "positive");
    book.colony("B", "Home").carried("B", "2026-05-17", "Hill").colony("C", "Home").carried("C", "2026-05-16", "Hill");
    EXPECT_TRUE(book.held("B", "afb-yard", kDay)); // 60 days before the source's date
    EXPECT_FALSE(book.held("C", "afb-yard", kDay));
}

} // namespace
} // namespace tests::rules
