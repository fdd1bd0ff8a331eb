#include "core/base/output_target.h"

#include "core/base/error.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace {

class OutputTarget : public testing::Test {
protected:
    QTemporaryDir dir;
    const QByteArray header = QByteArray("SQLite format 3\0", 16) + QByteArray(4080, '\1'); // sqlite.org/fileformat

    QString made(const char* name, const QByteArray& bytes) const {
        const QString path = dir.filePath(QString::fromLatin1(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
        return path;
    }
    QString linkTo(const QString& path, const char* name) const {
        const QString link = dir.filePath(QString::fromLatin1(name));
        EXPECT_TRUE(QFile::link(path, link));
        return link;
    }
};

/// Empty: it may be written.
std::string refusalAt(const QString& path) {
    try {
        core::needOutputTarget(path);
    } catch (const core::Error& e) {
        EXPECT_EQ(e.kind(), core::Error::Kind::Book);
        return e.userMessage().toStdString();
    }
    return {};
}

std::string isABook(const QString& path) {
    return path.toStdString() + " is a book: choose another name. Nothing was written.";
}

std::string isNotOrdinary(const QString& path) {
    return path.toStdString() + " is no ordinary file: choose another name. Nothing was written.";
}

TEST_F(OutputTarget, MayBeNewOrAPlainFile) {
    EXPECT_EQ(refusalAt(dir.filePath("none.pdf")), "");
    EXPECT_EQ(refusalAt(dir.filePath("none.yardwright")), "");
    EXPECT_EQ(refusalAt(dir.filePath("no/folder/none.pdf")), "") << "the write says why";
    EXPECT_EQ(refusalAt(made("empty.pdf", "")), "");
    EXPECT_EQ(refusalAt(made("old.pdf", "%PDF-1.4 of last year")), "");
    EXPECT_EQ(refusalAt(made("short.csv", header.left(15))), "") << "one byte short of a book's first";
    EXPECT_EQ(refusalAt(made("told.csv", "SQLite format 3, as told")), "");
    EXPECT_EQ(refusalAt(linkTo(dir.filePath("old.pdf"), "link.pdf")), "");
    EXPECT_EQ(refusalAt(linkTo(dir.filePath("gone.pdf"), "astray.pdf")), "");
}

TEST_F(OutputTarget, IsNoBookByItsName) {
    for (const char* name : {"b.yardwright", "B.YARDWRIGHT"}) {
        const QString path = made(name, "damaged");
        EXPECT_EQ(refusalAt(path), isABook(path));
    }
    const QString link = linkTo(dir.filePath("b.yardwright"), "link.pdf");
    EXPECT_EQ(refusalAt(link), isABook(link));
}

TEST_F(OutputTarget, IsNoBookByItsFirstBytes) {
    const QString path = made("visits.csv", header);
    EXPECT_EQ(refusalAt(path), isABook(path));
    const QString link = linkTo(path, "link.csv");
    EXPECT_EQ(refusalAt(link), isABook(link));
}

TEST_F(OutputTarget, IsNoBookByTheLockFileBesideIt) {
    const QString path = made("visits.csv", "damaged");
    EXPECT_EQ(refusalAt(path), "");
    made("visits.csv-lock", "");
    EXPECT_EQ(refusalAt(path), isABook(path));
    const QString link = linkTo(path, "link.csv");
    EXPECT_EQ(refusalAt(link), isABook(link));
}

TEST_F(OutputTarget, IsNoDeviceNoPipeAndNoFolder) {
    const QString pipe = dir.filePath("pipe.pdf");
    ASSERT_EQ(mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
    for (const QString& path : {QStringLiteral("/dev/null"), pipe, dir.path(), linkTo(pipe, "link.pdf")})
        EXPECT_EQ(refusalAt(path), isNotOrdinary(path));
}

// SQLite's locks are the process's: closing any other descriptor of the file would drop them (man 2 fcntl_locking).
TEST_F(OutputTarget, LooksAtABookThatIsOpenHereAndItsLocksStay) {
    for (const QByteArray& bytes : {header, QByteArray("plain")}) {
        const QString path = made("open.csv", bytes);
        const QString other = dir.filePath("another name.csv");
        ASSERT_EQ(link(QFile::encodeName(path).constData(), QFile::encodeName(other).constData()), 0);
        const int held = open(QFile::encodeName(path).constData(), O_RDWR | O_CLOEXEC);
        const int asking = open(QFile::encodeName(path).constData(), O_RDWR | O_CLOEXEC);
        ASSERT_GE(held, 0);
        ASSERT_GE(asking, 0);
        struct flock whole {};
        whole.l_type = F_WRLCK;
        ASSERT_EQ(fcntl(held, F_SETLK, &whole), 0);
        for (const QString& name : {path, other}) EXPECT_EQ(refusalAt(name), bytes == header ? isABook(name) : "");
        ASSERT_EQ(fcntl(asking, F_OFD_GETLK, &whole), 0);
        EXPECT_EQ(whole.l_type, F_WRLCK) << "the lock is gone";
        close(asking);
        close(held);
        ASSERT_TRUE(QFile::remove(other));
    }
}

} // namespace
