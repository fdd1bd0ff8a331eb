#include "core/store/book_note.h"

#include "core/store/book_lock.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <QTimeZone>

namespace {

using core::BookHolder;
using core::store::BookLock;
using core::store::holderIn;
using core::store::noteOf;

const BookHolder kAna{QStringLiteral("Ana"), QStringLiteral("barn-laptop"),
                      QDateTime(QDate(2026, 9, 15), QTime(14, 5), QTimeZone::utc())};

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

    void leave(const QByteArray& text) const {
        QFile file(book + QStringLiteral("-lock"));
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
    const BookLock first(book);
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
    const BookLock first(book);
    first.sign(kAna);
    EXPECT_EQ(holderWhenTried(), kAna);
}

} // namespace
