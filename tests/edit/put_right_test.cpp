#include "core/edit/put_right.h"
#include "tests/edit/edit_fixture.h"

namespace tests::edit {

namespace {

const Day kDay = dayOf(2026, 9, 10);

class PutRight : public EditTest {
protected:
    YardId north = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(north, QStringLiteral("5"), {0, 0});
    ColonyId k6 = newColony(north, QStringLiteral("6"), {2000, 0});

    using Work = std::function<ChangeSet(const EditContext&)>;
    std::string refusal(const Work& e) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy([&] { apply(e); });
        EXPECT_EQ(thrown.kind, Error::Kind::BadData);
        EXPECT_EQ(rowsText(path()), before);
        return thrown.message;
    }
    /// Applies it, and sees that its undo gives the rows back; the text of its line.
    std::string done(const Work& e) {
        const auto before = rowsText(path());
        const auto line = apply(e);
        if (!line) return {};
        const auto after = rowsText(path());
        EXPECT_EQ(problems(), "");
        session->undo();
        EXPECT_EQ(rowsText(path()), before);
        session->redo();
        EXPECT_EQ(rowsText(path()), after);
        return line->text.toStdString();
    }
    void log(ColonyId colony, Day day, const std::function<void(Visit&)>& more = {}) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.broodFrames = 4;
        v.broodChecked = 4;
        if (more) more(v);
        visit(v);
    }
    void end(ColonyId colony, Day day, EndKind how = EndKind::Dead) {
        apply([=](const EditContext& c) { return endColony(c, colony, day, how); });
    }
    void unite(ColonyId colony, ColonyId into, Day day, LineageHow how = LineageHow::United) {
        apply([=](const EditContext& c) { return recordUnion(c, {{}, day, how, colony, into, {}, {}}); });
    }
    void give(ColonyId from, ColonyId to, Day day, TransferKind what = TransferKind::Frames) {
        apply([=](const EditContext& c) { return logTransfer(c, {{}, day, from, to, what, {}, {}}); });
    }
    ColonyId divide(ColonyId from, const QString& label, MmPoint at, Day day) {
        Divide d;
        d.from = from;
        d.made.colony.label = label;
        d.made.colony.since = day;
        d.made.colony.box = BoxKindId{1};
        d.made.stand.yard = north;
        d.made.stand.at = at;
        std::optional<ColonyId> id;
        apply([&](const EditContext& c) {
            id = ColonyId{c.nextId(Table::Colony)};
            return recordDivide(c, d);
        });
        return *id;
    }
    ColonyId again(const QString& label, Day since, const Stand& stand) {
        NewColony fresh;
        fresh.colony.label = label;
        fresh.colony.since = since;
        fresh.colony.box = BoxKindId{1};
        fresh.stand = stand;
        std::optional<ColonyId> id;
        apply([&](const EditContext& c) {
            id = ColonyId{c.nextId(Table::Colony)};
            return addColony(c, fresh);
        });
        return *id;
    }
    Visit visitOf(ColonyId colony, Day day) {
        std::optional<Visit> v;
        session->read([&](const EditContext& c) { v = c.visitOn(colony, day); });
        return v.value();
    }
    Work colony(ColonyId id, const std::function<void(Colony&)>& more) {
        Colony now = session->colony(id).value();
        more(now);
        return [=](const EditContext& c) { return changeColony(c, now); };
    }
    Work visitNow(ColonyId id, Day day, const std::function<void(Visit&)>& more) {
        Visit now = visitOf(id, day);
        more(now);
        return [=](const EditContext& c) { return changeVisit(c, now); };
    }
    Work lineage(LineageId id, const std::function<void(Lineage&)>& more) {
        return [=](const EditContext& c) {
            Lineage now = c.find<Lineage>(id.value).value();
            more(now);
            return changeLineage(c, now);
        };
    }
    static Work back(VisitId id) {
        return [=](const EditContext& c) { return takeBackVisit(c, id); };
    }
    static Work back(LineageId id) {
        return [=](const EditContext& c) { return takeBackLineage(c, id); };
    }
    static Work back(ColonyId id) {
        return [=](const EditContext& c) { return takeBackColony(c, id); };
    }
    static Work endBack(ColonyId id) {
        return [=](const EditContext& c) { return takeBackEnd(c, id); };
    }
};

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
    EXPECT_EQ(done([&](const EditContext& c) { return changeTreatment(c, t); }),
              "Changed the treatment of North with strips on 2026-09-10");
    t.days = 1001;
    EXPECT_EQ(refusal([&](const EditContext& c) { return changeTreatment(c, t); }),
              "Days: 1001 is not from 0 to 1000.");
    EXPECT_EQ(done([&](const EditContext& c) { return takeBackTreatment(c, t.id); }),
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
