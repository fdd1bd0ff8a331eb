#include "core/edit/merge_choices.h"

#include <gtest/gtest.h>

// What one wish does to those that stand. Source: own calculation.

namespace {

using namespace core;
using namespace core::edit;

constexpr ColonyId kA{1}, kB{2}, kC{3}, kD{4};

size_t count(const MergeChoices& choices, MergeAsk what) {
    size_t n = 0;
    for (const MergeChoice& x : choices) n += x.what == what ? 1 : 0;
    return n;
}

TEST(MergeChoices, APinTakesTheWayOfOtherPinsOfTheTwo) {
    MergeChoices c = withPin(withPin({}, kA, kB), kC, kD);
    EXPECT_EQ(count(c, MergeAsk::Pin), 2U);
    c = withPin(c, kB, kC);
    EXPECT_EQ(count(c, MergeAsk::Pin), 1U);
    EXPECT_TRUE(asks(c, MergeAsk::Pin, kC, kB)) << "in either order";
    EXPECT_EQ(withPin(c, kC, kB), c) << "the same again says nothing new";
}

TEST(MergeChoices, APinEndsThatTheTwoAreForbiddenOrLeftOut) {
    MergeChoices c = withLeftOut(withForbid(withForbid({}, kA, kB), kA, kC), kB, QStringLiteral("weak"));
    c = withPin(c, kB, kA);
    EXPECT_FALSE(asks(c, MergeAsk::Forbid, kA, kB));
    EXPECT_TRUE(asks(c, MergeAsk::Forbid, kA, kC)) << "another pair stays forbidden";
    EXPECT_FALSE(asks(c, MergeAsk::LeaveOut, kB));
}

TEST(MergeChoices, AForbiddenPairIsNeitherPinnedNorTurned) {
    MergeChoices c = withTop(withHost(withPin({}, kA, kB), kA, kB), kB, kA);
    c = withForbid(c, kA, kB);
    ASSERT_EQ(c.size(), 1U);
    EXPECT_TRUE(asks(c, MergeAsk::Forbid, kB, kA));
}

TEST(MergeChoices, OneLeftOutIsNotPinnedAndKeepsItsWord) {
    MergeChoices c = withLeftOut(withPin({}, kA, kB), kA, QStringLiteral(" requeened last week "));
    ASSERT_EQ(c.size(), 1U);
    EXPECT_EQ(findChoice(c, MergeAsk::LeaveOut, kA)->note, QStringLiteral("requeened last week"));
    c = withLeftOut(c, kA, QStringLiteral("sold"));
    ASSERT_EQ(c.size(), 1U);
    EXPECT_EQ(c[0].note, QStringLiteral("sold"));
    EXPECT_TRUE(without(c, MergeAsk::LeaveOut, kA).empty());
}

TEST(MergeChoices, AHostTurnedTwiceIsOneWish) {
    MergeChoices c = withHost(withHost({}, kA, kB), kB, kA);
    ASSERT_EQ(c.size(), 1U);
    EXPECT_TRUE(asks(c, MergeAsk::Host, kB, kA));
    EXPECT_FALSE(asks(c, MergeAsk::Host, kA, kB));
    EXPECT_TRUE(without(c, MergeAsk::Host, kA, kB).empty()) << "whichever is named";
    c = withTop(withTop(c, kA, kB), kB, kA);
    EXPECT_EQ(count(c, MergeAsk::Top), 1U);
    EXPECT_EQ(count(c, MergeAsk::Host), 1U);
}

} // namespace
