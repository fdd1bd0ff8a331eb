#include "core/rules/missing.h"

#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

#include <QStringList>

// Source of the figures: own calculation, from the limits of the rules' text.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

std::vector<ColonyMissing> missingOn(const Snapshot& s, const char* yard = "Y") {
    return missingIn(viewOf(s), *s.yardNamed(QString::fromLatin1(yard)));
}

/// "count-old queen" of the colony; empty where nothing is missing.
std::string lacks(const PlanBook& book, const QString& day = kFall, const QString& label = "A") {
    const Snapshot s = book.on(day);
    QStringList words;
    for (const ColonyMissing& m : missingOn(s)) {
        if (s.colony(m.colony).label != label) continue;
        for (const Missing& what : m.what) words += missingWord(what.kind);
    }
    return words.join(u' ').toStdString();
}

/// What is said of it.
std::string said(const PlanBook& book, const QString& day = kFall) {
    const Snapshot s = book.on(day);
    QStringList sentences;
    for (const ColonyMissing& m : missingOn(s))
        for (const Missing& what : m.what) sentences += textOf({sentenceOf(s, what)});
    return sentences.join(u' ').toStdString();
}

PlanBook whole() { return PlanBook().colony("A").bees("A", "5", {{"gross_kg", "30"}}); }

TEST(Missing, NothingIsOfAColonyCountedWeighedAndChecked) {
    EXPECT_EQ(lacks(whole()), "");
    EXPECT_EQ(lacks(PlanBook().colony("A")), "count queen weight");
    EXPECT_EQ(said(PlanBook().colony("A")),
              "Bees not counted. Whether it has a queen is not known. Not weighed: no feed can be reckoned.");
}

TEST(Missing, ACountIsOldAfterThirtyDays) {
    const PlanBook book =
        PlanBook().colony("A").visit("A", "2026-08-16", {{"bees_top", "5"}, {"queen", "eggs"}, {"gross_kg", "30"}});
    EXPECT_EQ(lacks(book, "2026-09-15"), "") << "30 days";
    EXPECT_EQ(lacks(book, "2026-09-16"), "count-old weight") << "31 days";
    EXPECT_EQ(lacks(PlanBook(book).set("strength.max_age_days", "31"), "2026-09-16"), "weight");
    EXPECT_EQ(lacks(PlanBook(book).set("weigh.max_age_days", "31"), "2026-09-16"), "count-old");
    EXPECT_EQ(said(book, "2026-09-16"), "Bees counted on 2026-08-16, 31 days before; more than 30 days is too old. "
                                        "Weighed on 2026-08-16, 31 days before; more than 30 days is too old.");
}

TEST(Missing, AQueenSeenIsOldAfterFortyFiveDays) {
    PlanBook book = whole();
    book.visit("A", "2026-08-01", {{"queen", "seen"}});
    const PlanBook unseen = PlanBook()
                                .colony("A")
                                .visit("A", "2026-08-01", {{"queen", "seen"}})
                                .visit("A", kCounted, {{"bees_top", "5"}, {"gross_kg", "30"}});
    EXPECT_EQ(lacks(unseen, "2026-09-15"), "") << "45 days";
    EXPECT_EQ(lacks(unseen, "2026-09-16"), "queen") << "46 days";
    EXPECT_EQ(said(unseen, "2026-09-16"),
              "Queen or eggs seen last on 2026-08-01, 46 days before; more than 45 days is too old.");
    EXPECT_EQ(lacks(PlanBook(unseen).visit("A", "2026-09-16", {{"queen", "none"}}), "2026-09-16"), "")
        << "that it has none is known";
}

TEST(Missing, AVirginIsToBeSeenAgain) {
    const PlanBook book = PlanBook().colony("A").bees("A", "5", {{"queen", "virgin"}, {"gross_kg", "30"}});
    EXPECT_EQ(said(book), "A virgin queen on 2026-09-14: does she lay?");
}

