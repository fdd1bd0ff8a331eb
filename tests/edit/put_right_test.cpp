#include "tests/edit/put_right_fixture.h"

namespace tests::edit {

namespace {

// Visits.

TEST_F(PutRight, AVisitIsChangedWithItsSigns) {
    log(k5, kDay, [](Visit& v) {
        v.signs.add(Sign::Chalkbrood);
        v.signs.add(Sign::Nosema);
    });
    EXPECT_EQ(done(visitNow(k5, kDay,
                            [](Visit& v) {
                                v.beesTop = Quarters{20};
                                v.signs = {};
                                v.signs.add(Sign::Nosema);
                                v.signs.add(Sign::Sacbrood);
                            })),
              "Changed the visit of 5 on 2026-09-10");
    const Visit now = visitOf(k5, kDay);
    EXPECT_EQ(now.beesTop, Quarters{20});
    EXPECT_TRUE(now.signs.has(Sign::Nosema) && now.signs.has(Sign::Sacbrood) && !now.signs.has(Sign::Chalkbrood));
    EXPECT_FALSE(apply(visitNow(k5, kDay, [](Visit&) {}))) << "says so already";
    EXPECT_EQ(done(visitNow(k5, kDay, [](Visit& v) { v.day = kDay + 1; })),
              "Moved the visit of 5 from 2026-09-10 to 2026-09-11");
}

TEST_F(PutRight, AChangedVisitIsJudgedAsANewOne) {
    log(k5, kDay);
    log(k5, kDay + 2);
    EXPECT_EQ(refusal(visitNow(k5, kDay, [](Visit& v) { v.day = kDay + 2; })),
              "5 has a visit on 2026-09-12 already; expected one visit a colony a day.");
    EXPECT_EQ(refusal(visitNow(k5, kDay, [](Visit& v) { v.day = dayOf(2026, 4, 30); })),
              "5 began on 2026-05-01; 2026-04-30 is before that.");
    EXPECT_EQ(refusal(visitNow(k5, kDay, [](Visit& v) { v.mites = 3; })),
              "Mites: expected the mites and the bees in the sample, or neither.");
    EXPECT_EQ(refusal(visitNow(k5, kDay, [](Visit& v) { v.upperBeesTop = Quarters{4}; })),
              "Upper box: the colony is in one brood box that day; expected no counts of an upper box.");
    EXPECT_EQ(refusal(visitNow(k5, kDay, [&](Visit& v) { v.colony = k6; })),
              "A visit stays its colony's: take it back and log it for the other.");
}

TEST_F(PutRight, AVisitThatSaysTwoBoxesStandsWhileALaterOneCountsThem) {
    log(k5, kDay, [](Visit& v) { v.boxes = 2; });
    log(k5, kDay + 3, [](Visit& v) { v.upperBeesTop = Quarters{12}; });
    const std::string why =
        "The visit of 5 on 2026-09-13 counts an upper box; the colony would be in one brood box then.";
    EXPECT_EQ(refusal(back(visitOf(k5, kDay).id)), why);
    EXPECT_EQ(refusal(visitNow(k5, kDay, [](Visit& v) { v.boxes.reset(); })), why);
    EXPECT_EQ(refusal(visitNow(k5, kDay, [](Visit& v) { v.day = kDay + 4; })), why);
    EXPECT_NE(done(visitNow(k5, kDay, [](Visit& v) { v.day = kDay + 2; })), "");
    EXPECT_EQ(done(back(visitOf(k5, kDay + 3).id)), "Took back the visit of 5 on 2026-09-13");
    EXPECT_EQ(done(back(visitOf(k5, kDay + 2).id)), "Took back the visit of 5 on 2026-09-12");
    EXPECT_EQ(session->visitsOf(k5, -1).size(), 0u);
    EXPECT_EQ(refusal(back(VisitId{99})), "That visit is no longer in the book.");
}

// Transfers, results, treatments.

TEST_F(PutRight, TransfersResultsAndTreatmentsAreChangedAndTakenBack) {
    give(k5, k6, kDay);
    const TransferId transfer{1};
    const auto changed = [&](const std::function<void(Transfer&)>& more) -> Work {
        return [=](const EditContext& c) {
            Transfer now = c.find<Transfer>(transfer.value).value();
            more(now);
            return changeTransfer(c, now);
        };
    };
    EXPECT_EQ(done(changed([](Transfer& t) {
                  t.what = TransferKind::Brood;
                  t.count = 2;
              })),
              "Changed the transfer of frames from 5 to 6 on 2026-09-10");
    EXPECT_EQ(refusal(changed([](Transfer& t) { t.to = t.from; })), "A transfer goes from one colony to another.");
    EXPECT_EQ(refusal(changed([](Transfer& t) { t.count = 0; })), "Count: 0 is not from 1 to 1000.");
    EXPECT_EQ(refusal(changed([](Transfer& t) { t.day = dayOf(2026, 4, 1); })),
              "5 began on 2026-05-01; 2026-04-01 is before that.");
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackTransfer(c, transfer); }),
              "Took back the transfer of brood from 5 to 6 on 2026-09-10");

    Result r;
    r.colony = k5;
    r.day = kDay;
    r.by = QStringLiteral("the laboratory");
    apply([&](const EditContext& c) { return logResult(c, r); });
    r.id = ResultId{1};
    r.disease = Disease::Efb;
    EXPECT_EQ(done([&](const EditContext& c) { return changeResult(c, r); }),
              "Changed afb negative (laboratory) of 5 on 2026-09-10");
    EXPECT_FALSE(apply([&](const EditContext& c) { return changeResult(c, r); }));
    r.verdict = Verdict::Order;
    EXPECT_EQ(refusal([&](const EditContext& c) { return changeResult(c, r); }),
              "Method: an order or a release comes from an inspector.");
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackResult(c, r.id); }),
              "Took back efb negative (laboratory) of 5 on 2026-09-10");

    Treatment t;
    t.yard = north;
    t.day = kDay;
    t.product = QStringLiteral("strips");
    t.substance = QStringLiteral("acid");
    apply([&](const EditContext& c) { return logTreatment(c, t); });
    t.id = TreatmentId{1};
    t.days = 42;
    // What stands in the medicine book is altered with a reason and a name alone.
    const Correction why{QStringLiteral("Ana"), QStringLiteral("wrong product noted")};
    EXPECT_EQ(done([&](const EditContext& c) { return changeTreatment(c, t); }, why),
              "Changed the treatment of North with strips on 2026-09-10");
    t.days = 1001;
    EXPECT_EQ(refusal([&](const EditContext& c) { return changeTreatment(c, t); }),
              "Days: 1001 is not from 0 to 1000.");
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackTreatment(c, t.id); }, why),
              "Took back the treatment of North with strips on 2026-09-10");
}

