#include "tests/reliability/figures.h"
#include "tests/reliability/salvaged.h"
#include "tests/support/small_files.h"

#include "core/edit/history_codec.h"

#include <QDir>
#include <QFile>

#include <functional>
#include <random>

// A book is damaged in many ways and salvaged each time. What holds of every one of them stands in salvageAndCompare().

namespace tests::reliability {

namespace {

constexpr qsizetype kPage = 4096;

/// The sound book and its backup, made once: their bytes and what they say.
struct Made {
    QByteArray bytes;
    QByteArray backup;
    WholeBook says;
};

class Salvaging : public EditTest {
protected:
    Salvaging() {
        session.reset();
        QFile::remove(path());
        if (made().bytes.isEmpty()) make();
        writeText(backup(), made().backup);
    }
    static Made& made() {
        static Made one;
        return one;
    }
    QString backup() const { return dir.filePath(QStringLiteral("backup.yardwright")); }
    void make() {
        auto fresh = Session::create(path(), clock);
        makeHeldBook(*fresh, dir.path(), longRun() ? 400 : 60, backup());
        ASSERT_EQ(fresh->check().join(u'\n').toStdString(), "");
        fresh.reset();
        made().says = wholeBook(path(), clock);
        made().bytes = read(path());
        made().backup = read(backup());
        QFile::remove(path());
        QFile::remove(backup());
        ASSERT_GE(made().says.held.size(), 5U);
    }
    static QByteArray read(const QString& file) {
        QFile f(file);
        return f.open(QIODevice::ReadOnly) ? f.readAll() : QByteArray();
    }
    static qsizetype pages() { return made().bytes.size() / kPage; }

    /// All of them; of a short run two of imported visits, whose rows stand nowhere else (the last may be free by now),
    /// and a few others.
    static std::vector<qsizetype> somePages() {
        std::vector<qsizetype> some;
        for (qsizetype page = 0; page < pages(); page += longRun() ? 1 : 61) some.push_back(page);
        if (longRun()) return some;
        std::vector<qsizetype> imported;
        for (qsizetype page = 1; page < pages(); ++page) {
            const QByteArray bytes = made().bytes.mid(page * kPage, kPage);
            if (bytes.at(0) == 13 && bytes.contains("nothing to add on that day")) imported.push_back(page);
        }
        some.insert(some.end(), {imported.front(), imported.back()});
        return some;
    }

    std::optional<SalvageAccount> salvage(const QByteArray& damaged, bool withBackup, const std::string& what) {
        QFile::remove(path());
        writeText(path(), damaged);
        SalvageFrom from{path(), withBackup ? backup() : QString(), {}};
        ++m_salvaged;
        auto account =
            salvageAndCompare(made().says, from, dir.filePath(QStringLiteral("new.yardwright")), clock, what);
        m_whole += account && account->nothingLost();
        m_nothing += !account;
        return account;
    }
    void tell(const char* what) const {
        figure("Damaged books salvaged", what, m_salvaged, Sum::Faults);
        figure("Damaged books salvaged", (std::string(what) + ": nothing lost").c_str(), m_whole);
        figure("Damaged books salvaged", (std::string(what) + ": nothing to be read").c_str(), m_nothing);
    }

