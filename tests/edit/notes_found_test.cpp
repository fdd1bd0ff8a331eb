#include "core/edit/put_right.h"
#include "core/edit/row_change.h"
#include "tests/edit/edit_fixture.h"

namespace tests::edit {

namespace {

class NotesOfBook : public EditTest {
protected:
    YardId yard = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(yard, QStringLiteral("5"), {0, 0}, dayOf(1990, 1, 1));

    int found(const char* typed) const { return session->notesFound(QString::fromUtf8(typed), 100).count; }
    Visit noted(const char* note, Day day = dayOf(2026, 6, 1)) {
        Visit v;
        v.colony = k5;
        v.day = day;
        v.note = QString::fromUtf8(note);
        visit(v);
        return session->visitsOf(k5, 1).front();
    }
};

TEST_F(NotesOfBook, FollowARecordPutRightTakenBackAndUndone) {
    Visit v = noted("queen cells");
    EXPECT_EQ(found("cells"), 1);
    v.note = "swarm cells";
    apply([&](const EditContext& c) { return changeVisit(c, v); });
    EXPECT_EQ(found("queen"), 0);
    EXPECT_EQ(found("swarm"), 1);
    v.note.clear();
    apply([&](const EditContext& c) { return changeVisit(c, v); });
    EXPECT_EQ(found("cells"), 0);
    EXPECT_EQ(problems(), "");
    session->undo();
    EXPECT_EQ(found("swarm"), 1);
    session->undo();
    EXPECT_EQ(found("queen"), 1);
    session->undo();
    EXPECT_EQ(found("cells"), 0);
    session->redo();
    EXPECT_EQ(found("queen"), 1);
    apply([&](const EditContext& c) { return takeBackVisit(c, v.id); });
    EXPECT_EQ(found("queen"), 0);
    EXPECT_EQ(problems(), "");
}

TEST_F(NotesOfBook, FollowRangesInAndOut) {
    apply([&](const EditContext& c) {
        ChangeSet change;
        change.text = QStringLiteral("Imported");
        change.bulk.push_back({Table::Visit, c.nextId(Table::Visit), 9000, [this](qint64 i) {
                                   Visit v;
                                   v.colony = k5;
                                   v.day = dayOf(1990, 1, 1) + static_cast<int>(i);
                                   if (i % 3) v.note = QStringLiteral("calm bees %1").arg(i);
                                   return toRow(v);
                               }});
        return change;
    });
    EXPECT_EQ(found("calm"), 6000);
    EXPECT_EQ(found("calm 8999"), 1);
    EXPECT_EQ(problems(), "");
    session->undo();
    EXPECT_EQ(found("calm"), 0);
    EXPECT_EQ(problems(), "");
    session->redo();
    EXPECT_EQ(found("bees"), 6000);
    EXPECT_EQ(problems(), "");
}

TEST_F(NotesOfBook, AnEditThatFailsLeavesNoWord) {
    EXPECT_ANY_THROW(apply([&](const EditContext& c) {
        Visit v;
        v.id = {c.nextId(Table::Visit)};
        v.colony = k5;
        v.day = dayOf(2026, 6, 1);
        v.note = "half written";
        Visit bad = v;
        bad.id = {v.id.value + 1}; // the same day again: the book refuses it
        ChangeSet change;
        change.rows = {added(v), added(bad)};
        return change;
    }));
    EXPECT_EQ(found("half"), 0);
    EXPECT_EQ(problems(), "");
}

TEST_F(NotesOfBook, AreFoundByAReader) {
    noted("two supers");
    const auto reader = Session::open(path(), clock, Session::Access::ReadOnly);
    EXPECT_EQ(reader->notesFound(QStringLiteral("sup"), 5).count, 1);
    EXPECT_EQ(reader->check(), QStringList());
}

TEST_F(NotesOfBook, MoreThanAreLookedAtIsSaid) {
    apply([&](const EditContext& c) {
        ChangeSet change;
        change.text = QStringLiteral("Imported");
        change.bulk.push_back({Table::Visit, c.nextId(Table::Visit), 20'001, [this](qint64 i) {
                                   Visit v;
                                   v.colony = k5;
                                   v.day = dayOf(1990, 1, 1) + static_cast<int>(i);
                                   v.note = QStringLiteral("calm");
                                   return toRow(v);
                               }});
        return change;
    });
    const NotesFound all = session->notesFound(QStringLiteral("calm"), 3);
    EXPECT_TRUE(all.more);
    EXPECT_EQ(all.count, 20'000);
    EXPECT_EQ(all.notes.size(), 3u);
    EXPECT_EQ(all.notes[0].day, dayOf(1990, 1, 1) + 20'000);
}

} // namespace

} // namespace tests::edit
