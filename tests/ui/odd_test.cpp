#include "ui/records/odd.h"

#include <gtest/gtest.h>

namespace {

using core::QueenSeen;
using core::Visit;
using ui::records::oddVisit;

const core::Day kToday = core::dayOf(2026, 9, 15);

Visit visit(int daysAgo, std::optional<int> quarters = {}, std::optional<QueenSeen> queen = {},
            std::optional<int> brood = {}) {
    Visit v;
    v.day = kToday - daysAgo;
    if (quarters) v.beesTop = core::Quarters{*quarters};
    v.queen = queen;
    v.broodFrames = brood;
    return v;
}

int found(const Visit& v, const std::vector<Visit>& others) {
    return static_cast<int>(oddVisit(v, others, core::StrengthJudge::Mean, kToday).size());
}

TEST(OddVisits, AJumpOfEightFramesWithinThreeWeeks) {
    EXPECT_EQ(found(visit(0, 12 + 32), {visit(7, 12)}), 1) << "at the limit";
    EXPECT_EQ(found(visit(0, 12 + 31), {visit(7, 12)}), 0) << "below it";
    EXPECT_EQ(found(visit(0, 4), {visit(7, 36)}), 1) << "downwards too";
    EXPECT_EQ(found(visit(0, 44), {visit(21, 12)}), 1);
    EXPECT_EQ(found(visit(0, 44), {visit(22, 12)}), 0) << "long enough ago";
    EXPECT_EQ(found(visit(0, 44), {}), 0);
    EXPECT_EQ(found(visit(0, 44), {visit(3), visit(7, 12)}), 1) << "the last visit that counted";
    EXPECT_EQ(found(visit(0, 44), {visit(3, 40), visit(7, 12)}), 0);
    EXPECT_EQ(found(visit(10, 44), {visit(2, 12), visit(12, 40)}), 0) << "later visits are none of its past";
    EXPECT_EQ(found(visit(0), {visit(7, 44)}), 0) << "nothing counted";
}

TEST(OddVisits, BothBoxesAreCounted) {
    Visit two = visit(0, 20);
    two.upperBeesTop = core::Quarters{24};
    EXPECT_EQ(ui::records::countedBees(two, core::StrengthJudge::Mean), core::Quarters{44});
    EXPECT_EQ(found(two, {visit(7, 12)}), 1);
    two.beesBottom = core::Quarters{23};
    EXPECT_EQ(ui::records::countedBees(two, core::StrengthJudge::Mean), core::Quarters{46}) << "(20 + 23 + 1) / 2 + 24";
    EXPECT_EQ(ui::records::countedBees(two, core::StrengthJudge::Bottom), core::Quarters{47});
}

// A drone hatches on the 24th day, a worker on the 21st: common practice, no source.
TEST(OddVisits, BroodLongAfterNoQueenWasThere) {
    const auto none = QueenSeen::None;
    EXPECT_EQ(found(visit(0, {}, {}, 3), {visit(24, {}, none)}), 1) << "at the limit";
    EXPECT_EQ(found(visit(0, {}, {}, 3), {visit(23, {}, none)}), 0);
    EXPECT_EQ(found(visit(0, {}, {}, 0), {visit(30, {}, none)}), 0) << "no brood";
    EXPECT_EQ(found(visit(0, {}, QueenSeen::Eggs, 3), {visit(30, {}, none)}), 0) << "she is here now";
    EXPECT_EQ(found(visit(0, {}, {}, 3), {visit(10, {}, QueenSeen::Virgin), visit(30, {}, none)}), 0);
    EXPECT_EQ(found(visit(0, {}, {}, 3), {visit(10, {}, QueenSeen::Unknown), visit(30, {}, none)}), 1);
    EXPECT_EQ(found(visit(0, {}, none, 3), {visit(10, {}, none), visit(30, {}, none)}), 1) << "the first of them counts";
    EXPECT_EQ(found(visit(0, {}, {}, 3), {visit(30)}), 0) << "not looked for says nothing";
}

TEST(OddDays, MoreThanAYearBack) {
    EXPECT_FALSE(ui::records::longAgo(kToday - 365, kToday));
    EXPECT_TRUE(ui::records::longAgo(kToday - 366, kToday));
    EXPECT_EQ(found(visit(400), {}), 1);
}

TEST(OddDays, BeforeTheLastVisit) {
    const QString name = QStringLiteral("A1");
    EXPECT_TRUE(ui::records::beforeLastVisit(name, kToday - 1, kToday));
    EXPECT_FALSE(ui::records::beforeLastVisit(name, kToday, kToday));
    EXPECT_FALSE(ui::records::beforeLastVisit(name, kToday, std::nullopt));
}

} // namespace
