#include "tests/edit/kit_fixture.h"

namespace tests::edit {

namespace {

using namespace core::kit;

TEST_F(KitTest, WhatIsCountedIsThere) {
    EXPECT_EQ(done(count(at(north, kLid, kUsable), 3)), "Counted kit: lid, usable, in North: 3");
    EXPECT_EQ(done(count(at(north, QStringLiteral("  LID "), kUsable), 5)),
              "Counted kit: lid, usable, in North: 5 (was 3)");
    EXPECT_EQ(done(count(at(north, kLid, kUsable), 2)), "Counted kit: lid, usable, in North: 2 (was 5)");
    EXPECT_EQ(done(count(at({}, kLid, kToClean), 4)), "Counted kit: lid, to clean, in the store room: 4");
    EXPECT_EQ(kit(), "store lid to-clean 4; North lid usable 2");
    EXPECT_EQ(done(count(at(north, kLid, kUsable), 2)), "") << "it says so already";
    reopen();
    EXPECT_EQ(kit(), "store lid to-clean 4; North lid usable 2");
}

TEST_F(KitTest, NoneCountedIsNotTheSameAsNotCounted) {
    const auto offer = [&] { return rules::kitOffer(piles(), north, kFloor); };
    EXPECT_FALSE(offer().counted());
    EXPECT_EQ(done(count(at(north, kFloor, kUsable), 0)), "Counted kit: floor, usable, in North: 0");
    EXPECT_EQ(offer().inYard, 0);
    EXPECT_FALSE(offer().inStoreRoom);
    done(count(at(north, kFloor, kUsable), 2));
    done(count(at(north, kFloor, kUsable), 0));
    EXPECT_EQ(kit(), "North floor usable 0");
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackKit(c, at(north, kFloor, kUsable)); }),
              "Took back the count of kit: floor, usable, in North");
    EXPECT_EQ(kit(), "");
}

TEST_F(KitTest, WhatCannotBeCountedIsRefused) {
    EXPECT_EQ(refusal(count(at(north, kLid, QStringLiteral("lost")), 1)), "Kit is not “lost”.");
    EXPECT_EQ(refusal(count(at(north, kLid, kQuarantined), 1)), "Kit in quarantine names the colony that it came off.");
    EXPECT_NE(refusal(count(at(north, kLid, kUsable), -1)).find("How many"), std::string::npos);
    EXPECT_NE(refusal(count(at(north, kLid, kUsable), 1'000'001)).find("How many"), std::string::npos);
    EXPECT_NE(refusal(count(at(north, QString(), kUsable), 1)).find("Kind of kit"), std::string::npos);
}

TEST_F(KitTest, KitComesToAnotherStateAndToAnotherPlace) {
    apply(count(at(north, kLid, kToClean), 5));
    EXPECT_EQ(done(move(at(north, kLid, kToClean), 2, north, kUsable)),
              "Kit in North: 2 × lid, to clean, is now usable");
    EXPECT_EQ(done(move(at(north, kLid, kUsable), 2, {}, kUsable)),
              "Kit carried: 2 × lid, usable, from North to the store room");
    EXPECT_EQ(done(move(at(north, kLid, kToClean), 1, {}, kBurned)),
              "Kit carried: 1 × lid, to clean, from North to the store room, where it is burned");
    EXPECT_EQ(kit(), "store lid usable 2; store lid burned 1; North lid to-clean 2");
    EXPECT_EQ(refusal(move(at(north, kLid, kToClean), 3, north, kUsable)),
              "There are only 2: lid, to clean, in North.");
    EXPECT_EQ(refusal(move(at(north, kLid, kToClean), 1, north, kToClean)), "It is there already.");
    EXPECT_NE(refusal(move(at({}, kLid, kBurned), 1, {}, kUsable)).find("burned is gone"), std::string::npos);
    EXPECT_EQ(refusal(move(at(north, kLid, kToClean), 1, north, kQuarantined)),
              "Kit in quarantine names the colony that it came off.");
}

TEST_F(KitTest, QuarantineIsLeftOnlyBurnedOrSterilisedWhileTheHoldStands) {
    suspect(k5, kDay - 3);
    apply(count(at(north, kLid, kQuarantined, k5), 3));
    const KitPlace apart = at(north, kLid, kQuarantined, k5);
    for (const QString& to : {kUsable, kToClean}) {
        const Thrown refused = thrown(move(apart, 1, north, to));
        EXPECT_EQ(refused.kind, Error::Kind::Hold);
        EXPECT_EQ(refused.message.find("Kit off 5 leaves quarantine only burned or sterilised: 5 is held "
                                       "(afb-suspected)."),
                  0u)
            << refused.message;
        EXPECT_THROW(session->apply(move(apart, 1, north, to), kInspected), Error) << "not with a reason either";
    }
    EXPECT_EQ(done(move(apart, 1, north, kBurned)),
              "Kit in North: 1 × lid, quarantined, is now burned (off 5): burned on 2026-09-10 by Ana");
    EXPECT_EQ(done(move(apart, 1, north, kSterilised)),
              "Kit in North: 1 × lid, quarantined, is now sterilised (off 5): irradiated on 2026-09-10 by Ana");
    EXPECT_EQ(kit(), "North lid quarantined 5 1; North lid burned 5 1; North lid sterilised 5 1");
}

