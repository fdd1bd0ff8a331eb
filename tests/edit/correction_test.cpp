#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/row_change.h"
#include "core/rules/hold.h"

namespace tests::edit {

namespace {

const Day kDay = dayOf(2026, 9, 10);
const Correction kWhy{QStringLiteral("Ana"), QStringLiteral("wrong hive noted")};

class CorrectionTest : public EditTest {
protected:
    YardId north = newYard(QStringLiteral("North"));
    YardId south = newYard(QStringLiteral("South"));
    ColonyId k5 = newColony(north, QStringLiteral("5"), {0, 0});
    ColonyId k6 = newColony(north, QStringLiteral("6"), {2000, 0});
    ColonyId k7 = newColony(south, QStringLiteral("7"), {0, 0});

    std::optional<HistoryLine> signOf(ColonyId colony, Day day, Sign sign = Sign::Afb) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.signs.add(sign);
        return visit(v);
    }
    std::optional<HistoryLine> check(ColonyId colony, Day day) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.broodFrames = 5;
        v.broodChecked = 5;
        return visit(v);
    }
    std::optional<HistoryLine> transfer(ColonyId from, ColonyId to, Day day) {
        return apply([&](const EditContext& c) {
            return logTransfer(c, {{}, day, from, to, TransferKind::Frames, 2, {}});
        });
    }
    std::optional<HistoryLine> result(Verdict verdict, Day day, std::optional<ColonyId> colony,
                                      std::optional<YardId> yard = {}) {
        Result r;
        r.colony = colony;
        r.yard = yard;
        r.day = day;
        r.verdict = verdict;
        r.method = Method::Inspector;
        r.by = QStringLiteral("the inspector");
        r.paper = QStringLiteral("12/26");
        return apply([&](const EditContext& c) { return logResult(c, r); });
    }
    bool held(ColonyId colony, rules::HoldKind kind, Day on) {
        const Snapshot s = session->snapshot(on);
        for (const rules::Hold& hold : rules::holds(s))
            if (s.colony(hold.colony).id == colony && hold.kind == kind) return true;
        return false;
    }
    /// Undo is refused, changes nothing, and goes through once it is said why.
    void expectCorrection(const std::string& named) {
        const auto before = rowsText(path());
        const auto lines = session->history(100).size();
        const Thrown thrown = thrownBy([&] { session->undo(); });
        EXPECT_EQ(thrown.kind, Error::Kind::Correction);
        EXPECT_NE(thrown.message.find(named), std::string::npos) << thrown.message;
        EXPECT_EQ(rowsText(path()), before);
        EXPECT_EQ(session->history(100).size(), lines);
        const auto line = session->undo(kWhy);
        ASSERT_TRUE(line);
        EXPECT_EQ(line->by, "Ana");
        EXPECT_EQ(line->reason, "wrong hive noted");
        EXPECT_EQ(session->history(1)[0].reason, "wrong hive noted");
        EXPECT_NE(rowsText(path()), before);
        EXPECT_EQ(problems(), "");
    }
    void expectPlainUndo() {
        const auto line = session->undo();
        ASSERT_TRUE(line);
        EXPECT_EQ(line->reason, "");
    }
};

TEST_F(CorrectionTest, UndoOfASignIsOne) {
    signOf(k5, kDay);
    ASSERT_TRUE(held(k5, rules::HoldKind::AfbSuspected, kDay));
    expectCorrection("5: afb-suspected");
    EXPECT_FALSE(held(k5, rules::HoldKind::AfbSuspected, kDay));
}

TEST_F(CorrectionTest, UndoOfASignOfEuropeanFoulbroodOrOfDoubtIsOne) {
    signOf(k5, kDay, Sign::Efb);
    expectCorrection("5: efb");
    signOf(k5, kDay, Sign::BroodDoubt);
    expectCorrection("5: brood-doubt");
}

TEST_F(CorrectionTest, UndoOfAHarmlessSignIsPlain) {
    signOf(k6, kDay);
    signOf(k5, kDay, Sign::Chalkbrood);
    expectPlainUndo();
}

TEST_F(CorrectionTest, UndoOfATransferThatAHoldIsTracedByIsOne) {
    signOf(k5, kDay);
    transfer(k5, k7, kDay);
    ASSERT_TRUE(held(k7, rules::HoldKind::AfbContact, clock.day));
    expectCorrection("7: afb-contact");
}

