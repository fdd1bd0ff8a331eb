#include "core/rules/kit_to_load.h"
#include "core/rules/plan.h"
#include "tests/edit/kit_fixture.h"

namespace tests::edit {

namespace {

using namespace core::kit;

class KitEnds : public KitTest {
protected:
    KitEnds() { apply(count(apart, 3)); }

    const KitPlace apart = at(north, kLid, kQuarantined, k5);
    Work end(const KitEnding& how, const QString& state, int count = 1) const {
        const KitMove move{apart, count, north, state, {}, how};
        return [=](const EditContext& c) { return moveKit(c, move); };
    }
    static Work now(const KitEnd& end) {
        return [=](const EditContext& c) { return changeKitEnd(c, end); };
    }
    static Work backOf(const KitEnd& end) {
        return [=](const EditContext& c) { return takeBackKitEnd(c, end.id); };
    }
};

TEST_F(KitEnds, WhatLeavesQuarantineSaysHowWhenAndByWhom) {
    EXPECT_EQ(done(end(ending(kSterilised), kSterilised, 2)),
              "Kit in North: 2 × lid, quarantined, is now sterilised (off 5): irradiated on 2026-09-10 by Ana");
    const auto all = session->kitEnds();
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0], (KitEnd{KitEndId{1},
                              kDay,
                              north,
                              kLid,
                              k5,
                              2,
                              KitEndHow::Irradiated,
                              QStringLiteral("Ana"),
                              QStringLiteral("K-7"),
                              {}}));
    KitEnding buried = ending(kBurned);
    buried.how = KitEndHow::Other;
    buried.note = QStringLiteral(" buried in the yard ");
    EXPECT_EQ(done(end(buried, kBurned)),
              "Kit in North: 1 × lid, quarantined, is now burned (off 5): buried in the yard on 2026-09-10 by Ana");
    EXPECT_EQ(kit(), "North lid burned 5 1; North lid sterilised 5 2");
    reopen();
    EXPECT_EQ(session->kitEnds().size(), 2u);
}

TEST_F(KitEnds, WithoutThatNothingIsWritten) {
    const KitMove bare{apart, 1, north, kBurned, {}, {}};
    EXPECT_EQ(refusal([=](const EditContext& c) { return moveKit(c, bare); }),
              "Kit that is kept apart is written as burned with how that was done, when and by whom.");
    KitEnding e = ending(kBurned);
    EXPECT_EQ(refusal(end(e, kSterilised)), "How: what is burned does not become “sterilised”.");
    EXPECT_EQ(refusal(end(ending(kSterilised), kBurned)), "How: what is irradiated does not become “burned”.");
    e.by = QStringLiteral("  ");
    EXPECT_EQ(refusal(end(e, kBurned)), "By: expected who did it or saw to it, found nothing.");
    e = ending(kBurned);
    e.how = KitEndHow::Other;
    EXPECT_EQ(refusal(end(e, kBurned)),
              "Note: expected how it was done where that is none of the known ways, found nothing.");
    EXPECT_TRUE(session->kitEnds().empty());
}

TEST_F(KitEnds, KitThatWasNeverKeptApartHasNoEnd) {
    apply(count(at(north, kLid, kToClean), 2));
    EXPECT_TRUE(apply(move(at(north, kLid, kToClean), 1, north, kBurned)));
    EXPECT_TRUE(session->kitEnds().empty());
}

TEST_F(KitEnds, ArePutRightAndTakenBack) {
    apply(end(ending(kSterilised), kSterilised, 2));
    KitEnd e = session->kitEnds()[0];
    EXPECT_FALSE(apply(now(e))) << "it says so already";
    e.how = KitEndHow::Dipped;
    e.by = QStringLiteral("Ben");
    e.count = 9; // what kit it is of stays
    EXPECT_EQ(done(now(e)), "Changed the end of 2 × lid off 5 on 2026-09-10 (irradiated)");
    e.count = 2;
    EXPECT_EQ(session->kitEnds()[0], e);
    e.how = KitEndHow::Burned;
    EXPECT_EQ(refusal(now(e)), "How: what is burned does not become “sterilised”.");
    EXPECT_EQ(done(backOf(e)), "Took back the end of 2 × lid off 5 on 2026-09-10 (dipped); it is quarantined again");
    EXPECT_TRUE(session->kitEnds().empty());
    std::string whole = kit();
    EXPECT_EQ(whole, "North lid quarantined 5 3");
    EXPECT_EQ(refusal(backOf(e)), "That end of kit is no longer in the book.");
}

TEST_F(KitEnds, WhatWasUsedAgainSinceIsNotQuarantinedUnseen) {
    apply(end(ending(kSterilised), kSterilised, 2));
    EXPECT_TRUE(session->apply(move(at(north, kLid, kSterilised, k5), 1, north, kUsable), kInspected));
    EXPECT_EQ(refusal(backOf(session->kitEnds()[0])),
              "Only 1 of the 2 × lid are in the book as it ended; put the count of kit right first.");
    EXPECT_EQ(kit(), "North lid usable 1; North lid quarantined 5 1; North lid sterilised 5 1");
}

TEST_F(KitEnds, UndoneTheKitIsQuarantinedAgain) {
    apply(end(ending(kBurned), kBurned));
    session->undo();
    EXPECT_EQ(kit(), "North lid quarantined 5 3");
    EXPECT_TRUE(session->kitEnds().empty());
    EXPECT_EQ(thrownBy([&] { session->undo(); }).kind, Error::Kind::Correction) << "the count itself is kept apart";
}

struct NeverOffered : KitTest {
    /// What the worksheet loads for a plan of today: what, how many.
    std::vector<std::pair<rules::KitThing, qint64>> kitToLoad() {
        const Snapshot s = session->snapshot(kDay);
        std::vector<std::pair<rules::KitThing, qint64>> lines;
        const auto kit =
            rules::kitToLoad(s, rules::colonyFacts(s), rules::advise(s, {}), *s.yardNamed(QStringLiteral("North")));
        for (const rules::KitLine& line : kit.lines) lines.emplace_back(line.what, line.count);
        return lines;
    }
};

TEST_F(NeverOffered, IsKitThatIsQuarantinedBurnedOrSterilised) {
    for (const ColonyId colony : {k5, k6})
        log(colony, kDay - 1, [&](Visit& v) {
            v.beesTop = Quarters{colony == k5 ? 12 : 20};
            v.queen = QueenSeen::Eggs;
        });
    const auto before = kitToLoad();
    ASSERT_FALSE(before.empty()) << "else nothing is compared";
    const KitPlace apart = at(north, kLid, kQuarantined, k5);
    apply(count(apart, 3));
    apply(move(apart, 1, north, kBurned));
    apply(move(apart, 1, north, kSterilised));
    EXPECT_EQ(kit(), "North lid quarantined 5 1; North lid burned 5 1; North lid sterilised 5 1");
    EXPECT_FALSE(rules::kitOffer(piles(), north, kLid).counted());
    EXPECT_EQ(kitToLoad(), before) << "nor is the plan or what is loaded another for it";
    apply(count(at(north, kLid, kUsable), 1));
    EXPECT_EQ(rules::kitOffer(piles(), north, kLid).inAll(), 1);
}

TEST_F(KitEnds, AColonyOrYardThatAnEndNamesIsNotTakenBack) {
    apply(end(ending(kBurned), kBurned, 3));
    EXPECT_EQ(refusal(back(k5)), "5 has an end of its kit on 2026-09-10; only a colony that no record names is taken "
                                 "back.");
}

} // namespace

} // namespace tests::edit
