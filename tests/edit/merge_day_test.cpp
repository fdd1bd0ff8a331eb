#include "core/edit/divide_day.h"
#include "core/edit/merge_day.h"
#include "core/edit/merge_sheet.h"
#include "core/edit/merge_variant.h"
#include "core/edit/merge_wishes.h"
#include "core/edit/print_day.h"
#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

class Merging : public PutRight {
protected:
    ColonyId k7 = newColony(north, QStringLiteral("7"), {4000, 0});

    Merging() {
        for (const ColonyId colony : {k5, k6, k7})
            log(colony, dayOf(2026, 8, 25), [&](Visit& v) {
                v.beesTop = Quarters{colony == k5 ? 12 : 18};
                v.queen = QueenSeen::Seen;
            });
    }
    MergeAsked asked(std::vector<MergeChoice> choices = {}) const {
        MergeAsked a;
        a.day.yard = north;
        a.day.day = kDay;
        a.choices = std::move(choices);
        const auto there = session->mergeDays(north);
        if (!there.empty()) a.day = there.front();
        return a;
    }
    static MergeChoice choice(MergeAsk what, ColonyId colony, std::optional<ColonyId> other = {}) {
        MergeChoice x;
        x.what = what;
        x.colony = colony;
        x.other = other;
        return x;
    }
    std::string save(const MergeAsked& a) {
        return done([&](const EditContext& c) { return saveMergeDay(c, a); });
    }
    std::string unsaved(const MergeAsked& a) {
        return refusal([&](const EditContext& c) { return saveMergeDay(c, a); });
    }
    MergeDay theDay() const { return session->mergeDays(north).at(0); }
    StripClose strip(StripOutcome outcome, const QString& note = {}) const {
        return {north, kDay, LineageHow::United, k5, k6, outcome, note, {}};
    }
    std::string close(const StripClose& s) {
        return done([&](const EditContext& c) { return closeStrip(c, s); });
    }
    MergeStrip printed(ColonyId moved, ColonyId host) const {
        MergeStrip s;
        s.moved = moved;
        s.host = host;
        s.upper = host;
        return s;
    }
    void print(const std::vector<MergeStrip>& strips) {
        apply([&](const EditContext& c) { return printMergeDay(c, theDay().id, strips); });
    }
};

TEST_F(Merging, WhatIsAskedIsKeptRevisionByRevision) {
    EXPECT_EQ(save(asked()), "Planned the merge day of North on 2026-09-10");
    const MergeChoice pin = choice(MergeAsk::Pin, k5, k6);
    EXPECT_EQ(save(asked({pin})), "Pinned 5 + 6 for the merge day of North on 2026-09-10");
    EXPECT_EQ(save(asked({choice(MergeAsk::Pin, k6, k5)})), "") << "the same pair";
    EXPECT_EQ(save(asked({pin, choice(MergeAsk::LeaveOut, k7)})), "Left 7 out of the merge day of North on 2026-09-10");
    EXPECT_EQ(save(asked({choice(MergeAsk::LeaveOut, k7)})), "Unpinned 5 + 6 for the merge day of North on 2026-09-10");
    MergeAsked limited = asked({choice(MergeAsk::LeaveOut, k7)});
    limited.day.most = 3;
    EXPECT_EQ(save(limited), "Limited the merge day of North on 2026-09-10 to 3 unions");
    EXPECT_EQ(theDay().revision, 5);
    reopen();
    EXPECT_EQ(theDay().most, 3);
    ASSERT_EQ(session->choicesOf(theDay().id).size(), 1u);
    EXPECT_EQ(session->choicesOf(theDay().id)[0].colony, k7);
}

