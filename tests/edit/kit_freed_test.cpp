#include "core/edit/after_union.h"
#include "core/edit/merge_day.h"
#include "tests/edit/kit_fixture.h"

// What comes free where a colony ends. Parts of a hive: common practice, no source.

namespace tests::edit {

namespace {

using namespace core::kit;

class KitFreed : public KitTest {
protected:
    Work closing(LineageHow how) const {
        return [=, this](const EditContext& c) {
            return closeStrip(c, {north, kDay, how, k5, k6, StripOutcome::Done, {}, {}});
        };
    }
    /// Counted, with a queen: fit to unite.
    void counted(ColonyId colony, int boxes = 1) {
        log(colony, kDay - 5, [&](Visit& v) {
            v.boxes = boxes;
            v.beesTop = Quarters{10};
            if (boxes == 2) v.upperBeesTop = Quarters{2};
            v.queen = QueenSeen::Seen;
        });
    }
};

TEST_F(KitFreed, AUnionFreesFloorLidAndInnerCoverInTheSameUndo) {
    counted(k5);
    counted(k6);
    EXPECT_EQ(done(closing(LineageHow::United)), "United 5 into 6 on 2026-09-10");
    EXPECT_EQ(kit(), "North floor to-clean 1; North inner cover to-clean 1; North lid to-clean 1");
    session->undo();
    EXPECT_EQ(kit(), "");
    EXPECT_FALSE(session->colony(k5)->ended);
}

TEST_F(KitFreed, EachColonyBroughtDownToOneBoxFreesOne) {
    counted(k5, 2);
    counted(k6, 2);
    done(closing(LineageHow::United));
    EXPECT_EQ(kit(), "North floor to-clean 1; North inner cover to-clean 1; North langstroth-10 to-clean 2; "
                     "North lid to-clean 1");
}

TEST_F(KitFreed, AShakeOutFreesTheWholeHive) {
    counted(k5, 2);
    counted(k6);
    EXPECT_EQ(done(closing(LineageHow::ShakenOut)), "Shook 5 out into 6 on 2026-09-10");
    EXPECT_EQ(kit(), "North floor to-clean 1; North inner cover to-clean 1; North langstroth-10 to-clean 2; "
                     "North lid to-clean 1");
}

TEST_F(KitFreed, AgainstAHoldItIsQuarantinedWithItsColony) {
    counted(k5);
    counted(k6);
    suspect(k5, kDay - 1);
    const Work fact = [&](const EditContext& c) {
        return closeStripAsFact(c, {north, kDay, LineageHow::United, k5, k6, StripOutcome::Done, {}, {}});
    };
    EXPECT_EQ(thrown(closing(LineageHow::United)).kind, Error::Kind::Hold);
    EXPECT_EQ(session->apply(fact, kInspected)->text, "United 5 into 6 on 2026-09-10; its kit is quarantined");
    EXPECT_EQ(kit(), "North floor quarantined 5 1; North inner cover quarantined 5 1; North lid quarantined 5 1");
    EXPECT_EQ(thrownBy([&] { session->undo(); }).kind, Error::Kind::Correction);
    session->undo(kInspected);
    EXPECT_EQ(kit(), "");
}

TEST_F(KitFreed, TheDeadLeaveTheirHiveToBeCleaned) {
    end(k5, kDay);
    EXPECT_EQ(kit(), "North floor to-clean 1; North inner cover to-clean 1; North langstroth-10 to-clean 1; "
                     "North lid to-clean 1");
    EXPECT_FALSE(rules::kitOffer(piles(), north, kLid).counted()) << "not offered until it is usable";
    EXPECT_EQ(done(endBack(k5)), "Took back the end of 5 on 2026-09-10: it lives");
    EXPECT_EQ(kit(), "");
}

TEST_F(KitFreed, TheDeadUnderSuspicionLeaveItInQuarantine) {
    suspect(k5, kDay - 1);
    const Work dead = [&](const EditContext& c) { return endColony(c, k5, kDay, EndKind::Dead); };
    EXPECT_EQ(done(dead), "5 was found dead on 2026-09-10; its kit is quarantined");
    EXPECT_EQ(kit(), "North floor quarantined 5 1; North inner cover quarantined 5 1; "
                     "North langstroth-10 quarantined 5 1; North lid quarantined 5 1");
    EXPECT_EQ(session->undo(kInspected)->text, "Undone: 5 was found dead on 2026-09-10; its kit is quarantined");
    EXPECT_EQ(kit(), "") << "it lives in it again";
}

TEST_F(KitFreed, SignsSeenAsItIsFoundDeadKeepItApart) {
    Loss loss;
    loss.colony = k5;
    loss.day = kDay;
    loss.brood = BroodFound::SignsOfAfb;
    apply([&](const EditContext& c) { return recordLoss(c, loss); });
    EXPECT_EQ(kit(), "North floor quarantined 5 1; North inner cover quarantined 5 1; "
                     "North langstroth-10 quarantined 5 1; North lid quarantined 5 1");
    EXPECT_FALSE(rules::kitOffer(piles(), north, kLid).counted());
    EXPECT_EQ(thrown(move(at(north, kLid, kQuarantined, k5), 1, north, kUsable)).kind, Error::Kind::Hold);
}

TEST_F(KitFreed, WhatWasDestroyedIsQuarantinedAndWhatWasSoldIsGone) {
    end(k5, kDay, EndKind::Destroyed);
    end(k6, kDay, EndKind::Sold);
    EXPECT_EQ(kit(), "North floor quarantined 5 1; North inner cover quarantined 5 1; "
                     "North langstroth-10 quarantined 5 1; North lid quarantined 5 1");
}

TEST_F(KitFreed, AnEndPutRightPutsItsKitRight) {
    end(k5, kDay);
    const auto how = [&](EndKind kind) {
        return [=, this](const EditContext& c) { return changeEnd(c, k5, kDay, kind); };
    };
    done(how(EndKind::Sold));
    EXPECT_EQ(kit(), "");
    done(how(EndKind::Dead));
    EXPECT_NE(kit(), "");
}

TEST_F(KitFreed, AUnionTakenBackTakesItsKitBackAsFarAsItIsThere) {
    counted(k5);
    counted(k6);
    apply(closing(LineageHow::United));
    apply(move(at(north, kLid, kToClean), 1, north, kUsable));
    apply(move(at(north, kFloor, kToClean), 1, north, kBurned));
    apply(count(at(north, kLid, kUsable), 3));
    const LineageId id = session->lineageOf(k5)[0].id;
    session->apply([&](const EditContext& c) { return takeBackLineage(c, id); }, kInspected);
    EXPECT_EQ(kit(), "North floor burned 5 1; North lid usable 2");
    EXPECT_EQ(problems(), "");
}

TEST_F(KitFreed, EndsOfMoreThanAYearAgoFreeNothing) {
    const Day begun = dayOf(2025, 5, 1);
    const ColonyId old = newColony(north, QStringLiteral("8"), {6000, 0}, begun);
    const ColonyId older = newColony(north, QStringLiteral("9"), {8000, 0}, begun);
    end(old, kDay - 365);
    EXPECT_NE(kit(), "");
    const auto before = kit();
    end(older, kDay - 366);
    EXPECT_EQ(kit(), before);
}

} // namespace

} // namespace tests::edit
