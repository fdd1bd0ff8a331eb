#include "core/edit/after_union.h"
#include "core/rules/hold.h"
#include "core/rules/plan.h"
#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

const Day kSeen = dayOf(2026, 9, 15);

class AfterUnion : public PutRight {
protected:
    AfterUnion() {
        log(k5, dayOf(2026, 8, 25), [](Visit& v) { v.beesTop = Quarters{12}; });
        log(k6, dayOf(2026, 8, 25), [](Visit& v) { v.beesTop = Quarters{18}; });
        unite(k5, k6, kDay);
    }
    std::vector<rules::Due> due() const { return rules::advise(session->snapshot(clock.day), {}).due; }
    static Work check(const UnionSeen& seen) {
        return [=](const EditContext& c) { return logUnionCheck(c, seen); };
    }
    static Work loss(const Loss& x) {
        return [=](const EditContext& c) { return recordLoss(c, x); };
    }
    static Work failure(const Failure& x) {
        return [=](const EditContext& c) { return recordFailure(c, x); };
    }
    bool heldAs(ColonyId colony, rules::HoldKind kind) const {
        const Snapshot s = session->snapshot(clock.day);
        for (const rules::Hold& h : rules::holds(s))
            if (s.colony(h.colony).id == colony && h.kind == kind) return true;
        return false;
    }
};

TEST_F(AfterUnion, TheThreeAnswersAreAVisitAndEndTheCheck) {
    ASSERT_EQ(due().size(), 1u);
    EXPECT_EQ(done(check({k6, kSeen, true, std::nullopt, true, QStringLiteral("Ana"), QStringLiteral("quiet")})),
              "Checked the union of 6 on 2026-09-15: paper gone, eggs");
    const Visit v = visitOf(k6, kSeen);
    EXPECT_EQ(v.queen, QueenSeen::Eggs);
    EXPECT_EQ(v.note.toStdString(), "Union check: paper gone, eggs. quiet");
    EXPECT_EQ(v.by.toStdString(), "Ana");
    EXPECT_FALSE(v.broodChecked) << "a look at the eggs is no brood check";
    EXPECT_TRUE(due().empty());
}

TEST_F(AfterUnion, WhatWasLookedForAndNotFoundIsUnknownNotNone) {
    EXPECT_EQ(refusal(check({k6, kSeen, {}, {}, {}, {}, {}})),
              "Nothing was looked at yet: paper, queen or eggs, one at least.");
    done(check({k6, kSeen, false, false, false, {}, {}}));
    EXPECT_EQ(visitOf(k6, kSeen).queen, QueenSeen::Unknown);
    EXPECT_EQ(visitOf(k6, kSeen).note.toStdString(), "Union check: paper not gone, no queen seen, no eggs.");
    session->undo();
    done(check({k6, kSeen, true, {}, {}, {}, {}}));
    EXPECT_FALSE(visitOf(k6, kSeen).queen) << "nobody looked";
}

TEST_F(AfterUnion, AVisitOfThatDayIsAddedTo) {
    log(k6, kSeen, [](Visit& v) {
        v.beesTop = Quarters{20};
        v.note = QStringLiteral("warm");
    });
    done(check({k6, kSeen, true, true, {}, {}, {}}));
    EXPECT_EQ(visitOf(k6, kSeen).beesTop, Quarters{20});
    EXPECT_EQ(visitOf(k6, kSeen).queen, QueenSeen::Seen);
    EXPECT_EQ(visitOf(k6, kSeen).note.toStdString(), "warm Union check: paper gone, one queen.");
}

TEST_F(AfterUnion, AColonyLostEndsWithItsCauseAndNothingIsAssumedOfItsBrood) {
    Loss x;
    x.colony = k6;
    x.day = kSeen;
    x.cause = QStringLiteral("starved");
    EXPECT_EQ(done(loss(x)), "6 was found dead on 2026-09-15. Cause: starved");
    EXPECT_EQ(session->colony(k6)->end, EndKind::Dead);
    const Visit v = visitOf(k6, kSeen);
    EXPECT_EQ(v.beesTop, Quarters{0});
    EXPECT_EQ(v.upperBeesTop, Quarters{0}) << "it was in two boxes";
    EXPECT_FALSE(v.broodChecked);
    EXPECT_TRUE(v.signs.empty());
    EXPECT_NE(v.note.indexOf(QStringLiteral("Brood not looked at")), -1);
    session->undo();
    x.brood = BroodFound::Healthy;
    done(loss(x));
    EXPECT_FALSE(visitOf(k6, kSeen).broodChecked) << "how many frames was not said";
    session->undo();
    x.framesLooked = 4;
    done(loss(x));
    EXPECT_EQ(visitOf(k6, kSeen).broodChecked, 4);
    session->undo();
    x.brood = BroodFound::Doubtful;
    EXPECT_EQ(refusal(loss(x)), "Frames of brood are counted where they looked healthy.");
}

TEST_F(AfterUnion, SignsAtADeadColonyHoldThoseThatStoodWithIt) {
    const ColonyId k7 = newColony(north, QStringLiteral("7"), {4000, 0});
    Loss x;
    x.colony = k6;
    x.day = kSeen;
    x.brood = BroodFound::SignsOfAfb;
    ASSERT_FALSE(heldAs(k7, rules::HoldKind::AfbYard));
    EXPECT_EQ(apply(loss(x))->text.toStdString(), "6 was found dead on 2026-09-15");
    EXPECT_EQ(problems(), "");
    EXPECT_TRUE(visitOf(k6, kSeen).signs.has(Sign::Afb));
    EXPECT_TRUE(heldAs(k7, rules::HoldKind::AfbYard));
    EXPECT_EQ(thrownBy([&] { session->undo(); }).kind, Error::Kind::Correction) << "a hold rests on it now";
}

TEST_F(AfterUnion, AUnionThatFailedBecomesTheRightRecords) {
    Failure f;
    f.loss.colony = k6;
    f.loss.day = kSeen;
    EXPECT_EQ(done(failure(f)), "Found 6 queenless after the union on 2026-09-15");
    EXPECT_EQ(visitOf(k6, kSeen).queen, QueenSeen::None);
    EXPECT_FALSE(session->colony(k6)->ended);
    session->undo();
    f.how = UnionFailure::Fought;
    f.queen = QueenSeen::Seen;
    EXPECT_EQ(done(failure(f)), "Found 6 fought after the union on 2026-09-15");
    EXPECT_EQ(visitOf(k6, kSeen).queen, QueenSeen::Seen);
    session->undo();
    f.how = UnionFailure::Absconded;
    EXPECT_EQ(done(failure(f)), "6 was found dead on 2026-09-15. Cause: absconded after the union");
    EXPECT_EQ(session->colony(k6)->ended, kSeen);
    session->undo();
    f.how = UnionFailure::Dead;
    f.loss.brood = BroodFound::SignsOfEfb;
    apply(failure(f));
    EXPECT_EQ(problems(), "");
    EXPECT_TRUE(visitOf(k6, kSeen).signs.has(Sign::Efb));
}

TEST_F(AfterUnion, ATreatmentTakenOutIsAVisitThatSaysSo) {
    EXPECT_EQ(done([&](const EditContext& c) {
                  return logTakenOut(c, k6, kSeen, QStringLiteral("Strips"), QStringLiteral("Ana"));
              }),
              "Took Strips out of 6 on 2026-09-15");
    EXPECT_EQ(visitOf(k6, kSeen).note.toStdString(), "Taken out: Strips.");
}

} // namespace

} // namespace tests::edit
