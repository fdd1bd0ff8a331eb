#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

#include <QStringList>

// Rules 4.11 to 4.14: order of boxes, feed, divides, checks due. Source of the figures: own calculation from the rules'
// text.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

// --- 4.11 ---

QString boxOrder(const PlanBook& book, const QString& day) {
    QStringList out;
    for (const BoxOrderAdvice& b : book.plan(day).boxOrder) out += boxActionWord(b.action);
    return out.join(' ');
}

PlanBook doubled(const char* lowerStores, const char* upperStores) {
    PlanBook book;
    book.colony("A", {{"brood_boxes", "2"}});
    return book.bees("A", "4",
                     {{"upper_bees_top", "6"}, {"stores_frames", lowerStores}, {"upper_stores_frames", upperStores}});
}

TEST(BoxOrder, TheHeavierGoesOnTopInFall) {
    EXPECT_EQ(boxOrder(doubled("3.25", "3"), kFall), "heavier-on-top");
    EXPECT_EQ(boxOrder(doubled("3", "3"), kFall), "");
    EXPECT_EQ(boxOrder(doubled("3", ""), kFall), "");
    EXPECT_EQ(boxOrder(doubled("3.25", "3").set("season.fall_start", "09-16"), kFall), "");
    EXPECT_EQ(boxOrder(doubled("3.25", "3").visit("A", kFall, {{"boxes", "1"}}), kFall), "");
}

TEST(BoxOrder, NotOfAHeldColonyInFall) {
    PlanBook book;
    book.unchecked("A", {{"brood_boxes", "2"}});
    book.bees("A", "4", {{"upper_bees_top", "6"}, {"stores_frames", "3.25"}, {"upper_stores_frames", "3"}});
    EXPECT_EQ(boxOrder(book, kFall), "");
}

PlanBook upstairs(const char* counted, const char* lower) {
    PlanBook book;
    book.unchecked("A", {{"brood_boxes", "2"}});
    return book.visit("A", counted, {{"bees_top", lower}, {"upper_bees_top", "5"}, {"queen", "eggs"}});
}

TEST(BoxOrder, IsReversedInSpringWhereAllBeesAreUpstairs) {
    EXPECT_EQ(boxOrder(upstairs("2026-03-10", "0"), "2026-03-14"), "");
    EXPECT_EQ(boxOrder(upstairs("2026-03-10", "0"), "2026-03-15"), "reverse"); // held as brood-not-checked: allowed
    EXPECT_EQ(boxOrder(upstairs("2026-05-20", "0"), "2026-05-31"), "reverse");
    EXPECT_EQ(boxOrder(upstairs("2026-05-20", "0"), "2026-06-01"), "");
    EXPECT_EQ(boxOrder(upstairs("2026-03-10", "0.25"), "2026-03-15"), "");
    EXPECT_EQ(boxOrder(upstairs("2026-03-10", "0"), "2026-04-10"), ""); // the count is too old
    const Cells doubt{{"signs", "brood-doubt"}};
    EXPECT_EQ(boxOrder(upstairs("2026-03-10", "0").visit("A", "2026-03-11", doubt), "2026-03-15"), "");
}

TEST(BoxOrder, SouthernMonthsAreSixAway) {
    PlanBook book = PlanBook().yard("Y", {{"latitude_deg", "-40"}}).unchecked("A", {{"brood_boxes", "2"}});
    book.visit("A", "2026-09-10", {{"bees_top", "0"}, {"upper_bees_top", "5"}});
    EXPECT_EQ(boxOrder(book, "2026-09-14"), "");
    EXPECT_EQ(boxOrder(book, "2026-09-15"), "reverse");
}

// --- 4.12 ---

QString fed(const PlanBook& book, const QString& day = kFall) {
    const Snapshot s = book.on(day);
    QStringList out;
    for (const Feed& f : advise(s, {}).feed)
        out += QStringLiteral("%1 %2 %3").arg(s.colony(f.colony).label).arg(f.shortTenthsKg).arg(f.halfLitres);
    return out.join(", ");
}