TEST_F(Merging, WhatCannotBeTogetherIsRefused) {
    const MergeChoice pin = choice(MergeAsk::Pin, k5, k6);
    EXPECT_EQ(unsaved(asked({pin, choice(MergeAsk::Forbid, k6, k5)})),
              "5 and 6 are pinned and forbidden: only one of the two can be.");
    EXPECT_EQ(unsaved(asked({pin, choice(MergeAsk::LeaveOut, k6)})), "6 is left out and cannot be pinned.");
    EXPECT_EQ(unsaved(asked({pin, choice(MergeAsk::Pin, k6, k7)})),
              "6 is pinned twice: a colony is in one union only.");
    EXPECT_EQ(unsaved(asked({choice(MergeAsk::Host, k5)})),
              "A pair is pinned, forbidden or turned; one colony alone is left out.");
    end(k7, dayOf(2026, 9, 1));
    EXPECT_EQ(unsaved(asked({choice(MergeAsk::LeaveOut, k7)})), "7 does not live on 2026-09-10.");
}

TEST_F(Merging, ThreeVariantsOfADayStandSideBySide) {
    save(asked());
    MergeAsked second = asked();
    second.day.id = {};
    EXPECT_EQ(unsaved(second), "The merge day of North on 2026-09-10 is planned already.");
    second.day.variant = 2;
    EXPECT_EQ(save(second), "Planned the merge day of North on 2026-09-10, variant 2");
    second.day.variant = 4;
    EXPECT_NE(unsaved(second).find("Variant"), std::string::npos);
    EXPECT_EQ(session->mergeDays(north).size(), 2u);
}

TEST_F(Merging, AStripDoneIsAUnionOfThatDayAndItsOutcomeIsKept) {
    save(asked());
    print({printed(k5, k6)});
    EXPECT_EQ(close(strip(StripOutcome::Done)), "United 5 into 6 on 2026-09-10");
    EXPECT_EQ(session->colony(k5)->end, EndKind::United);
    const auto strips = session->stripsOf(theDay().id);
    ASSERT_EQ(strips.size(), 1u);
    EXPECT_EQ(strips[0].outcome, StripOutcome::Done);
    session->read([&](const EditContext& c) { EXPECT_EQ(c.boxesAt(k6, kDay), 2); });
    EXPECT_NE(refusal([&](const EditContext& c) {
                  return closeStrip(c, strip(StripOutcome::NotDone));
              }).find("is written already"),
              std::string::npos);
}

TEST_F(Merging, WhatIsPlannedStaysOnceSomethingCameOfIt) {
    save(asked());
    print({printed(k5, k6)});
    close(strip(StripOutcome::NotDone, QStringLiteral("rain")));
    EXPECT_NE(unsaved(asked({choice(MergeAsk::LeaveOut, k7)})).find("has begun to be closed"), std::string::npos);
    EXPECT_NE(refusal([&](const EditContext& c) { return takeBackMergeDay(c, theDay().id); }).find("to be closed"),
              std::string::npos);
    EXPECT_TRUE(session->colony(k5)->ended == std::nullopt);
    EXPECT_EQ(session->stripsOf(theDay().id)[0].note, "rain");
}

TEST_F(Merging, APrintTakesThePlaceOfTheOneBefore) {
    save(asked());
    print({printed(k5, k6)});
    MergeStrip shaken = printed(k6, k7);
    shaken.how = LineageHow::ShakenOut;
    shaken.upper.reset();
    print({printed(k5, k7), shaken});
    EXPECT_EQ(session->stripsOf(theDay().id).size(), 2u);
    const size_t lines = session->history(100).size();
    print({printed(k5, k7), shaken});
    EXPECT_EQ(session->history(100).size(), lines) << "the same strips are no edit";
    EXPECT_EQ(refusal([&](const EditContext& c) {
                  return printMergeDay(c, theDay().id, {printed(k5, k6), printed(k6, k7)});
              }),
              "6 is on two strips.");
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackMergeDay(c, theDay().id); }),
              "Took back the merge day of North on 2026-09-10");
}

TEST_F(Merging, WithoutAPlanTheOutcomeMakesItsMergeDay) {
    EXPECT_NE(close(strip(StripOutcome::Changed, QStringLiteral("5 to the shed"))).find("otherwise"),
              std::string::npos);
    EXPECT_EQ(session->stripsOf(theDay().id).at(0).outcome, StripOutcome::Changed);
    EXPECT_EQ(refusal([&](const EditContext& c) {
                  return closeStrip(c, {north, kDay, LineageHow::United, k6, k7, StripOutcome::Changed, {}, {}});
              }),
              "What was done instead is to be noted.");
}

