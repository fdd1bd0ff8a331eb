#include "core/base/error.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Rule 4.7: pairs that the user asks for, and what is refused. Source: own calculation from the rules' text.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

PlanBook four() {
    PlanBook book;
    for (const char* c : {"A", "B", "C", "D"}) book.colony(c).bees(c, "4");
    return book.yard("Z").colony("E", {{"yard", "Z"}}).bees("E", "4").unchecked("H").bees("H", "4");
}

using Names = std::vector<std::pair<const char*, const char*>>;

PlanRequest request(const Snapshot& s, const Names& pins, const Names& forbids = {}, std::optional<int> most = {}) {
    PlanRequest out;
    for (const auto& [a, b] : pins) out.pins.push_back({named(s, a), named(s, b)});
    for (const auto& [a, b] : forbids) out.forbids.push_back({named(s, a), named(s, b)});
    out.most = most;
    return out;
}

QString refusal(const Names& pins, const Names& forbids = {}, std::optional<int> most = {}) {
    const Snapshot s = four().on(kFall);
    try {
        (void)advise(s, request(s, pins, forbids, most));
    } catch (const Error& e) {
        EXPECT_EQ(e.kind(), Error::Kind::BadData);
        return e.userMessage();
    }
    return {};
}

TEST(Pins, APairMayBePinnedEvenBelowTheLimitOfItsGain) {
    PlanBook book;
    book.colony("A").colony("B", {{"x_m", "2000"}}).bees("A", "3").bees("B", "4");
    const Snapshot s = book.on(kFall);
    EXPECT_TRUE(advise(s, {}).unions.empty());
    const Plan plan = advise(s, request(s, {{"B", "A"}}));
    ASSERT_EQ(plan.unions.size(), 1U);
    EXPECT_TRUE(plan.unions[0].pinned);
    EXPECT_EQ(plan.unions[0].gain, 368 - 2000);
    EXPECT_TRUE(plan.unions[0].because[0].contains("below the limit of 50"));
}

TEST(Pins, WhatBarsAPinIsNamed) {
    EXPECT_TRUE(refusal({{"A", "H"}}).contains("4.7.2")) << refusal({{"A", "H"}}).toStdString();
    EXPECT_TRUE(refusal({{"A", "E"}}).contains("4.7.1"));
    EXPECT_EQ(refusal({{"A", "B"}}), QString());
}

TEST(Pins, PinsThatCannotBeTogetherAreRefused) {
    EXPECT_TRUE(refusal({{"A", "B"}, {"B", "C"}}).contains("B is pinned twice"));
    EXPECT_TRUE(refusal({{"A", "B"}}, {{"B", "A"}}).contains("pinned and forbidden"));
    EXPECT_TRUE(refusal({{"A", "B"}, {"C", "D"}}, {}, 1).contains("2 unions are pinned, but at most 1"));
    EXPECT_EQ(refusal({{"A", "B"}, {"C", "D"}}, {}, 2), QString());
}

TEST(Pins, OfAYardNotAskedForAreRefused) {
    const Snapshot s = four().on(kFall);
    PlanRequest r = request(s, {{"A", "B"}});
    r.yards = {*s.yardNamed(u"Z")};
    EXPECT_THROW((void)advise(s, r), Error);
    r.yards = {*s.yardNamed(u"Z"), *s.yardNamed(u"Y")};
    EXPECT_EQ(advise(s, r).totals.colonies, 6);
}

TEST(Pins, AYardAskedForLimitsWhatIsListed) {
    const Snapshot s = four().on(kFall);
    PlanRequest r;
    r.yards = {*s.yardNamed(u"Z")};
    const Plan plan = advise(s, r);
    EXPECT_EQ(plan.totals.colonies, 1);
    EXPECT_TRUE(plan.unions.empty() && plan.holds.empty());
    EXPECT_EQ(plan.alone.size(), 1U);
}

TEST(Pins, NoneAtAllWhereTheLimitIsZero) {
    const Snapshot s = four().on(kFall);
    EXPECT_TRUE(advise(s, request(s, {}, {}, 0)).unions.empty());
    EXPECT_EQ(advise(s, request(s, {}, {}, 1)).unions.size(), 1U);
    EXPECT_EQ(advise(s, {}).unions.size(), 2U);
}

} // namespace
