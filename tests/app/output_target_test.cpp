#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <sys/stat.h>

namespace {

/// The one line of ours: Qt may have a line of its own about where it runs.
std::string sentenceOf(const Ran& ran) {
    return ran.errorLines().filter(QStringLiteral("yardwright: ")).join(u'\n').toStdString();
}

/// Kiln Field (tests/data/yards) in a book of any name, over which each command is told to write.
class OutputOverABook : public testing::Test {
protected:
    QTemporaryDir dir;

    QString bookNamed(const QString& name) const {
        const QString imported = dir.filePath("b.yardwright"), book = dir.filePath(name);
        const QString folder = QStringLiteral(YW_TEST_DATA "/yards/kiln-field");
        QStringList words = {"import", imported};
        for (const QString& file : QDir(folder).entryList({"*.csv"}))
            words << "--" + QString(file).chopped(4).replace('_', '-') << folder + '/' + file;
        EXPECT_EQ(runProgram(words).status, 0);
        EXPECT_TRUE(imported == book || QFile::rename(imported, book));
        return book;
    }
    /// Refused in one sentence, the book byte for byte as it was, nothing else in the folder.
    void expectRefused(const QStringList& words, const QString& book) const {
        const QByteArray before = bytesOf(book);
        ASSERT_TRUE(before.startsWith("SQLite format 3"));
        const QStringList beside = QDir(dir.path()).entryList(QDir::Files);
        const Ran ran = runProgram(words);
        EXPECT_EQ(ran.status, 5) << ran.err.toStdString();
        EXPECT_EQ(sentenceOf(ran),
                  "yardwright: " + book.toStdString() + " is a book: choose another name. Nothing was written.");
        EXPECT_EQ(bytesOf(book), before);
        EXPECT_EQ(QDir(dir.path()).entryList(QDir::Files), beside);
    }
    QStringList worksheet(const QString& book, const QString& pdf) const {
        return {"worksheet", book, "--on", "2026-09-15", "--yard", "Kiln Field", "--pdf", pdf};
    }
};

TEST_F(OutputOverABook, AWorksheet) {
    const QString book = bookNamed("b.yardwright");
    expectRefused(worksheet(book, book), book);
}

TEST_F(OutputOverABook, AReport) {
    const QString book = bookNamed("b.pdf");
    expectRefused({"report", book, "--to", book, "--until", "2026-09-20"}, book);
}

TEST_F(OutputOverABook, AReportOfSeveralFiles) {
    const QString book = bookNamed("losses.csv");
    expectRefused({"report", book, "--to", dir.path(), "--until", "2026-09-20"}, book);
}

TEST_F(OutputOverABook, ARegisterAsPdf) {
    const QString book = bookNamed("b.pdf");
    expectRefused({"register", book, "--to", book}, book);
}

TEST_F(OutputOverABook, ARegisterAsCsv) {
    const QString book = bookNamed("b.csv");
    expectRefused({"register", book, "--to", book}, book);
}

TEST_F(OutputOverABook, AnExport) {
    const QString book = bookNamed("visits.csv");
    expectRefused({"export", book, "--to", dir.path()}, book);
}

TEST_F(OutputOverABook, Templates) {
    const QString book = bookNamed("visits.csv");
    expectRefused({"template", dir.path()}, book);
}

TEST_F(OutputOverABook, OrAPipe) {
    const QString book = bookNamed("b.yardwright"), pipe = dir.filePath("pipe.pdf");
    ASSERT_EQ(mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
    const Ran ran = runProgram(worksheet(book, pipe));
    EXPECT_EQ(ran.status, 5);
    EXPECT_EQ(sentenceOf(ran),
              "yardwright: " + pipe.toStdString() + " is no ordinary file: choose another name. Nothing was written.");
    struct stat found {};
    ASSERT_EQ(stat(QFile::encodeName(pipe).constData(), &found), 0);
    EXPECT_TRUE(S_ISFIFO(found.st_mode)) << "a file has taken its place";
}

} // namespace