TEST_F(Merging, AHeldPairIsRefusedByItsRuleAndRecordedAsAFactAlone) {
    log(k6, dayOf(2026, 9, 1), [](Visit& v) { v.signs.add(Sign::Afb); });
    const Thrown thrown =
        thrownBy([&] { apply([&](const EditContext& c) { return closeStrip(c, strip(StripOutcome::Done)); }); });
    EXPECT_EQ(thrown.kind, Error::Kind::Hold);
    EXPECT_NE(thrown.message.find("4.7.2"), std::string::npos) << thrown.message;
    const auto asFact = [&](const EditContext& c) { return closeStripAsFact(c, strip(StripOutcome::Done)); };
    EXPECT_EQ(thrownBy([&] { apply(asFact); }).kind, Error::Kind::Correction) << "never without a reason and a name";
    EXPECT_FALSE(session->colony(k5)->ended);
    const auto line =
        session->apply(asFact, Correction{QStringLiteral("Ana"), QStringLiteral("done before the sign was seen")});
    ASSERT_TRUE(line);
    EXPECT_EQ(session->colony(k5)->end, EndKind::United);
    EXPECT_EQ(problems(), "");
}

TEST_F(Merging, WeakerThanTheShakeOutClassIsRefusedByRuleFour) {
    log(k5, dayOf(2026, 9, 5), [](Visit& v) { v.beesTop = Quarters{6}; });
    EXPECT_NE(refusal([&](const EditContext& c) { return closeStrip(c, strip(StripOutcome::Done)); }).find("4.7.4"),
              std::string::npos);
}

TEST_F(Merging, EditsInTurnSeeEachOtherAndAreOneLine) {
    const auto before = rowsText(path());
    StripClose first = strip(StripOutcome::Done);
    StripClose second = first;
    second.moved = k7;
    second.host = k6;
    const auto each = [](const StripClose& s) { return [s](const EditContext& c) { return closeStrip(c, s); }; };
    const Thrown thrown = thrownBy([&] { session->applyInTurn(QStringLiteral("Both"), {each(first), each(second)}); });
    EXPECT_NE(thrown.message.find("4.7.4"), std::string::npos)
        << "6 is united by then, and not counted: " << thrown.message;
    EXPECT_EQ(rowsText(path()), before) << "all or none";
    second.outcome = StripOutcome::NotDone;
    const size_t lines = session->history(100).size();
    ASSERT_TRUE(session->applyInTurn(QStringLiteral("Both"), {each(first), each(second)}));
    EXPECT_EQ(session->history(100).size(), lines + 1);
    EXPECT_EQ(session->stripsOf(theDay().id).size(), 2u);
    EXPECT_EQ(problems(), "");
    session->undo();
    EXPECT_EQ(rowsText(path()), before);
}

TEST_F(Merging, AColonyOrYardOfAMergeDayIsNotTakenBack) {
    const ColonyId k8 = newColony(north, QStringLiteral("8"), {6000, 0});
    save(asked({choice(MergeAsk::LeaveOut, k8)}));
    EXPECT_NE(refusal([&](const EditContext& c) { return takeBackColony(c, k8); }).find("the plan of a merge day"),
              std::string::npos);
}

TEST_F(Merging, AStripChangedWritesWhatWasDoneInsteadByTheSameRules) {
    save(asked());
    print({printed(k5, k6)});
    StripClose changed = strip(StripOutcome::Changed, QStringLiteral("6 had no queen"));
    changed.instead = DoneInstead{LineageHow::United, k5, k6};
    EXPECT_EQ(refusal([&](const EditContext& c) { return closeStrip(c, changed); }),
              "That is the strip itself: it was done.");
    changed.instead = DoneInstead{LineageHow::United, k5, k7};
    EXPECT_EQ(close(changed), "United 5 into 7 on 2026-09-10, not as planned");
    EXPECT_EQ(session->lineageOf(k5).at(0).into, k7);
    EXPECT_EQ(session->stripsOf(theDay().id).at(0).outcome, StripOutcome::Changed);
    EXPECT_EQ(session->stripsOf(theDay().id).size(), 1u);
    session->undo();
    log(k7, dayOf(2026, 9, 1), [](Visit& v) { v.signs.add(Sign::Afb); });
    EXPECT_EQ(thrownBy([&] { apply([&](const EditContext& c) { return closeStrip(c, changed); }); }).kind,
              Error::Kind::Hold);
    const auto asFact = [&](const EditContext& c) { return closeStripAsFact(c, changed); };
    EXPECT_EQ(thrownBy([&] { apply(asFact); }).kind, Error::Kind::Correction);
    ASSERT_TRUE(session->apply(asFact, Correction{QStringLiteral("Ana"), QStringLiteral("so it was")}));
    EXPECT_EQ(session->colony(k5)->end, EndKind::United);
    EXPECT_EQ(problems(), "");
}

