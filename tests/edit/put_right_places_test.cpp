#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

// Places.

TEST_F(PutRight, ACarryIsTakenBackAndItStandsWhereItStood) {
    const auto before = rowsText(path());
    carry(k5, {0, 4000}, kDay);
    const auto once = rowsText(path());
    carry(k5, {0, 8000}, kDay + 5);
    const auto places = session->placementsOf(k5);
    const auto takeBack = [](PlacementId id) -> Work {
        return [=](const EditContext& c) { return takeBackCarry(c, id); };
    };
    EXPECT_EQ(refusal(takeBack(places[0].id)), "That is where the colony began: it goes with the colony alone.");
    EXPECT_EQ(done(takeBack(places[2].id)), "Took back the carry of 5 on 2026-09-15");
    EXPECT_EQ(rowsText(path()), once);
    session->undo();
    // The earlier of two: it stood at its first place until the later.
    EXPECT_EQ(done(takeBack(places[1].id)), "Took back the carry of 5 on 2026-09-10");
    EXPECT_EQ(session->placementsOf(k5)[0].until, kDay + 5);
    session->undo();
    session->undo();
    carry(k6, {0, 0}, kDay + 2);
    EXPECT_EQ(refusal(takeBack(places[1].id)), "6 stands on stand 5 since 2026-09-12; 5 cannot stand there then.");
    apply(takeBack(session->placementsOf(k6)[1].id));
    apply(takeBack(places[1].id));
    EXPECT_EQ(rowsText(path()), before);
}

TEST_F(PutRight, AYardIsChangedAndTakenBackWhileItBearsNothing) {
    const YardId south = newYard(QStringLiteral("South"));
    Yard yard = session->yard(south).value();
    yard.latitudeDeg = 51.5;
    yard.gateX = Millimetres{3000};
    const auto change = [&](const EditContext& c) { return changeYard(c, yard); };
    EXPECT_EQ(done(change), "Changed yard South");
    yard.name = QStringLiteral("north");
    EXPECT_EQ(refusal(change), "There is a yard north already.");
    yard.name = QStringLiteral("SOUTH");
    EXPECT_EQ(done(change), "Renamed yard South to SOUTH");
    yard.latitudeDeg = 91;
    EXPECT_EQ(refusal(change), "Latitude: 91 is not from −90 to 90 degrees.");
    Yard closed = session->yard(north).value();
    closed.closed = true;
    EXPECT_EQ(refusal([&](const EditContext& c) { return changeYard(c, closed); }),
              "5 stands in North, on stand 5; only a yard without hives is closed.");
    const auto yardBack = [&](const EditContext& c) { return takeBackYard(c, south); };
    apply([&](const EditContext& c) { return addStand(c, south, {}, {0, 0}); });
    EXPECT_EQ(refusal(yardBack), "SOUTH has a stand 1; only a yard without stands is taken back.");
    const StandId stand = stands(south)[0].id;
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackStand(c, stand); }), "Took back stand 1 of SOUTH");
    EXPECT_EQ(done(yardBack), "Took back yard SOUTH");
    EXPECT_EQ(refusal([&](const EditContext& c) { return takeBackStand(c, standOf(k5).id); }),
              "5 came to stand 5 on 2026-05-01; only a stand that never bore a hive is taken back.");
}

// Box kinds.

TEST_F(PutRight, UsersAddChangeAndTakeBackBoxKindsOfTheirOwn) {
    BoxKind kind;
    kind.name = QStringLiteral("Nucleus-6");
    kind.frames = 6;
    kind.widthMm = 250;
    EXPECT_EQ(done([&](const EditContext& c) { return newBoxKind(c, kind); }), "Added box kind Nucleus-6");
    kind.name = QStringLiteral("ZANDER-10");
    EXPECT_EQ(refusal([&](const EditContext& c) { return newBoxKind(c, kind); }),
              "There is a box kind zander-10 already.");
    kind = session->boxKinds().back();
    for (const BoxKind& k : session->boxKinds())
        if (k.name == QLatin1StringView("Nucleus-6")) kind = k;
    const auto change = [&](const EditContext& c) { return changeBoxKind(c, kind); };
    apply(colony(k5, [&](Colony& c) { c.box = kind.id; }));
    log(k5, kDay, [](Visit& v) { v.beesTop = Quarters{22}; });
    kind.frames = 5;
    EXPECT_EQ(refusal(change), "Frames: the visit of 5 on 2026-09-10 counts more than 5 in such a box.");
    kind.frames = 7;
    EXPECT_EQ(done(change), "Changed box kind Nucleus-6");
    kind.heightMm = 2001;
    EXPECT_EQ(refusal(change), "Height in millimetres: 2001 is not from 1 to 2000.");
    kind.heightMm.reset();
    kind.tare = Decagrams{10'001};
    EXPECT_EQ(refusal(change), "Weight of the empty box: 100.01 kg is not from 0 to 100 kg.");
    const auto kindBack = [&](const EditContext& c) { return takeBackBoxKind(c, kind.id); };
    EXPECT_EQ(refusal(kindBack), "5 is in boxes of Nucleus-6; only a kind that no colony is in is taken back.");
    apply(colony(k5, [&](Colony& c) { c.box = BoxKindId{1}; }));
    EXPECT_EQ(done(kindBack), "Took back box kind Nucleus-6");
    kind = session->boxKinds().front();
    kind.frames = 9;
    EXPECT_EQ(refusal(change),
              kind.name.toStdString() + " comes with every book and stays as it is; add a kind of your own.");
}

} // namespace

} // namespace tests::edit
