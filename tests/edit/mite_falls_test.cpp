#include "core/edit/mite_falls.h"
#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

class MiteFalls : public PutRight {
protected:
    MiteFall counted(ColonyId colony, Day day = kDay, int days = 5, int mites = 20) {
        MiteFall f;
        f.colony = colony;
        f.day = day;
        f.days = days;
        f.mites = mites;
        return f;
    }
    static Work noted(const MiteFall& f) {
        return [=](const EditContext& c) { return logMiteFall(c, f); };
    }
    static Work now(const MiteFall& f) {
        return [=](const EditContext& c) { return changeMiteFall(c, f); };
    }
    MiteFall first(ColonyId colony) { return session->miteFallsOf(colony).at(0); }
    Day since(ColonyId colony) { return session->colony(colony)->since; }
};

TEST_F(MiteFalls, AreLoggedChangedAndTakenBack) {
    MiteFall f = counted(k5);
    f.by = QStringLiteral(" Ana ");
    f.note = QStringLiteral(" half of the board ");
    EXPECT_EQ(done(noted(f)), "Noted the mites fallen at 5 by 2026-09-10 (20 mites in 5 days)");
    MiteFall kept = first(k5);
    EXPECT_EQ(kept.by, QStringLiteral("Ana"));
    EXPECT_EQ(kept.note, QStringLiteral("half of the board"));
    EXPECT_EQ(kept.mites, 20);
    EXPECT_FALSE(apply(now(kept))) << "says so already";
    kept.days = 1;
    kept.mites = 1;
    EXPECT_EQ(done(now(kept)), "Changed the mites fallen at 5 by 2026-09-10 (20 mites in 5 days)");
    EXPECT_EQ(first(k5), kept);
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackMiteFall(c, kept.id); }),
              "Took back the mites fallen at 5 by 2026-09-10 (1 mite in a day)");
    EXPECT_TRUE(session->miteFallsOf(k5).empty());
    session->undo();
    EXPECT_EQ(first(k5), kept);
    session->undo();
    session->undo();
    EXPECT_TRUE(session->miteFallsOf(k5).empty());
    EXPECT_EQ(refusal(now(kept)), "That count of fallen mites is no longer in the book.");
    EXPECT_EQ(refusal([&](const EditContext& c) { return takeBackMiteFall(c, kept.id); }),
              "That count of fallen mites is no longer in the book.");
}

TEST_F(MiteFalls, WhatCannotBeIsRefusedInOneSentence) {
    EXPECT_EQ(refusal(noted(counted(k5, kDay, 0))), "Days on the board: 0 is not from 1 to 60.");
    EXPECT_EQ(refusal(noted(counted(k5, kDay, 61))), "Days on the board: 61 is not from 1 to 60.");
    EXPECT_EQ(refusal(noted(counted(k5, kDay, 5, -1))), "Mites: -1 is not from 0 to 100000.");
    EXPECT_EQ(refusal(noted(counted(k5, kDay, 5, 100'001))), "Mites: 100001 is not from 0 to 100000.");
    done(noted(counted(k5, kDay, 60, 100'000)));
    EXPECT_EQ(refusal(noted(counted(k5))),
              "5 has a count of fallen mites on 2026-09-10 already; expected one count a colony a day.");
    done(noted(counted(k5, kDay + 1, 1, 0))); // 0 counted is a count
    MiteFall moved = session->miteFallsOf(k5).at(1);
    moved.day = kDay;
    EXPECT_EQ(refusal(now(moved)),
              "5 has a count of fallen mites on 2026-09-10 already; expected one count a colony a day.");
    done(noted(counted(k6)));
}

TEST_F(MiteFalls, LieWithinTheLifeOfTheirColonyBoardAndAll) {
    const Day since5 = since(k5);
    EXPECT_NE(refusal(noted(counted(k5, since5 - 1, 1))), "");
    EXPECT_EQ(refusal(noted(counted(k5, since5 + 4, 5))),
              "The board would have lain under 5 from " + isoText(since5 - 1).toStdString() +
                  " on, before the colony began on " + isoText(since5).toStdString() + ".");
    done(noted(counted(k5, since5 + 5, 5)));
    done(noted(counted(k5)));
    EXPECT_EQ(refusal([&](const EditContext& c) { return endColony(c, k5, kDay - 1, EndKind::Dead); }),
              "5 has a count of fallen mites on 2026-09-10; it cannot have ended before that.");
    EXPECT_EQ(refusal(colony(k5, [&](Colony& c) { c.since = since5 + 1; })), "5 has a board for fallen mites on " + isoText(since5).toStdString() +
                                                  "; it cannot have begun after that.");
    EXPECT_NE(refusal(back(k5)).find("5 has a count of fallen mites on "), std::string::npos);
}

} // namespace

} // namespace tests::edit