TEST_F(Merging, CarriedTheOtherWayIsAStripOfItsOwn) {
    save(asked());
    print({printed(k5, k6)});
    StripClose changed = strip(StripOutcome::Changed, QStringLiteral("6 stood better"));
    changed.instead = DoneInstead{LineageHow::ShakenOut, k6, k5};
    EXPECT_EQ(close(changed), "Shook 6 out into 5 on 2026-09-10, not as planned");
    const auto strips = session->stripsOf(theDay().id);
    ASSERT_EQ(strips.size(), 2u);
    EXPECT_TRUE(onSheet(strips[0]));
    EXPECT_FALSE(onSheet(strips[1]));
    EXPECT_EQ(strips[1].moved, k6);
    EXPECT_EQ(strips[1].outcome, StripOutcome::Done);
    EXPECT_FALSE(session->colony(k5)->ended);
}

TEST_F(Merging, WhatAnotherStripCarriesIsWrittenBackThere) {
    save(asked());
    print({printed(k5, k6)});
    StripClose off = strip(StripOutcome::Changed, QStringLiteral("7 lay empty"));
    off.moved = k6;
    off.host = k7;
    off.instead = DoneInstead{LineageHow::United, k5, k7};
    EXPECT_EQ(refusal([&](const EditContext& c) { return closeStrip(c, off); }), "5 is on another strip of that day.");
}

TEST_F(Merging, WhatIsWrittenOfAStripIsTakenBack) {
    save(asked());
    print({printed(k5, k6)});
    EXPECT_EQ(refusal([&](const EditContext& c) { return reopenStrip(c, session->stripsOf(theDay().id)[0].id); }),
              "Nothing is written of that strip.");
    const auto open = rowsText(path());
    for (const StripOutcome outcome : {StripOutcome::Done, StripOutcome::NotDone, StripOutcome::Changed}) {
        StripClose s = strip(outcome, QStringLiteral("as it came"));
        if (outcome == StripOutcome::Changed) s.instead = DoneInstead{LineageHow::ShakenOut, k5, k7};
        close(s);
        const MergeStrip written = session->stripsOf(theDay().id).at(0);
        EXPECT_EQ(done([&](const EditContext& c) { return reopenStrip(c, written.id); }),
                  "Took back what came of 5 + 6 on 2026-09-10");
        EXPECT_EQ(rowsText(path()), open);
    }
}

TEST_F(Merging, AStripThatNeverWasOnTheSheetGoesWithItsMergeDay) {
    const auto before = rowsText(path());
    close(strip(StripOutcome::Done));
    const MergeStrip off = session->stripsOf(theDay().id).at(0);
    EXPECT_FALSE(onSheet(off));
    done([&](const EditContext& c) { return reopenStrip(c, off.id); });
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_TRUE(session->mergeDays(north).empty());
}

TEST_F(Merging, TakingAUnionBackThatAHoldRestsOnIsACorrection) {
    give(k7, k5, dayOf(2026, 9, 1));
    close(strip(StripOutcome::Done));
    log(k7, dayOf(2026, 9, 12), [](Visit& v) { v.signs.add(Sign::Afb); }); // 6 has its contact by the union alone
    const MergeStrip written = session->stripsOf(theDay().id).at(0);
    const auto back = [&](const EditContext& c) { return reopenStrip(c, written.id); };
    EXPECT_EQ(thrownBy([&] { apply(back); }).kind, Error::Kind::Correction);
    EXPECT_TRUE(session->colony(k5)->ended);
    ASSERT_TRUE(session->apply(back, Correction{QStringLiteral("Ana"), QStringLiteral("the wrong hive")}));
    EXPECT_FALSE(session->colony(k5)->ended);
    EXPECT_EQ(problems(), "");
}

