#include "tests/reliability/figures.h"
#include "tests/reliability/typist.h"

#include "core/edit/backups.h"
#include "ui/backup/where.h"
#include "ui/visit/draft_journal.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QProcess>
#include <QStandardPaths>

#include <csignal>
#include <map>
#include <random>
#include <set>
#include <sstream>

#include <sys/wait.h>
#include <unistd.h>

// The real window, typed into by simulated keys in a process of its own, is killed (SIGKILL) at a moment of chance,
// again and again on one book: while it opens, types, saves, makes a backup. Then what it had said must be there: each
// edit that it saved, and what was half typed up to the last key that it took.

namespace tests::reliability {

namespace {

using core::edit::Session;
using ui::visit::DraftJournal;
using ui::visit::Field;
using ui::visit::HalfTyped;

constexpr int kKillsABook = 60;

/// What one window said until it was killed.
struct Heard {
    bool ready = false;
    int lines = 0;
    std::map<qint64, QString> shown; ///< half typed, by colony
    std::set<qint64> saved;          ///< lines of the history
    std::map<qint64, QString> typed; ///< notes, by colony
    std::set<qint64> going;          ///< colonies whose typing may be gone: saved or thrown away
};

class WindowKill : public testing::Test {
protected:
    void newBook();
    Heard killedWhile(unsigned seed);
    void judge(const Heard& heard);
    /// What one window left half typed is gone, as if it had never been written.
    void forgetTyping() { QFile::remove(DraftJournal(m_book->path(), m_bookId).path()); }

    bool m_expectLoss = false;
    qint64 m_losses = 0;
    qint64 m_acknowledged = 0;
    qint64 m_keys = 0;
    qint64 m_opening = 0; ///< kills before the window was ready
    qint64 m_backups = 0; ///< found sound

private:
    void hear(const std::string& line, Heard& heard);
    void lost(const std::string& what);
    void judgeTyping(const Session& session, const Heard& heard);
    void judgeBackups(const Session& session);