PlanBook weighed(const char* kg, Cells more = {}, Cells colony = {}) {
    more["gross_kg"] = kg;
    return PlanBook().colony("A", colony).bees("A", "9", more);
}

TEST(FeedRule, MakesUpWhatIsMissingInHalfLitres) {
    EXPECT_EQ(fed(weighed("32")), "");
    EXPECT_EQ(fed(weighed("31.99")), "A 0 1"); // 10 g short: still half a litre, shown as 0.0 kg
    EXPECT_EQ(fed(weighed("31.95")), "A 1 1"); // 0.05 kg, half up
    EXPECT_EQ(fed(weighed("31.47")), "A 5 1"); // 0.53 kg: 0.4917 l
    EXPECT_EQ(fed(weighed("31.46")), "A 5 2"); // 0.54 kg: 0.5009 l
    EXPECT_EQ(fed(weighed("22")), "A 100 19"); // 10 kg: 9.276 l -> 9.5 l
}

TEST(FeedRule, AnExactHalfLitreIsNotRoundedUp) {
    EXPECT_EQ(fed(weighed("30.92").set("stores.single_kg", "31.998")), "A 11 2"); // 1.078 kg: 1 l
    EXPECT_EQ(fed(weighed("30.92").set("stores.single_kg", "31.998001")), "A 11 3");
}

TEST(FeedRule, TwoBoxesNeedMore) {
    EXPECT_EQ(fed(weighed("44", {{"upper_bees_top", "1"}}, {{"brood_boxes", "2"}})), "A 10 2");
}

TEST(FeedRule, LeavesOutWhatMustNotBeFedNow) {
    EXPECT_EQ(fed(weighed("30", {{"queen", "laying-workers"}})), "");
    EXPECT_EQ(fed(PlanBook().colony("A").bees("A", "0", {{"gross_kg", "30"}})), "");
    EXPECT_EQ(fed(weighed("30", {{"signs", "afb"}})), "");
    EXPECT_EQ(fed(weighed("30", {{"signs", "efb"}})), "A 20 4");                                    // held, but fed
    EXPECT_EQ(fed(PlanBook().unchecked("A").visit("A", kCounted, {{"gross_kg", "30"}})), "A 20 4"); // no count
    EXPECT_EQ(fed(PlanBook().colony("A").bees("A", "1", {{"gross_kg", "20"}}).colony("B").bees("B", "9")),
              ""); // shaken out
    EXPECT_EQ(fed(weighed("30").set("season.fall_end", "09-14")), "");
}

TEST(FeedRule, AUnionIsWeighedTogetherUnderItsHost) {
    const auto united = [](const char* a, const char* b, Cells colony = {}) {
        Cells counts{{"gross_kg", a}};
        if (!colony.empty()) counts["upper_bees_top"] = "0";
        return PlanBook().colony("A", colony).colony("B").bees("A", "3", counts).bees("B", "4", {{"gross_kg", b}});
    };
    EXPECT_EQ(fed(united("20", "29")), "B 10 2");                          // 45 − (49 − 5)
    EXPECT_EQ(fed(united("25", "25")), "");                                // 45 − (50 − 5)
    EXPECT_EQ(fed(united("25", "25", {{"brood_boxes", "2"}})), "B 50 10"); // 5 kg of box away: 4.64 l
    EXPECT_EQ(fed(united("20", "")), "");
}

// --- 4.13 ---

QString divided(const PlanBook& book, const QString& day) {
    QStringList out;
    for (const Divide& d : book.plan(day).divides) out += QString::number(d.parts);
    return out.join(' ');
}

PlanBook spring(const char* frames, const char* brood, const char* date = "2026-04-20", const char* queen = "eggs") {
    return PlanBook()
        .unchecked("A", {{"box", "dadant-12"}, {"brood_boxes", "2"}})
        .visit("A", date,
               {{"bees_top", frames},
                {"upper_bees_top", "6"},
                {"queen", queen},
                {"brood_frames", brood},
                {"brood_checked", brood}});
}

