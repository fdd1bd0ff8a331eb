#include "tests/edit/edit_fixture.h"

#include "core/base/book_held.h"

namespace tests::edit {

namespace {

/// One session writes; a second one of the same book reads.
struct Shared : EditTest {
    YardId yard = newYard(QStringLiteral("North"));
    std::unique_ptr<Session> reader = Session::open(path(), clock, Session::Access::ReadOnly);
};

TEST_F(Shared, TheSecondIsToldWhoHasTheBookAndSinceWhen) {
    session->setAuthor(QStringLiteral("Ana"));
    try {
        Session::open(path(), clock);
        FAIL() << "a second writer";
    } catch (const BookHeld& e) {
        EXPECT_EQ(e.holder.who, QStringLiteral("Ana"));
        EXPECT_FALSE(e.holder.host.isEmpty());
        EXPECT_EQ(e.holder.since, clock.nowUtc());
    }
}

TEST_F(Shared, AReaderHearsOfEachEditOnce) {
    EXPECT_FALSE(reader->changedElsewhere());
    newColony(yard, QStringLiteral("5"), {0, 0});
    EXPECT_TRUE(reader->changedElsewhere());
    EXPECT_FALSE(reader->changedElsewhere());
    EXPECT_FALSE(reader->snapshot(clock.day).colonies.empty());
    session->undo();
    EXPECT_TRUE(reader->changedElsewhere());
    EXPECT_TRUE(reader->snapshot(clock.day).colonies.empty());
}

TEST_F(Shared, AWriterHearsNothingOfItsOwnEdits) {
    newColony(yard, QStringLiteral("5"), {0, 0});
    EXPECT_FALSE(session->changedElsewhere());
}

TEST_F(Shared, AReaderTakesOverOnlyWhenTheWriterIsGone) {
    try {
        reader->takeOver();
        FAIL() << "taken over from a living writer";
    } catch (const BookHeld&) {
        EXPECT_TRUE(reader->readOnly());
        EXPECT_EQ(reader->yards().size(), 1u);
    }
    session.reset();
    reader->takeOver();
    EXPECT_FALSE(reader->readOnly());
    EXPECT_EQ(reader->undoText(), "Added yard North");
    EXPECT_TRUE(reader->undo());
    EXPECT_TRUE(reader->yards().empty());
    EXPECT_EQ(thrownBy([&] { Session::open(path(), clock); }).kind, Error::Kind::Book) << "now it is the one writer";
}

TEST_F(Shared, AReaderOfABookThatWasMovedStillReads) {
    session.reset();
    ASSERT_TRUE(QFile::rename(path(), path() + QStringLiteral(".moved")));
    EXPECT_EQ(thrownBy([&] { reader->takeOver(); }).kind, Error::Kind::Book);
    EXPECT_TRUE(reader->readOnly());
    EXPECT_EQ(reader->yards().size(), 1u);
}

} // namespace

} // namespace tests::edit
