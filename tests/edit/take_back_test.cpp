#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/row_change.h"

namespace tests::edit {

namespace {

const Correction kWhy{QStringLiteral("Ana"), QStringLiteral("wrong hive noted")};

class TakeBack : public EditTest {
protected:
    YardId north = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(north, QStringLiteral("K5"), {0, 0});
    ColonyId k6 = newColony(north, QStringLiteral("K6"), {2000, 0});

    qint64 visited(ColonyId colony, Day day, const QString& note = QStringLiteral("quiet")) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.note = note;
        return visit(v).value().seq;
    }
    qint64 carried(ColonyId colony, MmPoint to, Day day) { return carry(colony, to, day).value().seq; }
    std::string refused(qint64 seq) {
        const auto before = rowsText(path());
        const auto lines = session->history(1000).size();
        const Thrown thrown = thrownBy([&] { session->takeBack(seq); });
        EXPECT_EQ(thrown.kind, Error::Kind::BadData);
        EXPECT_EQ(rowsText(path()), before);
        EXPECT_EQ(session->history(1000).size(), lines);
        return thrown.message;
    }
    std::string rows() const { return rowsText(path()); }
};

TEST_F(TakeBack, AVisitOutOfTurnIsGoneAndTheLaterOnesStand) {
    const qint64 first = visited(k5, dayOf(2026, 9, 1));
    visited(k6, dayOf(2026, 9, 2));
    EXPECT_EQ(session->takeBack(first)->text, "Taken back: Logged the visit of K5 on 2026-09-01");
    session->read([&](const EditContext& c) {
        EXPECT_FALSE(c.visitOn(k5, dayOf(2026, 9, 1)));
        EXPECT_TRUE(c.visitOn(k6, dayOf(2026, 9, 2)));
    });
    EXPECT_EQ(refused(first), "It is taken back already.");
    EXPECT_EQ(problems(), "");
}

TEST_F(TakeBack, OutOfTurnThenUndoRedoUndoAllRedoAll) {
    const auto start = rows();
    const qint64 a = visited(k5, dayOf(2026, 9, 1));
    const qint64 b = visited(k6, dayOf(2026, 9, 2));
    visited(k5, dayOf(2026, 9, 3));
    const auto abc = rows();
    session->takeBack(a);
    const auto bc = rows();
    EXPECT_EQ(session->redoText(), "Logged the visit of K5 on 2026-09-01");
    EXPECT_EQ(session->undoText(), "Logged the visit of K5 on 2026-09-03");
    session->undo();
    const auto onlyB = rows();
    reopen();
    session->redo();
    EXPECT_EQ(rows(), bc);
    session->redo();
    EXPECT_EQ(rows(), abc);
    EXPECT_EQ(session->undoText(), "Logged the visit of K5 on 2026-09-01") << "what was done last";
    session->undo();
    EXPECT_EQ(rows(), bc);
    session->undo();
    EXPECT_EQ(rows(), onlyB);
    reopen();
    session->undo();
    EXPECT_EQ(rows(), start);
    session->redo();
    EXPECT_EQ(rows(), onlyB);
    session->redo();
    session->redo();
    EXPECT_EQ(rows(), abc);
    EXPECT_FALSE(session->redo());
    session->takeBack(b);
    session->undo(); // a, done again last
    session->redo();
    session->redo();
    EXPECT_EQ(rows(), abc);
    EXPECT_EQ(problems(), "");
}

TEST_F(TakeBack, AnEditThatWasDoneAgainCanBeTakenBackOutOfTurn) {
    const qint64 a = visited(k5, dayOf(2026, 9, 1));
    session->undo();
    session->redo();
    visited(k6, dayOf(2026, 9, 2));
    EXPECT_TRUE(session->takeBack(a));
    EXPECT_EQ(problems(), "");
}

TEST_F(TakeBack, IsRefusedWhereALaterLineChangedTheSame) {
    const qint64 first = carried(k5, {0, 2000}, dayOf(2026, 9, 1));
    carried(k5, {0, 4000}, dayOf(2026, 9, 2));
    const auto message = refused(first);
    EXPECT_EQ(message.find("Later changed: Carried K5"), 0u) << message;
    EXPECT_EQ(session->takeBackBarred(first)->toStdString(), message);
    session->undo();
    EXPECT_EQ(session->takeBackBarred(first), std::nullopt);
    EXPECT_TRUE(session->takeBack(first));
    EXPECT_EQ(problems(), "");
}

/// The row is again as the line left it, but those two later lines rest on each other and on it.
TEST_F(TakeBack, IsRefusedWhereLaterLinesChangedTheSameAndBack) {
    const auto named = [&](const QString& from, const QString& to) {
        return apply([&](const EditContext& c) {
                   Yard old = c.yard(north).value();
                   EXPECT_EQ(old.name, from);
                   Yard now = old;
                   now.name = to;
                   return ChangeSet{QStringLiteral("Named it %1").arg(to), {changed(old, now)}, {}, {}, {}};
               })
            .value()
            .seq;
    };
    const qint64 first = named(QStringLiteral("North"), QStringLiteral("Hill"));
    named(QStringLiteral("Hill"), QStringLiteral("Dale"));
    named(QStringLiteral("Dale"), QStringLiteral("Hill"));
    EXPECT_EQ(refused(first), "Later changed: Named it Hill.");
    session->undo();
    EXPECT_EQ(refused(first), "Later changed: Named it Dale.");
    session->undo();
    EXPECT_TRUE(session->takeBack(first));
}

TEST_F(TakeBack, IsRefusedWhereALaterRecordPointsToIt) {
    const qint64 made = session->history(1)[0].seq; // K6
    visited(k6, dayOf(2026, 9, 2));
    EXPECT_EQ(refused(made), "A later record rests on it: Logged the visit of K6 on 2026-09-02.");
    EXPECT_EQ(session->takeBackBarred(made), std::nullopt) << "a few reads do not tell";
    EXPECT_NE(refused(1).find("A later record rests on it: Added"), std::string::npos) << "the yard";
}

TEST_F(TakeBack, IsRefusedWhereAnotherStandsInItsPlaceNow) {
    const Day day = dayOf(2026, 9, 1);
    visited(k5, day);
    visited(k6, day);
    const auto gone = apply([&](const EditContext& c) {
        return ChangeSet{QStringLiteral("Took a visit back"), {deleted(c.visitOn(k5, day).value())}, {}, {}, {}};
    });
    visited(k5, day, QStringLiteral("again"));
    EXPECT_EQ(refused(gone->seq), "Something else is in its place now: Logged the visit of K5 on 2026-09-01.");
}

TEST_F(TakeBack, IsRefusedWhereAnInvariantWouldBreak) {
    // K6 dies and a visit of K5 is not touched by that; but a second K6 now has its label.
    const auto died = apply([&](const EditContext& c) { return endColony(c, k6, dayOf(2026, 9, 1), EndKind::Dead); });
    newColony(north, QStringLiteral("K6b"), {4000, 0}, dayOf(2026, 9, 2));
    NewColony heir;
    heir.colony.label = QStringLiteral("K6");
    heir.colony.since = dayOf(2026, 9, 5);
    heir.colony.box = BoxKindId{1};
    heir.stand.yard = north;
    heir.stand.at = {6000, 0};
    apply([&](const EditContext& c) { return addColony(c, heir); });
    const auto message = refused(died->seq);
    EXPECT_NE(message.find("K6"), std::string::npos) << message;
    session->undo();
    EXPECT_TRUE(session->takeBack(died->seq));
    EXPECT_EQ(problems(), "");
}

TEST_F(TakeBack, IsRefusedWhereItsOldPlaceIsTaken) {
    const qint64 away = carried(k5, {0, 5000}, dayOf(2026, 9, 1));
    carried(k6, {100, 0}, dayOf(2026, 9, 3)); // near K5's old stand, on one of its own
    EXPECT_EQ(refused(away).find("K6 stands there"), 0u);
    session->undo();
    carried(k6, {0, 0}, dayOf(2026, 9, 3)); // on that very stand
    EXPECT_FALSE(refused(away).empty());
}

TEST_F(TakeBack, OfUndoAndRedoLinesIsRefused) {
    const qint64 a = visited(k5, dayOf(2026, 9, 1));
    const qint64 undo = session->undo()->seq;
    const qint64 redo = session->redo()->seq;
    EXPECT_NE(refused(undo).find("take back the edit itself"), std::string::npos);
    EXPECT_NE(refused(redo).find("take back the edit itself"), std::string::npos);
    EXPECT_EQ(refused(999), "The history has no such line.");
    EXPECT_TRUE(session->takeBack(a));
}

TEST_F(TakeBack, OfARecordThatAHoldRestsOnIsACorrection) {
    Visit v;
    v.colony = k5;
    v.day = dayOf(2026, 9, 1);
    v.signs.add(Sign::Afb);
    const qint64 seq = visit(v)->seq;
    visited(k6, dayOf(2026, 9, 2));
    const auto before = rows();
    const Thrown thrown = thrownBy([&] { session->takeBack(seq); });
    EXPECT_EQ(thrown.kind, Error::Kind::Correction);
    EXPECT_NE(thrown.message.find("K5: afb"), std::string::npos) << thrown.message;
    EXPECT_EQ(rows(), before);
    EXPECT_EQ(thrownBy([&] {
                  session->takeBack(seq, Correction{QStringLiteral("Ana"), {}});
              }).kind,
              Error::Kind::BadData);
    const auto line = session->takeBack(seq, kWhy);
    EXPECT_EQ(line->by, "Ana");
    EXPECT_EQ(line->reason, "wrong hive noted");
    EXPECT_EQ(problems(), "");
}

TEST_F(TakeBack, WhatRestsOnItIsSaidBeforeACorrectionIsAskedFor) {
    Visit v;
    v.colony = k5;
    v.day = dayOf(2026, 9, 1);
    v.signs.add(Sign::Afb);
    const qint64 seq = visit(v)->seq;
    apply([&](const EditContext& c) {
        const Visit old = c.visitOn(k5, v.day).value();
        Visit now = old;
        now.note = QStringLiteral("more");
        return ChangeSet{QStringLiteral("Put the visit right"), {changed(old, now)}, {}, {}, {}};
    });
    EXPECT_EQ(refused(seq), "Later changed: Put the visit right.");
}

TEST_F(TakeBack, InABookThatIsOnlyReadIsRefused) {
    const qint64 a = visited(k5, dayOf(2026, 9, 1));
    const auto reader = Session::open(path(), clock, Session::Access::ReadOnly);
    EXPECT_EQ(thrownBy([&] { reader->takeBack(a); }).kind, Error::Kind::Book);
    EXPECT_TRUE(reader->takeBackBarred(a));
}

TEST_F(TakeBack, OfAnImportTakesAllItsRowsWhereNothingRestsOnThem) {
    const auto before = rows();
    const auto import = apply([&](const EditContext& c) {
        ChangeSet change;
        change.text = QStringLiteral("Imported 300 visits");
        change.bulk.push_back({Table::Visit, c.nextId(Table::Visit), 300, [&](qint64 i) {
                                   Visit v;
                                   v.colony = k5;
                                   v.day = dayOf(2026, 5, 2) + static_cast<int>(i % 100);
                                   if (i >= 100) v.colony = k6;
                                   if (i >= 200) v.day = v.day + 120;
                                   return toRow(v);
                               }});
        return change;
    });
    const qint64 changeOfOne = apply([&](const EditContext& c) {
                                   const Visit old = c.visitOn(k5, dayOf(2026, 5, 3)).value();
                                   Visit now = old;
                                   now.note = QStringLiteral("more");
                                   return ChangeSet{QStringLiteral("Put one right"), {changed(old, now)}, {}, {}, {}};
                               })->seq;
    carried(k5, {0, 3000}, dayOf(2026, 9, 1));
    EXPECT_EQ(refused(import->seq), "Later changed: Put one right.");
    session->takeBack(changeOfOne);
    EXPECT_TRUE(session->takeBack(import->seq));
    session->undo(); // the carry
    EXPECT_EQ(rows(), before);
    session->redo();
    session->redo();
    EXPECT_EQ(problems(), "");
    session->undo();
    session->undo();
    session->redo();
    session->redo();
    session->redo();
    EXPECT_EQ(problems(), "");
}

} // namespace

} // namespace tests::edit
