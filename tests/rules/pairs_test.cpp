#include "core/rules/explain.h"

#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Rule 4.7, part by part, below, at and above each limit. Source of the figures: own calculation from the rules' text
// and the table of 4.6 (E at 3, 4, 5, 6, 7, 8 frames: 300, 480, 640, 750, 1148, 1584).

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

PlanBook two(const char* framesA, const char* framesB, Cells a = {}, Cells b = {}) {
    return PlanBook().colony("A", a).colony("B", b).bees("A", framesA).bees("B", framesB);
}

QString against(const PlanBook& book, const QString& day = kFall) {
    return tests::rules::against(book.on(day), "A", "B");
}

std::optional<int> gain(const PlanBook& book) {
    const Snapshot s = book.on(kFall);
    return explain(s, named(s, "A"), named(s, "B")).gain;
}

TEST(Pairs, TwoWeakColoniesMayUnite) {
    EXPECT_EQ(against(two("3", "4")), "");
    EXPECT_EQ(gain(two("3", "4")), 1148 - 300 - 480 - 1);
}

TEST(Pairs, Part1AsksForOneYard) {
    const PlanBook apart = two("3", "4").yard("Z").row(
        "placements",
        {{"colony", "B"}, {"date", "2026-09-15"}, {"yard", "Z"}, {"stand", "1"}, {"x_m", "0"}, {"y_m", "0"}});
    EXPECT_EQ(against(apart), "1"); // on the day of a carry it stands in the new yard
    EXPECT_EQ(against(apart, "2026-09-14"), "");
    EXPECT_EQ(gain(apart), std::nullopt);
}

TEST(Pairs, Part2BarsAHold) {
    PlanBook book;
    book.colony("A").unchecked("B").bees("A", "3").bees("B", "4");
    EXPECT_EQ(against(book), "2");
}

TEST(Pairs, Part3BarsLayingWorkers) {
    EXPECT_EQ(against(PlanBook().colony("A").colony("B").bees("A", "3").bees("B", "4", {{"queen", "laying-workers"}})),
              "3");
}

TEST(Pairs, Part4AsksForAStrengthAboveTheShakeOutClass) {
    EXPECT_EQ(against(two("2.25", "5")), "");
    EXPECT_EQ(against(two("2", "5")), "4 9"); // no longer weak or medium either
    EXPECT_EQ(against(PlanBook().colony("A").colony("B").bees("A", "3")), "4 9");
}

TEST(Pairs, Part5AsksForAQueen) {
    const auto queens = [](const char* a, const char* b) {
        return PlanBook().colony("A").colony("B").bees("A", "3", {{"queen", a}}).bees("B", "4", {{"queen", b}});
    };
    EXPECT_EQ(against(queens("none", "drone-layer")), "5");
    EXPECT_EQ(against(queens("none", "unknown")), "");
}

TEST(Pairs, Part6AsksForOneKindOfBox) {
    EXPECT_EQ(against(two("3", "4", {{"box", "dadant-12"}})), "6");
    EXPECT_EQ(against(two("3", "4", {{"box", "dadant-12"}}, {{"box", "dadant-12"}})), "");
}

PlanBook doubleAndOne(const char* lower, const char* upper, Cells more = {}) {
    more["upper_bees_top"] = upper;
    return PlanBook()
        .colony("A", {{"brood_boxes", "2"}, {"box", "langstroth-8"}})
        .colony("B", {{"box", "langstroth-8"}})
        .bees("A", lower, more)
        .bees("B", "3");
}

TEST(Pairs, Part7AsksThatTwoBoxesComeDownToOne) {
    EXPECT_EQ(against(doubleAndOne("4", "3.75")), "");
    // 8 frames in two boxes of 8 fit, but are strong: not for 9 (a); one that lacks a queen may still (b).
    EXPECT_EQ(against(doubleAndOne("4", "4", {{"queen", "none"}})), "");
    EXPECT_EQ(against(doubleAndOne("4", "4.25", {{"queen", "none"}})), "7");
}

TEST(Pairs, Part7CountsBroodAndStoresWhereAllAreNoted) {
    const auto comb = [](const char* brood, const char* lower, const char* upper) {
        return doubleAndOne("3", "3",
                            {{"brood_frames", brood}, {"stores_frames", lower}, {"upper_stores_frames", upper}});
    };
    EXPECT_EQ(against(comb("3", "2.5", "2.5")), "");   // 8 frames
    EXPECT_EQ(against(comb("3", "2.5", "2.75")), "7"); // 8.25 frames
    EXPECT_EQ(against(comb("", "8", "8")), "");
    EXPECT_EQ(against(comb("8", "", "8")), "");
}

TEST(Pairs, Part7DoesNotAskInOneBox) {
    const Cells full{{"brood_frames", "10"}, {"stores_frames", "10"}, {"upper_stores_frames", ""}};
    EXPECT_EQ(against(PlanBook().colony("A").colony("B").bees("A", "4", full).bees("B", "4")), "");
}

TEST(Pairs, Part8AsksThatBothFitInTwoBoxes) {
    PlanBook book;
    book.row("box_kinds", {{"box", "five"}, {"frames", "5"}});
    book.set("class.strong_min", "12");
    book.colony("A", {{"box", "five"}}).colony("B", {{"box", "five"}}).bees("A", "4.75");
    EXPECT_EQ(against(PlanBook(book).bees("B", "5.25")), "");
    EXPECT_EQ(against(PlanBook(book).bees("B", "5.5")), "8");
}

