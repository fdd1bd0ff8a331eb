#include "core/exchange/kept_mapping.h"
#include "tests/app/program.h"
#include "tests/support/small_files.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include <sys/stat.h>

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

// Waited for, a pipe would never answer; a device has no end.
TEST_F(BadFiles, APipeOrADevice) {
    const QString pipe = dir.filePath("pipe.csv");
    ASSERT_EQ(mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
    ASSERT_TRUE(QFile::link(pipe, dir.filePath("link.csv")));
    for (const QString& file : {pipe, dir.filePath("link.csv"), QStringLiteral("/dev/zero")}) {
        expectRefused(file);
        const QString kind = file == "/dev/zero" ? "device" : "pipe";
        EXPECT_EQ(
            QString::fromUtf8(runProgram({"import", book, "--visits", file}).err),
            QStringLiteral("yardwright: %1:1: file: cannot be opened (it is a %2), expected a readable CSV file\n")
                .arg(file, kind));
        for (const QStringList& words :
             {QStringList{"check", file}, QStringList{"backup", file, "--to", dir.filePath("to")},
              QStringList{"salvage", file, dir.filePath("to")}}) {
            const Ran ran = runProgram(words);
            EXPECT_EQ(ran.status, 5) << words.join(u' ').toStdString();
            EXPECT_EQ(QString::fromUtf8(ran.err),
                      QStringLiteral("yardwright: %1 is a %2, not a book.\n").arg(file, kind));
        }
    }
}

// A row that is too long has no column to name.
TEST_F(BadFiles, NamesNoNumberTwice) {
    writeFile(dir.filePath("z.csv"), QByteArray(3 << 20, 'x'));
    EXPECT_EQ(QString::fromUtf8(runProgram({"import", book, "--visits", dir.filePath("z.csv")}).err),
              QStringLiteral("yardwright: %1:1: column 1: a row longer than 1 MiB, expected shorter ones\n")
                  .arg(dir.filePath("z.csv")));
}

TEST_F(BadFiles, WhyNoFolderCanBeMadeIsSaid) {
    writeFile(dir.filePath("taken"), "x");
    const QString folder = dir.filePath("taken/a/b");
    for (const QStringList& words : {QStringList{"export", book, "--to", folder}, QStringList{"template", folder}}) {
        const Ran ran = runProgram(words);
        EXPECT_EQ(ran.status, 5) << words.front().toStdString();
        EXPECT_EQ(QString::fromUtf8(ran.err),
                  QStringLiteral("yardwright: The folder %1 cannot be made: %2 is no folder. Expected a folder, or a "
                                 "place where one can be made.\n")
                      .arg(folder, dir.filePath("taken")));
    }
}

TEST_F(BadFiles, WhatFailsToBeWrittenLeavesNoFolderThatItMade) {
    const QString folder = dir.filePath("fresh/a");
    for (const QStringList& words : {QStringList{"export", book, "--to", folder}, QStringList{"template", folder}}) {
        Ran ran;
        {
            const tests::SmallFiles full(10);
            ran = runProgram(words);
        }
        EXPECT_EQ(ran.status, 5) << words.front().toStdString();
        EXPECT_TRUE(QString::fromUtf8(ran.err).contains("the disk is full")) << ran.err.toStdString();
        EXPECT_FALSE(QFile::exists(dir.filePath("fresh"))) << words.front().toStdString();
    }
}

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