TEST(Divides, NeedBroodAndBeesForEachPart) {
    EXPECT_EQ(divided(spring("4", "8"), "2026-04-20"), "2");
    EXPECT_EQ(divided(spring("4", "7"), "2026-04-20"), "");
    EXPECT_EQ(divided(spring("3.75", "8"), "2026-04-20"), "");
    EXPECT_EQ(divided(spring("9", "12"), "2026-04-20"), "3");
    EXPECT_EQ(
        divided(spring("3", "6").set("divide.brood_per_part", "3").set("divide.bees_per_part", "4"), "2026-04-20"),
        "2");
}

TEST(Divides, AreForSpring) {
    EXPECT_EQ(divided(spring("4", "8", "2026-04-19"), "2026-04-19"), "");
    EXPECT_EQ(divided(spring("4", "8", "2026-06-10"), "2026-06-15"), "2");
    EXPECT_EQ(divided(spring("4", "8", "2026-06-10"), "2026-06-16"), "");
}

TEST(Divides, NotWithoutAQueenAndNotWithOldBrood) {
    EXPECT_EQ(divided(spring("4", "8", "2026-04-20", "none"), "2026-04-20"), "");
    EXPECT_EQ(divided(spring("4", "8", "2026-04-20", "laying-workers"), "2026-04-20"), "");
    EXPECT_EQ(divided(spring("4", "8", "2026-04-20", "unknown"), "2026-04-20"), "2");
    PlanBook later = spring("4", "8", "2026-04-20");
    later.visit("A", "2026-05-10", {{"bees_top", "4"}, {"upper_bees_top", "6"}});
    later.row("results", {{"colony", "A"},
                          {"date", "2026-05-10"},
                          {"disease", "afb"},
                          {"result", "negative"},
                          {"method", "laboratory"},
                          {"by", "Lab"}});        // so that nothing holds it
    EXPECT_EQ(divided(later, "2026-05-20"), "2"); // brood 30 days old
    EXPECT_EQ(divided(later, "2026-05-21"), "");
}

// --- 4.14 ---

QString due(const PlanBook& book, const QString& day) {
    const Snapshot s = book.on(day);
    QStringList out;
    for (const Due& d : advise(s, {}).due)
        out += s.colony(d.colony).shown + ' ' + dueWord(d.what) + ' ' + isoText(d.on);
    return out.join(", ");
}

PlanBook united(const char* day = "2026-09-01") {
    return PlanBook()
        .colony("A", {{"ended", day}, {"end", "united"}})
        .colony("B")
        .row("lineage", {{"date", day}, {"how", "united"}, {"colony", "A"}, {"into", "B"}});
}

TEST(DueRule, AUnionIsLookedAtUntilAVisitOrSixtyDays) {
    const QString check = "B union-check 2026-09-06";
    EXPECT_EQ(due(united(), "2026-08-31"), "");
    EXPECT_EQ(due(united(), "2026-09-01"), check);
    EXPECT_EQ(due(united(), "2026-10-31"), check); // 60 days past
    EXPECT_EQ(due(united(), "2026-11-01"), "");
    EXPECT_EQ(due(united().visit("B", "2026-09-01", {}), "2026-09-20"), check); // not later than the union
    EXPECT_EQ(due(united().visit("B", "2026-09-02", {}), "2026-09-01"), check);
    EXPECT_EQ(due(united().visit("B", "2026-09-02", {}), "2026-09-20"), "");
    EXPECT_EQ(due(united().set("follow.union_days", "40"), "2026-09-01"), ""); // 10 October is 39 days away
    EXPECT_EQ(due(united().set("follow.union_days", "40"), "2026-09-11"), "B union-check 2026-10-11");
}

PlanBook treated(Cells of, const char* days) {
    of["date"] = "2026-08-01";
    of["product"] = "strips";
    of["substance"] = "amitraz";
    of["days"] = days;
    return PlanBook().colony("A").colony("B").row("treatments", of);
}