TEST_F(Merging, TheDayIsClosedByTheVariantThatWentToPaper) {
    const auto closing = [&] {
        std::optional<MergeDay> day;
        session->read([&](const EditContext& c) { day = standingDay(c, north, kDay); });
        return day ? day->variant : 0;
    };
    EXPECT_EQ(closing(), 0);
    save(asked());
    MergeAsked second = asked();
    second.day.id = {};
    second.day.variant = 2;
    save(second);
    EXPECT_EQ(closing(), 1);
    const auto days = session->mergeDays(north);
    apply([&](const EditContext& c) { return printMergeDay(c, days[1].id, {printed(k5, k6)}); });
    EXPECT_EQ(closing(), 2);
    close({north, kDay, LineageHow::United, k7, k6, StripOutcome::NotDone, {}, {}});
    EXPECT_EQ(session->stripsOf(days[1].id).size(), 2u) << "an unplanned strip joins the sheet";
}

TEST_F(Merging, OneVariantIsOnPaperAndIsPlannedBy) {
    save(asked({choice(MergeAsk::Pin, k5, k6)}));
    apply([&](const EditContext& c) { return addMergeVariant(c, north, kDay, theDay().id); });
    const auto days = session->mergeDays(north);
    const auto wish = [&](const std::map<YardId, int>& shown = {}) {
        const auto wishes = mergeWishes(*session, kDay, shown);
        return wishes.size() == 1 ? wishes[0].day.variant : 0;
    };
    EXPECT_EQ(wish(), 1);
    EXPECT_EQ(wish({{north, 2}}), 2);
    EXPECT_EQ(wish({{north, 3}}), 1) << "not saved";
    print({printed(k5, k6)});
    DivideStrip divide;
    divide.colony = k7;
    divide.parts = 2;
    apply([&](const EditContext& c) { return printDivides(c, days[0].id, {divide}); });
    apply([&](const EditContext& c) { return printMergeDay(c, days[1].id, {printed(k6, k5)}); });
    EXPECT_TRUE(session->stripsOf(days[0].id).empty()) << "its sheet is no more the one in the field";
    EXPECT_TRUE(session->divideStripsOf(days[0].id).empty());
    EXPECT_EQ(wish(), 2);
    session->undo();
    EXPECT_EQ(session->stripsOf(days[0].id).size(), 1U);
    EXPECT_EQ(session->divideStripsOf(days[0].id).size(), 1U);
    EXPECT_EQ(wish(), 1);
    EXPECT_TRUE(mergeWishes(*session, kDay + 1).empty());
    EXPECT_EQ(problems(), "");
}

TEST_F(Merging, ThePlansStripsAreInTheOrderOfTheWorksheet) {
    log(k7, dayOf(2026, 9, 5), [](Visit& v) {
        v.beesTop = Quarters{6};
        v.queen = QueenSeen::Seen;
    });
    const Snapshot s = session->snapshot(kDay);
    const rules::Plan plan = rules::advise(s, {});
    ASSERT_EQ(plan.unions.size(), 1u);
    ASSERT_EQ(plan.shakeOuts.size(), 1u);
    const auto strips = stripsPlanned(s, plan, plan.yards.at(0));
    ASSERT_EQ(strips.size(), 2u);
    EXPECT_EQ(strips[0].moved, k5);
    EXPECT_EQ(strips[0].upper, k6) << "the better on top";
    EXPECT_EQ(strips[1].how, LineageHow::ShakenOut);
    EXPECT_EQ(strips[1].moved, k7);
    save(asked());
    print(strips);
    EXPECT_EQ(session->stripsOf(theDay().id).size(), 2u);
}