// Colonies.

TEST_F(PutRight, AColonysBeginningMovesItsFirstPlaceAndStaysBeforeEveryRecord) {
    log(k5, kDay);
    EXPECT_EQ(done(colony(k5, [](Colony& c) { c.since = kDay; })),
              "Put right that 5 began on 2026-09-10 (was 2026-05-01)");
    EXPECT_EQ(session->placementsOf(k5)[0].since, kDay);
    EXPECT_EQ(refusal(colony(k5, [](Colony& c) { c.since = kDay + 1; })),
              "5 has a visit on 2026-09-10; it cannot have begun after that.");
    carry(k6, {2000, 4000}, kDay);
    EXPECT_EQ(refusal(colony(k6, [](Colony& c) { c.since = kDay + 1; })),
              "6 has a carry on 2026-09-10; it cannot have begun after that.");
    EXPECT_NE(done(colony(k6, [](Colony& c) { c.since = kDay; })), "") << "carried on its first day";
}

TEST_F(PutRight, AColonysBeginningAndLabelKeepToTheDaysThatAreFree) {
    const Stand stand = standOf(k5);
    end(k5, kDay);
    const ColonyId next = again(QStringLiteral("5"), kDay + 10, stand);
    EXPECT_NE(done(colony(next, [](Colony& c) { c.since = kDay + 1; })), "");
    EXPECT_EQ(refusal(colony(next, [](Colony& c) { c.since = kDay; })),
              "5 is the label of a colony that lived from 2026-05-01 to 2026-09-10.");
    EXPECT_NE(done(colony(next, [](Colony& c) { c.label = QStringLiteral("9"); })), "");
    EXPECT_EQ(refusal(colony(next, [](Colony& c) { c.since = kDay - 1; })),
              "5 stood on stand 5 from 2026-05-01 to 2026-09-10; 9 cannot stand there then.");
    EXPECT_NE(done(colony(next, [](Colony& c) { c.since = kDay; })), "") << "one ends and the other comes";
    EXPECT_EQ(refusal(colony(next, [](Colony& c) { c.label = QStringLiteral("6"); })),
              "6 is the label of a colony that lives since 2026-05-01.");
    EXPECT_EQ(refusal(colony(next, [](Colony& c) { c.label = QStringLiteral("a@b"); })), "Colony: a label holds no @.");
    EXPECT_EQ(done(colony(next, [](Colony& c) { c.label = QStringLiteral("5b"); })), "Renamed 9 to 5b");
}