TEST(DueRule, ATreatmentIsTakenOutAtItsEnd) {
    const QString strips = "A take-out 2026-09-12";
    const PlanBook one = treated({{"colony", "A"}}, "42");
    EXPECT_EQ(due(one, "2026-08-12"), "");
    EXPECT_EQ(due(one, "2026-08-13"), strips); // 30 days before
    EXPECT_EQ(due(one, "2026-10-12"), strips); // 30 days past
    EXPECT_EQ(due(one, "2026-10-13"), "");
    EXPECT_EQ(due(treated({{"colony", "A"}}, ""), "2026-08-13"), "");
    EXPECT_EQ(due(treated({{"yard", "Y"}}, "42"), "2026-08-13"), strips + ", B take-out 2026-09-12");
}

TEST(DueRule, OfAYardOnlyWhoStoodThereThatDay) {
    PlanBook book = treated({{"yard", "Y"}}, "42").yard("Z");
    const auto carried = [&](const char* day) {
        return PlanBook(book).row(
            "placements", {{"colony", "B"}, {"date", day}, {"yard", "Z"}, {"stand", "1"}, {"x_m", "0"}, {"y_m", "0"}});
    };
    EXPECT_EQ(due(carried("2026-08-01"), "2026-09-01"),
              "A take-out 2026-09-12"); // in the new yard on the day of the carry
    EXPECT_EQ(due(carried("2026-08-02"), "2026-09-01"), "A take-out 2026-09-12, B take-out 2026-09-12");
}

TEST(DueRule, TheStripsGoWithTheUnion) {
    PlanBook book = united();
    book.row(
        "treatments",
        {{"colony", "A"}, {"date", "2026-08-15"}, {"product", "strips"}, {"substance", "amitraz"}, {"days", "42"}});
    EXPECT_EQ(due(book, "2026-09-20"), "B union-check 2026-09-06, B take-out 2026-09-26");
    PlanBook dead = PlanBook().colony("A", {{"ended", "2026-09-01"}, {"end", "dead"}});
    dead.row(
        "treatments",
        {{"colony", "A"}, {"date", "2026-08-15"}, {"product", "strips"}, {"substance", "amitraz"}, {"days", "42"}});
    EXPECT_EQ(due(dead, "2026-09-20"), "");
}

TEST(DueRule, AResultIsAwaitedOfASuspectedColony) {
    const Cells sign{{"signs", "afb"}};
    EXPECT_EQ(due(PlanBook().colony("A").visit("A", "2026-08-01", sign), kFall), "A result-awaited 2026-09-15");
    PlanBook ended =
        PlanBook().colony("A", {{"ended", "2026-08-02"}, {"end", "destroyed"}}).visit("A", "2026-08-01", sign);
    EXPECT_EQ(due(ended, "2026-10-01"), "A result-awaited 2026-10-01"); // 60 days
    EXPECT_EQ(due(ended, "2026-10-02"), "");
    ended.colony("A", {{"since", "2026-08-10"}, {"stand", "S9"}, {"x_m", "9"}});
    EXPECT_EQ(due(ended, "2026-10-01"), "A@2025-01-01 result-awaited 2026-10-01");
    const Cells positive{
        {"colony", "A"}, {"date", "2026-08-01"}, {"disease", "afb"}, {"result", "positive"}, {"method", "laboratory"}};
    EXPECT_EQ(due(PlanBook().colony("A").row("results", positive).visit("A", "2026-08-01", sign), kFall),
              ""); // confirmed
}

TEST(DueRule, IsOrderedByDayLabelAndKindEachOnce) {
    PlanBook book = united();
    for (int i = 0; i < 2; ++i)
        book.row("treatments", {{"colony", "B"},
                                {"date", "2026-09-01"},
                                {"product", QString::number(i)},
                                {"substance", "x"},
                                {"days", "5"}});
    book.colony("A9").row(
        "treatments", {{"colony", "A9"}, {"date", "2026-09-01"}, {"product", "p"}, {"substance", "x"}, {"days", "5"}});
    EXPECT_EQ(due(book, "2026-09-02"), "A9 take-out 2026-09-06, B union-check 2026-09-06, B take-out 2026-09-06");
}

} // namespace