TEST_F(CorrectionTest, UndoOfATransferThatNoHoldIsTracedByIsPlain) {
    transfer(k5, k7, kDay);
    expectPlainUndo();
}

TEST_F(CorrectionTest, UndoOfACarryIntoASourcesYardIsOne) {
    signOf(k5, kDay);
    const ColonyId k8 = newColony(south, QStringLiteral("8"), {5000, 0});
    apply([&](const EditContext& c) {
        const Placement old = c.openPlacement(k8).value();
        Placement left = old;
        left.until = kDay;
        const Stand stand{StandId{c.nextId(Table::Stand)}, north, QStringLiteral("8"), {9000, 0}, false};
        const Placement now{PlacementId{c.nextId(Table::Placement)}, k8, stand.id, {}, kDay, {}, false};
        return ChangeSet{
            QStringLiteral("Carried 8 to North"), {changed(old, left), added(stand), added(now)}, {}, {}, {}};
    });
    ASSERT_TRUE(held(k8, rules::HoldKind::AfbYard, clock.day));
    expectCorrection("8: afb-yard");
}

TEST_F(CorrectionTest, CarriesWithinAYardAreUndonePlainly) {
    signOf(k5, kDay);
    carry(k6, {4000, 0}, clock.day);
    carry(k6, {4000, 1000}, clock.day);
    expectPlainUndo();
    expectPlainUndo();
}

TEST_F(CorrectionTest, MovingAnEarlierStayToAnotherYardIsOne) {
    signOf(k5, kDay);
    carry(k6, {4000, 0}, kDay + 1);
    ASSERT_TRUE(held(k6, rules::HoldKind::AfbYard, clock.day));
    const auto elsewhere = [&](const EditContext& c) {
        // As if 6 had always stood in South, but for its last place.
        const Placement old = c.placementsOf(k6).front();
        const Stand stand{StandId{c.nextId(Table::Stand)}, south, QStringLiteral("60"), {9000, 0}, false};
        Placement now = old;
        now.stand = stand.id;
        const Placement open = c.openPlacement(k6).value();
        Placement there = open;
        there.stand = stand.id;
        return ChangeSet{
            QStringLiteral("Moved 6"), {added(stand), changed(old, now), changed(open, there)}, {}, {}, {}};
    };
    EXPECT_EQ(thrownBy([&] { session->apply(elsewhere); }).kind, Error::Kind::Correction);
    EXPECT_TRUE(session->apply(elsewhere, kWhy));
    EXPECT_FALSE(held(k6, rules::HoldKind::AfbYard, clock.day));
}

TEST_F(CorrectionTest, UndoOfAnOrderIsOneAndOfItsReleasePlain) {
    result(Verdict::Order, kDay, {}, north);
    ASSERT_TRUE(held(k6, rules::HoldKind::Order, clock.day));
    result(Verdict::Release, kDay + 1, {}, north);
    ASSERT_FALSE(held(k6, rules::HoldKind::Order, clock.day));
    expectPlainUndo();
    EXPECT_TRUE(held(k6, rules::HoldKind::Order, clock.day));
    expectCorrection("5: order");
}

TEST_F(CorrectionTest, UndoOfANegativeOrOfACleanCheckIsPlain) {
    signOf(k5, kDay);
    result(Verdict::Negative, kDay + 1, k5);
    ASSERT_FALSE(held(k5, rules::HoldKind::AfbSuspected, clock.day));
    expectPlainUndo();
    EXPECT_TRUE(held(k5, rules::HoldKind::AfbSuspected, clock.day));
    check(k6, kDay);
    expectPlainUndo();
}

TEST_F(CorrectionTest, RedoOfARecordThatLiftsIsPlain) {
    signOf(k5, kDay);
    result(Verdict::Negative, kDay + 1, k5);
    expectPlainUndo();
    EXPECT_EQ(session->redo()->reason, "");
    EXPECT_FALSE(held(k5, rules::HoldKind::AfbSuspected, clock.day));
}

TEST_F(CorrectionTest, AnAnsweredSignIsStillARecordThatHoldsRestedOn) {
    const auto line = signOf(k5, kDay);
    result(Verdict::Negative, kDay + 1, k5);
    const Thrown thrown = thrownBy([&] {
        apply([&](const EditContext& c) {
            const Visit v = c.visitOn(k5, kDay).value();
            ChangeSet change{QStringLiteral("Deleted a visit"), {}, {}, {}, {}};
            for (const auto& [id, row] : c.signRows(v.id))
                change.rows.push_back({Table::VisitSign, id, row, std::nullopt});
            change.rows.push_back(deleted(v));
            return change;
        });
    });
    EXPECT_EQ(thrown.kind, Error::Kind::Correction);
    EXPECT_NE(thrown.message.find("on 2026-09-10: 5: afb-suspected"), std::string::npos) << thrown.message;
}

