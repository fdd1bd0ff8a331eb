#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QProcess>
#include <QTemporaryDir>

#include <array>
#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <unistd.h>

// Long commands stopped by Ctrl+C: nothing is left, and the program ends as one that was interrupted.

namespace {

QStringList filesIn(const QString& dir) {
    return QDir(dir).entryList(QDir::Files | QDir::Dirs | QDir::Hidden | QDir::NoDotAndDotDot, QDir::Name);
}

struct Stopping : testing::Test {
    static void SetUpTestSuite() {
        shared = std::make_unique<QTemporaryDir>();
        ASSERT_EQ(runProgram({"demo", book(), "--colonies", "3000", "--years", "1"}).status, 0);
    }
    static void TearDownTestSuite() { shared.reset(); }
    static QString book() { return shared->filePath("large.yardwright"); }

    /// Ctrl+C as soon as the work has put something there, or the folder `there` is made.
    void stopOnceItWrites(const QStringList& words, const QString& in, const QString& there = {}) {
        const QStringList before = filesIn(in);
        QProcess process;
        process.start(QStringLiteral(YW_PROGRAM), words);
        ASSERT_TRUE(process.waitForStarted());
        const auto begun = [&] { return there.isEmpty() ? filesIn(in) != before : QDir(there).exists(); };
        while (!begun() && !process.waitForFinished(1)) {
        }
        ASSERT_EQ(process.state(), QProcess::Running) << "done before it could be stopped";
        ASSERT_EQ(::kill(static_cast<pid_t>(process.processId()), SIGINT), 0);
        ASSERT_TRUE(process.waitForFinished(60'000));
        EXPECT_EQ(process.exitStatus(), QProcess::CrashExit) << "ended by the signal, as shells expect";
        EXPECT_EQ(process.exitCode(), SIGINT);
        EXPECT_EQ(process.readAllStandardError(), "yardwright: stopped; nothing was changed.\n");
        EXPECT_EQ(process.readAllStandardOutput(), "");
        EXPECT_EQ(filesIn(in), before);
    }

    static std::unique_ptr<QTemporaryDir> shared;
    QTemporaryDir dir;
};

std::unique_ptr<QTemporaryDir> Stopping::shared;

TEST_F(Stopping, AnExport) {
    stopOnceItWrites({"export", book(), "--to", dir.filePath("out")}, dir.path(), dir.filePath("out"));
    stopOnceItWrites({"export", book(), "--to", dir.filePath("out"), "--for-spreadsheets"}, dir.path(),
                     dir.filePath("out"));
}

TEST_F(Stopping, ADemo) {
    stopOnceItWrites({"demo", dir.filePath("demo.yardwright"), "--colonies", "20000"}, dir.path());
}

TEST_F(Stopping, AnImportIntoANewBook) {
    const QTemporaryDir from;
    ASSERT_EQ(runProgram({"export", book(), "--to", from.path()}).status, 0);
    QStringList words{"import", dir.filePath("new.yardwright")};
    for (const char* kind : {"yards", "colonies", "visits"})
        words << "--" + QString(kind) << from.filePath(QString(kind) + ".csv");
    stopOnceItWrites(words, dir.path());
}

TEST_F(Stopping, ABackup) { stopOnceItWrites({"backup", book(), "--to", dir.filePath("copy.yardwright")}, dir.path()); }

TEST_F(Stopping, OnATerminalALineSaysHowFarItIs) {
    const int terminal = ::posix_openpt(O_RDWR | O_NOCTTY);
    ASSERT_GE(terminal, 0);
    ASSERT_EQ(::fcntl(terminal, F_SETFL, O_NONBLOCK), 0);
    ASSERT_EQ(::grantpt(terminal), 0);
    ASSERT_EQ(::unlockpt(terminal), 0);
    QProcess process;
    process.setStandardErrorFile(QString::fromLocal8Bit(::ptsname(terminal)), QIODevice::Append);
    process.start(QStringLiteral(YW_PROGRAM), {"export", book(), "--to", dir.filePath("out")});
    ASSERT_TRUE(process.waitForFinished(60'000));
    EXPECT_EQ(process.exitCode(), 0);
    QByteArray seen;
    std::array<char, 4096> some{};
    for (ssize_t count = 0; (count = ::read(terminal, some.data(), some.size())) > 0;) seen.append(some.data(), count);
    ::close(terminal);
    EXPECT_TRUE(seen.startsWith("\rWriting the book as CSV files 0 %")) << seen.left(80).toStdString();
    EXPECT_GT(seen.count('%'), 3);
    EXPECT_TRUE(seen.endsWith('\r')) << "and is gone afterwards";
}

} // namespace
