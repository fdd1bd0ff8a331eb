#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>

namespace {

/// One page in nine of the demo book lost.
TEST(SalvageCommand, PutsWhatCanBeReadIntoANewBookAndSaysWhatIsMissing) {
    const QTemporaryDir dir;
    const QString book = dir.filePath(QStringLiteral("book.yardwright"));
    const QString made = dir.filePath(QStringLiteral("new.yardwright"));
    ASSERT_EQ(runProgram({QStringLiteral("demo"), book, QStringLiteral("--colonies"), QStringLiteral("30")}).status, 0);
    QByteArray damaged = bytesOf(book);
    constexpr qsizetype kPage = 4096;
    for (qsizetype page = 5; page < damaged.size() / kPage; page += 9)
        damaged.replace(page * kPage, kPage, QByteArray(kPage, '\0'));
    writeFile(book, damaged);
    ASSERT_EQ(runProgram({QStringLiteral("check"), book}).status, 5);

    const Ran ran = runProgram({QStringLiteral("salvage"), book, made});
    EXPECT_EQ(ran.status, 3) << ran.out.toStdString() << ran.err.toStdString(); // something is lost
    EXPECT_TRUE(ran.out.startsWith("What could be read of book.yardwright on ")) << ran.out.toStdString();
    EXPECT_TRUE(
        bytesOf(dir.filePath(QStringLiteral("new - what was salvaged.txt"))).startsWith("What could be read of"));
    EXPECT_EQ(runProgram({QStringLiteral("check"), made}).status, 0);
    EXPECT_TRUE(bytesOf(book) == damaged);

    const Ran again = runProgram({QStringLiteral("salvage"), book, made});
    EXPECT_EQ(again.status, 5);
    EXPECT_EQ(again.errorLines().size(), 1);
    EXPECT_EQ(runProgram({QStringLiteral("salvage"), book}).status, 2);
    const Ran itself = runProgram({QStringLiteral("salvage"), book, book});
    EXPECT_EQ(itself.status, 5);
    EXPECT_EQ(QString::fromUtf8(itself.err),
              QStringLiteral("yardwright: %1 is the damaged book itself, which stays as it is: the new book needs a "
                             "name of its own.\n")
                  .arg(book));
    EXPECT_TRUE(bytesOf(book) == damaged);
    const Ran none =
        runProgram({QStringLiteral("salvage"), dir.filePath(QStringLiteral("none")), made + QStringLiteral("2")});
    EXPECT_EQ(none.status, 5);
    EXPECT_EQ(none.errorLines().size(), 1);
}

} // namespace
