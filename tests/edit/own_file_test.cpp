#include "tests/edit/edit_fixture.h"

#include "core/base/book_replaced.h"

#include <QDir>
#include <QFile>

namespace tests::edit {

namespace {

using How = BookReplaced::How;

/// A book under the hands of a sync program: replaced, written over, touched, deleted, while a session has it open.
struct OwnFileTest : EditTest {
    YardId north = newYard(QStringLiteral("North"));

    QString beside(const char* name) const { return path() + QLatin1String(name); }
    QByteArray bytes(const QString& of) const {
        QFile file(of);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    /// Into the same file, as some sync programs and `cat >` do.
    void writeOver(const QByteArray& with) const {
        QFile file(path());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
        ASSERT_EQ(file.write(with), with.size());
    }
    void putInPlaceOf(const QByteArray& with) const {
        QFile file(beside(".tmp"));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(with), with.size());
        file.close();
        ASSERT_EQ(rename(QFile::encodeName(file.fileName()).constData(), QFile::encodeName(path()).constData()), 0);
    }
    std::optional<How> foundAtAnEdit() {
        const QByteArray before = bytes(path());
        try {
            newYard(QStringLiteral("South"));
        } catch (const BookReplaced& e) {
            EXPECT_TRUE(e.userMessage().contains(QStringLiteral("nothing was written"))) << e.what();
            EXPECT_EQ(bytes(path()), before) << "something was written";
            return e.how;
        }
        return {};
    }
    std::optional<How> foundByAsking() const {
        try {
            session->needOwnFile();
        } catch (const BookReplaced& e) {
            return e.how;
        }
        return {};
    }
};

TEST_F(OwnFileTest, StaysOwnOverEditsUndosAndReaders) {
    newColony(north, QStringLiteral("5"), {0, 0});
    session->undo();
    session->redo();
    Session::open(path(), clock, Session::Access::ReadOnly);
    EXPECT_EQ(foundByAsking(), std::nullopt);
    EXPECT_EQ(foundAtAnEdit(), std::nullopt);
}

TEST_F(OwnFileTest, ReplacedByAnotherFileIsFoundBeforeAnythingIsWritten) {
    const QByteArray older = bytes(path());
    newColony(north, QStringLiteral("5"), {0, 0});
    putInPlaceOf(older);
    EXPECT_EQ(foundByAsking(), How::Other);
    EXPECT_EQ(foundAtAnEdit(), How::Other);
    EXPECT_EQ(session->yards().size(), 1U) << "what was open is still read";
}

TEST_F(OwnFileTest, WrittenOverWithAnOlderStateIsFound) {
    const QByteArray older = bytes(path());
    newColony(north, QStringLiteral("5"), {0, 0});
    writeOver(older);
    EXPECT_EQ(foundByAsking(), How::Rewritten);
    EXPECT_EQ(foundAtAnEdit(), How::Rewritten);
}

// The file's own counter of changes is then the same: only the history's end tells.
TEST_F(OwnFileTest, WrittenOverWithAStateOfJustAsManyEditsIsFound) {
    const QByteArray parted = bytes(path());
    newYard(QStringLiteral("There"));
    const QByteArray there = bytes(path());
    session.reset();
    writeOver(parted);
    session = Session::open(path(), clock);
    newYard(QStringLiteral("Here2"));
    const QByteArray here = bytes(path());
    ASSERT_EQ(here.mid(24, 4), there.mid(24, 4)) << "as many changes";
    ASSERT_EQ(here.size(), there.size());
    writeOver(there);
    EXPECT_EQ(foundAtAnEdit(), How::Rewritten);
}

TEST_F(OwnFileTest, WrittenOverWithWhatIsNoBookIsFound) {
    for (const QByteArray& junk : {QByteArray(), QByteArray("no book"), QByteArray(20'000, 'x')}) {
        writeOver(junk);
        EXPECT_EQ(foundAtAnEdit(), How::Rewritten) << junk.size();
    }
}

TEST_F(OwnFileTest, TouchedOrWrittenOverWithItselfStaysOwn) {
    writeOver(bytes(path()));
    EXPECT_EQ(foundByAsking(), std::nullopt);
    ASSERT_TRUE(QFile::setPermissions(path(), QFile::ReadOwner | QFile::WriteOwner));
    EXPECT_EQ(foundAtAnEdit(), std::nullopt);
    EXPECT_EQ(session->check(), QStringList());
}

TEST_F(OwnFileTest, DeletedIsSaidAndPutBackItGoesOn) {
    ASSERT_TRUE(QFile::rename(path(), beside(".away")));
    EXPECT_EQ(foundByAsking(), How::Gone);
    EXPECT_EQ(foundAtAnEdit(), How::Gone);
    ASSERT_TRUE(QFile::rename(beside(".away"), path()));
    EXPECT_EQ(foundAtAnEdit(), std::nullopt);
}

TEST_F(OwnFileTest, UndoRedoAndTakingBackAskTheSame) {
    const qint64 seq = session->history(1).front().seq;
    const QByteArray one = bytes(path());
    newColony(north, QStringLiteral("5"), {0, 0});
    session->undo();
    putInPlaceOf(one);
    EXPECT_THROW(session->undo(), BookReplaced);
    EXPECT_THROW(session->redo(), BookReplaced);
    EXPECT_THROW(session->takeBack(seq), BookReplaced);
    EXPECT_EQ(bytes(path()), one);
}

TEST_F(OwnFileTest, AReaderMindsAnotherFileAndNotTheWritersEdits) {
    const auto reader = Session::open(path(), clock, Session::Access::ReadOnly);
    const QByteArray one = bytes(path());
    newColony(north, QStringLiteral("5"), {0, 0});
    EXPECT_NO_THROW(reader->needOwnFile());
    putInPlaceOf(one);
    EXPECT_THROW(reader->needOwnFile(), BookReplaced);
}

} // namespace

} // namespace tests::edit
