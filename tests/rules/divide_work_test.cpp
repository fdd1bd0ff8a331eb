#include "core/rules/divide_work.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Places: own calculation, from the metres of each small yard.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

constexpr char kDay[] = "2026-05-11";

/// A in two boxes that may be divided in three; B and C beside it.
PlanBook spring() {
    PlanBook book = PlanBook().unchecked("A", {{"brood_boxes", "2"}, {"x_m", "0"}});
    book.unchecked("B", {{"x_m", "6"}, {"stand", "b"}});
    book.visit("B", "2026-05-05", {{"brood_frames", "4"}, {"brood_checked", "4"}});
    book.visit("A", "2026-05-10",
               {{"bees_top", "8"},
                {"upper_bees_top", "8"},
                {"queen", "eggs"},
                {"brood_frames", "12"},
                {"brood_checked", "12"}});
    return book;
}

Stand stand(int id, const QString& name, MmPoint at, bool removed = false) { return {{id}, {1}, name, at, removed}; }

std::string placesOf(const PlanBook& book, const std::vector<Stand>& stands, int parts = 9) {
    const Snapshot s = book.on(kDay);
    PlanRequest request;
    if (parts < 9) request.divideParts = {{named(s, "A"), parts}};
    const Plan plan = advise(s, request);
    std::string out;
    for (const DivideWork& work : divideWork(s, plan, *s.yardNamed(u"Y"), stands))
        for (const NewPlace& p : work.places)
            out += (p.stand ? p.name.toStdString() : std::string("bare")) + (p.nearHeld ? "! " : " ");
    return out;
}

TEST(DivideWork, NewHivesStandOnTheNearestFreeStands) {
    const std::vector<Stand> stands = {stand(101, "far", {9000, 0}), stand(102, "gone", {500, 0}, true),
                                       stand(103, "near", {2000, 0}), stand(104, "next", {0, 3000})};
    EXPECT_EQ(placesOf(spring(), stands), "near next ");
}

TEST(DivideWork, AsManyAsAskedFor) {
    const std::vector<Stand> stands = {stand(101, "1", {9000, 0}), stand(103, "2", {2000, 0})};
    EXPECT_EQ(placesOf(spring(), stands, 3), "2 1 ");
    EXPECT_EQ(placesOf(spring(), stands, 2), "2 ");
    EXPECT_EQ(placesOf(spring(), stands, 1), "") << "left whole";
}

TEST(DivideWork, WhereNoStandIsFreeOnBareGroundAStepAway) {
    const Snapshot s = spring().on(kDay);
    const std::vector<Stand> one = {stand(103, "near", {2000, 0})};
    EXPECT_EQ(placesOf(spring(), one), "near bare ");
    const auto work = divideWork(s, advise(s, {}), *s.yardNamed(u"Y"), {});
    ASSERT_EQ(work.size(), 1U);
    ASSERT_EQ(work[0].places.size(), 2U);
    const MmPoint a = work[0].places[0].at, b = work[0].places[1].at;
    for (const auto& [p, q] : {std::pair{a, b}, {a, MmPoint{0, 0}}, {b, MmPoint{0, 0}}, {a, MmPoint{6000, 0}}})
        EXPECT_GE(squaredDistance(p, q), 1'000'000);
}

TEST(DivideWork, NotBesideAHeldColonyWhereThereIsAnotherPlace) {
    PlanBook book = spring();
    book.visit("B", "2026-05-09", {{"signs", "afb"}});
    const std::vector<Stand> stands = {stand(101, "beside", {5000, 0}), stand(103, "away", {-5500, 0}),
                                       stand(104, "off", {-6500, 0})};
    EXPECT_EQ(placesOf(spring(), stands, 2), "beside ") << "B is not held";
    const Snapshot s = book.on(kDay);
    // A itself is held by its yard then: the work is asked of places alone, by a plan that would divide it
    Plan plan = advise(spring().on(kDay), {});
    plan.holds = advise(s, {}).holds;
    std::erase_if(plan.holds, [&](const Hold& h) { return h.colony != named(s, "B"); });
    std::string out;
    const auto work = divideWork(s, plan, *s.yardNamed(u"Y"), stands);
    for (const NewPlace& p : work.at(0).places)
        out += p.name.toStdString() + (p.nearHeld ? "! " : " ");
    EXPECT_EQ(out, "away off ");
}

TEST(DivideWork, TwoMothersShareNoPlace) {
    PlanBook book = spring();
    book.unchecked("D", {{"brood_boxes", "2"}, {"x_m", "3"}});
    book.visit(
        "D", "2026-05-10",
        {{"bees_top", "8"}, {"upper_bees_top", "8"}, {"queen", "eggs"}, {"brood_frames", "8"}, {"brood_checked", "8"}});
    const std::vector<Stand> stands = {stand(101, "1", {1500, 0}), stand(103, "2", {9000, 0})};
    EXPECT_EQ(placesOf(book, stands), "1 2 bare ");
}

TEST(DivideParts, AreNeverMoreThanTheRuleAllows) {
    const Snapshot s = spring().on(kDay);
    for (const auto& [asked, expected] : {std::pair{5, 3}, {3, 3}, {2, 2}}) {
        PlanRequest request;
        request.divideParts = {{named(s, "A"), asked}};
        const Plan plan = advise(s, request);
        ASSERT_EQ(plan.divides.size(), 1U);
        EXPECT_EQ(plan.divides[0].parts, expected);
        EXPECT_EQ(plan.divides[0].most, 3);
    }
    PlanRequest whole;
    whole.divideParts = {{named(s, "A"), 1}};
    EXPECT_TRUE(advise(s, whole).divides.empty());
}

TEST(DivideSteps, BeginWithTheBroodCheckAndDifferByTheQueen) {
    std::set<std::string> third;
    for (const DivideQueens queens : {DivideQueens::Cells, DivideQueens::Bought, DivideQueens::Own}) {
        const Sentences steps = divideSteps(queens);
        EXPECT_TRUE(QString::fromUtf8(steps.front().pattern).startsWith(u"Check the brood"));
        third.insert(steps.at(3).pattern);
    }
    EXPECT_EQ(third.size(), 3U);
}

} // namespace
