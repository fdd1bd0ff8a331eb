#include "core/edit/divide_day.h"
#include "core/edit/merge_day.h"
#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

const Day kSpring = dayOf(2026, 5, 20);

class Dividing : public PutRight {
protected:
    Dividing() {
        for (const ColonyId colony : {k5, k6}) log(colony, dayOf(2026, 5, 10));
    }
    DividesAsked asked(std::vector<DivideChoice> choices = {}) const {
        return {north, kSpring, 1, std::nullopt, std::move(choices)};
    }
    static DivideChoice choice(ColonyId colony, int parts, const QString& note = {}) {
        return {{}, {}, colony, parts, note};
    }
    std::string ask(const DividesAsked& a) {
        return done([&](const EditContext& c) { return askDivides(c, a); });
    }
    std::string unasked(const DividesAsked& a) {
        return refusal([&](const EditContext& c) { return askDivides(c, a); });
    }
    MergeDay theDay() const { return session->mergeDays(north).at(0); }
    static DivideStrip printed(ColonyId colony, int parts = 2) {
        return {{}, {}, 1, colony, parts, DivideQueens::Cells, {}, {}};
    }
    void print(const std::vector<DivideStrip>& strips) {
        apply([&](const EditContext& c) { return printDivides(c, theDay().id, strips); });
    }
    NewColony made(const QString& label, MmPoint at) const {
        NewColony m;
        m.colony.label = label;
        m.colony.box = BoxKindId{1};
        m.stand.yard = north;
        m.stand.at = at;
        return m;
    }
    DivideClose outcome(StripOutcome outcome, const QString& note = {}) const {
        return {north, kSpring, k5, DivideQueens::Bought, outcome, {}, note, QStringLiteral("Ana")};
    }
    DivideClose madeTwo() const {
        DivideClose d = outcome(StripOutcome::Done);
        d.made = {made(QStringLiteral("51"), {0, 3000}), made(QStringLiteral("52"), {2000, 3000})};
        return d;
    }
    Work closing(const DivideClose& d) const {
        return [d](const EditContext& c) { return closeDivide(c, d); };
    }
};

TEST_F(Dividing, WhatIsAskedIsKeptRevisionByRevision) {
    DividesAsked a = asked();
    a.queens = DivideQueens::Cells;
    EXPECT_EQ(ask(a), "Queen cells for the divides of the merge day of North on 2026-05-20");
    EXPECT_EQ(theDay().revision, 1);
    a.choices = {choice(k5, 1, QStringLiteral("its queen is to be tried"))};
    EXPECT_EQ(ask(a), "Left 5 whole for the merge day of North on 2026-05-20");
    EXPECT_EQ(ask(a), "") << "it says so already";
    a.choices = {choice(k5, 2)};
    EXPECT_EQ(ask(a), "At most 2 parts of 5 for the merge day of North on 2026-05-20");
    a.choices.clear();
    EXPECT_EQ(ask(a), "Left it to the rule how 5 is divided for the merge day of North on 2026-05-20");
    a.queens = DivideQueens::Own;
    EXPECT_EQ(ask(a), "The divides of the merge day of North on 2026-05-20 raise their own queens");
    EXPECT_EQ(theDay().revision, 5);
    reopen();
    EXPECT_EQ(theDay().queens, DivideQueens::Own);
    EXPECT_TRUE(session->divideChoicesOf(theDay().id).empty());
}

TEST_F(Dividing, WhatIsAskedOfUnionsAndOfDividesLeaveEachOtherAlone) {
    DividesAsked a = asked({choice(k5, 1)});
    a.queens = DivideQueens::Bought;
    ask(a);
    MergeAsked unions;
    unions.day.id = theDay().id; // as one that knows nothing of queens would ask
    unions.day.yard = north;
    unions.day.day = kSpring;
    unions.day.most = 3;
    apply([&](const EditContext& c) { return saveMergeDay(c, unions); });
    EXPECT_EQ(theDay().queens, DivideQueens::Bought);
    EXPECT_EQ(session->divideChoicesOf(theDay().id).size(), 1u);
    a.choices.clear();
    ask(a);
    EXPECT_EQ(theDay().most, 3);
}

TEST_F(Dividing, WhatCannotBeIsRefused) {
    EXPECT_EQ(unasked(asked({choice(k5, 1), choice(k5, 2)})), "The same is asked twice.");
    EXPECT_NE(unasked(asked({choice(k5, 0)})).find("Parts"), std::string::npos);
    EXPECT_NE(unasked(asked({choice(k5, 25)})).find("Parts"), std::string::npos);
    end(k6, dayOf(2026, 5, 15));
    EXPECT_EQ(unasked(asked({choice(k6, 2)})), "6 does not live on 2026-05-20.");
}

