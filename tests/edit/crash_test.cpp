#include "tests/edit/edit_fixture.h"

#include "core/edit/edit_context.h"
#include "core/edit/row_change.h"

#include <chrono>
#include <csignal>
#include <random>
#include <set>

#include <sys/wait.h>
#include <unistd.h>

namespace tests::edit {

namespace {

/// An edit of the child's: carries, visits, ranges of visits, undo and redo.
std::optional<HistoryLine> someEdit(Session& session, std::mt19937& dice, ColonyId colony, Day today) {
    switch (dice() % 8) {
    case 0:
        // The colony itself stays.
        if (session.undoText() == QStringLiteral("Added 5 on stand 5 of North")) return std::nullopt;
        return session.undo();
    case 1:
        return session.redo();
    case 2:
    case 3:
        return session.apply([&](const EditContext& c) {
            const qint64 first = c.nextId(Table::Visit);
            // Days of the far past, each once: the greatest id tells how many there have been.
            ChangeSet change{QStringLiteral("Imported visits"), {}, {}, {}, {}};
            change.bulk.push_back({Table::Visit, first, 500, [=](qint64 i) {
                                       Visit v;
                                       v.colony = colony;
                                       v.day = dayOf(1000, 1, 1) + static_cast<int>(first + i);
                                       return toRow(v);
                                   }});
            return change;
        });
    case 4:
        return session.apply([&](const EditContext& c) {
            Yard yard;
            yard.name = QString::number(c.nextId(Table::Yard));
            return core::edit::newYard(c, yard);
        });
    default:
        return session.apply([&](const EditContext& c) {
            return carryHive(c, colony, {static_cast<qint32>(dice() % 9000), 0}, today);
        });
    }
}

/// Edits until it is killed; says each line's number once it is in the book.
[[noreturn]] void child(const QString& path, const Clock& clock, ColonyId colony, unsigned seed, int out) {
    std::mt19937 dice(seed);
    try {
        const auto session = Session::open(path, clock);
        for (;;) {
            const auto line = someEdit(*session, dice, colony, clock.today());
            const qint64 seq = line ? line->seq : 0;
            if (seq > 0 && write(out, &seq, sizeof seq) != sizeof seq) _exit(2);
        }
    } catch (const Error& e) {
        fprintf(stderr, "child: %s %s\n", e.what(), e.detail().toUtf8().constData());
        _exit(3);
    }
}

void spin(std::chrono::microseconds time) {
    const auto end = std::chrono::steady_clock::now() + time;
    while (std::chrono::steady_clock::now() < end) {
    }
}

class Crash : public EditTest {
protected:
    YardId yard = newYard(QStringLiteral("North"));
    ColonyId k5 = newColony(yard, QStringLiteral("5"), {0, 0}, dayOf(1000, 1, 1));

    /// Starts a child, lets it write at least `lines` lines and a little more, kills it; returns what it said.
    std::set<qint64> killedAfter(unsigned lines, unsigned seed) {
        int ends[2];
        if (pipe(ends) != 0) throw std::runtime_error("no pipe");
        const pid_t pid = fork();
        if (pid == 0) {
            close(ends[0]);
            child(path(), clock, k5, seed, ends[1]);
        }
        close(ends[1]);
        std::set<qint64> said;
        qint64 seq = 0;
        const auto next = [&] { return read(ends[0], &seq, sizeof seq) == sizeof seq; };
        while (said.size() < lines && next()) said.insert(seq);
        spin(std::chrono::microseconds(seed * 7919 % 30'000));
        kill(pid, SIGKILL);
        while (next()) said.insert(seq);
        close(ends[0]);
        int status = 0;
        waitpid(pid, &status, 0);
        EXPECT_TRUE(WIFSIGNALED(status)) << "the child ended by itself";
        return said;
    }
};

TEST_F(Crash, KilledAtAnyMomentTheBookHasEveryEditThatWasSaidAndNoHalfOne) {
    session.reset();
    std::random_device chance;
    const unsigned first = chance() % 1'000'000;
    for (unsigned round = 0; round < 12; ++round) {
        SCOPED_TRACE("seed " + std::to_string(first + round));
        const auto said = killedAfter(1 + (first + round) % 5, first + round);
        session = Session::open(path(), clock);
        std::set<qint64> there;
        for (const HistoryLine& line : session->history(1'000'000)) there.insert(line.seq);
        for (const qint64 seq : said) EXPECT_TRUE(there.contains(seq)) << seq;
        EXPECT_EQ(problems(), "");
        session.reset();
    }
}

} // namespace

} // namespace tests::edit
