#include "core/store/book_note.h"

#include "core/store/book_lock.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QSysInfo>
#include <QTemporaryDir>
#include <QTimeZone>

#include <cerrno>

namespace {

using core::BookHeld;
using core::BookHolder;
using core::store::BookLock;
using core::store::holderIn;
using core::store::noteOf;

const BookHolder kAna{QStringLiteral("Ana"), QStringLiteral("barn-laptop"),
                      QDateTime(QDate(2026, 9, 15), QTime(14, 5), QTimeZone::utc()), core::store::thisMachine()};
const BookHolder kElsewhere{QStringLiteral("Bo"), QStringLiteral("shed-pc"), kAna.since,
                            QStringLiteral("0123456789abcdef")};

TEST(BookNote, IsReadAsItWasWritten) { EXPECT_EQ(holderIn(noteOf(kAna)), kAna); }

TEST(BookNote, OfAnOlderProgramOrTornTellsWhatItCan) {
    EXPECT_EQ(holderIn({}), BookHolder());
    EXPECT_EQ(holderIn("4711\nsomething else"), BookHolder());
    EXPECT_EQ(holderIn("who=Ana\nho").who, QStringLiteral("Ana"));
    EXPECT_EQ(holderIn("since=yesterday").since, QDateTime());
    EXPECT_EQ(holderIn(QByteArray(100'000, '\xff')), BookHolder());
}

TEST(BookNote, StaysOneShortLineAPart) {
    BookHolder odd = kAna;
    odd.who = QStringLiteral("An\na\t\x01 who=B ") + QChar(0x202e) + QString(500, u'x');
    const BookHolder read = holderIn(noteOf(odd));
    EXPECT_TRUE(read.who.startsWith(QStringLiteral("An a who=B"))) << read.who.toStdString();
    EXPECT_LE(read.who.size(), 60);
    EXPECT_EQ(read.host, kAna.host);
}

struct BookLockNote : ::testing::Test {
    QTemporaryDir folder;
    QString book = folder.filePath(QStringLiteral("test.yardwright"));

    QString lock = book + QStringLiteral("-lock");

    void leave(const QByteArray& text) const {
        QFile file(lock);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
    }
    BookHolder holderWhenTried() const {
        try {
            const BookLock second(book);
        } catch (const core::BookHeld& e) {
            return e.holder;
        }
        ADD_FAILURE() << "not held";
        return {};
    }
};

TEST_F(BookLockNote, TellsTheSecondWhoHasIt) {
    BookLock first(book);
    EXPECT_EQ(holderWhenTried(), BookHolder()) << "not signed yet";
    first.sign(kAna);
    EXPECT_EQ(holderWhenTried(), kAna);
    BookHolder bo = kAna;
    bo.who = QStringLiteral("Bo");
    first.sign(bo);
    EXPECT_EQ(holderWhenTried(), bo) << "a shorter note leaves nothing of the longer one";
}

TEST_F(BookLockNote, LeftBehindBlocksNobodyAndIsNotBelieved) {
    leave(noteOf(kAna));
    const BookLock first(book);
    EXPECT_EQ(holderWhenTried(), BookHolder());
}

TEST_F(BookLockNote, OfAnyOtherContentBlocksNobody) {
    leave(QByteArray(1'000'000, '\0'));
    BookLock first(book);
    first.sign(kAna);
    EXPECT_EQ(holderWhenTried(), kAna);
}

/// What stands against the lock; nothing: it is taken, and let go again.
std::optional<BookHeld> against(const QString& book) {
    try {
        const BookLock lock(book);
    } catch (const BookHeld& e) {
        return e;
    }
    return {};
}

TEST_F(BookLockNote, OfAnotherMachineStandsUntilItIsForgotten) {
    leave(noteOf(kElsewhere));
    const auto held = against(book);
    ASSERT_TRUE(held);
    EXPECT_EQ(held->known, BookHeld::Known::Noted);
    EXPECT_EQ(held->holder, kElsewhere);
    EXPECT_TRUE(held->userMessage().contains(QStringLiteral("Bo on shed-pc since 2026-09-15"))) << held->what();
    EXPECT_TRUE(held->userMessage().contains(lock)) << "which file to remove";
    EXPECT_TRUE(against(book)) << "refusing leaves the note as it was";
    core::store::forgetNote(book);
    EXPECT_FALSE(against(book));
    EXPECT_FALSE(QFile::exists(lock)) << "let go, it leaves nothing";
}

TEST_F(BookLockNote, OfAnOlderProgramIsToldApartByTheMachinesName) {
    leave(QByteArray("who=Bo\nhost=shed-pc-of-another\nsince=2026-09-15T14:05:00Z\n"));
    EXPECT_TRUE(against(book));
    leave("who=Bo\nhost=" + QSysInfo::machineHostName().toUtf8() + "\n");
    EXPECT_FALSE(against(book));
}

TEST_F(BookLockNote, IsNotForgottenWhileTheLockIsHeld) {
    const BookLock first(book);
    EXPECT_THROW(core::store::forgetNote(book), BookHeld);
}

TEST_F(BookLockNote, OfAnotherMachineThatComesLaterStopsTheWriter) {
    BookLock first(book);
    first.sign(kAna);
    first.need();
    leave(noteOf(kElsewhere)); // into the same file
    EXPECT_THROW(first.need(), BookHeld);
    first.sign(kAna); // as one is told to do who knows better
    first.need();
    ASSERT_TRUE(QFile::remove(lock));
    leave(noteOf(kElsewhere)); // in a file of its own
    try {
        first.need();
        FAIL() << "went on";
    } catch (const BookHeld& e) {
        EXPECT_EQ(e.known, BookHeld::Known::Noted);
    }
}

TEST_F(BookLockNote, ThatIsTakenAwayIsMadeAgainSoThatNoOtherCanWrite) {
    BookLock first(book);
    first.sign(kAna);
    ASSERT_TRUE(QFile::remove(lock));
    first.need();
    EXPECT_EQ(holderWhenTried(), kAna);
    ASSERT_TRUE(QFile::remove(lock));
    {
        const BookLock second(book); // was quicker
        EXPECT_THROW(first.need(), BookHeld);
    }
    first.need();
    EXPECT_EQ(holderWhenTried(), kAna);
}

TEST_F(BookLockNote, OfAnotherThatCameInBetweenIsNotDeletedAtTheEnd) {
    {
        const BookLock first(book);
        ASSERT_TRUE(QFile::remove(lock));
        leave(noteOf(kElsewhere));
    }
    EXPECT_TRUE(QFile::exists(lock));
}

int unknownHere(int) {
    errno = ENOLCK;
    return -1;
}

TEST(BookLockCalls, AFileSystemThatKnowsNoWholeLocksIsLockedByRanges) {
    QTemporaryDir folder;
    const QString book = folder.filePath(QStringLiteral("test.yardwright"));
    const core::store::LockCalls calls{unknownHere, core::store::systemLocks().ranged};
    const BookLock first(book, calls);
    EXPECT_THROW(BookLock(book, calls), BookHeld);
}

TEST(BookLockCalls, AFileSystemThatKnowsNoneIsSaidAndNobodyWrites) {
    QTemporaryDir folder;
    const QString book = folder.filePath(QStringLiteral("test.yardwright"));
    try {
        const BookLock first(book, {unknownHere, unknownHere});
        FAIL() << "locked by nothing";
    } catch (const core::Error& e) {
        EXPECT_EQ(e.kind(), core::Error::Kind::Book);
        EXPECT_EQ(e.userMessage(),
                  QStringLiteral("The file system of this folder knows no locks, so nothing would keep two programs "
                                 "from writing into the book at once. To change it, copy it to a disk of this "
                                 "machine."));
    }
}

} // namespace
