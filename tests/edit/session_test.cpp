#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/row_change.h"

namespace tests::edit {

namespace {

class SessionTest : public EditTest {
protected:
    YardId yard = newYard(QStringLiteral("North"));
};

TEST_F(SessionTest, TellsOnceOfEachCommitAndNeverOfANothing) {
    int told = 0;
    QString text;
    QObject::connect(session.get(), &Session::changed, [&](const ChangeSet& change) {
        ++told;
        text = change.text;
    });
    newColony(yard, QStringLiteral("5"), {0, 0});
    EXPECT_EQ(told, 1);
    EXPECT_EQ(text, "Added 5 on stand 5 of North");
    EXPECT_FALSE(apply([](const EditContext&) { return ChangeSet{}; }));
    EXPECT_EQ(told, 1);
    thrownBy([&] { apply([](const EditContext&) -> ChangeSet { throw Error(Error::Kind::BadData, "no"); }); });
    EXPECT_EQ(told, 1);
    session->undo();
    EXPECT_EQ(told, 2);
    session->redo();
    EXPECT_EQ(told, 3);
}

TEST_F(SessionTest, WritesNoLineForAnEditThatChangesNothing) {
    const auto lines = session->history(100).size();
    EXPECT_FALSE(apply([](const EditContext&) { return ChangeSet{QStringLiteral("Nothing"), {}, {}, {}, {}}; }));
    EXPECT_EQ(session->history(100).size(), lines);
}

TEST_F(SessionTest, KeepsWhoWhenAndWhatNewestFirst) {
    session->setAuthor(QStringLiteral(" Ana "));
    newColony(yard, QStringLiteral("5"), {0, 0});
    const auto lines = session->history(1);
    ASSERT_EQ(lines.size(), 1u);
    EXPECT_EQ(lines[0].by, "Ana");
    EXPECT_EQ(lines[0].text, "Added 5 on stand 5 of North");
    EXPECT_EQ(lines[0].at, clock.nowUtc());
    EXPECT_EQ(lines[0].reason, "");
}

TEST_F(SessionTest, RefusesAnEditOfARowThatWasChangedMeanwhile) {
    const Yard old = session->yard(yard).value();
    rawSql(path(), "UPDATE yard SET note = 'someone else'");
    const auto before = rowsText(path());
    const Thrown thrown = thrownBy([&] {
        apply([&](const EditContext&) {
            Yard now = old;
            now.note = QStringLiteral("mine");
            return ChangeSet{QStringLiteral("Noted"), {core::edit::changed(old, now)}, {}, {}, {}};
        });
    });
    EXPECT_NE(thrown.message.find("changed meanwhile"), std::string::npos);
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_EQ(session->history(10).size(), 1u);
}

TEST_F(SessionTest, RefusesToUndoWhatWasChangedMeanwhile) {
    rawSql(path(), "UPDATE yard SET note = 'someone else'");
    const auto before = rowsText(path());
    EXPECT_NE(thrownBy([&] { session->undo(); }).message.find("changed meanwhile"), std::string::npos);
    EXPECT_EQ(rowsText(path()), before);
}

TEST_F(SessionTest, WritesAllRowsOfAnEditOrNone) {
    const auto before = rowsText(path());
    // The second row breaks the schema: a stand of a yard that is not there.
    thrownBy([&] {
        apply([&](const EditContext& c) {
            Yard fresh;
            fresh.id = YardId{c.nextId(Table::Yard)};
            fresh.name = QStringLiteral("South");
            const Stand stand{StandId{1}, YardId{999}, QStringLiteral("1"), {0, 0}, false};
            return ChangeSet{QStringLiteral("Half"), {core::edit::added(fresh), core::edit::added(stand)}, {}, {}, {}};
        });
    });
    EXPECT_EQ(rowsText(path()), before);
    EXPECT_EQ(session->history(10).size(), 1u);
    EXPECT_TRUE(newColony(yard, QStringLiteral("5"), {0, 0}).value > 0);
}

TEST_F(SessionTest, ASecondOneOfTheSameBookOnlyReads) {
    EXPECT_EQ(thrownBy([&] { Session::open(path(), clock); }).kind, Error::Kind::Book);
    const auto reader = Session::open(path(), clock, Session::Access::ReadOnly);
    EXPECT_TRUE(reader->readOnly());
    EXPECT_EQ(reader->yards().size(), 1u);
    EXPECT_EQ(thrownBy([&] { reader->apply([](const EditContext&) { return ChangeSet{}; }); }).kind, Error::Kind::Book);
    newColony(yard, QStringLiteral("5"), {0, 0});
    EXPECT_EQ(reader->undoText(), "Added 5 on stand 5 of North");
    EXPECT_EQ(thrownBy([&] { reader->undo(); }).kind, Error::Kind::Book);
}

TEST_F(SessionTest, NamesTheBookAfterItsFile) { EXPECT_EQ(session->bookTitle(), "test"); }

TEST_F(SessionTest, TellsOfTheYardsThatAreNotClosed) {
    apply([&](const EditContext& c) {
        const Yard old = c.yard(yard).value();
        Yard now = old;
        now.closed = true;
        return ChangeSet{QStringLiteral("Closed North"), {core::edit::changed(old, now)}, {}, {}, {}};
    });
    EXPECT_TRUE(session->yards().empty());
    EXPECT_TRUE(session->yard(yard));
}

} // namespace

} // namespace tests::edit