TEST_F(Dividing, ADivideDoneMakesItsColoniesWithTheirLineage) {
    ask([&] {
        DividesAsked a = asked();
        a.queens = DivideQueens::Cells;
        return a;
    }());
    print({printed(k5, 3)});
    EXPECT_EQ(done(closing(madeTwo())), "Divided 5 on 2026-05-20: made 51, 52");
    const auto lineage = session->lineageOf(k5);
    ASSERT_EQ(lineage.size(), 2u);
    for (const Lineage& l : lineage) {
        EXPECT_EQ(l.how, LineageHow::Divided);
        EXPECT_EQ(l.day, kSpring);
        EXPECT_EQ(l.by, QStringLiteral("Ana"));
        EXPECT_EQ(session->colony(l.into)->since, kSpring);
    }
    EXPECT_FALSE(session->colony(k5)->ended);
    const auto strips = session->divideStripsOf(theDay().id);
    ASSERT_EQ(strips.size(), 1u);
    EXPECT_EQ(strips[0].outcome, StripOutcome::Done);
    EXPECT_EQ(strips[0].queens, DivideQueens::Bought) << "as it was done, not as it was printed";
    EXPECT_EQ(strips[0].parts, 3);
    EXPECT_EQ(refusal(closing(madeTwo())).find("51"), 0u) << "its label is taken";
    EXPECT_EQ(refusal(closing(outcome(StripOutcome::NotDone))),
              "What came of the divide of 5 on 2026-05-20 is written already.");
    EXPECT_NE(unasked(asked({choice(k5, 1)})).find("has begun to be closed"), std::string::npos);
    EXPECT_NE(refusal([&](const EditContext& c) { return takeBackMergeDay(c, theDay().id); }).find("to be closed"),
              std::string::npos);
}

TEST_F(Dividing, WithoutAPrintTheOutcomeMakesItsStrip) {
    EXPECT_NE(done(closing(outcome(StripOutcome::Changed, QStringLiteral("brood to 6")))).find("done otherwise"),
              std::string::npos);
    EXPECT_EQ(session->divideStripsOf(theDay().id).at(0).note, "brood to 6");
    DivideClose other = outcome(StripOutcome::Changed);
    other.colony = k6;
    EXPECT_EQ(refusal(closing(other)), "What was done instead is to be noted.");
    other.outcome = StripOutcome::Done;
    EXPECT_EQ(refusal(closing(other)), "A divide makes at least one new colony: none was named.");
    other.made = {made(QStringLiteral("6"), {0, 3000})};
    EXPECT_NE(refusal(closing(other)).find("6"), std::string::npos) << "two labels on one day";
    other.made = {made(QStringLiteral("61"), {0, 3000}), made(QStringLiteral("62"), {0, 3000})};
    EXPECT_FALSE(refusal(closing(other)).empty()) << "both on one place";
    EXPECT_EQ(session->divideStripsOf(theDay().id).size(), 1u);
}

TEST_F(Dividing, OnlyWhereTheColonyStands) {
    DivideClose d = madeTwo();
    d.yard = newYard(QStringLiteral("South"));
    EXPECT_EQ(refusal(closing(d)), "5 does not stand in South on 2026-05-20.");
}

TEST_F(Dividing, AHeldColonyIsDividedAsAFactAloneAndWhatCameOfItIsHeldToo) {
    log(k5, dayOf(2026, 5, 18), [](Visit& v) { v.signs.add(Sign::Afb); });
    EXPECT_EQ(thrownBy([&] { apply(closing(madeTwo())); }).kind, Error::Kind::Hold);
    const auto asFact = [&](const EditContext& c) { return closeDivideAsFact(c, madeTwo()); };
    EXPECT_EQ(thrownBy([&] { apply(asFact); }).kind, Error::Kind::Correction) << "never without a reason and a name";
    EXPECT_TRUE(session->lineageOf(k5).empty());
    ASSERT_TRUE(
        session->apply(asFact, Correction{QStringLiteral("Ana"), QStringLiteral("done before the sign was seen")}));
    EXPECT_EQ(session->lineageOf(k5).size(), 2u);
    for (const Lineage& l : session->lineageOf(k5)) {
        DivideClose again = outcome(StripOutcome::Done);
        again.day = kSpring + 1;
        again.colony = l.into;
        again.made = {made(QStringLiteral("9"), {9000, 9000})};
        EXPECT_EQ(thrownBy([&] { apply(closing(again)); }).kind, Error::Kind::Hold) << "held by contact";
    }
    EXPECT_EQ(problems(), "");
}

TEST_F(Dividing, TakenBackWithItsMergeDayAndKeptFromTakingBackItsColony) {
    const ColonyId k8 = newColony(north, QStringLiteral("8"), {6000, 0});
    ask(asked({choice(k8, 1)}));
    print({printed(k8)});
    EXPECT_NE(refusal([&](const EditContext& c) { return takeBackColony(c, k8); }).find("the plan of a merge day"),
              std::string::npos);
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackMergeDay(c, theDay().id); }),
              "Took back the merge day of North on 2026-05-20");
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackColony(c, k8); }), "Took back 8, begun on 2026-05-01");
}

TEST_F(Dividing, APrintTakesThePlaceOfTheOneBefore) {
    ask(asked({choice(k6, 1)}));
    print({printed(k5), printed(k6)});
    print({printed(k6)});
    ASSERT_EQ(session->divideStripsOf(theDay().id).size(), 1u);
    const size_t lines = session->history(100).size();
    print({printed(k6)});
    EXPECT_EQ(session->history(100).size(), lines) << "the same is no edit";
    EXPECT_EQ(refusal([&](const EditContext& c) {
                  return printDivides(c, theDay().id, {printed(k5), printed(k5)});
              }),
              "5 is on two strips.");
}

} // namespace

} // namespace tests::edit
