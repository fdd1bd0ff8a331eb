#include "core/edit/survey.h"
#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

class Survey : public PutRight {
protected:
    ColonyId k7 = newColony(north, QStringLiteral("7"), {4000, 0});
    StandId s5 = standOf(k5).id;
    StandId s6 = standOf(k6).id;
    StandId s7 = standOf(k7).id;

    Work move(std::vector<StandMove> moves) {
        return [=, this](const EditContext& c) { return moveStands(c, north, moves); };
    }
    Work turn(std::vector<HiveTurn> turns) {
        return [=, this](const EditContext& c) { return turnHives(c, north, turns); };
    }
    Work gate(MmPoint at) {
        return [=, this](const EditContext& c) { return putGate(c, north, at); };
    }
};

TEST_F(Survey, MovesStandsTogetherAndCarriesNoHive) {
    const auto before = session->placementsOf(k5);
    EXPECT_EQ(done(move({{s5, {500, 100}}, {s6, {2500, 100}}})), "Corrected the drawing of North: moved 2 stands");
    EXPECT_EQ(standOf(k5).at, (MmPoint{500, 100}));
    EXPECT_EQ(standOf(k6).at, (MmPoint{2500, 100}));
    EXPECT_EQ(session->placementsOf(k5), before) << "the same stand, since the same day";
    EXPECT_EQ(session->historyDetail(session->history(1).front().seq)->changes.size(), 2u);
}

TEST_F(Survey, SaysHowFarOneStandWasMoved) {
    // Own calculation: 300 east and 400 north are 500 mm.
    EXPECT_EQ(done(move({{s5, {300, 400}}})), "Corrected the drawing of North: moved stand 5 by 0.5 m");
    EXPECT_EQ(done(move({{s5, {300, 400}}, {s6, {2000, 0}}})), "") << "they are there";
    EXPECT_EQ(done(move({})), "");
}

TEST_F(Survey, KeepsStandsApart) {
    EXPECT_EQ(refusal(move({{s5, {1701, 0}}})),
              "Stand 5 would be 0.3 m from stand 6; stands are at least 0.3 m apart.");
    EXPECT_EQ(refusal(move({{s5, {2000, 0}}})), "Stand 5 would be 0 m from stand 6; stands are at least 0.3 m apart.");
    EXPECT_EQ(refusal(move({{s5, {3000, 0}}, {s6, {3100, 0}}})),
              "Stand 5 would be 0.1 m from stand 6; stands are at least 0.3 m apart.");
    EXPECT_NE(done(move({{s5, {1700, 0}}})), "") << "0.3 m is enough";
}

/// Two that are swapped, or moved with each other, are judged where they end.
TEST_F(Survey, JudgesStandsWhereTheyEnd) {
    EXPECT_NE(done(move({{s5, {2000, 0}}, {s6, {0, 0}}})), "");
    EXPECT_NE(done(move({{s6, {2000, 100}}, {s5, {4000, 100}}, {s7, {6000, 100}}})), "");
}

/// An old book may have stands nearer than that: they can be drawn apart step by step.
TEST_F(Survey, LetsStandsThatAreTooNearBeMovedApart) {
    rawSql(path(), "UPDATE stand SET x_mm = 100, y_mm = 0 WHERE name = '6'");
    reopen();
    EXPECT_NE(done(move({{s6, {200, 0}}})), "");
    EXPECT_EQ(refusal(move({{s6, {150, 0}}})), "Stand 6 would be 0.2 m from stand 5; stands are at least 0.3 m apart.");
}

