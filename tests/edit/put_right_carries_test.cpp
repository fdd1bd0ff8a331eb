#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

class PutRightCarry : public PutRight {
protected:
    Placement place(ColonyId colony, size_t i) { return session->placementsOf(colony).at(i); }
    PlaceChange as(const Placement& p) {
        PlaceChange now;
        now.stand.id = p.stand;
        now.headingDeg = p.headingDeg;
        now.since = p.since;
        return now;
    }
    Work placeNow(ColonyId colony, size_t i, const std::function<void(PlaceChange&)>& more) {
        const Placement was = place(colony, i);
        PlaceChange now = as(was);
        more(now);
        return [=](const EditContext& c) { return changePlacement(c, was.id, now); };
    }
    Work dayNow(ColonyId colony, size_t i, Day day) {
        return placeNow(colony, i, [=](PlaceChange& p) { p.since = day; });
    }
    Work pointNow(ColonyId colony, size_t i, YardId yard, MmPoint at) {
        return placeNow(colony, i, [=](PlaceChange& p) {
            p.stand = {};
            p.stand.yard = yard;
            p.stand.at = at;
        });
    }
    Stand standAt(ColonyId colony, size_t i) {
        std::optional<Stand> found;
        session->read([&](const EditContext& c) { found = c.stand(place(colony, i).stand); });
        return found.value();
    }
};

TEST_F(PutRightCarry, TheFirstPlaceIsTurnedAndMoved) {
    EXPECT_EQ(done(placeNow(k5, 0, [](PlaceChange& p) { p.headingDeg = 90; })), "Put right the first place of 5");
    EXPECT_EQ(place(k5, 0).headingDeg, 90);
    EXPECT_EQ(done(pointNow(k5, 0, north, {0, 3000})), "Put right the first place of 5");
    EXPECT_EQ(standOf(k5).at, (MmPoint{0, 3000}));
    EXPECT_EQ(standOf(k5).name, "7") << "the next free number";
    EXPECT_EQ(stands(north).size(), 2u) << "its old stand came with it and bore nothing else";
    EXPECT_TRUE(place(k5, 0).first);
}

TEST_F(PutRightCarry, NothingChangedIsNoEdit) {
    carry(k5, {0, 4000}, kDay);
    EXPECT_FALSE(apply(placeNow(k5, 0, [](PlaceChange&) {})));
    EXPECT_FALSE(apply(placeNow(k5, 1, [](PlaceChange&) {})));
    EXPECT_FALSE(apply(pointNow(k5, 1, north, {0, 4000}))) << "the stand that is there";
}

TEST_F(PutRightCarry, ACarryIsMovedToAnotherDayAndThePlaceBeforeEndsOnIt) {
    carry(k5, {0, 4000}, kDay);
    EXPECT_EQ(done(dayNow(k5, 1, kDay - 3)), "Put right that 5 was carried on 2026-09-07 (was 2026-09-10)");
    EXPECT_EQ(place(k5, 0).until, kDay - 3);
    EXPECT_EQ(place(k5, 1).since, kDay - 3);
    EXPECT_FALSE(place(k5, 1).until);
}

TEST_F(PutRightCarry, ACarryIsTurnedAndMovedToAnotherYardOrStand) {
    carry(k5, {0, 4000}, kDay);
    EXPECT_EQ(done(placeNow(k5, 1, [](PlaceChange& p) { p.headingDeg = 225; })),
              "Put right the carry of 5 on 2026-09-10");
    const YardId south = newYard(QStringLiteral("South"));
    EXPECT_EQ(done(pointNow(k5, 1, south, {1000, 0})), "Put right the carry of 5 on 2026-09-10");
    EXPECT_EQ(standOf(k5).yard, south);
    EXPECT_EQ(place(k5, 1).headingDeg, 225);
    EXPECT_EQ(stands(north).size(), 2u) << "the stand that the carry made is gone";
    apply([&](const EditContext& c) { return addStand(c, north, QStringLiteral("shade"), {9000, 0}); });
    StandId shade;
    for (const Stand& s : stands(north))
        if (s.name == QLatin1StringView("shade")) shade = s.id;
    done(placeNow(k5, 1, [=](PlaceChange& p) { p.stand.id = shade; }));
    EXPECT_EQ(standOf(k5).name, "shade");
    done(pointNow(k5, 1, north, {0, 6000}));
    EXPECT_EQ(stands(north).size(), 4u) << "a stand that was there before stays";
}

TEST_F(PutRightCarry, DaysOutOfOrderAreRefused) {
    carry(k5, {0, 4000}, kDay);
    carry(k5, {0, 8000}, kDay + 5);
    EXPECT_EQ(refusal(dayNow(k5, 0, kDay)),
              "5 began on 2026-05-01, and stands there since; put right the day it began.");
    EXPECT_EQ(refusal(dayNow(k5, 1, dayOf(2026, 4, 30))), "5 began on 2026-05-01; 2026-04-30 is before that.");
    EXPECT_EQ(refusal(dayNow(k5, 1, kDay + 6)), "5 was carried again on 2026-09-15; this carry cannot be later.");
    EXPECT_EQ(refusal(dayNow(k5, 1, kDay + 5)),
              "5 was carried on 2026-09-15 already; of a day one carry is kept. Take that one back first.");
    EXPECT_EQ(refusal(dayNow(k5, 2, kDay)),
              "5 was carried on 2026-09-10 already; of a day one carry is kept. Take that one back first.");
    EXPECT_EQ(refusal(dayNow(k5, 2, kDay - 1)), "5 was carried on 2026-09-10 before; this carry cannot be earlier.");
    end(k5, kDay + 9);
    EXPECT_EQ(refusal(dayNow(k5, 2, kDay + 10)), "5 ended on 2026-09-19; 2026-09-20 is after that.");
    EXPECT_EQ(done(dayNow(k5, 2, kDay + 9)), "Put right that 5 was carried on 2026-09-19 (was 2026-09-15)");
}

