#include "core/rules/facts.h"

#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Rules 4.0 to 4.2: what is valid, strength, the queen. Source of the figures: own calculation, from the rules' text.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

ColonyFacts factsOf(const PlanBook& book, const QString& label = "A", const QString& day = kFall) {
    const Snapshot s = book.on(day);
    return colonyFacts(s)[static_cast<size_t>(named(s, label).value)];
}

std::optional<int> quarters(std::optional<Quarters> q) { return q ? std::optional(q->value) : std::nullopt; }

TEST(Strength, IsTheMeanOfBothCountsRoundedUpToAQuarter) {
    EXPECT_EQ(quarters(factsOf(PlanBook().colony("A").bees("A", "5", {{"bees_bottom", "3"}})).strength), 16);
    // 5 and 3.25 are 20 and 13 quarters: (20 + 13 + 1) div 2 = 17
    EXPECT_EQ(quarters(factsOf(PlanBook().colony("A").bees("A", "5", {{"bees_bottom", "3.25"}})).strength), 17);
}

TEST(Strength, IsTheNamedCountWhereTheBookSaysSo) {
    const PlanBook both = PlanBook().colony("A").bees("A", "5", {{"bees_bottom", "3"}});
    EXPECT_EQ(quarters(factsOf(PlanBook(both).set("strength.judge", "top")).strength), 20);
    EXPECT_EQ(quarters(factsOf(PlanBook(both).set("strength.judge", "bottom")).strength), 12);
    const PlanBook onlyTop = PlanBook().colony("A").bees("A", "5").set("strength.judge", "bottom");
    EXPECT_EQ(quarters(factsOf(onlyTop).strength), 20);
}

TEST(Strength, IsTheSumOfBothBoxesOfThatDay) {
    const PlanBook two = PlanBook().colony("A", {{"brood_boxes", "2"}}).bees("A", "2", {{"upper_bees_bottom", "3.5"}});
    EXPECT_EQ(quarters(factsOf(two).strength), 22);
    EXPECT_EQ(factsOf(two).boxes, 2);
    // Brought down to one box since: the count of two boxes still is the colony's.
    EXPECT_EQ(quarters(factsOf(PlanBook(two).visit("A", kFall, {{"boxes", "1"}})).strength), 22);
}

TEST(Strength, NeedsACountOfEachBox) {
    const PlanBook two = PlanBook().colony("A", {{"brood_boxes", "2"}});
    EXPECT_EQ(factsOf(two).noStrength, NoStrength::NoCount);
    const ColonyFacts half = factsOf(PlanBook(two).bees("A", "2"));
    EXPECT_FALSE(half.strength);
    EXPECT_EQ(half.noStrength, NoStrength::NoCount);
}

TEST(Strength, AnOlderFullCountDoesNotStandInForALaterHalfOne) {
    PlanBook book;
    book.colony("A", {{"brood_boxes", "2"}}).visit("A", "2026-09-10", {{"bees_top", "4"}, {"upper_bees_top", "4"}});
    EXPECT_EQ(quarters(factsOf(book).strength), 32);
    EXPECT_EQ(factsOf(book.bees("A", "2")).noStrength, NoStrength::NoCount);
}

TEST(Strength, OfNothingIsNoBeesHoweverOld) {
    PlanBook book;
    book.colony("A").visit("A", "2026-03-01", {{"bees_top", "0"}});
    EXPECT_EQ(factsOf(book).noStrength, NoStrength::NoBees);
}

TEST(Strength, IsOldAfterThirtyDays) {
    const PlanBook book = PlanBook().colony("A").visit("A", "2026-08-16", {{"bees_top", "4"}});
    EXPECT_EQ(quarters(factsOf(book, "A", "2026-09-15").strength), 16); // 30 days
    EXPECT_FALSE(factsOf(book, "A", "2026-09-16").strength);
    EXPECT_EQ(factsOf(book, "A", "2026-09-16").noStrength, NoStrength::CountOld);
    EXPECT_EQ(quarters(factsOf(book, "A", "2026-09-16").lastCount), 16);
    const PlanBook patient = PlanBook(book).set("strength.max_age_days", "31");
    EXPECT_EQ(quarters(factsOf(patient, "A", "2026-09-16").strength), 16);
}