TEST(Missing, ACountOfOneBoxOfTwoIsNoCount) {
    const PlanBook book = PlanBook().colony("A", {{"brood_boxes", "2"}}).bees("A", "5", {{"gross_kg", "30"}});
    EXPECT_EQ(said(book), "On 2026-09-14 only one of its two boxes was counted.");
}

TEST(Missing, NoBeesAskIfItLives) {
    const PlanBook book = PlanBook().colony("A").bees("A", "0");
    EXPECT_EQ(lacks(book), "no-bees") << "no feed is reckoned for none";
    EXPECT_EQ(said(book), "No bees seen on 2026-09-14: does it live?");
}

TEST(Missing, ACountFromBeforeATransferIsAskedAnew) {
    PlanBook book = whole().colony("B").bees("B", "5", {{"gross_kg", "30"}});
    const auto gift = [](const char* day, const char* what) {
        return Cells{{"date", day}, {"from", "B"}, {"to", "A"}, {"what", what}};
    };
    EXPECT_EQ(lacks(PlanBook(book).row("transfers", gift("2026-09-13", "bees"))), "");
    EXPECT_EQ(lacks(PlanBook(book).row("transfers", gift("2026-09-14", "bees"))), "count-before-transfer");
    EXPECT_EQ(lacks(PlanBook(book).row("transfers", gift("2026-09-14", "bees")), kFall, "B"), "count-before-transfer");
    EXPECT_EQ(lacks(PlanBook(book).row("transfers", gift("2026-09-15", "feed"))), "");
}

TEST(Missing, ABroodCheckOfLastSeasonCountsForThirtyDaysOnly) {
    PlanBook book = PlanBook().unchecked("A");
    book.visit("A", "2026-04-30", {{"brood_frames", "5"}, {"brood_checked", "5"}});
    book.visit("A", "2026-05-20", {{"bees_top", "5"}, {"queen", "eggs"}, {"gross_kg", "30"}});
    EXPECT_EQ(lacks(book, "2026-05-30"), "") << "30 days of grace";
    EXPECT_EQ(lacks(book, "2026-05-31"), "brood-check");
    EXPECT_EQ(said(book, "2026-05-31"), "Brood last checked on 2026-04-30: that does not count on the day.");
    EXPECT_EQ(said(PlanBook().unchecked("A").bees("A", "5", {{"gross_kg", "30"}})), "Brood not checked for disease.");
}

TEST(Missing, AWeightWithHoneyBoxesOnDoesNotCount) {
    const PlanBook book = PlanBook().colony("A").bees("A", "5", {{"gross_kg", "60"}, {"supers", "1"}});
    EXPECT_EQ(said(book), "Weighed on 2026-09-14 with honey boxes on: that does not count.");
}

TEST(Missing, AWeightIsAskedInTheSeasonForStrengthAlone) {
    PlanBook book = PlanBook().colony("A");
    book.visit("A", "2026-08-15", {{"bees_top", "5"}, {"queen", "eggs"}});
    EXPECT_EQ(lacks(book, "2026-08-19"), "");
    EXPECT_EQ(lacks(book, "2026-08-20"), "weight");
}

TEST(Missing, OutsideAllSeasonsNothingIsPlannedAndNothingMissing) {
    const PlanBook book = PlanBook().unchecked("A");
    const auto isPlanned = [&](const char* day) {
        const Snapshot s = book.on(day);
        return planned(viewOf(s), *s.yardNamed(u"Y"));
    };
    EXPECT_EQ(lacks(book, "2026-10-20"), "count brood-check queen weight");
    EXPECT_EQ(lacks(book, "2026-10-21"), "");
    EXPECT_EQ(lacks(book, "2026-04-19"), "");
    EXPECT_EQ(lacks(book, "2026-04-20"), "count brood-check queen");
    EXPECT_TRUE(isPlanned("2026-10-20"));
    EXPECT_FALSE(isPlanned("2026-10-21"));
    EXPECT_FALSE(isPlanned("2026-04-19"));
    EXPECT_TRUE(isPlanned("2026-04-20"));
}

