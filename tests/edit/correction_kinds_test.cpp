#include "core/edit/put_right.h"
#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/row_change.h"
#include "core/rules/hold.h"

namespace tests::edit {

namespace {

const Day kDay = dayOf(2026, 9, 10);
const Correction kWhy{QStringLiteral("Ana"), QStringLiteral("wrong hive noted")};
using Work = std::function<ChangeSet(const EditContext&)>;

/// One kind of record on which a hold rests, and the ways to take it back and to change it.
struct Kind {
    const char* name;
    std::function<void()> record; ///< last edit: the record
    Work takeBack;
    Work change;
    std::string hold; ///< named by the refusal
    QString oldText;  ///< found among the old values in the history
};

class CorrectionOf : public EditTest {
protected:
    YardId north = newYard(QStringLiteral("North"));
    YardId south = newYard(QStringLiteral("South"));
    ColonyId k5 = newColony(north, QStringLiteral("5"), {0, 0});
    ColonyId k6 = newColony(south, QStringLiteral("6"), {2000, 0});
    ColonyId k7 = newColony(south, QStringLiteral("7"), {6000, 0});

    void log(ColonyId colony, Day day, std::optional<Sign> sign = {}) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.broodFrames = v.broodChecked = 5;
        if (sign) v.signs.add(*sign);
        visit(v);
    }
    void note(const Result& r) {
        apply([&](const EditContext& c) { return logResult(c, r); });
    }
    Result resultOf(ColonyId colony, Day day, Verdict verdict) const {
        Result r;
        r.id = ResultId{1};
        r.colony = colony;
        r.day = day;
        r.verdict = verdict;
        r.method = Method::Inspector;
        r.by = QStringLiteral("the inspector");
        r.paper = QStringLiteral("12/26");
        return r;
    }
    void give(ColonyId from, ColonyId to, Day day) {
        apply([=](const EditContext& c) { return logTransfer(c, {{}, day, from, to, TransferKind::Frames, {}, {}}); });
    }
    bool held(ColonyId colony, rules::HoldKind kind, Day on) {
        const Snapshot s = session->snapshot(on);
        for (const rules::Hold& hold : rules::holds(s))
            if (s.colony(hold.colony).id == colony && hold.kind == kind) return true;
        return false;
    }
    /// Without a correction: refused, the holds named, nothing written. With one: written, who and why in the history.
    void expectAsked(const Kind& kind, const char* how,
                     const std::function<void(const std::optional<Correction>&)>& go) {
        SCOPED_TRACE(std::string(kind.name) + ", " + how);
        const auto before = rowsText(path());
        const auto lines = session->history(1000).size();
        const Thrown thrown = thrownBy([&] { go({}); });
        EXPECT_EQ(thrown.kind, Error::Kind::Correction) << thrown.message;
        EXPECT_NE(thrown.message.find(kind.hold), std::string::npos) << thrown.message;
        EXPECT_EQ(rowsText(path()), before);
        EXPECT_EQ(session->history(1000).size(), lines);
        go(kWhy);
        const HistoryLine line = session->history(1).front();
        EXPECT_EQ(line.by, "Ana");
        EXPECT_EQ(line.reason, "wrong hive noted");
        EXPECT_NE(rowsText(path()), before);
        EXPECT_EQ(problems(), "");
    }
    /// By deleting, by changing, and by taking its line of the history back (its undo, where `later` adds nothing).
    void expectGuarded(const Kind& kind, const std::function<void()>& later = {}) {
        kind.record();
        const qint64 seq = session->history(1).front().seq;
        if (later) later();
        expectAsked(kind, "taken back", [&](const auto& why) { session->apply(kind.takeBack, why); });
        expectOldValueKept(kind);
        session->undo(kWhy);
        expectAsked(kind, "changed", [&](const auto& why) { session->apply(kind.change, why); });
        expectOldValueKept(kind);
        session->undo(kWhy);
        expectAsked(kind, "undone", [&](const auto& why) {
            if (later)
                session->takeBack(seq, why);
            else
                session->undo(why);
        });
        expectOldValueKept(kind);
    }
    /// What it was stays readable: the newest line holds it as it was.
    void expectOldValueKept(const Kind& kind) {
        bool found = false;
        for (const RowChange& change : historyRows(path(), session->history(1).front().seq))
            for (const Value& cell : change.before.value_or(Row{}))
                if (const auto* text = std::get_if<QString>(&cell)) found = found || *text == kind.oldText;
        EXPECT_TRUE(found) << kind.name;
    }
    /// The hive is carried to another yard, which the plan does not do yet.
    ChangeSet carryAway(const EditContext& c, ColonyId colony, YardId to, Day day) {
        const Placement old = c.openPlacement(colony).value();
        Placement left = old;
        left.until = day;
        const Stand stand{StandId{c.nextId(Table::Stand)}, to, QStringLiteral("far"), {20'000, 0}, false};
        const Placement now{PlacementId{c.nextId(Table::Placement)}, colony, stand.id, {}, day, {}, false};
        return {QStringLiteral("Carried away"), {changed(old, left), added(stand), added(now)}, {}, {}, {}};
    }
};

TEST_F(CorrectionOf, ASign) {
    expectGuarded({"sign", [&] { log(k5, kDay, Sign::Afb); },
                   [&](const EditContext& c) { return takeBackVisit(c, c.visitOn(k5, kDay)->id); },
                   [&](const EditContext& c) {
                       Visit now = c.visitOn(k5, kDay).value();
                       now.signs = {};
                       return changeVisit(c, now);
                   },
                   "5: afb-suspected", QStringLiteral("afb")});
}

TEST_F(CorrectionOf, ASignThatIsMovedToAnotherDay) {
    expectGuarded({"moved sign", [&] { log(k5, kDay, Sign::Efb); },
                   [&](const EditContext& c) { return takeBackVisit(c, c.visitOn(k5, kDay)->id); },
                   [&](const EditContext& c) {
                       Visit now = c.visitOn(k5, kDay).value();
                       now.day = kDay - 1; // a hold from an earlier day on is another hold
                       return changeVisit(c, now);
                   },
                   "5: efb", isoText(kDay)});
}

TEST_F(CorrectionOf, APositive) {
    const Result positive = resultOf(k5, kDay, Verdict::Positive);
    expectGuarded({"positive", [&] { note(positive); },
                   [&](const EditContext& c) { return takeBackResult(c, positive.id); },
                   [&](const EditContext& c) {
                       Result now = positive;
                       now.verdict = Verdict::Negative;
                       return changeResult(c, now);
                   },
                   "5: afb-confirmed", QStringLiteral("positive")});
}

TEST_F(CorrectionOf, AnOrder) {
    Result order = resultOf(k5, kDay, Verdict::Order);
    order.colony.reset();
    order.yard = north;
    expectGuarded({"order", [&] { note(order); }, [&](const EditContext& c) { return takeBackResult(c, order.id); },
                   [&](const EditContext& c) {
                       Result now = order;
                       now.yard = south;
                       return changeResult(c, now);
                   },
                   "5: order", QStringLiteral("order")});
}

TEST_F(CorrectionOf, ATransferThatCarriesContact) {
    log(k5, kDay - 1, Sign::Afb);
    expectGuarded({"transfer", [&] { give(k5, k6, kDay); },
                   [&](const EditContext& c) { return takeBackTransfer(c, TransferId{1}); },
                   [&](const EditContext& c) {
                       Transfer now = c.find<Transfer>(1).value();
                       now.to = k7;
                       return changeTransfer(c, now);
                   },
                   "6: afb-contact", QStringLiteral("frames")});
}

TEST_F(CorrectionOf, AUnion) {
    log(k5, kDay - 2);
    log(k6, kDay - 2);
    expectGuarded({"union",
                   [&] {
                       apply([&](const EditContext& c) {
                           return recordUnion(c, {{}, kDay, LineageHow::ShakenOut, k5, k6, {}, {}});
                       });
                   },
                   [&](const EditContext& c) { return takeBackLineage(c, LineageId{1}); },
                   [&](const EditContext& c) {
                       const Lineage old = c.find<Lineage>(1).value();
                       Lineage now = old;
                       now.into = k7;
                       return ChangeSet{QStringLiteral("Shook out into 7"), {changed(old, now)}, {}, {}, {}};
                   },
                   "6: afb-contact", QStringLiteral("shaken-out")},
                  [&] { note(resultOf(k5, kDay - 1, Verdict::Positive)); });
}

TEST_F(CorrectionOf, AnAntibioticThatMasksACheck) {
    // Rule 4.4.11: a check within 42 days of a treatment does not end it.
    log(k5, dayOf(2026, 6, 1), Sign::Efb);
    log(k5, dayOf(2026, 8, 10));
    ASSERT_FALSE(held(k5, rules::HoldKind::Efb, clock.day));
    Treatment t;
    t.id = TreatmentId{1};
    t.colony = k5;
    t.day = dayOf(2026, 7, 20);
    t.product = QStringLiteral("powder");
    t.substance = QStringLiteral("tylosin");
    t.antibiotic = true;
    expectGuarded({"treatment", [&] { apply([&](const EditContext& c) { return logTreatment(c, t); }); },
                   [&](const EditContext& c) { return takeBackTreatment(c, t.id); },
                   [&](const EditContext& c) {
                       Treatment now = t;
                       now.antibiotic = false;
                       return changeTreatment(c, now);
                   },
                   "5: efb", QStringLiteral("powder")});
}

TEST_F(CorrectionOf, ACarryIntoASourcesYard) {
    log(k5, kDay - 1, Sign::Afb);
    expectGuarded({"placement", [&] { apply([&](const EditContext& c) { return carryAway(c, k6, north, kDay); }); },
                   [&](const EditContext& c) { return takeBackCarry(c, c.openPlacement(k6)->id); },
                   [&](const EditContext& c) {
                       const Placement old = c.openPlacement(k6).value();
                       const Stand stand{StandId{c.nextId(Table::Stand)}, south, QStringLiteral("z"), {0, 9000}, false};
                       Placement now = old;
                       now.stand = stand.id;
                       return ChangeSet{QStringLiteral("Moved 6"), {added(stand), changed(old, now)}, {}, {}, {}};
                   },
                   "6: afb-yard", isoText(kDay)});
}

// What no rule reads is changed plainly.

TEST_F(CorrectionOf, WhoWhyAndHowManyAreChangedPlainly) {
    log(k5, kDay - 1, Sign::Afb);
    give(k5, k6, kDay);
    note(resultOf(k5, kDay, Verdict::Positive));
    const auto plainly = [&](const Work& work) {
        const auto line = session->apply(work);
        ASSERT_TRUE(line);
        EXPECT_EQ(line->reason, "");
    };
    plainly([&](const EditContext& c) {
        Visit now = c.visitOn(k5, kDay - 1).value();
        now.beesTop = Quarters{20};
        now.note = QStringLiteral("ropy");
        return changeVisit(c, now);
    });
    plainly([&](const EditContext& c) {
        Transfer now = c.find<Transfer>(1).value();
        now.count = 3;
        return changeTransfer(c, now);
    });
    plainly([&](const EditContext& c) {
        Result now = c.find<Result>(1).value();
        now.paper = QStringLiteral("13/26");
        return changeResult(c, now);
    });
}

// Holds that stood on past days alone.

class PastHolds : public CorrectionOf {
protected:
    void expectRefused(const Work& work, const std::string& named) {
        const auto before = rowsText(path());
        const Thrown thrown = thrownBy([&] { session->apply(work); });
        EXPECT_EQ(thrown.kind, Error::Kind::Correction) << thrown.message;
        EXPECT_NE(thrown.message.find(named), std::string::npos) << thrown.message;
        EXPECT_EQ(rowsText(path()), before);
    }
    void negative(ColonyId colony, Day day) { note(resultOf(colony, day, Verdict::Negative)); }
};

TEST_F(PastHolds, ThatBeganWithALaterSignAreFoundThoughOthersLieBetween) {
    // 7 gave to 5; in a yard apart 8 and 9 had signs, answered at once; then 5 had one; all is answered today.
    const YardId far = newYard(QStringLiteral("Far"));
    const ColonyId k8 = newColony(far, QStringLiteral("8"), {0, 0});
    clock.day = dayOf(2027, 9, 1);
    give(k7, k5, dayOf(2026, 6, 1));
    for (int i = 0; i < 15; ++i) {
        log(k8, dayOf(2026, 6, 2) + 2 * i, Sign::Afb);
        negative(k8, dayOf(2026, 6, 2) + 2 * i + 1);
    }
    log(k5, dayOf(2026, 8, 1), Sign::Afb);
    ASSERT_TRUE(held(k7, rules::HoldKind::AfbContact, dayOf(2026, 8, 1)));
    negative(k5, dayOf(2026, 8, 3));
    ASSERT_FALSE(held(k7, rules::HoldKind::AfbContact, dayOf(2026, 8, 3)));
    expectRefused([&](const EditContext& c) { return takeBackTransfer(c, TransferId{1}); },
                  "on 2026-08-01: 7: afb-contact");
}

TEST_F(PastHolds, ThatALaterContactMadeLongerAreFound) {
    // 6 had combs of 5 twice; a negative of its own answers the first, but not the second.
    clock.day = dayOf(2027, 9, 1);
    note(resultOf(k5, dayOf(2026, 6, 1), Verdict::Positive));
    give(k5, k6, dayOf(2026, 6, 2));
    give(k5, k6, dayOf(2026, 7, 10));
    negative(k6, dayOf(2026, 7, 20)); // 48 days after the first, 10 after the second
    negative(k6, dayOf(2026, 9, 1));
    ASSERT_TRUE(held(k6, rules::HoldKind::AfbContact, dayOf(2026, 7, 20)));
    ASSERT_FALSE(held(k6, rules::HoldKind::AfbContact, dayOf(2026, 9, 1)));
    expectRefused([&](const EditContext& c) { return takeBackTransfer(c, TransferId{2}); },
                  "on 2026-07-20: 6: afb-contact");
}

TEST_F(PastHolds, TracedToTwoSourcesRestOnTheRecordsOfBoth) {
    note(resultOf(k5, dayOf(2026, 6, 1), Verdict::Positive));
    note(resultOf(k7, dayOf(2026, 6, 1), Verdict::Positive));
    const ColonyId k9 = newColony(newYard(QStringLiteral("Far")), QStringLiteral("9"), {0, 0});
    give(k5, k9, kDay);
    give(k7, k9, kDay);
    expectRefused([&](const EditContext& c) { return takeBackTransfer(c, TransferId{2}); }, "9: afb-contact by 7");
}

TEST_F(PastHolds, ASecondSignIsARecordThatTheyRestOnToo) {
    log(k5, kDay - 5, Sign::Afb);
    log(k5, kDay, Sign::Afb);
    expectRefused([&](const EditContext& c) { return takeBackVisit(c, c.visitOn(k5, kDay)->id); },
                  "begin with it on 2026-09-10: 5: afb-suspected");
    Result order = resultOf(k5, kDay, Verdict::Order);
    note(order);
    note(order);
    expectRefused([&](const EditContext& c) { return takeBackResult(c, ResultId{2}); },
                  "begin with it on 2026-09-10: 5: order");
}

TEST_F(PastHolds, ASignAnsweredOnItsOwnDayHeldNobody) {
    log(k5, kDay, Sign::Afb);
    negative(k5, kDay);
    EXPECT_TRUE(apply([&](const EditContext& c) { return takeBackVisit(c, c.visitOn(k5, kDay)->id); }));
}

TEST_F(PastHolds, OfAColonyThatEndedGoOnToItsEnd) {
    log(k5, kDay - 5, Sign::BroodDoubt);
    EXPECT_TRUE(apply([&](const EditContext& c) { return endColony(c, k5, kDay, EndKind::Dead); }))
        << "an end is a record added";
    expectRefused([&](const EditContext& c) { return changeEnd(c, k5, kDay - 3, EndKind::Dead); },
                  "on 2026-09-09: 5: brood-doubt");
    EXPECT_TRUE(apply([&](const EditContext& c) { return changeEnd(c, k5, kDay + 2, EndKind::Dead); }))
        << "held for longer";
}

TEST_F(PastHolds, NothingIsAskedWhereNoTroubleIsLinked) {
    const ColonyId k8 = newColony(newYard(QStringLiteral("Far")), QStringLiteral("8"), {0, 0});
    log(k8, kDay, Sign::Afb);
    give(k5, k6, kDay);
    EXPECT_TRUE(apply([&](const EditContext& c) { return takeBackTransfer(c, TransferId{1}); }));
}

} // namespace

} // namespace tests::edit