TEST(StrengthClass, ChangesAtItsLimits) {
    const auto classAt = [](const char* frames) {
        return *factsOf(PlanBook().colony("A").bees("A", frames)).strengthClass;
    };
    EXPECT_EQ(classAt("0.25"), StrengthClass::ShakeOut);
    EXPECT_EQ(classAt("2"), StrengthClass::ShakeOut);
    EXPECT_EQ(classAt("2.25"), StrengthClass::Weak);
    EXPECT_EQ(classAt("4.75"), StrengthClass::Weak);
    EXPECT_EQ(classAt("5"), StrengthClass::Medium);
    EXPECT_EQ(classAt("7.75"), StrengthClass::Medium);
    EXPECT_EQ(classAt("8"), StrengthClass::Strong);
}

QueenSeen queenAfter(std::initializer_list<std::pair<const char*, const char*>> visits, const QString& day = kFall) {
    PlanBook book;
    book.colony("A");
    for (const auto& [date, queen] : visits) book.visit("A", date, {{"queen", queen}});
    return factsOf(book, "A", day).queen;
}

TEST(Queen, IsWhatTheLatestVisitSays) {
    EXPECT_EQ(queenAfter({}), QueenSeen::Unknown);
    EXPECT_EQ(queenAfter({{"2026-09-01", "eggs"}, {"2026-09-10", "none"}}), QueenSeen::None);
    EXPECT_EQ(queenAfter({{"2026-09-01", "eggs"}, {"2026-09-10", "unknown"}}), QueenSeen::Unknown);
    EXPECT_EQ(queenAfter({{"2026-09-01", "none"}, {"2026-09-10", "virgin"}}), QueenSeen::Virgin);
}

TEST(Queen, LayingWorkersEndOnlyWithAQueen) {
    for (const char* next : {"none", "drone-layer", "unknown", "laying-workers"})
        EXPECT_EQ(queenAfter({{"2026-08-01", "laying-workers"}, {"2026-09-10", next}}), QueenSeen::LayingWorkers)
            << next;
    EXPECT_EQ(queenAfter({{"2026-08-01", "laying-workers"}, {"2026-09-10", "seen"}}), QueenSeen::Seen);
    EXPECT_EQ(queenAfter({{"2026-08-01", "laying-workers"}, {"2026-09-01", "eggs"}, {"2026-09-10", "none"}}),
              QueenSeen::None);
}

TEST(Queen, AnUnknownDoesNotAnswerALackOfOne) {
    EXPECT_EQ(queenAfter({{"2026-08-01", "none"}, {"2026-09-10", "unknown"}}), QueenSeen::None);
    EXPECT_EQ(queenAfter({{"2026-08-01", "drone-layer"}, {"2026-09-10", "unknown"}}), QueenSeen::DroneLayer);
    EXPECT_EQ(queenAfter({{"2026-08-01", "drone-layer"}, {"2026-09-10", "none"}}), QueenSeen::None);
}

TEST(Queen, SeenLongAgoIsUnknownButALackIsNot) {
    for (const char* old : {"seen", "eggs", "virgin"}) {
        EXPECT_NE(queenAfter({{"2026-08-01", old}}, "2026-09-15"), QueenSeen::Unknown) << old; // 45 days
        EXPECT_EQ(queenAfter({{"2026-08-01", old}}, "2026-09-16"), QueenSeen::Unknown) << old;
    }
    EXPECT_EQ(queenAfter({{"2025-08-01", "none"}}), QueenSeen::None);
    EXPECT_EQ(queenAfter({{"2025-08-01", "laying-workers"}}), QueenSeen::LayingWorkers);
}

PlanBook seenInFull(const char* date) {
    return PlanBook()
        .colony("A")
        .colony("B", {{"ended", "2026-09-05"}, {"end", "united"}})
        .visit("A", date,
               {{"bees_top", "5"},
                {"queen", "none"},
                {"brood_frames", "4"},
                {"stores_frames", "3"},
                {"gross_kg", "30"},
                {"mites", "3"},
                {"mite_sample", "300"}});
}

