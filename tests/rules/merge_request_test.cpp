#include "core/rules/merge_request.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// What a saved merge day asks of the plan. Source: own calculation.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

/// Two yards with three colonies each that can pair; A and C of each make the best pair.
Snapshot twoYards() {
    PlanBook book;
    book.yard("Y").yard("Z");
    for (const char* yard : {"Y", "Z"})
        for (const auto& [letter, x, frames] :
             {std::tuple{"A", "0", "3"}, std::tuple{"B", "2", "4.5"}, std::tuple{"C", "4", "5"}}) {
            const QString label = QString(letter) + (yard[0] == 'Y' ? "1" : "2");
            book.colony(label, {{"x_m", x}, {"yard", yard}}).bees(label, frames);
        }
    return book.on(kFall);
}

MergeWish wishOf(const Snapshot& s, ColonyIx inYard) {
    MergeWish wish;
    wish.day.id = {1};
    wish.day.day = s.on;
    for (const ColonyFacts& f : colonyFacts(s))
        if (f.colony == inYard) wish.day.yard = s.yard(f.yard).id;
    return wish;
}

MergeChoice asked(const Snapshot& s, MergeAsk what, const char* colony, const char* other = nullptr) {
    MergeChoice c;
    c.what = what;
    c.colony = s.colony(named(s, colony)).id;
    if (other) c.other = s.colony(named(s, other)).id;
    return c;
}

TEST(MergeRequest, WhatIsAskedOfOneYardLeavesTheOthersAlone) {
    const Snapshot s = twoYards();
    ASSERT_EQ(unionsOf(s, adviseAsAsked(s, {}).plan), "A1>C1 A2>C2");
    MergeWish wish = wishOf(s, named(s, "A1"));
    wish.choices = {asked(s, MergeAsk::Pin, "A1", "B1"), asked(s, MergeAsk::Host, "A1", "B1")};
    const AskedPlan plan = adviseAsAsked(s, {wish});
    EXPECT_EQ(unionsOf(s, plan.plan), "B1>A1 A2>C2");
    EXPECT_TRUE(plan.plan.unions.front().pinned);
    EXPECT_TRUE(plan.unmet.empty());
}

TEST(MergeRequest, TheLimitOfOneYardIsItsOwn) {
    const Snapshot s = twoYards();
    MergeWish wish = wishOf(s, named(s, "A1"));
    wish.day.most = 0;
    EXPECT_EQ(unionsOf(s, adviseAsAsked(s, {wish}).plan), "A2>C2");
    wish.day.most = 1;
    EXPECT_EQ(unionsOf(s, adviseAsAsked(s, {wish}).plan), "A1>C1 A2>C2");
}

TEST(MergeRequest, HoursAreAsManyUnionsAsPairsOfPeopleMake) {
    Settings settings; // 12 minutes, two people
    EXPECT_EQ(unionsWithin(settings, 11), 0);
    EXPECT_EQ(unionsWithin(settings, 12), 1);
    EXPECT_EQ(unionsWithin(settings, 60), 5);
    EXPECT_EQ(minutesFor(settings, 5), 60);
    settings.crewPeople = 5;
    EXPECT_EQ(unionsWithin(settings, 60), 10);
    EXPECT_EQ(minutesFor(settings, 5), 36) << "three rounds of two";
    settings.crewPeople = 1;
    EXPECT_EQ(unionsWithin(settings, 60), 5);
    MergeDay day;
    EXPECT_EQ(mostUnionsOf(settings, day), std::nullopt);
    day.minutes = 24;
    EXPECT_EQ(mostUnionsOf(settings, day), 2);
    day.most = 1;
    EXPECT_EQ(mostUnionsOf(settings, day), 1);
}

TEST(MergeRequest, PinsStayAboveTheLimitAndItSaysSo) {
    const Snapshot s = twoYards();
    MergeWish wish = wishOf(s, named(s, "A1"));
    wish.choices = {asked(s, MergeAsk::Pin, "A1", "B1")};
    wish.day.most = 0;
    const AskedPlan plan = adviseAsAsked(s, {wish});
    EXPECT_EQ(unionsOf(s, plan.plan), "A1>B1 A2>C2");
    ASSERT_EQ(plan.unmet.size(), 1U);
    EXPECT_FALSE(plan.unmet[0].choice);
    EXPECT_EQ(plan.unmet[0].because, "1 unions are pinned, and only 0 fit the limit: those pinned stay.");
}

