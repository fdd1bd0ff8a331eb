#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"

namespace tests::edit {

namespace {

const Day kDay = dayOf(2026, 9, 20);

class Carry : public EditTest {
protected:
    YardId yard = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(yard, QStringLiteral("5"), {0, 0});

    std::vector<Placement> placements(ColonyId id) const { return session->placementsOf(id); }
};

TEST_F(Carry, ClosesTheOldPlaceAndOpensANewStandWithTheNextNumber) {
    const auto line = carry(k5, {2000, 0}, kDay);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->text, "Carried 5 2 m east");
    const auto all = placements(k5);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].until, kDay);
    EXPECT_TRUE(all[0].first);
    EXPECT_EQ(all[1].since, kDay);
    EXPECT_FALSE(all[1].until);
    EXPECT_FALSE(all[1].first);
    EXPECT_FALSE(all[1].headingDeg);
    EXPECT_EQ(standOf(k5).name, "6");
    EXPECT_EQ(standOf(k5).at, (MmPoint{2000, 0}));
}

TEST_F(Carry, NamesTheWindOfTheStep) {
    const std::pair<MmPoint, const char*> steps[] = {
        {{0, 1000}, "Carried 5 1 m north"},   {{1000, 1000}, "Carried 5 1.4 m north-east"},
        {{1000, 0}, "Carried 5 1 m east"},    {{1000, -1000}, "Carried 5 1.4 m south-east"},
        {{0, -1000}, "Carried 5 1 m south"},  {{-1000, -1000}, "Carried 5 1.4 m south-west"},
        {{-1000, 0}, "Carried 5 1 m west"},   {{-1000, 1000}, "Carried 5 1.4 m north-west"},
        {{1000, 350}, "Carried 5 1.1 m east"}};
    for (const auto& [to, text] : steps) {
        EXPECT_EQ(carry(k5, to, kDay)->text, text);
        session->undo();
    }
}

TEST_F(Carry, UsesAnEmptyStandThatIsExactlyThere) {
    apply([&](const EditContext& c) { return addStand(c, yard, QStringLiteral("shade"), {3000, 0}); });
    carry(k5, {3000, 0}, kDay);
    EXPECT_EQ(standOf(k5).name, "shade");
    EXPECT_EQ(stands(yard).size(), 2u);
}

TEST_F(Carry, FromYardToYardOnAnEarlierDayAndTurned) {
    const YardId south = newYard(QStringLiteral("South"));
    newColony(south, QStringLiteral("8"), {0, 0});
    const auto line = apply([&](const EditContext& c) { return carryTo(c, {k5, south, {2000, 0}, 90, kDay - 30}); });
    ASSERT_TRUE(line);
    EXPECT_EQ(line->text, "Carried 5 to South");
    EXPECT_EQ(standOf(k5).yard, south);
    EXPECT_EQ(standOf(k5).name, "9") << "the next number of its new yard";
    EXPECT_EQ(placements(k5).back().headingDeg, 90);
    EXPECT_EQ(placements(k5).back().since, kDay - 30);
    EXPECT_EQ(placements(k5).front().until, kDay - 30);
    EXPECT_EQ(problems(), "");
    session->undo();
    EXPECT_EQ(standOf(k5).yard, yard);
    EXPECT_EQ(stands(south).size(), 1u);
}

TEST_F(Carry, BackToItsYardOnTheSameDayTheCarryIsGone) {
    const YardId south = newYard(QStringLiteral("South"));
    apply([&](const EditContext& c) { return carryTo(c, {k5, south, {2000, 0}, {}, kDay}); });
    apply([&](const EditContext& c) { return carryTo(c, {k5, yard, {0, 0}, {}, kDay}); });
    EXPECT_EQ(placements(k5).size(), 1u);
    EXPECT_TRUE(stands(south).empty());
}

TEST_F(Carry, ToAYardThatIsNotThereIsRefused) {
    const auto work = [&] { apply([&](const EditContext& c) { return carryTo(c, {k5, {99}, {2000, 0}, {}, kDay}); }); };
    EXPECT_EQ(thrownBy(work).kind, Error::Kind::BadData);
}

TEST_F(Carry, ToWhereItStandsIsNoEdit) {
    EXPECT_FALSE(carry(k5, {0, 0}, kDay));
    EXPECT_EQ(session->history(10).size(), 2u);
}