TEST(Missing, BroodFramesAreAskedForADivideOfEnoughBees) {
    const auto book = [](const char* frames, const char* broodDay) {
        PlanBook b = PlanBook().unchecked("A", {{"brood_boxes", "1"}});
        b.visit("A", broodDay, {{"brood_frames", "8"}, {"brood_checked", "8"}});
        return b.visit("A", "2026-05-15", {{"bees_top", frames}, {"queen", "eggs"}});
    };
    EXPECT_EQ(lacks(book("9.75", "2026-04-16"), "2026-05-16"), "") << "no bees for two parts of 5 frames";
    EXPECT_EQ(lacks(book("10", "2026-04-16"), "2026-05-16"), "") << "30 days";
    EXPECT_EQ(lacks(book("10", "2026-04-16"), "2026-05-17"), "brood-check brood-frames") << "31 days";
    EXPECT_EQ(lacks(book("9.75", "2026-04-16"), "2026-05-17"), "brood-check");
}

TEST(Missing, TheRoomOfTwoBoxesIsAskedWhereOneCouldDo) {
    const auto book = [](const char* each, const Cells& more) {
        Cells cells{{"upper_bees_top", each}, {"gross_kg", "30"}};
        cells.insert(more.begin(), more.end());
        return PlanBook().colony("A", {{"brood_boxes", "2"}}).bees("A", each, cells);
    };
    const Cells comb{{"brood_frames", "2"}, {"stores_frames", "2"}, {"upper_stores_frames", "2"}};
    EXPECT_EQ(lacks(book("3", comb)), "");
    EXPECT_EQ(lacks(book("3", {{"brood_frames", "2"}, {"stores_frames", "2"}})), "room");
    EXPECT_EQ(lacks(book("4", {})), "") << "strong: not united";
    EXPECT_EQ(lacks(book("3", {{"queen", "none"}})).find("room"), 0U);
}

TEST(Missing, SignsSeenLastAreLookedAtAgain) {
    const PlanBook book = PlanBook().colony("A").bees("A", "5", {{"gross_kg", "30"}, {"signs", "chalkbrood nosema"}});
    EXPECT_EQ(said(book), "Seen: chalkbrood, nosema, on 2026-09-14. Look again.");
    EXPECT_EQ(lacks(PlanBook(book).visit("A", kFall, {{"stores_frames", "2"}})), "") << "not at the latest visit";
}

TEST(Missing, OfAHeldColonyOnlyTheWeightIsAsked) {
    PlanBook doubt = PlanBook().colony("A");
    doubt.visit("A", "2026-09-01", {{"signs", "brood-doubt"}});
    EXPECT_EQ(lacks(doubt), "weight");
    PlanBook suspected = PlanBook().colony("A");
    suspected.visit("A", "2026-09-01", {{"signs", "afb"}});
    EXPECT_EQ(lacks(suspected), "") << "it is not opened for our sake";
    const PlanBook workers = PlanBook().colony("A").bees("A", "3", {{"queen", "laying-workers"}});
    EXPECT_EQ(lacks(workers), "");
}

TEST(Missing, TheWalkGoesAlongTheYardNotByLabel) {
    PlanBook book = PlanBook().yard("Y").yard("Z");
    const std::pair<const char*, const char*> places[] = {{"A", "0"}, {"B", "20"}, {"C", "10"}, {"D", "30"}};
    for (const auto& [label, x] : places) book.colony(label, {{"x_m", x}, {"y_m", "5"}});
    book.colony("E", {{"yard", "Z"}, {"stand", "Z1"}});
    const Snapshot s = book.on(kFall);
    QString walk;
    for (const ColonyMissing& m : missingOn(s)) walk += s.colony(m.colony).label;
    EXPECT_EQ(walk, "ACBD");
}

TEST(Missing, TheSouthHasItsSeasonsSixMonthsLater) {
    PlanBook book = PlanBook().yard("Y", {{"latitude_deg", "-35"}}).unchecked("A");
    EXPECT_EQ(lacks(book, "2026-03-15"), "count brood-check queen weight");
    EXPECT_EQ(lacks(book, "2026-08-15"), "");
}

} // namespace