TEST(MergeRequest, APinThatAHoldBarsIsPassedOverAndSaid) {
    PlanBook book;
    book.unchecked("A").colony("B", {{"x_m", "2"}}).bees("A", "3").bees("B", "5");
    const Snapshot s = book.on(kFall);
    MergeWish wish = wishOf(s, named(s, "A"));
    wish.choices = {asked(s, MergeAsk::Pin, "A", "B")};
    const AskedPlan plan = adviseAsAsked(s, {wish});
    EXPECT_TRUE(plan.plan.unions.empty());
    ASSERT_EQ(plan.unmet.size(), 1U);
    EXPECT_EQ(plan.unmet[0].choice, wish.choices[0]);
    EXPECT_TRUE(plan.unmet[0].because.startsWith("A and B cannot be pinned any more. 4.7.2: "))
        << plan.unmet[0].because.toStdString();
}

TEST(MergeRequest, AColonyThatLeftTheYardIsSaidOneThatWasUnitedThatDayIsNot) {
    const Snapshot s = twoYards();
    MergeWish wish = wishOf(s, named(s, "A1"));
    wish.choices = {asked(s, MergeAsk::Forbid, "A1", "C2")};
    const AskedPlan plan = adviseAsAsked(s, {wish});
    ASSERT_EQ(plan.unmet.size(), 1U);
    EXPECT_EQ(plan.unmet[0].because, "C2 does not stand in Y any more: what was asked of it is passed over.");

    PlanBook book;
    book.colony("A").colony("B", {{"x_m", "2"}}).bees("A", "3").bees("B", "5");
    book.row("lineage", {{"date", kFall}, {"how", "united"}, {"colony", "A"}, {"into", "B"}});
    const Snapshot done = book.on(kFall);
    MergeWish pinned = wishOf(done, named(done, "B"));
    for (const SnapColony& colony : done.colonies)
        if (colony.label == "A") {
            MergeChoice c;
            c.colony = colony.id;
            c.other = done.colony(named(done, "B")).id;
            pinned.choices = {c};
        }
    ASSERT_EQ(pinned.choices.size(), 1U);
    EXPECT_TRUE(adviseAsAsked(done, {pinned}).unmet.empty());
}

TEST(MergeRequest, WishesOfAnotherDayArePassedOver) {
    const Snapshot s = twoYards();
    MergeWish wish = wishOf(s, named(s, "A1"));
    wish.day.most = 0;
    wish.day.day = s.on + 1;
    EXPECT_EQ(unionsOf(s, adviseAsAsked(s, {wish}).plan), "A1>C1 A2>C2");
}

TEST(MergeRequest, ALimitOverAllYardsAndOneOfAYardAreNotBothTaken) {
    const Snapshot s = twoYards();
    PlanRequest request;
    request.most = 1;
    request.mostIn = {{{0}, 1}};
    EXPECT_ANY_THROW((void)advise(s, request));
}

TEST(MergeRequest, DividesAreAsTheyAreAskedForInTheirOwnYard) {
    PlanBook book;
    book.yard("Y").yard("Z");
    for (const char* label : {"A", "B"}) {
        book.unchecked(label, {{"brood_boxes", "2"}, {"yard", label[0] == 'A' ? "Y" : "Z"}});
        book.visit(label, "2026-05-10",
                   {{"bees_top", "8"},
                    {"upper_bees_top", "8"},
                    {"queen", "eggs"},
                    {"brood_frames", "12"},
                    {"brood_checked", "12"}});
    }
    const Snapshot s = book.on("2026-05-11");
    MergeWish wish = wishOf(s, named(s, "A"));
    const auto parts = [&](const char* colony, int most) {
        wish.divides = {{{}, {}, s.colony(named(s, colony)).id, most, {}}};
        std::string out;
        for (const Divide& d : adviseAsAsked(s, {wish}).plan.divides)
            out += s.colony(d.colony).label.toStdString() + std::to_string(d.parts) + ' ';
        return out;
    };
    EXPECT_EQ(parts("A", 9), "A3 B3 ");
    EXPECT_EQ(parts("A", 2), "A2 B3 ");
    EXPECT_EQ(parts("A", 1), "B3 ");
    EXPECT_EQ(parts("B", 1), "A3 B3 ") << "of another yard";
}

} // namespace