TEST(Pairs, Part9aAsksForTheSeasonForStrength) {
    const auto on = [](const char* counted, const char* day) {
        PlanBook book;
        book.colony("A").colony("B");
        for (const char* c : {"A", "B"}) book.visit(c, counted, {{"bees_top", "4"}, {"queen", "eggs"}});
        return against(book, day);
    };
    EXPECT_EQ(on("2026-08-19", "2026-08-19"), "9");
    EXPECT_EQ(on("2026-08-19", "2026-08-20"), "");
    EXPECT_EQ(on("2026-10-01", "2026-10-20"), "");
    EXPECT_EQ(on("2026-10-01", "2026-10-21"), "9");
}

TEST(Pairs, Part9aAsksForOneWeakAndNoStrong) {
    EXPECT_EQ(against(two("4.75", "7.75")), "10"); // 1868 − 600 − 1471 is a loss
    EXPECT_EQ(against(two("4.75", "5")), "");
    EXPECT_EQ(against(two("5", "5")), "9");
    EXPECT_EQ(against(two("4", "8")), "9 10"); // E(12) 1868 − 480 − 1584 is a loss, too
    EXPECT_EQ(against(PlanBook().colony("A").colony("B").bees("A", "3").bees("B", "4", {{"queen", "virgin"}})), "9");
}

PlanBook forAQueen(const char* a, const char* b, const char* counted = "2026-05-01") {
    PlanBook book;
    for (const char* c : {"A", "B"})
        book.colony(c).visit(c, "2026-05-01", {{"brood_frames", "5"}, {"brood_checked", "5"}});
    book.visit("A", counted, {{"bees_top", "8"}, {"queen", a}, {"note", "again"}});
    book.visit("B", counted, {{"bees_top", "9"}, {"queen", b}, {"note", "again"}});
    return book;
}

TEST(Pairs, Part9bAsksForTheSeasonForQueenTrouble) {
    EXPECT_EQ(against(forAQueen("none", "eggs"), "2026-05-01"), "");
    EXPECT_EQ(against(forAQueen("none", "eggs", "2026-04-20"), "2026-04-30").contains("9"), true);
    EXPECT_EQ(against(forAQueen("none", "virgin"), "2026-05-01"), "9");
    EXPECT_EQ(against(forAQueen("none", "unknown"), "2026-05-01"), "");
    EXPECT_EQ(against(forAQueen("eggs", "eggs"), "2026-05-01"), "9 10");
}

TEST(Pairs, Part10AsksForTheLeastGain) {
    // 3 + 4 frames at dx m gain 368 − dx.
    const auto at = [](const char* metres) { return two("3", "4", {}, {{"x_m", metres}}); };
    EXPECT_EQ(gain(at("318")), 50);
    EXPECT_EQ(against(at("318")), "");
    EXPECT_EQ(against(at("319")), "10");
    EXPECT_EQ(against(at("318").set("gain.min", "51")), "10");
}

TEST(Pairs, Part10AsksForLessWhereOneGivesTheOtherAQueen) {
    // 3 frames without a queen and 4: E(7) − 0 − 480 = 668 at 0 m.
    const auto at = [](const char* metres) {
        return PlanBook().colony("A").colony("B", {{"x_m", metres}}).bees("A", "3", {{"queen", "none"}}).bees("B", "4");
    };
    EXPECT_EQ(gain(at("667")), 1);
    EXPECT_EQ(against(at("667")), "");
    EXPECT_EQ(against(at("668")), "10");
}

TEST(Explain, NamesEachRuleWithItsFacts) {
    PlanBook book;
    book.unchecked("A")
        .colony("B", {{"box", "dadant-12"}})
        .bees("A", "3", {{"queen", "laying-workers"}})
        .bees("B", "1.5");
    const Snapshot s = book.on(kFall);
    const Explanation e = explain(s, named(s, "A"), named(s, "B"));
    QStringList rules;
    for (const Objection& o : e.objections) {
        rules += o.rule;
        EXPECT_FALSE(o.because.isEmpty());
    }
    EXPECT_EQ(rules, (QStringList{"4.7.2", "4.7.3", "4.7.4", "4.7.6", "4.7.9"}));
    EXPECT_TRUE(e.objections[0].because.contains("brood-not-checked"));
    EXPECT_TRUE(e.objections[2].because.contains("B has 1.5 frames of bees, the shake-out class (up to 2)"));
    EXPECT_TRUE(e.summary.contains("4.7.2, 4.7.3, 4.7.4, 4.7.6, 4.7.9"));
}

TEST(Explain, NamesTheQueensThatAreNone) {
    PlanBook book;
    book.colony("A").colony("B").bees("A", "3", {{"queen", "none"}}).bees("B", "4", {{"queen", "drone-layer"}});
    const Snapshot s = book.on(kFall);
    EXPECT_EQ(explain(s, named(s, "A"), named(s, "B")).objections.at(0).because,
              "A and B both lack a queen (none, drone-layer).");
}

TEST(Explain, IsTheSameWhicheverIsNamedFirst) {
    const Snapshot s = two("3", "4").on(kFall);
    const Explanation ab = explain(s, named(s, "A"), named(s, "B"));
    const Explanation ba = explain(s, named(s, "B"), named(s, "A"));
    EXPECT_EQ(ab.gain, ba.gain);
    EXPECT_EQ(ab.summary.mid(ab.summary.indexOf(':')), ba.summary.mid(ba.summary.indexOf(':')));
}

TEST(Explain, SaysTheGainAndTheLimit) {
    const Snapshot s = two("3", "4", {}, {{"x_m", "319"}}).on(kFall);
    const Explanation e = explain(s, named(s, "A"), named(s, "B"));
    ASSERT_EQ(e.objections.size(), 1U);
    EXPECT_TRUE(e.objections[0].because.contains("the gain is 49, the limit 50"))
        << e.objections[0].because.toStdString();
}

} // namespace
