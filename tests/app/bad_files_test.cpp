#include "core/exchange/kept_mapping.h"
#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

// What is no CSV at all: exit 4, one sentence a fault with file and line, the book byte for byte as it was.

namespace {

class BadFiles : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_EQ(runProgram({"new", book}).status, 0);
        before = bytesOf(book);
        ASSERT_FALSE(before.isEmpty());
    }
    void expectRefused(const QString& file) {
        const Ran ran = runProgram({"import", book, "--visits", file});
        EXPECT_EQ(ran.status, 4) << ran.err.left(500).toStdString();
        ASSERT_FALSE(ran.errorLines().isEmpty());
        EXPECT_LE(ran.errorLines().size(), 51);
        for (const QString& line : ran.errorLines()) EXPECT_LT(line.size(), 1000);
        EXPECT_TRUE(ran.errorLines().first().startsWith("yardwright: " + file + ':'))
            << ran.err.left(500).toStdString();
        EXPECT_TRUE(ran.out.isEmpty());
        EXPECT_EQ(bytesOf(book), before);
    }
    QTemporaryDir dir;
    QString book = dir.filePath("b.yardwright");
    QByteArray before;
};

} // namespace

TEST_F(BadFiles, Missing) { expectRefused(dir.filePath("none.csv")); }

TEST_F(BadFiles, AFolder) { expectRefused(dir.path()); }

TEST_F(BadFiles, Empty) {
    writeFile(dir.filePath("e.csv"), QByteArray());
    expectRefused(dir.filePath("e.csv"));
}

TEST_F(BadFiles, BinaryRubbish) {
    QByteArray bytes;
    quint32 x = 1;
    for (int i = 0; i < 200'000; ++i) {
        x = x * 1664525U + 1013904223U;
        bytes += static_cast<char>(x >> 24);
    }
    writeFile(dir.filePath("r.csv"), bytes);
    expectRefused(dir.filePath("r.csv"));
}

TEST_F(BadFiles, ALineOfTwoHundredMegabytes) {
    QFile file(dir.filePath("long.csv"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("colony,date,note\nA,2026-01-01,");
    const QByteArray chunk(1 << 20, 'x');
    for (int i = 0; i < 200; ++i) ASSERT_EQ(file.write(chunk), chunk.size());
    file.close();
    expectRefused(file.fileName());
}

TEST_F(BadFiles, AnUnknownMapping) {
    writeFile(dir.filePath("v.csv"), "colony,date\n");
    const Ran ran = runProgram({"import", book, "--visits", dir.filePath("v.csv"), "--mapping", "Scale"});
    EXPECT_EQ(ran.status, 4);
    EXPECT_EQ(ran.err, "yardwright: “Scale” is no mapping of this book, expected the name of one; it has none.\n");
    EXPECT_EQ(bytesOf(book), before);
}

TEST_F(BadFiles, AKeptMapping) {
    const core::SystemClock clock;
    {
        core::exchange::Mapping mapping;
        mapping.forms.separator = ';';
        mapping.columns = {{"Hive", "colony", {}, {}, {}}, {"Day", "date", {}, {}, {}}};
        const auto session = core::edit::Session::open(book, clock);
        session->apply([&](const auto& c) {
            return core::exchange::keepMapping(c, "Scale", mapping, {"Hive", "Day"});
        });
    }
    before = bytesOf(book);
    writeFile(dir.filePath("v.csv"), "Hive;Date\nA;2026-05-01\n");
    const Ran ran = runProgram({"import", book, "--visits", dir.filePath("v.csv"), "--mapping", "scale"});
    EXPECT_EQ(ran.status, 4);
    EXPECT_EQ(QString::fromUtf8(ran.err),
              QStringLiteral("yardwright: %1:1: Day: is not in the file's first row, expected it there\n")
                  .arg(dir.filePath("v.csv")));
    EXPECT_EQ(bytesOf(book), before);
}
