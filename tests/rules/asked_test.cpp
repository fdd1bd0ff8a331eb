#include "core/base/error.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// What is asked of a plan besides pairs: colonies left out, who is host, whose box is on top. Source: own calculation.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

PlanBook three() {
    PlanBook book;
    book.colony("A").colony("B", {{"x_m", "2"}}).colony("C", {{"x_m", "4"}});
    return book.bees("A", "3").bees("B", "4.5").bees("C", "5");
}

TEST(Asked, AColonyLeftOutIsInNoUnionAndStandsAlone) {
    const Snapshot s = three().on(kFall);
    PlanRequest request;
    request.leftOut = {named(s, "A")};
    const Plan plan = advise(s, request);
    EXPECT_EQ(unionsOf(s, plan), "B>C");
    ASSERT_EQ(plan.alone.size(), 1U);
    EXPECT_EQ(plan.alone[0].colony, named(s, "A"));
}

TEST(Asked, AColonyLeftOutIsNeitherShakenOutNorAHost) {
    PlanBook book;
    book.colony("A").colony("B", {{"x_m", "2"}}).bees("A", "1.5").bees("B", "8.5");
    const Snapshot s = book.on(kFall);
    ASSERT_EQ(advise(s, {}).shakeOuts.size(), 1U);
    for (const char* left : {"A", "B"}) {
        PlanRequest request;
        request.leftOut = {named(s, left)};
        EXPECT_TRUE(advise(s, request).shakeOuts.empty()) << left;
    }
}

TEST(Asked, AColonyLeftOutCannotBePinned) {
    const Snapshot s = three().on(kFall);
    PlanRequest request;
    request.pins = {{named(s, "A"), named(s, "B")}};
    request.leftOut = {named(s, "B")};
    try {
        (void)advise(s, request);
        FAIL();
    } catch (const Error& e) {
        EXPECT_EQ(e.userMessage(), "A+B cannot be pinned: B is left out.");
    }
}

Union onlyUnion(const Snapshot& s, PlanRequest request) {
    request.pins = {{named(s, "A"), named(s, "B")}};
    request.forbids = {{named(s, "A"), named(s, "C")}, {named(s, "B"), named(s, "C")}};
    return advise(s, request).unions.at(0);
}

TEST(Asked, TheWeakerCanBeMadeTheHostAndItsBoxGoesOnTop) {
    const Snapshot s = three().on(kFall);
    const Union byRule = onlyUnion(s, {});
    EXPECT_EQ(byRule.host, named(s, "B"));
    PlanRequest request;
    request.hosts = {{named(s, "A"), named(s, "B")}};
    const Union asked = onlyUnion(s, request);
    EXPECT_EQ(asked.host, named(s, "A"));
    EXPECT_EQ(asked.moved, named(s, "B"));
    EXPECT_EQ(asked.upper, named(s, "A"));
    EXPECT_EQ(asked.gain, byRule.gain);
    EXPECT_EQ(asked.from, byRule.to);
    EXPECT_TRUE(asked.because.join(u' ').contains("B is the one carried, as you asked; by the rule it would be A."));
    PlanRequest same;
    same.hosts = {{named(s, "B"), named(s, "A")}};
    EXPECT_EQ(onlyUnion(s, same).because, byRule.because) << "asked for what the rule says";
}

TEST(Asked, EitherBoxCanGoOnTop) {
    const Snapshot s = three().on(kFall);
    PlanRequest request;
    request.tops = {{named(s, "A"), named(s, "B")}};
    const Union asked = onlyUnion(s, request);
    EXPECT_EQ(asked.host, named(s, "B"));
    EXPECT_EQ(asked.upper, named(s, "A"));
    EXPECT_EQ(asked.lower, named(s, "B"));
    EXPECT_TRUE(asked.because.join(u' ').contains("A's box goes on top, as you asked"));
    EXPECT_TRUE(asked.steps.join(u' ').contains("Leave B's box on stand")) << asked.steps.join(u' ').toStdString();
}

} // namespace
