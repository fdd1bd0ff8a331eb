#include "tests/reliability/figures.h"
#include "tests/reliability/workload.h"

#include "core/edit/edit_context.h"
#include "core/exchange/import.h"

#include <chrono>
#include <csignal>
#include <random>
#include <set>

#include <QFile>

#include <sys/wait.h>
#include <unistd.h>

// A process that edits, or imports, is killed at a moment of chance (SIGKILL), again and again on one book.

namespace tests::reliability {

namespace {

constexpr int kVisitsAnImport = 200;
constexpr int kKillsABook = 50; ///< its check stays quick
const QString kLastToUndo = QStringLiteral("Added 5 on stand 5 of North");

/// Visits on days that no import had before.
void importSome(Session& session, const QString& folder, std::mt19937& dice) {
    const int from = static_cast<int>(dice() % 2'000'000);
    QByteArray text = "colony,date,bees_top,queen,note\n";
    for (int i = 0; i < kVisitsAnImport; ++i)
        text += "5," + isoText(dayOf(1000, 1, 1) + from % 300'000 + i).toLatin1() + ",3.25,eggs,as it was\n";
    const QString path = folder + QStringLiteral("/visits.csv");
    writeText(path, text);
    core::exchange::ImportFiles files;
    files.leaveOutOtherwise = true;
    files.files.push_back({core::exchange::FileKind::Visits, path});
    core::exchange::importFiles(session, files, false);
}

void editSome(Session& session, std::mt19937& dice) {
    switch (dice() % 5) {
    case 0:
        if (session.undoText() != kLastToUndo) session.undo();
        return;
    case 1:
        session.redo();
        return;
    default:
        session.apply([&](const EditContext& c) {
            return carryHive(c, ColonyId{1}, {static_cast<qint32>(dice() % 9000), 0}, dayOf(2026, 9, 20));
        });
    }
}

class Kill : public EditTest {
protected:
    Kill() {
        const YardId north = newYard(QStringLiteral("North"));
        newColony(north, QStringLiteral("5"), {0, 0}, dayOf(1000, 1, 1));
        session.reset();
        copyFile(path(), dir.filePath(QStringLiteral("fresh.yardwright")));
    }

    /// Lets a child work and kills it; the numbers of the lines that it had before it was killed.
    std::set<qint64> killed(bool imports, unsigned seed);
    void survive(bool imports, int kills, const char* what);

private:
    [[noreturn]] void work(bool imports, unsigned seed, int out);
};

void Kill::work(bool imports, unsigned seed, int out) {
    std::mt19937 dice(seed);
    try {
        const auto own = Session::open(path(), clock);
        for (;;) {
            if (imports)
                importSome(*own, dir.path(), dice);
            else
                editSome(*own, dice);
            const qint64 seq = own->history(1).at(0).seq;
            if (write(out, &seq, sizeof seq) != sizeof seq) _exit(2);
        }
    } catch (const Error& e) {
        fprintf(stderr, "child: %s %s\n", e.what(), e.detail().toUtf8().constData());
        _exit(3);
    }
}

std::set<qint64> Kill::killed(bool imports, unsigned seed) {
    int ends[2];
    if (pipe(ends) != 0) throw std::runtime_error("no pipe");
    const pid_t child = fork();
    if (child == 0) {
        close(ends[0]);
        work(imports, seed, ends[1]);
    }
    close(ends[1]);
    std::set<qint64> said;
    qint64 seq = 0;
    const auto next = [&] { return read(ends[0], &seq, sizeof seq) == sizeof seq; };
    if (next()) said.insert(seq);
    usleep(seed * 7919 % 40'000);
    if (child > 1) kill(child, SIGKILL);
    while (next()) said.insert(seq);
    close(ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << "the child ended by itself";
    return said;
}

void Kill::survive(bool imports, int kills, const char* what) {
    const unsigned first = seedOfRun();
    qint64 losses = 0;
    qint64 acknowledged = 0;
    for (int i = 0; i < kills && !HasFailure(); ++i) {
        const unsigned seed = first + static_cast<unsigned>(i);
        SCOPED_TRACE("seed " + std::to_string(seed));
        if (i % kKillsABook == 0) copyFile(dir.filePath(QStringLiteral("fresh.yardwright")), path());
        const auto said = killed(imports, seed);
        acknowledged += static_cast<qint64>(said.size());
        session = Session::open(path(), clock);
        std::set<qint64> there;
        for (const HistoryLine& line : session->history(1'000'000)) there.insert(line.seq);
        for (const qint64 seq : said) losses += there.contains(seq) ? 0 : 1;
        EXPECT_EQ(losses, 0);
        EXPECT_EQ(problems(), "");
        session.reset();
    }
    figure("Process killed (SIGKILL)", (std::string("kills while it ") + what).c_str(), kills, Sum::Kills);
    figure("Process killed (SIGKILL)", (std::string("acknowledged while it ") + what).c_str(), acknowledged);
    figure("Process killed (SIGKILL)", (std::string("losses while it ") + what).c_str(), losses, Sum::Losses);
}

TEST_F(Kill, WhileItEdits) { survive(false, longRun() ? 2000 : 18, "edits"); }

TEST_F(Kill, WhileItImports) { survive(true, longRun() ? 2000 : 12, "imports"); }

} // namespace

} // namespace tests::reliability