TEST_F(PutRight, AColonysBoxHoldsWhatItsVisitsCounted) {
    log(k5, kDay, [](Visit& v) { v.stores = Quarters{37}; });
    EXPECT_EQ(refusal(colony(k5, [](Colony& c) { c.box = BoxKindId{2}; })),
              "The visit of 5 on 2026-09-10 counts 9.25 frames in a box; a box of langstroth-8 holds 8.");
    EXPECT_EQ(done(colony(k5, [](Colony& c) { c.box = BoxKindId{3}; })), "Changed 5");
    EXPECT_NE(done(colony(k6, [](Colony& c) { c.broodBoxes = 2; })), "");
    log(k6, kDay, [](Visit& v) { v.upperStores = Quarters{4}; });
    EXPECT_EQ(refusal(colony(k6, [](Colony& c) { c.broodBoxes = 1; })),
              "The visit of 6 on 2026-09-10 counts an upper box; the colony would be in one brood box then.");
    EXPECT_EQ(refusal(colony(k6, [](Colony& c) { c.queenBorn = 1989; })),
              "Year of the queen: 1989 is not from 1990 to 2100.");
}

TEST_F(PutRight, NoResultIsOlderThanItsLabel) {
    Result r;
    r.colony = k5;
    r.day = dayOf(2026, 6, 1);
    r.by = QStringLiteral("the laboratory");
    apply([&](const EditContext& c) { return logResult(c, r); });
    EXPECT_EQ(refusal(colony(k5, [](Colony& c) { c.since = kDay; })),
              "5 has a result of 2026-06-01; it cannot have begun after that.");
    r.id = ResultId{1};
    r.day = dayOf(2026, 4, 30);
    EXPECT_EQ(refusal([&](const EditContext& c) { return changeResult(c, r); }),
              "5 began on 2026-05-01; 2026-04-30 is before that.");
}

TEST_F(PutRight, AColonyThatNoRecordNamesIsTakenBackWithItsStand) {
    const auto before = rowsText(path());
    const ColonyId k7 = newColony(north, QStringLiteral("7"), {6000, 0});
    log(k7, kDay);
    EXPECT_EQ(refusal(back(k7)), "7 has a visit on 2026-09-10; only a colony that no record names is taken back.");
    apply(back(visitOf(k7, kDay).id));
    end(k7, kDay);
    EXPECT_EQ(refusal(back(k7)), "7 ended on 2026-09-10; take that back first.");
    apply(endBack(k7));
    EXPECT_EQ(done(back(k7)), "Took back 7, begun on 2026-05-01");
    EXPECT_EQ(rowsText(path()), before);

    apply([&](const EditContext& c) { return addStand(c, north, QStringLiteral("oak"), {9000, 0}); });
    const ColonyId k8 = again(QStringLiteral("8"), kDay, stands(north).back());
    apply(back(k8));
    EXPECT_EQ(stands(north).back().name, "oak") << "its stand was there before it";
}

// Ends.