    qint64 m_salvaged = 0;
    qint64 m_whole = 0;
    qint64 m_nothing = 0;
};

TEST_F(Salvaging, ASoundBookComesBackAsItWasWithItsHistory) {
    const auto account = salvage(made().bytes, false, "sound");
    ASSERT_TRUE(account);
    EXPECT_TRUE(account->nothingLost()) << accountText(*account).toStdString();
    EXPECT_TRUE(account->historyKept);
}

TEST_F(Salvaging, EachPageInTurnLostLosesNoHold) {
    for (const qsizetype page : somePages()) {
        QByteArray damaged = made().bytes;
        damaged.replace(page * kPage, kPage, QByteArray(kPage, '\0'));
        for (const bool withBackup : {false, true}) {
            salvage(damaged, withBackup, "page " + std::to_string(page + 1) + (withBackup ? " with backup" : ""));
        }
    }
    EXPECT_GT(m_whole, 0);
    EXPECT_LT(m_whole, m_salvaged);
    tell("one page lost, each in turn");
}

TEST_F(Salvaging, EachPageInTurnGarbledLosesNoHoldAndInventsNothing) {
    const unsigned seed = longRun() ? seedOfRun() : 3;
    for (qsizetype page = 0; page < pages(); page += longRun() ? 1 : 37) {
        std::mt19937 dice(seed + static_cast<unsigned>(page));
        QByteArray damaged = made().bytes;
        const auto size = static_cast<qsizetype>(std::uniform_int_distribution<>(64, 2048)(dice));
        const auto at = static_cast<qsizetype>(std::uniform_int_distribution<qsizetype>(0, kPage - size)(dice));
        for (qsizetype i = 0; i < size; ++i)
            damaged[page * kPage + at + i] = static_cast<char>(std::uniform_int_distribution<>(0, 255)(dice));
        salvage(damaged, page % 3 == 0,
                "page " + std::to_string(page + 1) + " garbled from " + std::to_string(at) + ", " +
                    std::to_string(size) + " bytes, dice " + std::to_string(seed));
    }
    tell("a part of one page garbled, each in turn");
}

TEST_F(Salvaging, CutShortAnywhereItSaysWhatIsMissing) {
    for (int tenth = 0; tenth <= 9; tenth += longRun() ? 1 : 7)
        for (const bool withBackup : {false, true})
            salvage(made().bytes.left(made().bytes.size() * tenth / 10 + 17), withBackup,
                    "cut to " + std::to_string(tenth) + " tenths");
    tell("cut short");
}

TEST_F(Salvaging, ItsHeaderLostIsReadAllTheSame) {
    QByteArray damaged = made().bytes;
    damaged.replace(0, 100, QByteArray(100, '\xA5'));
    const auto account = salvage(damaged, false, "header");
    ASSERT_TRUE(account);
    EXPECT_TRUE(account->nothingLost()) << accountText(*account).toStdString();
}

TEST_F(Salvaging, ItsFirstPageLostIsReadWhereABookHasItsTables) {
    QByteArray damaged = made().bytes;
    damaged.replace(0, kPage, QByteArray(kPage, '\0'));
    const auto account = salvage(damaged, false, "first page");
    ASSERT_TRUE(account);
    EXPECT_GT(account->tables[static_cast<size_t>(Table::Visit)].kept, 400);
}

TEST_F(Salvaging, SeveralPagesLostTogetherLoseNoHold) {
    const unsigned seed = longRun() ? seedOfRun() : 11;
    std::mt19937 dice(seed);
    for (int i = 0; i < (longRun() ? 400 : 3); ++i) {
        QByteArray damaged = made().bytes;
        const int many = std::uniform_int_distribution<>(2, 12)(dice);
        for (int n = 0; n < many; ++n) {
            const auto page = std::uniform_int_distribution<qsizetype>(1, pages() - 1)(dice);
            damaged.replace(page * kPage, kPage, QByteArray(kPage, n % 2 ? '\0' : '\xFF'));
        }
        salvage(damaged, i % 2 == 0, "several pages, dice " + std::to_string(seed) + ", round " + std::to_string(i));
    }
    tell("several pages lost together");
}

TEST_F(Salvaging, ARowThatBreaksOurRulesIsLeftOutAndSaidAndThoseAfterItAreNot) {
    writeText(path(), made().bytes);
    rawSql(path(), "PRAGMA ignore_check_constraints = ON; UPDATE visit SET bees_top_q = -4 WHERE id IN "
                   "(SELECT id FROM visit WHERE note = 'nothing to add on that day' LIMIT 2)");
    const auto account = salvage(read(path()), false, "two values below nothing");
    ASSERT_TRUE(account);
    EXPECT_EQ(account->tables[static_cast<size_t>(Table::Visit)].lost, 2);
    EXPECT_GT(account->held, 0);
    EXPECT_TRUE(account->lost.join(u' ').contains(QStringLiteral("Lost: 2 visits")))
        << account->lost.join(u' ').toStdString();
}

// SQLite's own check of a day lets it pass.
TEST_F(Salvaging, ADayThatIsNoneIsLostAndSaidAndTheNewBookHasNone) {
    writeText(path(), made().bytes);
    rawSql(path(), "UPDATE visit SET day = '2026-02-30' WHERE id = (SELECT max(id) FROM visit WHERE note = 'nothing to "
                   "add on that day')");
    const auto account = salvage(read(path()), false, "a day that is none");
    ASSERT_TRUE(account);
    EXPECT_EQ(account->tables[static_cast<size_t>(Table::Visit)].lost, 1);
    EXPECT_GT(account->held, 0);
}

TEST_F(Salvaging, LostSignsOfFoulbroodAreSaidByName) {
    const char* const imported = "SELECT min(id) FROM visit_sign WHERE sign = 'afb' AND visit IN (SELECT id FROM visit "
                                 "WHERE note = 'nothing to add on that day')";
    const std::string past = "PRAGMA ignore_check_constraints = ON; ";
    writeText(path(), made().bytes);
    rawSql(path(), (past + "UPDATE visit SET bees_top_q = -4 WHERE id = (SELECT visit FROM visit_sign WHERE id = (" +
                    imported + "))")
                       .c_str());
    auto account = salvage(read(path()), false, "the visit of a sign");
    ASSERT_TRUE(account);
    EXPECT_TRUE(account->lost.join(u' ').contains(
        QStringLiteral("Signs of foulbrood whose visit is lost, so that they cannot stand in the new book: ")))
        << account->lost.join(u'\n').toStdString();
    EXPECT_TRUE(account->lost.join(u' ').contains(QStringLiteral(": American foulbrood.")));
    EXPECT_EQ(account->tables[static_cast<size_t>(Table::VisitSign)].leftOut, 1);

    writeText(path(), made().bytes);
    rawSql(path(), (past + "UPDATE visit_sign SET sign = 'x' WHERE id = (" + imported + ")").c_str());
    account = salvage(read(path()), false, "a sign");
    ASSERT_TRUE(account);
    EXPECT_TRUE(account->lost.join(u' ').contains(
        QStringLiteral("Of the lost signs nothing says which 1 were: each may have been foulbrood.")))
        << account->lost.join(u'\n').toStdString();
}

TEST_F(Salvaging, WithoutAnyLineOfTheHistoryRecordsAreKeptAndAllHivesHeld) {
    writeText(path(), made().bytes);
    rawSql(path(), "DELETE FROM history; UPDATE yard SET key = 'elsewhere' WHERE id = 1"); // nothing tells another
    const auto account = salvage(read(path()), false, "a name");
    ASSERT_TRUE(account);
    EXPECT_EQ(account->problems, QStringList());
    EXPECT_TRUE(account->linesEndUnknown);
    EXPECT_EQ(account->held, account->tables[static_cast<size_t>(Table::Visit)].added) << "all that live are held";
    EXPECT_GT(account->tables[static_cast<size_t>(Table::Visit)].kept, 200) << "records without a history are kept";
    EXPECT_TRUE(account->mended.contains(
        QStringLiteral("Names that were filed under another than their own: 1. They are found again.")))
        << account->mended.join(u'\n').toStdString();
}

TEST_F(Salvaging, TheNameInTheMakingIsSaidNowhere) {
    writeText(path(), made().bytes);
    const auto salvage = Salvage::read({path(), {}, {}}, clock);
    const QString to = dir.filePath(QStringLiteral("new.yardwright"));
    QString said;
    try {
        const SmallFiles small(20'000);
        salvage->write(to);
    } catch (const Error& e) {
        said = e.userMessage();
    }
    EXPECT_TRUE(said.startsWith(to + QStringLiteral(": The disk "))) << said.toStdString();
    EXPECT_FALSE(said.contains(QStringLiteral(".new-"))) << said.toStdString();
    EXPECT_EQ(QDir(dir.path()).entryList({QStringLiteral("*new*")}, QDir::Files | QDir::Hidden), QStringList());
}

TEST_F(Salvaging, AnOrderIsTakenFromTheBackupThoughWhatCameAfterItIsLost) {
    // The newest line of the history, and where the order stands.
    const std::string& lines = made().says.history;
    const std::string newest = lines.substr(lines.find(' ') + 1, lines.find('\n') - lines.find(' ') - 1);
    QByteArray damaged = made().bytes;
    for (qsizetype page = 1; page < pages(); ++page) {
        const QByteArray bytes = damaged.mid(page * kPage, kPage);
        if (bytes.contains(newest.c_str()) || bytes.contains("Office7/26"))
            damaged.replace(page * kPage, kPage, QByteArray(kPage, '\0'));
    }
    const auto without = salvage(damaged, false, "an order and the end of the history");
    ASSERT_TRUE(without);
    EXPECT_TRUE(without->linesEndUnknown);
    EXPECT_GT(without->held, 0);
    const auto with = salvage(damaged, true, "an order and the end of the history, with backup");
    ASSERT_TRUE(with);
    EXPECT_GE(with->tables[static_cast<size_t>(Table::Result)].against, 1);
    EXPECT_GT(with->held, 0);
}

// What an undo deleted is packed beside its line, and a redo brings that back.
TEST_F(Salvaging, RowsOfAnImportThatWasUndoneAndDoneAgainAreTakenFromWhatTheUndoKept) {
    writeText(path(), made().bytes);
    {
        auto open = Session::open(path(), clock);
        importVisits(*open, dir.filePath(QStringLiteral("more.csv")),
                     "colony,date,bees_top,signs\n1,2026-08-30,4.5,afb\n2,2026-08-30,4.25,\n");
        const Correction why{QStringLiteral("Ana"), QStringLiteral("the wrong file")};
        open->undo(why);
        open->redo(why);
    }
    const auto says = wholeBook(path(), clock);
    rawSql(path(), "PRAGMA ignore_check_constraints = ON; UPDATE visit SET bees_top_q = -4 WHERE day = '2026-08-30'; "
                   "UPDATE visit_sign SET sign = 'x' WHERE visit IN (SELECT id FROM visit WHERE day = '2026-08-30')");
    const auto account = salvageAndCompare(says, {path(), {}, {}}, dir.filePath(QStringLiteral("new.yardwright")),
                                           clock, "values of an import done again");
    ASSERT_TRUE(account);
    EXPECT_EQ(account->tables[static_cast<size_t>(Table::Visit)].lost, 0);
    EXPECT_EQ(account->tables[static_cast<size_t>(Table::Visit)].fromHistory, 2);
    EXPECT_EQ(account->tables[static_cast<size_t>(Table::VisitSign)].fromHistory, 1);
}

TEST_F(Salvaging, ARecordThatTheHistoryKnowsNothingOfIsLeftOutAndSaid) {
    writeText(path(), made().bytes);
    rawSql(path(), "INSERT INTO person (id, name, key, active) VALUES (77, 'Zed', 'zed', 1)");
    SalvageFrom from{path(), {}, {}};
    const auto salvage = Salvage::read(from, clock);
    ASSERT_TRUE(salvage);
    EXPECT_EQ(salvage->account().leftOut.size(), 1);
    EXPECT_FALSE(salvage->account().nothingLost());
}

TEST_F(Salvaging, ASignThatTheHistoryKnowsNothingOfHoldsAllHivesForDoubt) {
    writeText(path(), made().bytes);
    rawSql(path(), "DELETE FROM history WHERE seq = (SELECT max(seq) FROM history)"); // as a page that was not written
    const auto salvage = Salvage::read({path(), {}, {}}, clock);
    ASSERT_TRUE(salvage);
    EXPECT_GT(salvage->account().held, 0);
}

// A file made to fill the memory, or to be counted through for ever.
TEST_F(Salvaging, NumbersThatCannotBeAreNotCountedThrough) {
    core::edit::HistoryRecord invented;
    invented.inserted = {{Table::Visit, 1, qint64(1) << 50}};
    const std::string line = core::edit::encode(invented).toHex().toStdString();
    for (const std::string& sql :
         {"UPDATE history SET changes = X'" + line + "' WHERE seq = (SELECT max(seq) FROM history)",
          std::string("UPDATE history SET seq = 1152921504606846976 WHERE seq = (SELECT "
                      "max(seq) FROM history)")}) {
        SCOPED_TRACE(sql.substr(0, 40));
        writeText(path(), made().bytes);
        rawSql(path(), sql.c_str());
        const auto salvage = Salvage::read({path(), {}, {}}, clock);
        ASSERT_TRUE(salvage);
        EXPECT_GT(salvage->account().held, 0);
        EXPECT_FALSE(salvage->account().historyKept);
    }
}

TEST_F(Salvaging, StoppedWhileItReadsOrWritesItLeavesNothing) {
    writeText(path(), made().bytes);
    const QString to = dir.filePath(QStringLiteral("new.yardwright"));
    const Progress stopped([](const QString&, double) { return false; });
    EXPECT_THROW(Salvage::read({path(), {}, {}}, clock, stopped), Stopped);
    const auto salvage = Salvage::read({path(), {}, {}}, clock);
    ASSERT_TRUE(salvage);
    EXPECT_THROW(salvage->write(to, stopped), Stopped);
    EXPECT_EQ(QDir(dir.path()).entryList({QStringLiteral("*new*")}, QDir::Files | QDir::Hidden), QStringList());
}

TEST_F(Salvaging, WhatIsNoBookIsRefusedInOneSentence) {
    EXPECT_FALSE(salvage(QByteArray(100'000, 'x'), false, "text"));
    EXPECT_FALSE(salvage(QByteArray(), false, "empty"));
    EXPECT_FALSE(salvage(QByteArray(3, '\0'), false, "three bytes"));
}

} // namespace

} // namespace tests::reliability