    std::unique_ptr<BookOfTest> m_book;
    QString m_bookId;
    std::unique_ptr<QTemporaryDir> m_backupsIn;
    FixedClock m_clock;
    std::set<qint64> m_saved;              ///< by all windows of this book
    std::map<qint64, HalfTyped> m_written; ///< as it lies beside the book, by colony
};

void WindowKill::newBook() {
    m_book = std::make_unique<BookOfTest>();
    m_bookId = Session::open(m_book->path(), m_clock)->bookId();
    m_backupsIn = std::make_unique<QTemporaryDir>();
    ui::backup::setFolder(m_backupsIn->path());
    m_clock.day = m_book->clock().day;
    m_saved.clear();
    m_written.clear();
}

void WindowKill::lost(const std::string& what) {
    ++m_losses;
    if (!m_expectLoss && m_losses < 10) ADD_FAILURE() << what;
}

void WindowKill::hear(const std::string& line, Heard& heard) {
    std::istringstream words(line);
    std::string what, note;
    qint64 number = 0;
    words >> what >> number >> note;
    const QString typed = note == "-" ? QString() : QString::fromStdString(note);
    ++heard.lines;
    if (what == "shown") heard.shown[number] = typed;
    if (what == "ready") heard.ready = true;
    if (what == "saved") heard.saved.insert(number);
    if (what == "typing") {
        ++m_keys;
        heard.typed[number] = typed;
        heard.going.erase(number);
    }
    if (what == "saving" || what == "leaving") heard.going.insert(number);
}

Heard WindowKill::killedWhile(unsigned seed) {
    int ends[2];
    if (pipe(ends) != 0) throw std::runtime_error("no pipe");
    const pid_t child = fork();
    if (child == 0) {
        close(ends[0]);
        typeUntilKilled(m_book->path(), m_clock, seed, ends[1]);
    }
    close(ends[1]);
    Heard heard;
    std::string text;
    char part[4096];
    const auto more = [&] {
        const ssize_t got = read(ends[0], part, sizeof part);
        if (got <= 0) return false;
        text.append(part, static_cast<size_t>(got));
        for (size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n')) {
            hear(text.substr(0, end), heard);
            text.erase(0, end + 1);
        }
        return true;
    };
    std::mt19937 dice(seed);
    const bool opening = dice() % 5 == 0;
    const int lines = static_cast<int>(dice() % 30);
    while (!opening && (!heard.ready || heard.lines < lines) && more()) {
    }
    usleep(static_cast<unsigned>(dice() % (opening ? 200'000 : 8'000)));
    if (child > 1) kill(child, SIGKILL);
    while (more()) {
    }
    close(ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL) << "the window ended by itself, " << status;
    return heard;
}

void WindowKill::judgeTyping(const Session& session, const Heard& heard) {
    std::set<QString> done;
    for (const auto& line : session.history(1'000'000)) done.insert(line.text);
    const auto wasSaved = [&](const HalfTyped& half) {
        return done.contains(
            QStringLiteral("Logged the visit of A%1 on %2").arg(half.colony.value).arg(core::isoText(half.draft.day)));
    };
    std::map<qint64, QString> expected;
    for (const auto& [colony, half] : m_written) {
        if (wasSaved(half)) continue; // a window that opens then has nothing more to do with it
        const QString note = half.draft[Field::Note];
        expected[colony] = note;
        // A window that has opened shows what lay beside the book.
        const auto at = heard.shown.find(colony);
        if (heard.ready && (at == heard.shown.end() || at->second != note)) lost("not shown: " + note.toStdString());
    }
    for (const auto& [colony, note] : heard.typed) expected[colony] = note;
    std::map<qint64, HalfTyped> now;
    const DraftJournal::Found found = DraftJournal(m_book->path(), session.bookId()).read();
    if (found.unread > 0) lost("lines of what is half typed say nothing");
    for (const HalfTyped& half : found.all) now[half.colony.value] = half;
    for (const auto& [colony, note] : expected) {
        const auto at = now.find(colony);
        const bool there = at != now.end() && at->second.draft[Field::Note].startsWith(note);
        if (!there && !heard.going.contains(colony)) lost("half typed and gone: " + note.toStdString());
    }
    m_written = std::move(now);
}

/// Those that bear a backup's name are whole.
void WindowKill::judgeBackups(const Session& session) {
    for (const auto& backup : core::edit::backupsIn(m_backupsIn->path(), session.bookId())) {
        const auto copy = Session::open(backup.path, m_clock, Session::Access::ReadOnly);
        if (!copy->check().isEmpty() || copy->history(1).front().seq != backup.seq) lost("a backup is not whole");
        ++m_backups;
    }
}

void WindowKill::judge(const Heard& heard) {
    const auto session = Session::open(m_book->path(), m_clock);
    m_saved.insert(heard.saved.begin(), heard.saved.end());
    m_acknowledged += static_cast<qint64>(heard.saved.size());
    m_opening += heard.ready ? 0 : 1;
    std::set<qint64> there;
    for (const auto& line : session->history(1'000'000)) there.insert(line.seq);
    for (const qint64 seq : m_saved)
        if (!there.contains(seq)) lost("saved and gone: line " + std::to_string(seq));
    if (const QStringList wrong = session->check(); !wrong.isEmpty()) lost(wrong.join(u' ').toStdString());
    judgeTyping(*session, heard);
    m_clock.day = m_clock.day + 1;
    if (m_clock.day == m_book->clock().day + kKillsABook) {
        judgeBackups(*session);
        m_book.reset();
    }
}

TEST_F(WindowKill, LosesNothingThatItSavedOrThatWasTyped) {
    const int kills = longRun() ? 3000 : 8;
    const unsigned first = seedOfRun();
    int done = 0;
    for (; done < kills && m_losses < 10 && !HasFailure(); ++done) {
        SCOPED_TRACE("kill " + std::to_string(done));
        if (done % kKillsABook == 0) newBook();
        judge(killedWhile(first + static_cast<unsigned>(done)));
    }
    EXPECT_EQ(m_losses, 0);
    EXPECT_GT(m_acknowledged + m_keys, 0);
    constexpr char kHarness[] = "Window killed (SIGKILL)";
    figure(kHarness, "kills", done, Sum::Kills);
    figure(kHarness, "of them while it opened", m_opening);
    figure(kHarness, "edits that it had saved", m_acknowledged);
    figure(kHarness, "keys of half-typed visits", m_keys);
    if (longRun()) figure(kHarness, "backups made meanwhile, whole", m_backups);
    figure(kHarness, "losses", m_losses, Sum::Losses);
}

TEST_F(WindowKill, ALossIsFound) {
    m_expectLoss = true;
    newBook();
    constexpr unsigned kTries = 20;
    for (unsigned i = 0; i < kTries && m_losses == 0; ++i) {
        const Heard heard = killedWhile(i);
        forgetTyping();
        judge(heard);
    }
    EXPECT_GT(m_losses, 0);
}

#ifdef YW_PROGRAM
/// The program itself on a book that nobody edits, killed while it starts, opens and makes its first backup.
TEST_F(WindowKill, OfTheProgramItselfLeavesTheBookAsItWas) {
    const int kills = longRun() ? 200 : 3;
    std::mt19937 dice(seedOfRun());
    const BookOfTest book;
    const std::vector<QString> before = book.history();
    qint64 losses = 0;
    for (int i = 0; i < kills; ++i) {
        QProcess program;
        program.start(QStringLiteral(YW_PROGRAM), {book.path()});
        ASSERT_TRUE(program.waitForStarted());
        usleep(static_cast<unsigned>(dice() % 700'000));
        ASSERT_EQ(program.state(), QProcess::Running) << program.readAllStandardError().toStdString();
        program.kill();
        ASSERT_TRUE(program.waitForFinished());
        const bool same = book.history() == before;
        if (!same || !Session::open(book.path(), book.clock())->check().isEmpty()) ++losses;
    }
    EXPECT_EQ(losses, 0);
    figure("Program killed (SIGKILL) while it opens a book", "kills", kills, Sum::Kills);
    figure("Program killed (SIGKILL) while it opens a book", "losses", losses, Sum::Losses);
}
#endif

} // namespace

} // namespace tests::reliability