TEST_F(CorrectionTest, MovingASignToAnotherDayOrColonyIsOne) {
    signOf(k5, kDay);
    const auto moved = [&](const EditContext& c) {
        const Visit old = c.visitOn(k5, kDay).value();
        Visit now = old;
        now.colony = k7;
        return ChangeSet{QStringLiteral("Moved a visit to 7"), {changed(old, now)}, {}, {}, {}};
    };
    EXPECT_EQ(thrownBy([&] { session->apply(moved); }).kind, Error::Kind::Correction);
    const auto line = session->apply(moved, kWhy);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->reason, "wrong hive noted");
    EXPECT_TRUE(held(k7, rules::HoldKind::AfbSuspected, clock.day));
}

TEST_F(CorrectionTest, UndoOfAnImportThatBroughtASignIsOneEvenWithItsColony) {
    apply([&](const EditContext& c) {
        const qint64 colony = c.nextId(Table::Colony);
        const qint64 stand = c.nextId(Table::Stand);
        const qint64 firstVisit = c.nextId(Table::Visit);
        ChangeSet change{QStringLiteral("Imported"), {}, {}, {}, {}};
        change.bulk.push_back({Table::Stand, stand, 1, [=, this](qint64) {
                                   return toRow(Stand{{}, north, QStringLiteral("90"), {0, 9000}, false});
                               }});
        change.bulk.push_back(
            {Table::Colony, colony, 1, [=](qint64) {
                 return toRow(Colony{{}, QStringLiteral("90"), kDay, {}, {}, BoxKindId{1}, 1, {}, {}});
             }});
        change.bulk.push_back({Table::Placement, c.nextId(Table::Placement), 1, [=](qint64) {
                                   return toRow(Placement{{}, ColonyId{colony}, StandId{stand}, {}, kDay, {}, true});
                               }});
        change.bulk.push_back({Table::Visit, firstVisit, 1, [=](qint64) {
                                   Visit v;
                                   v.colony = ColonyId{colony};
                                   v.day = kDay;
                                   return toRow(v);
                               }});
        change.bulk.push_back({Table::VisitSign, c.nextId(Table::VisitSign), 1, [=](qint64) {
                                   return Row{firstVisit, QStringLiteral("afb")};
                               }});
        return change;
    });
    expectCorrection("90: afb-suspected");
    session->redo();
    expectCorrection("90: afb-suspected");
}

TEST_F(CorrectionTest, ADeadSourceTakesItsOwnHoldWithItPlainly) {
    signOf(k5, kDay);
    EXPECT_TRUE(apply([&](const EditContext& c) { return endColony(c, k5, clock.day, EndKind::Destroyed); }));
    EXPECT_TRUE(held(k6, rules::HoldKind::AfbYard, clock.day));
}

TEST_F(CorrectionTest, ALaxerSettingThatLiftsAHoldIsOne) {
    // The sign is 400 days after the transfer: only a window longer than 365 days traces it.
    transfer(k7, k5, dayOf(2026, 5, 2));
    clock.day = dayOf(2027, 6, 7);
    signOf(k5, dayOf(2027, 6, 6));
    ASSERT_FALSE(held(k7, rules::HoldKind::AfbContact, clock.day));
    apply([](const EditContext& c) { return setSetting(c, QStringLiteral("trace.days"), QStringLiteral("500")); });
    ASSERT_TRUE(held(k7, rules::HoldKind::AfbContact, clock.day));
    expectCorrection("7: afb-contact");
}

TEST_F(CorrectionTest, NeedsAReasonAndAName) {
    signOf(k5, kDay);
    const auto before = rowsText(path());
    EXPECT_EQ(thrownBy([&] {
                  session->undo(Correction{QStringLiteral("Ana"), QStringLiteral("  ")});
              }).kind,
              Error::Kind::BadData);
    EXPECT_EQ(thrownBy([&] {
                  session->undo(Correction{QStringLiteral(" "), QStringLiteral("slip")});
              }).kind,
              Error::Kind::BadData);
    EXPECT_EQ(rowsText(path()), before);
}

} // namespace

} // namespace tests::edit