TEST_F(Carry, ASecondOneOfTheDayReplacesTheFirstAndItsStand) {
    carry(k5, {2000, 0}, kDay);
    const auto line = carry(k5, {2000, 1500}, kDay);
    EXPECT_EQ(line->text, "Carried 5 1.5 m north");
    ASSERT_EQ(placements(k5).size(), 2u);
    EXPECT_EQ(stands(yard).size(), 2u);
    EXPECT_EQ(standOf(k5).at, (MmPoint{2000, 1500}));
    session->undo();
    EXPECT_EQ(standOf(k5).at, (MmPoint{2000, 0}));
    EXPECT_EQ(stands(yard).size(), 2u);
}

TEST_F(Carry, AStandThatWasThereBeforeStaysWhenItIsLeftTheSameDay) {
    apply([&](const EditContext& c) { return addStand(c, yard, QStringLiteral("shade"), {3000, 0}); });
    carry(k5, {3000, 0}, kDay);
    carry(k5, {4000, 0}, kDay);
    EXPECT_EQ(stands(yard).size(), 3u);
}

TEST_F(Carry, BackToWhereItStoodBeforeTakesTheCarryAway) {
    carry(k5, {2000, 0}, kDay);
    carry(k5, {0, 0}, kDay);
    const auto all = placements(k5);
    ASSERT_EQ(all.size(), 1u);
    EXPECT_FALSE(all[0].until);
    EXPECT_EQ(stands(yard).size(), 1u);
}

TEST_F(Carry, OnTheDayItBeganMakesACarryBesideItsFirstPlace) {
    carry(k5, {2000, 0}, dayOf(2026, 5, 1));
    const auto all = placements(k5);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].since, all[1].since);
    EXPECT_EQ(all[0].until, all[1].since);
}

TEST_F(Carry, IsRefusedNearerThanThirtyCentimetresToAnotherHive) {
    newColony(yard, QStringLiteral("6"), {2000, 0});
    const auto before = rowsText(path());
    const auto near = thrownBy([&] { carry(k5, {2299, 0}, kDay); });
    EXPECT_EQ(near.kind, Error::Kind::BadData);
    EXPECT_EQ(near.message, "6 stands there, on stand 6; hives stand at least 0.3 m apart.");
    EXPECT_EQ(thrownBy([&] { carry(k5, {2000, 0}, kDay); }).kind, Error::Kind::BadData);
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_TRUE(carry(k5, {2300, 0}, kDay));
}

TEST_F(Carry, ToAStandThatAnotherHiveLeftThatDayIsAllowed) {
    const ColonyId k6 = newColony(yard, QStringLiteral("6"), {2000, 0});
    carry(k6, {5000, 0}, kDay);
    EXPECT_TRUE(carry(k5, {2000, 0}, kDay));
    EXPECT_EQ(standOf(k5).name, "6");
}

TEST_F(Carry, ToAStandThatAnotherHiveTakesLaterIsRefused) {
    const ColonyId k6 = newColony(yard, QStringLiteral("6"), {2000, 0});
    carry(k6, {5000, 0}, kDay);
    EXPECT_EQ(thrownBy([&] {
                  carry(k5, {5000, 0}, kDay - 10);
              }).message,
              "6 stands there, on stand 7, from 2026-09-20 on; hives stand at least 0.3 m apart.");
}

TEST_F(Carry, IsRefusedBeforeItsLastCarryAndOutsideItsLife) {
    carry(k5, {2000, 0}, kDay);
    EXPECT_EQ(thrownBy([&] {
                  carry(k5, {3000, 0}, kDay - 1);
              }).message,
              "5 was carried on 2026-09-20; an earlier carry cannot be added after it.");
    EXPECT_EQ(thrownBy([&] { carry(k5, {3000, 0}, dayOf(2026, 4, 30)); }).kind, Error::Kind::BadData);
    apply([&](const EditContext& c) { return endColony(c, k5, kDay + 5, EndKind::Dead); });
    EXPECT_EQ(thrownBy([&] {
                  carry(k5, {3000, 0}, kDay + 5);
              }).message,
              "5 ended on 2026-09-25; its hive is no longer carried.");
}

TEST_F(Carry, IsOneUndoStep) {
    const auto before = rowsText(path());
    carry(k5, {2000, 0}, kDay);
    EXPECT_EQ(session->undoText(), "Carried 5 2 m east");
    session->undo();
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_EQ(session->redoText(), "Carried 5 2 m east");
}

} // namespace

} // namespace tests::edit