TEST_F(PutRight, AnEndIsMovedWithItsPlaceAndTakenBack) {
    log(k5, kDay);
    end(k5, kDay + 4);
    const auto to = [&](Day day, EndKind how) -> Work {
        return [=, this](const EditContext& c) { return changeEnd(c, k5, day, how); };
    };
    EXPECT_EQ(refusal(to(kDay - 1, EndKind::Dead)), "5 has a visit on 2026-09-10; it cannot have ended before that.");
    EXPECT_EQ(refusal(to(dayOf(2026, 1, 1), EndKind::Dead)), "5 ended on 2026-01-01; it cannot have begun after that.");
    EXPECT_EQ(refusal(to(kDay, EndKind::United)),
              "A union or shake-out is recorded with the colony that took the bees.");
    EXPECT_EQ(done(to(kDay + 1, EndKind::Sold)), "Put right: 5 was sold on 2026-09-11 (was dead, 2026-09-14)");
    EXPECT_EQ(session->placementsOf(k5)[0].until, kDay + 1);
    EXPECT_FALSE(apply(to(kDay + 1, EndKind::Sold)));
    EXPECT_EQ(done(endBack(k5)), "Took back the end of 5 on 2026-09-11: it lives");
    EXPECT_EQ(refusal(endBack(k5)), "5 has not ended.");
    EXPECT_EQ(refusal(to(kDay, EndKind::Dead)), "5 has not ended.");
}

TEST_F(PutRight, AnEndStaysWhileItsStandOrItsLabelIsAnothers) {
    const Stand stand = standOf(k5);
    end(k5, kDay);
    ColonyId next = again(QStringLiteral("9"), kDay + 2, stand);
    EXPECT_EQ(refusal(endBack(k5)), "9 stands on stand 5 from 2026-09-12 on; 5 cannot stand there again.");
    const auto later = [&](const EditContext& c) { return changeEnd(c, k5, kDay + 3, EndKind::Dead); };
    EXPECT_EQ(refusal(later), "9 stands on stand 5 since 2026-09-12; 5 cannot stand there then.");
    apply(back(next));
    next = newColony(north, QStringLiteral("9"), {0, 6000}, kDay + 2);
    apply(colony(next, [](Colony& c) { c.label = QStringLiteral("5"); }));
    EXPECT_EQ(refusal(endBack(k5)), "5 is the label of a colony that lives since 2026-09-12.");
    apply(colony(next, [](Colony& c) { c.label = QStringLiteral("9"); }));
    EXPECT_NE(done(endBack(k5)), "");
}

// Unions, shake-outs, divides.

TEST_F(PutRight, AUnionIsTakenBackAndTheColonyLivesWhereItStood) {
    const ColonyId k7 = newColony(north, QStringLiteral("7"), {6000, 0});
    for (const ColonyId id : {k5, k6, k7}) log(id, kDay - 1);
    const auto before = rowsText(path());
    unite(k5, k6, kDay);
    EXPECT_EQ(refusal([&](const EditContext& c) { return takeBackEnd(c, k5); }),
              "5 ended in the union of 2026-09-10; change that, or take it back.");
    log(k6, kDay + 2, [](Visit& v) { v.upperBeesTop = Quarters{8}; });
    EXPECT_EQ(refusal(back(LineageId{1})),
              "The visit of 6 on 2026-09-12 counts an upper box; the colony would be in one brood box then.");
    EXPECT_EQ(refusal(lineage(LineageId{1}, [](Lineage& l) { l.day = kDay + 3; })),
              "The visit of 6 on 2026-09-12 counts an upper box; the colony would be in one brood box then.");
    session->undo();
    const ColonyId next = again(QStringLiteral("8"), kDay + 1, session->standsOf(north)[0]);
    EXPECT_EQ(refusal(back(LineageId{1})), "8 stands on stand 5 from 2026-09-11 on; 5 cannot stand there again.");
    apply(back(next));
    EXPECT_EQ(done(back(LineageId{1})), "Took back the union of 5 into 6 on 2026-09-10");
    EXPECT_EQ(rowsText(path()), before);
}

