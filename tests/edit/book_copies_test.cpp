#include "core/edit/book_copies.h"

#include "tests/edit/edit_fixture.h"

#include "core/base/book_held.h"
#include "core/base/book_replaced.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>

#include <sys/stat.h>

namespace tests::edit {

namespace {

Edit yardAdded(const QString& name, const QString& note = {}) {
    Yard yard;
    yard.name = name;
    yard.note = note;
    return [yard](const EditContext& c) { return core::edit::newYard(c, yard); };
}

struct Copies : EditTest {
    YardId north = newYard(QStringLiteral("North"));

    QString at(const char* name) const { return dir.filePath(QLatin1String(name)); }
    /// As a sync program does: the bytes, under another name.
    QString copyAs(const char* name) const {
        EXPECT_TRUE(QFile::copy(path(), at(name)));
        return at(name);
    }
    void editThere(const QString& book, const QString& yard, const QString& by) const {
        const auto there = Session::open(book, clock);
        there->setAuthor(by);
        there->apply(yardAdded(yard));
    }
    BooksStand standBeside() const {
        const auto found = copiesBeside(path());
        EXPECT_EQ(found.size(), 1U);
        EXPECT_EQ(found.front().problem, QString());
        return found.front().stand;
    }
    void leave(const char* name, const QByteArray& bytes) const {
        QFile file(at(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
};

TEST_F(Copies, AreFoundUnderAnyNameAndNothingElseIs) {
    copyAs("test (conflicted copy of shed-pc).yardwright");
    copyAs("test.yardwright.sync-conflict-20260915-140500");
    copyAs(".hidden");
    Session::create(at("another book.yardwright"), clock);
    leave("notes.txt", "SQLite format 3");
    leave("empty.yardwright", {});
    leave("junk.yardwright", QByteArray(5000, 'x'));
    leave("test.yardwright.part", "half made");
    QFile::link(path(), at("link.yardwright"));
    ASSERT_EQ(mkfifo(QFile::encodeName(at("pipe.yardwright")).constData(), 0600), 0);
    ASSERT_TRUE(QDir(dir.path()).mkdir(QStringLiteral("folder.yardwright")));
    QStringList names;
    for (const BookCopyFound& copy : copiesBeside(path())) names << QFileInfo(copy.path).fileName();
    EXPECT_EQ(names,
              (QStringList{QStringLiteral(".hidden"), QStringLiteral("test (conflicted copy of shed-pc).yardwright"),
                           QStringLiteral("test.yardwright.sync-conflict-20260915-140500")}));
    newYard(QStringLiteral("South")); // the book is still open, and still this one's
    EXPECT_EQ(session->check(), QStringList());
}

TEST_F(Copies, OfAHugeFolderAreFoundSoon) {
    copyAs("copy.yardwright");
    constexpr int kFiles = 3000;
    for (int i = 0; i < kFiles; ++i) leave(QByteArray::number(i).constData(), QByteArray(200, 'x'));
    QElapsedTimer since;
    since.start();
    EXPECT_EQ(copiesBeside(path()).size(), 1U);
    EXPECT_LT(since.elapsed(), 3000); // own measure: some 60 ms; a slow machine with sanitizers is given its time
    EXPECT_TRUE(copiesBeside(path(), [] { return true; }).empty()) << "stopped";
}

TEST_F(Copies, AreToldApartByTheirHistories) {
    const QString copy = copyAs("copy.yardwright");
    EXPECT_EQ(standBeside(), BooksStand::Alike);
    newYard(QStringLiteral("South"));
    EXPECT_EQ(standBeside(), BooksStand::HereGoesOn);
    editThere(copy, QStringLiteral("East"), QStringLiteral("Bo"));
    EXPECT_EQ(standBeside(), BooksStand::Parted);
    session->undo();
    EXPECT_EQ(standBeside(), BooksStand::Parted) << "an undo is an edit too";
}

TEST_F(Copies, ThatAloneWentOnHaveMore) {
    const QString copy = copyAs("copy.yardwright");
    editThere(copy, QStringLiteral("East"), QStringLiteral("Bo"));
    const auto found = copiesBeside(path());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().stand, BooksStand::ThereGoesOn);
    EXPECT_TRUE(found.front().hasMore());
    ASSERT_TRUE(found.front().last);
    EXPECT_EQ(found.front().last->by, QStringLiteral("Bo"));
    const QString mark = found.front().mark();
    editThere(copy, QStringLiteral("West"), QStringLiteral("Bo"));
    EXPECT_NE(copiesBeside(path()).front().mark(), mark);
}

TEST_F(Copies, ThatCannotBeReadSayWhy) {
    const QString copy = copyAs("copy.yardwright");
    QFile file(copy);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.resize(file.size() - 4096));
    file.close();
    const auto found = copiesBeside(path());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_TRUE(found.front().problem.contains(QStringLiteral("damaged"))) << found.front().problem.toStdString();
    EXPECT_TRUE(found.front().hasMore()) << "nobody knows";
}

TEST_F(Copies, OfAnOlderVersionAreReadAsTheyAre) {
    QTemporaryDir other;
    const QString book = other.filePath(QStringLiteral("old.yardwright"));
    ASSERT_TRUE(QFile::copy(QStringLiteral(YW_GOLDEN "/version-1.yardwright"), book));
    ASSERT_TRUE(QFile::setPermissions(book, QFile::ReadOwner | QFile::WriteOwner));
    const auto now = Session::open(book, clock); // brought up to date; one of before is kept beside it
    const auto found = copiesBeside(book);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().problem, QString());
    EXPECT_EQ(found.front().stand, BooksStand::Alike);
    const BooksCompared compared = compareBooks(book, found.front().path);
    EXPECT_EQ(compared.there.version, 1);
    EXPECT_GT(compared.here.version, 1);
    EXPECT_EQ(compared.stand, BooksStand::Alike);
    EXPECT_EQ(compared.differ, QStringList()) << "rows of other tables are not compared";
}

TEST_F(Copies, ComparedSayWhatEachHasSinceTheyParted) {
    const QString copy = copyAs("copy.yardwright");
    session->setAuthor(QStringLiteral("Ana"));
    newYard(QStringLiteral("South"));
    editThere(copy, QStringLiteral("East"), QStringLiteral("Bo"));
    editThere(copy, QStringLiteral("West"), QStringLiteral("Cy"));
    const BooksCompared c = compareBooks(path(), copy);
    EXPECT_EQ(c.stand, BooksStand::Parted);
    EXPECT_EQ(c.shared, 1);
    ASSERT_TRUE(c.lastShared);
    EXPECT_EQ(c.lastShared->text, QStringLiteral("Added yard North"));
    ASSERT_EQ(c.here.lines.size(), 1U);
    EXPECT_EQ(c.here.lines[0].text, QStringLiteral("Added yard South"));
    EXPECT_EQ(c.here.lines[0].by, QStringLiteral("Ana"));
    ASSERT_EQ(c.there.lines.size(), 2U);
    EXPECT_EQ(c.there.lines[0].by, QStringLiteral("Cy"));
    EXPECT_EQ(c.there.lines[1].text, QStringLiteral("Added yard East"));
    EXPECT_EQ(c.there.count, 2);
}

// The same words at the same moment, of another yard: the line's content differs.
TEST_F(Copies, OfLinesThatReadAlikeAreComparedByTheirContent) {
    const QString copy = copyAs("copy.yardwright");
    session->apply(yardAdded("South", "by the brook"));
    const auto there = Session::open(copy, clock);
    there->apply(yardAdded("South", "by the road"));
    ASSERT_EQ(there->history(1).front().text, session->history(1).front().text);
    ASSERT_EQ(there->history(1).front().at, session->history(1).front().at);
    const BooksCompared c = compareBooks(path(), copy);
    EXPECT_EQ(c.stand, BooksStand::Parted);
    EXPECT_EQ(c.shared, 1);
    EXPECT_EQ(standBeside(), BooksStand::Parted);
}

TEST_F(Copies, OfAnotherBookAreStrangers) {
    Session::create(at("other.yardwright"), clock);
    EXPECT_EQ(compareBooks(path(), at("other.yardwright")).stand, BooksStand::Strangers);
    EXPECT_TRUE(copiesBeside(path()).empty());
}

TEST_F(Copies, PutAsideAreKeptAndFoundNoMore) {
    const QString copy = copyAs("copy.yardwright");
    const QString aside = putAside(copy);
    EXPECT_EQ(aside, at("put aside/copy.yardwright"));
    EXPECT_TRUE(copiesBeside(path()).empty());
    EXPECT_EQ(Session::open(aside, clock, Session::Access::ReadOnly)->yards().size(), 1U);
    EXPECT_FALSE(QFile::exists(copy + QStringLiteral("-lock")));
    copyAs("copy.yardwright");
    EXPECT_EQ(putAside(copy), at("put aside/copy 2.yardwright")) << "none takes the place of another";
    EXPECT_TRUE(QFile::exists(aside));
}

TEST_F(Copies, OpenElsewhereAreNotPutAside) {
    const QString copy = copyAs("copy.yardwright");
    const auto there = Session::open(copy, clock);
    EXPECT_THROW(putAside(copy), BookHeld);
    EXPECT_TRUE(QFile::exists(copy));
}

TEST_F(Copies, OfWhatWasReplacedWhileItWasOpenAreKept) {
    const QString older = copyAs("older");
    newYard(QStringLiteral("South"));
    ASSERT_TRUE(QFile::remove(path()));
    ASSERT_TRUE(QFile::rename(older, path()));
    const auto kept = keepWhatIsOpen(*session);
    ASSERT_TRUE(kept);
    EXPECT_TRUE(QFileInfo(*kept).fileName().startsWith(QStringLiteral("test as it was open 2026-09-20")))
        << kept->toStdString();
    session.reset();
    session = Session::open(path(), clock);
    EXPECT_EQ(session->yards().size(), 1U);
    const auto found = copiesBeside(path());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().path, *kept);
    EXPECT_EQ(found.front().stand, BooksStand::ThereGoesOn) << "with the edit that the file there had not";
}

TEST_F(Copies, OfWhatTheFileThereHasAllOfAreNotMade) {
    const QString newer = copyAs("newer");
    editThere(newer, QStringLiteral("South"), QStringLiteral("Bo"));
    ASSERT_TRUE(QFile::remove(path()));
    ASSERT_TRUE(QFile::rename(newer, path()));
    EXPECT_EQ(keepWhatIsOpen(*session), std::nullopt);
}

TEST_F(Copies, OfADeletedBookCanBeWrittenToItsPlace) {
    ASSERT_TRUE(QFile::remove(path()));
    try {
        session->needOwnFile();
        FAIL();
    } catch (const BookReplaced& e) {
        EXPECT_EQ(e.how, BookReplaced::How::Gone);
        EXPECT_EQ(e.nowAt, QString()) << "deleted";
    }
    session->backUp(path());
    session.reset();
    session = Session::open(path(), clock);
    EXPECT_EQ(session->yards().size(), 1U);
}

TEST_F(Copies, OfAMovedBookAreNotNeededItIsSaidWhereItIs) {
    ASSERT_TRUE(QFile::rename(path(), at("moved.yardwright")));
    try {
        session->needOwnFile();
        FAIL();
    } catch (const BookReplaced& e) {
        EXPECT_EQ(e.how, BookReplaced::How::Gone);
        EXPECT_EQ(QFileInfo(e.nowAt).fileName(), QStringLiteral("moved.yardwright"));
    }
}

TEST_F(Copies, AReaderFollowsWhenABackupIsPutInTheBooksPlace) {
    const QString older = copyAs("older");
    newYard(QStringLiteral("South"));
    const auto reader = Session::open(path(), clock, Session::Access::ReadOnly);
    EXPECT_EQ(reader->yards().size(), 2U);
    session.reset();
    ASSERT_TRUE(QFile::remove(path()));
    ASSERT_TRUE(QFile::rename(older, path()));
    EXPECT_TRUE(reader->changedElsewhere());
    EXPECT_EQ(reader->yards().size(), 1U);
    EXPECT_FALSE(reader->changedElsewhere());
}

TEST_F(Copies, AReaderNeverTurnsIntoAnotherBook) {
    const auto reader = Session::open(path(), clock, Session::Access::ReadOnly);
    session.reset();
    ASSERT_TRUE(QFile::remove(path()));
    Session::create(path(), clock);
    EXPECT_FALSE(reader->changedElsewhere());
    EXPECT_EQ(reader->yards().size(), 1U);
    EXPECT_EQ(thrownBy([&] { reader->takeOver(); }).kind, Error::Kind::Book);
    EXPECT_TRUE(reader->readOnly());
}

} // namespace

} // namespace tests::edit