TEST_F(Survey, RefusesStandsThatItCannotMove) {
    const YardId south = newYard(QStringLiteral("South"));
    const StandId far = standOf(newColony(south, QStringLiteral("9"), {0, 0})).id;
    EXPECT_EQ(refusal(move({{far, {100, 0}}})), "Stand 9 is not in North.");
    EXPECT_EQ(refusal(move({{StandId{99}, {100, 0}}})), "That stand is no longer in the book.");
    EXPECT_EQ(refusal(move({{s5, {100, 0}}, {s5, {200, 0}}})), "Stand 5 is named twice.");
    EXPECT_EQ(refusal(move({{s5, {10'000'001, 0}}})), "Stand 5: expected at most 10000 m from the yard's origin.");
    rawSql(path(), "UPDATE stand SET removed = 1 WHERE name = '7'");
    reopen();
    EXPECT_EQ(refusal(move({{s7, {100, 0}}})), "Stand 7 of North was taken off the plan.");
    EXPECT_TRUE(apply(move({{s5, {4000, 0}}}))) << "one taken off the plan is in nobody's way";
}

TEST_F(Survey, TurnsHivesWhereTheyStand) {
    carry(k5, {0, 3000}, kDay);
    EXPECT_EQ(done(turn({{k5, 195}})), "Corrected the drawing of North: 5 faces 195°");
    EXPECT_EQ(session->placementsOf(k5).back().headingDeg, 195);
    EXPECT_EQ(session->placementsOf(k5).front().headingDeg, std::nullopt) << "where it stood before";
    EXPECT_EQ(done(turn({{k6, 90}, {k7, 90}})), "Corrected the drawing of North: turned 2 hives");
    EXPECT_EQ(done(turn({{k6, 90}})), "") << "it faces that way";
    EXPECT_EQ(refusal(turn({{k6, 360}})), "Heading: 360 is not from 0 to 359.");
    EXPECT_EQ(refusal(turn({{k6, 10}, {k6, 20}})), "6 is named twice.");
    EXPECT_EQ(refusal(turn({{ColonyId{99}, 0}})), "That colony is no longer in the book.");
    end(k7, kDay);
    EXPECT_EQ(refusal(turn({{k7, 0}})), "7 does not stand in North.");
}

TEST_F(Survey, PutsTheGate) {
    EXPECT_EQ(done(gate({3000, -4000})), "Corrected the drawing of North: put the gate");
    EXPECT_EQ(session->yard(north)->gate(), (MmPoint{3000, -4000}));
    // Own calculation: 300 and 400 are 500 mm.
    EXPECT_EQ(done(gate({3300, -4400})), "Corrected the drawing of North: moved the gate by 0.5 m");
    EXPECT_EQ(done(gate({3300, -4400})), "");
    EXPECT_EQ(refusal(gate({0, -10'000'001})), "Gate: expected at most 10000 m from the yard's origin.");
    EXPECT_EQ(refusal([](const EditContext& c) { return putGate(c, YardId{99}, {}); }),
              "That yard is no longer in the book.");
}

/// Taken back out of turn, a stand would come back under one that is there by now.
TEST_F(Survey, IsTakenBackOnlyWhereTheGroundIsFree) {
    const qint64 seq = apply(move({{s5, {0, 5000}}}))->seq;
    newColony(north, QStringLiteral("8"), {100, 0});
    EXPECT_EQ(thrownBy([&] { session->takeBack(seq); }).message,
              "Stand 5 would be 0.1 m from stand 8; stands are at least 0.3 m apart.");
    EXPECT_EQ(standOf(k5).at, (MmPoint{0, 5000}));
    session->undo();
    EXPECT_TRUE(session->takeBack(seq));
    EXPECT_EQ(standOf(k5).at, (MmPoint{0, 0}));
    EXPECT_EQ(problems(), "");
}

TEST_F(Survey, NeedsNoCorrectionWhereAHoldStands) {
    log(k5, kDay, [](Visit& v) { v.signs.add(Sign::Afb); });
    EXPECT_NE(done(move({{s5, {0, 700}}})), "");
    EXPECT_NE(done(turn({{k5, 20}})), "");
    EXPECT_NE(done(gate({0, -700})), "");
}

} // namespace

} // namespace tests::edit