TEST_F(PutRight, AUnionsDayIsTheEndOfItsColony) {
    log(k5, kDay - 1);
    log(k6, kDay - 1);
    unite(k5, k6, kDay, LineageHow::ShakenOut);
    const auto day = [&](Day to) { return lineage(LineageId{1}, [=](Lineage& l) { l.day = to; }); };
    EXPECT_EQ(refusal(day(kDay - 2)), "5 has a visit on 2026-09-09; it cannot have ended before that.");
    EXPECT_EQ(done(day(kDay - 1)), "Moved the shake-out of 5 into 6 on 2026-09-10 to 2026-09-09");
    EXPECT_EQ(session->colony(k5)->ended, kDay - 1);
    EXPECT_EQ(session->placementsOf(k5)[0].until, kDay - 1);
    EXPECT_EQ(done(lineage(LineageId{1}, [](Lineage& l) { l.by = QStringLiteral(" Ana "); })),
              "Changed the shake-out of 5 into 6 on 2026-09-09");
    EXPECT_EQ(refusal(lineage(LineageId{1}, [](Lineage& l) { l.how = LineageHow::United; })),
              "What was done, and to which colonies, stays: take it back and record it anew.");
    end(k6, kDay + 1);
    EXPECT_EQ(refusal(day(kDay + 2)), "6 has a shake-out on 2026-09-12; it cannot have ended before that.");
    EXPECT_EQ(refusal([&](const EditContext& c) { return changeEnd(c, k6, kDay - 2, EndKind::Dead); }),
              "6 has a visit on 2026-09-09; it cannot have ended before that.");
}

TEST_F(PutRight, UnionsOfOneDayFormNoCircle) {
    log(k5, kDay - 1);
    log(k6, kDay - 1);
    const ColonyId k7 = newColony(north, QStringLiteral("7"), {6000, 0});
    log(k7, kDay - 1);
    unite(k5, k6, kDay);
    unite(k6, k7, kDay + 1);
    // 6 into 7 on the 11th; 5 into 6 moved to the 11th: no circle yet.
    EXPECT_NE(done(lineage(LineageId{1}, [](Lineage& l) { l.day = kDay + 1; })), "");
    EXPECT_EQ(refusal(lineage(LineageId{1}, [](Lineage& l) { l.day = kDay + 2; })),
              "6 has a union on 2026-09-12; it cannot have ended before that.");
}

TEST_F(PutRight, ADivideBeginsAColonyAndItsLineCanGo) {
    log(k5, kDay - 1);
    const ColonyId made = divide(k5, QStringLiteral("5a"), {0, 5000}, kDay);
    EXPECT_EQ(session->history(1)[0].text, "Divided 5 on 2026-09-10: made 5a");
    EXPECT_EQ(problems(), "");
    EXPECT_EQ(refusal(colony(made, [](Colony& c) { c.since = kDay + 1; })),
              "5a came of a divide of 5 on 2026-09-10; it begins that day.");
    EXPECT_EQ(done(lineage(LineageId{1}, [](Lineage& l) { l.day = kDay + 2; })),
              "Moved the divide of 5 that made 5a on 2026-09-10 to 2026-09-12");
    EXPECT_EQ(session->colony(made)->since, kDay + 2);
    EXPECT_EQ(session->placementsOf(made)[0].since, kDay + 2);
    EXPECT_EQ(refusal(lineage(LineageId{1}, [](Lineage& l) { l.day = dayOf(2026, 4, 1); })),
              "5 has a divide on 2026-04-01; it cannot have begun after that.");
    EXPECT_EQ(refusal(back(made)),
              "5a has a union, shake-out or divide on 2026-09-12; only a colony that no record names is taken back.");
    EXPECT_EQ(done(back(LineageId{1})), "Took back the divide of 5 that made 5a on 2026-09-12");
    EXPECT_EQ(done(back(made)), "Took back 5a, begun on 2026-09-12");
}

TEST_F(PutRight, ADivideOfAHeldOrDeadColonyIsRefused) {
    log(k5, kDay - 1, [](Visit& v) { v.signs.add(Sign::BroodDoubt); });
    const auto before = rowsText(path());
    const Thrown thrown = thrownBy([&] { divide(k5, QStringLiteral("5a"), {0, 5000}, kDay); });
    EXPECT_EQ(thrown.kind, Error::Kind::Hold);
    EXPECT_EQ(thrown.message.rfind("5 is held (brood-doubt). ", 0), 0u) << thrown.message;
    EXPECT_EQ(rowsText(path()), before);
    end(k6, kDay - 1);
    EXPECT_EQ(thrownBy([&] {
                  divide(k6, QStringLiteral("6a"), {0, 5000}, kDay);
              }).message,
              "6 ended on 2026-09-09; 2026-09-10 is after that.");
}

} // namespace

} // namespace tests::edit