TEST_F(Merging, AWorksheetThatWentToPaperIsKeptWithItsDayAsOneEdit) {
    PrintedSheet sheet;
    sheet.yard = north;
    sheet.day = kDay;
    MergeStrip strip;
    strip.how = LineageHow::United;
    strip.moved = k5;
    strip.host = k6;
    strip.upper = k6;
    sheet.strips = {strip};
    const auto line = session->applyInTurn("Printed", recordPrint(sheet));
    ASSERT_TRUE(line);
    ASSERT_EQ(session->mergeDays(north).size(), 1u);
    const MergeDay day = session->mergeDays(north).front();
    EXPECT_EQ(day.day, kDay);
    EXPECT_EQ(day.variant, 1);
    ASSERT_EQ(session->stripsOf(day.id).size(), 1u);
    EXPECT_EQ(session->stripsOf(day.id).front().moved, k5);
    EXPECT_FALSE(session->applyInTurn("Printed", recordPrint(sheet))) << "just these are there";
    EXPECT_FALSE(closingBegan(*session, north, kDay));
    session->undo();
    EXPECT_TRUE(session->mergeDays(north).empty());
}

TEST_F(Merging, AVariantThatIsSavedIsPrintedAsItIs) {
    MergeAsked a = asked();
    a.day.variant = 2;
    save(a);
    PrintedSheet sheet;
    sheet.yard = north;
    sheet.day = kDay;
    sheet.variant = 2;
    MergeStrip strip;
    strip.moved = k7;
    strip.host = k6;
    strip.how = LineageHow::ShakenOut;
    sheet.strips = {strip};
    session->applyInTurn("Printed", recordPrint(sheet));
    ASSERT_EQ(session->mergeDays(north).size(), 1u);
    EXPECT_EQ(session->mergeDays(north).front().revision, 1);
    EXPECT_EQ(session->stripsOf(session->mergeDays(north).front().id).size(), 1u);
}

TEST_F(Merging, AVariantIsACopyOfAllThatIsAsked) {
    save(asked({choice(MergeAsk::Pin, k5, k6), choice(MergeAsk::LeaveOut, k7)}));
    apply([&](const EditContext& c) {
        DivideChoice whole;
        whole.colony = k7;
        return askDivides(c, {north, kDay, 1, DivideQueens::Cells, {whole}});
    });
    const MergeDayId first = theDay().id;
    const auto add = [&](const EditContext& c) { return addMergeVariant(c, north, kDay, first); };
    EXPECT_EQ(done(add), "Planned the merge day of North on " + isoText(kDay).toStdString() + ", variant 2");
    const auto days = session->mergeDays(north);
    ASSERT_EQ(days.size(), 2U);
    EXPECT_EQ(days[1].revision, 1);
    EXPECT_EQ(days[1].queens, DivideQueens::Cells);
    EXPECT_EQ(session->choicesOf(days[1].id).size(), 2U);
    EXPECT_EQ(session->divideChoicesOf(days[1].id).size(), 1U);
    EXPECT_EQ(session->choicesOf(first).size(), 2U);
    done(add);
    EXPECT_EQ(refusal(add), "Three variants of a merge day stand side by side at most: drop one first.");
    apply([&](const EditContext& c) { return takeBackMergeDay(c, days[1].id); });
    EXPECT_EQ(session->mergeDays(north).size(), 2U);
    done(add);
    EXPECT_EQ(session->mergeDays(north)[1].variant, 2) << "the first number that is free";
}

TEST_F(Merging, TheFirstVariantKeepsWhatTheRulesProposeBesideIt) {
    apply([&](const EditContext& c) { return addMergeVariant(c, north, kDay, {}); });
    ASSERT_EQ(session->mergeDays(north).size(), 2U);
    session->undo();
    EXPECT_TRUE(session->mergeDays(north).empty()) << "one undo";
}

TEST_F(Merging, ADayBegunToBeClosedHasNoMoreVariants) {
    save(asked({choice(MergeAsk::Pin, k5, k6)}));
    print({printed(k5, k6)});
    close(strip(StripOutcome::NotDone, QStringLiteral("rain")));
    EXPECT_NE(refusal([&](const EditContext& c) {
                  return addMergeVariant(c, north, kDay, theDay().id);
              }).find("begun to be closed"),
              std::string::npos);
}

} // namespace

} // namespace tests::edit