void expectNothingSeen(const ColonyFacts& f) {
    EXPECT_FALSE(f.counted);
    EXPECT_EQ(f.queen, QueenSeen::Unknown);
    EXPECT_FALSE(f.gross || f.stores || f.mites);
    EXPECT_FALSE(f.broodFrames);
}

TEST(FreshStart, AUnionMakesWhatWasSeenOfItsHostInvalid) {
    const Cells row{{"date", "2026-09-05"}, {"how", "united"}, {"colony", "B"}, {"into", "A"}};
    expectNothingSeen(factsOf(seenInFull("2026-09-05").row("lineage", row)));
    const ColonyFacts after = factsOf(seenInFull("2026-09-06").row("lineage", row));
    EXPECT_EQ(quarters(after.lastCount), std::nullopt); // two boxes that day, one counted
    EXPECT_EQ(after.queen, QueenSeen::None);
    EXPECT_EQ(after.gross, Decagrams{3000});
    EXPECT_EQ(after.broodFrames, 4);
    EXPECT_TRUE(after.mites);
}

TEST(FreshStart, ADivideDoesSoForBothItsParts) {
    PlanBook book;
    book.colony("A").visit("A", "2026-06-01", {{"bees_top", "8"}, {"queen", "none"}});
    book.colony("B", {{"since", "2026-06-01"}}).visit("B", "2026-06-01", {{"bees_top", "4"}, {"queen", "none"}});
    book.row("lineage", {{"date", "2026-06-01"}, {"how", "divided"}, {"colony", "A"}, {"into", "B"}});
    for (const QString label : {"A", "B"}) {
        EXPECT_EQ(factsOf(book, label).queen, QueenSeen::Unknown);
        EXPECT_EQ(factsOf(book, label).freshStart, parseIsoDay(u"2026-06-01"));
    }
}

TEST(FreshStart, AShakeOutChangesNothingForItsHost) {
    PlanBook book;
    book.colony("A").colony("B", {{"ended", "2026-09-05"}, {"end", "shaken-out"}});
    book.visit("A", "2026-09-05", {{"bees_top", "5"}, {"queen", "none"}});
    book.row("lineage", {{"date", "2026-09-05"}, {"how", "shaken-out"}, {"colony", "B"}, {"into", "A"}});
    EXPECT_EQ(quarters(factsOf(book).strength), 20);
    EXPECT_EQ(factsOf(book).queen, QueenSeen::None);
}

TEST(Weight, IsNoneWithAHoneyBoxOrAfterThirtyDays) {
    const auto weighed = [](const char* date, const char* supers) {
        return factsOf(PlanBook().colony("A").visit("A", date, {{"gross_kg", "30"}, {"supers", supers}})).gross;
    };
    EXPECT_EQ(weighed("2026-09-01", ""), Decagrams{3000});
    EXPECT_EQ(weighed("2026-09-01", "0"), Decagrams{3000});
    EXPECT_EQ(weighed("2026-09-01", "1"), std::nullopt);
    EXPECT_EQ(weighed("2026-08-16", ""), Decagrams{3000}); // 30 days
    EXPECT_EQ(weighed("2026-08-15", ""), std::nullopt);
}

TEST(Weight, OfALaterVisitWithAHoneyBoxHidesTheOneBefore) {
    PlanBook book;
    book.colony("A")
        .visit("A", "2026-09-01", {{"gross_kg", "30"}})
        .visit("A", "2026-09-02", {{"gross_kg", "40"}, {"supers", "1"}});
    EXPECT_EQ(factsOf(book).gross, std::nullopt);
}

TEST(Stores, ComeFromTheLatestVisitThatHasAny) {
    PlanBook book;
    book.colony("A", {{"brood_boxes", "2"}});
    book.visit("A", "2026-09-01", {{"stores_frames", "3"}, {"upper_stores_frames", "5"}});
    EXPECT_EQ(quarters(factsOf(book).upperStores), 20);
    book.visit("A", "2026-09-02", {{"stores_frames", "2"}});
    EXPECT_EQ(quarters(factsOf(book).stores), 8);
    EXPECT_EQ(factsOf(book).upperStores, std::nullopt);
    EXPECT_FALSE(factsOf(book, "A", "2026-10-03").stores); // 31 days
}

} // namespace