TEST_F(PutRightCarry, GroundThatAnotherHiveHadIsRefused) {
    carry(k5, {0, 4000}, kDay);
    EXPECT_EQ(refusal(pointNow(k5, 1, north, {2000, 0})),
              "6 stands on stand 6 since 2026-05-01; 5 cannot stand there then.");
    EXPECT_EQ(refusal(pointNow(k5, 1, north, {2200, 0})),
              "6 stands on stand 6 from 2026-05-01 on; hives stand at least 0.3 m apart.");
    carry(k6, {0, 200}, kDay + 2); // beside where 5 was
    EXPECT_EQ(refusal(dayNow(k5, 1, kDay + 4)),
              "6 stands on stand 8 from 2026-09-12 on; hives stand at least 0.3 m apart.");
    EXPECT_EQ(done(dayNow(k5, 1, kDay + 2)), "Put right that 5 was carried on 2026-09-12 (was 2026-09-10)");
    EXPECT_EQ(done(pointNow(k5, 1, north, {2000, 0})), "Put right the carry of 5 on 2026-09-12")
        << "6 left it that day";
}

TEST_F(PutRightCarry, ACarryToWhereItStandsIsRefused) {
    carry(k5, {0, 4000}, kDay);
    EXPECT_EQ(refusal(pointNow(k5, 1, north, {0, 0})), "5 stood on stand 5 before; take the carry back instead.");
    EXPECT_EQ(refusal(pointNow(k5, 0, north, {0, 4000})),
              "5 was carried to stand 7 on 2026-09-10; take that carry back first.");
}

TEST_F(PutRightCarry, BadPlacesAreRefused) {
    EXPECT_EQ(refusal(placeNow(k5, 0, [](PlaceChange& p) { p.headingDeg = 360; })),
              "Heading: 360 is not from 0 to 359.");
    EXPECT_EQ(refusal(pointNow(k5, 0, north, {10'000'001, 0})),
              "Position: expected at most 10000 m from the yard's origin.");
    EXPECT_EQ(refusal(pointNow(k5, 0, YardId{99}, {0, 0})), "That yard is no longer in the book.");
    EXPECT_EQ(refusal(placeNow(k5, 0, [](PlaceChange& p) { p.stand.id = StandId{99}; })),
              "That stand is no longer in the book.");
    const PlaceChange same = as(place(k5, 0));
    EXPECT_EQ(refusal([=](const EditContext& c) { return changePlacement(c, PlacementId{99}, same); }),
              "That carry is no longer in the book.");
}

TEST_F(PutRightCarry, AColonysDataAndItsFirstPlaceAreOneEdit) {
    Colony now = session->colony(k5).value();
    now.label = QStringLiteral("5b");
    now.since = dayOf(2026, 4, 20);
    PlaceChange at = as(place(k5, 0));
    at.headingDeg = 45;
    const auto work = [&](const EditContext& c) { return changeBeginning(c, now, at); };
    EXPECT_EQ(done(work), "Renamed 5 to 5b");
    EXPECT_EQ(place(k5, 0).since, now.since);
    EXPECT_EQ(place(k5, 0).headingDeg, 45);
    EXPECT_FALSE(apply(work)) << "it says so already";
    at.headingDeg.reset();
    EXPECT_EQ(done(work), "Put right the first place of 5b");
}

/// An order holds what stands in the yard that day: a carry out of it on an earlier day would free.
TEST_F(PutRightCarry, ACarryThatAHoldRestsOnIsACorrection) {
    const YardId south = newYard(QStringLiteral("South"));
    apply([&](const EditContext& c) { return carryTo(c, {k5, south, {1000, 0}, {}, kDay}); });
    Result order;
    order.yard = north;
    order.day = kDay - 2;
    order.verdict = Verdict::Order;
    order.method = Method::Inspector;
    order.by = QStringLiteral("the inspector");
    order.paper = QStringLiteral("7");
    apply([&](const EditContext& c) { return logResult(c, order); });
    const Work earlier = dayNow(k5, 1, kDay - 5);
    const auto before = rowsText(path());
    const Thrown asked = thrownBy([&] { apply(earlier); });
    EXPECT_EQ(asked.kind, Error::Kind::Correction) << asked.message;
    EXPECT_NE(asked.message.find("5: "), std::string::npos) << asked.message;
    EXPECT_EQ(rowsText(path()), before);
    session->apply(earlier, Correction{QStringLiteral("Ana"), QStringLiteral("the day was wrong")});
    EXPECT_EQ(place(k5, 1).since, kDay - 5);
    EXPECT_EQ(session->history(1).front().reason, "the day was wrong");
    EXPECT_EQ(problems(), "");
}

} // namespace

} // namespace tests::edit