TEST_F(KitTest, OnceTheHoldIsAnsweredQuarantineIsLeftWithAReasonAndAName) {
    suspect(k5, kDay - 3);
    apply(count(at(north, kLid, kQuarantined, k5), 2));
    result(k5, kDay - 1, Verdict::Negative);
    const auto out = move(at(north, kLid, kQuarantined, k5), 2, north, kToClean);
    EXPECT_EQ(thrown(out).kind, Error::Kind::Correction);
    const auto line = session->apply(out, kInspected);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->reason, kInspected.reason);
    EXPECT_EQ(line->by, kInspected.by);
    EXPECT_EQ(kit(), "North lid to-clean 2");
    session->undo();
    EXPECT_EQ(kit(), "North lid quarantined 5 2") << "to be kept apart again asks nothing";
}

TEST_F(KitTest, NothingThatIsKeptApartIsLostSightOf) {
    apply(count(at(north, kLid, kQuarantined, k5), 2));
    EXPECT_EQ(thrownBy([&] { session->undo(); }).kind, Error::Kind::Correction) << "nor by a plain undo";
    EXPECT_EQ(thrown(count(at(north, kLid, kQuarantined, k5), 1)).kind, Error::Kind::Correction);
    EXPECT_EQ(thrown([&](const EditContext& c) { return takeBackKit(c, at(north, kLid, kQuarantined, k5)); }).kind,
              Error::Kind::Correction);
    apply(move(at(north, kLid, kQuarantined, k5), 1, north, kSterilised));
    EXPECT_EQ(thrown(move(at(north, kLid, kSterilised, k5), 1, north, kUsable)).kind, Error::Kind::Correction);
    EXPECT_TRUE(session->apply(move(at(north, kLid, kSterilised, k5), 1, north, kUsable), kInspected));
    EXPECT_EQ(kit(), "North lid usable 1; North lid quarantined 5 1");
    apply(count(at(north, kLid, kQuarantined, k5), 2));
    EXPECT_EQ(thrownBy([&] { session->takeBack(session->history(1)[0].seq); }).kind, Error::Kind::Correction);
}

TEST_F(KitTest, QuarantinedKitStaysInItsYardWhileTheHoldStands) {
    const YardId south = newYard(QStringLiteral("South"));
    suspect(k5, kDay - 3);
    apply(count(at(north, kLid, kQuarantined, k5), 2));
    const Thrown refused = thrown(move(at(north, kLid, kQuarantined, k5), 1, south, kQuarantined));
    EXPECT_EQ(refused.kind, Error::Kind::Hold);
    EXPECT_EQ(refused.message.find("Kit off 5 stays where it is kept apart: 5 is held (afb-suspected)."), 0u);
    // A closed room keeps bees out; what leaves the yard of a hold is written with a reason and a name all the same.
    const auto inside = move(at(north, kLid, kQuarantined, k5), 1, {}, kQuarantined);
    EXPECT_EQ(thrown(inside).kind, Error::Kind::Correction);
    EXPECT_TRUE(session->apply(inside, kInspected));
    EXPECT_EQ(kit(), "store lid quarantined 5 1; North lid quarantined 5 1");
}

TEST_F(KitTest, UsableKitLeavesTheYardOfAHoldOnlyAsAFact) {
    apply(count(at(north, kLid, kUsable), 2));
    EXPECT_TRUE(apply(move(at(north, kLid, kUsable), 1, {}, kUsable)));
    suspect(k6, kDay - 3);
    const Thrown asked = thrown(move(at(north, kLid, kUsable), 1, {}, kUsable));
    EXPECT_EQ(asked.kind, Error::Kind::Correction);
    EXPECT_NE(asked.message.find("is held in North (afb-"), std::string::npos) << asked.message;
    EXPECT_TRUE(apply(move(at(north, kLid, kUsable), 1, north, kToClean))) << "within the yard it asks nothing";
}

TEST_F(KitTest, KitOffAColonyThatIsHeldLaterIsKeptApartWhateverWasWritten) {
    end(k5, kDay - 2);
    EXPECT_EQ(kit(), "North floor to-clean 1; North inner cover to-clean 1; North langstroth-10 to-clean 1; "
                     "North lid to-clean 1");
    apply(move(at(north, kLid, kToClean), 1, north, kUsable));
    EXPECT_EQ(rules::kitOffer(piles(), north, kLid).inYard, 1);
    result(k5, kDay - 1, Verdict::Positive);
    EXPECT_EQ(kit(), "North floor quarantined 5 1; North inner cover quarantined 5 1; "
                     "North langstroth-10 quarantined 5 1; North lid quarantined 5 1");
    EXPECT_FALSE(rules::kitOffer(piles(), north, kLid).counted()) << "never offered";
    EXPECT_EQ(refusal(move(at(north, kFloor, kToClean), 1, north, kUsable)),
              "There are only 0: floor, to clean, in North.");
    EXPECT_EQ(thrown(move(at(north, kFloor, kQuarantined, k5), 1, north, kUsable)).kind, Error::Kind::Hold);
    EXPECT_EQ(thrown(count(at(north, kFloor, kQuarantined, k5), 0)).kind, Error::Kind::Correction);
    EXPECT_TRUE(apply(move(at(north, kFloor, kQuarantined, k5), 1, north, kBurned)));
}

TEST_F(KitTest, ABoxKindTakesItsKitAlongWhenItIsRenamed) {
    BoxKind own;
    own.name = QStringLiteral("own");
    apply([&](const EditContext& c) { return newBoxKind(c, own); });
    own.id = BoxKindId{6};
    apply(count(at(north, own.name, kUsable), 2));
    EXPECT_EQ(refusal([&](const EditContext& c) { return takeBackBoxKind(c, own.id); }),
              "Boxes of own are counted as kit.");
    own.name = QStringLiteral("mine");
    EXPECT_EQ(done([&](const EditContext& c) { return changeBoxKind(c, own); }), "Changed box kind own");
    EXPECT_EQ(kit(), "North mine usable 2");
}

} // namespace

} // namespace tests::edit
