#include "tests/reliability/figures.h"
#include "tests/reliability/troubles.h"
#include "tests/reliability/workload.h"
#include "tests/support/cut_vfs.h"
#include "tests/support/little_memory.h"

#include "core/base/book_held.h"
#include "core/base/damaged.h"
#include "core/edit/edit_context.h"
#include "core/store/sqlite_error.h"

#include <QDir>

#include <sqlite3.h>

// A call to the disk fails, each in turn, once or until it is mended, under each kind of edit; one Session lives
// through all of it.

namespace tests::reliability {

namespace {

using cut::CutVfs;

class DiskFault : public testing::Test {
protected:
    void SetUp() override {
        QDir().mkpath(m_dir.filePath(QStringLiteral("book")));
        const QString path = m_dir.filePath(QStringLiteral("book/b.yardwright"));
        session = Session::create(path, m_clock);
        std::vector<Step> steps = workSteps(m_dir.path(), 0);
        steps.resize(14); // yards, hives and a visit of each
        for (const Step& step : steps) step.run(*session);
        session.reset();
        vfs = std::make_unique<CutVfs>(m_dir.filePath(QStringLiteral("book")).toStdString());
        session = Session::open(path, m_clock);
    }
    void TearDown() override {
        session.reset();
        vfs.reset();
    }

    /// Lets each call of the trouble's kind fail in turn, until the edit meets none any more.
    void troubleAtEach(const Trouble& trouble, bool lasting, int stride, const std::function<void()>& edit);
    void expectAllInOrder() {
        EXPECT_EQ(session->check().join(u'\n').toStdString(), "");
        const QString path = session->path();
        const std::string state = stateOf(*session);
        session.reset();
        session = Session::open(path, m_clock);
        EXPECT_EQ(stateOf(*session), state);
    }
    /// A visit that is new each time.
    void visit();
    /// A range of yards in one go, or its undo.
    void manyRows();

    std::unique_ptr<CutVfs> vfs;
    std::unique_ptr<Session> session;
    qint64 faults = 0;
    qint64 losses = 0;

private:
    QTemporaryDir m_dir;
    FixedClock m_clock;
    int m_days = 0;
};

void DiskFault::visit() {
    Visit v;
    v.colony = ColonyId{1 + m_days % 6};
    v.day = dayOf(2026, 5, 2) + m_days / 6;
    v.note = QStringLiteral("as it was seen");
    session->apply([&](const EditContext& c) { return logVisit(c, v); });
    m_days = (m_days + 1) % 800;
}

void DiskFault::manyRows() {
    if (session->undoText() == QStringLiteral("Imported yards")) {
        session->undo();
        return;
    }
    session->apply([](const EditContext& c) {
        ChangeSet change{QStringLiteral("Imported yards"), {}, {}, {}, {}};
        change.bulk.push_back({Table::Yard, c.nextId(Table::Yard), 400, [](qint64 i) {
                                   Yard yard;
                                   yard.name = QStringLiteral("yard %1").arg(i);
                                   yard.note = QString(60, u'x');
                                   return toRow(yard);
                               }});
        return change;
    });
}

void DiskFault::troubleAtEach(const Trouble& trouble, bool lasting, int stride, const std::function<void()>& edit) {
    for (int at = 1;; at += stride) {
        SCOPED_TRACE(std::string(trouble.name) + (lasting ? ", lasting, at " : ", once, at ") + std::to_string(at));
        const std::string before = stateOf(*session);
        vfs->fail({trouble.op, at, trouble.code, lasting});
        std::string said;
        try {
            edit();
        } catch (const Error& e) {
            EXPECT_EQ(e.kind(), Error::Kind::Book) << e.what() << e.detail().toStdString();
            said = e.what();
        }
        const bool met = vfs->failed();
        vfs->mend();
        std::string now;
        ASSERT_NO_THROW(now = stateOf(*session)) << "said: " << said;
        if (!met) {
            EXPECT_EQ(said, "");
            EXPECT_NE(now, before);
            return;
        }
        ++faults;
        if (said.empty()) {
            EXPECT_NE(now, before) << "acknowledged and not there";
            losses += now == before;
            continue; // it could do without that call
        }
        EXPECT_TRUE(said == trouble.sentence || (trouble.op == Op::Read && said == kNotRead)) << said;
        EXPECT_TRUE(now == before) << "something of a refused edit is there";
        EXPECT_EQ(session->check().join(u'\n').toStdString(), "") << "as this session sees its book";
        losses += now != before;
        ASSERT_NO_THROW(edit()) << "once the trouble is over";
        EXPECT_NE(stateOf(*session), before);
        if (testing::Test::HasFailure()) return;
    }
}

TEST_F(DiskFault, OfASmallEditChangesNothingAndTheSameSessionGoesOn) {
    for (const Trouble& trouble : kTroubles)
        for (const bool lasting : {false, true}) {
            troubleAtEach(trouble, lasting, longRun() ? 1 : 3, [&] { visit(); });
            if (HasFailure()) return;
        }
    expectAllInOrder();
    EXPECT_GT(faults, 30);
    figure("Disk that fails", "faults met by a small edit", faults, Sum::Faults);
    figure("Disk that fails", "losses, small edits", losses, Sum::Losses);
}

TEST_F(DiskFault, OfManyRowsAndTheirUndoLikewise) {
    const cut::LittleMemory little;
    for (const Trouble& trouble : kTroubles)
        for (const bool lasting : {false, true}) {
            troubleAtEach(trouble, lasting, longRun() ? 1 : 9, [&] { manyRows(); });
            if (HasFailure()) return;
        }
    expectAllInOrder();
    figure("Disk that fails", "faults met by many rows and their undo", faults, Sum::Faults);
    figure("Disk that fails", "losses, many rows", losses, Sum::Losses);
}

/// What the edit says, with the book's folder as it is; nothing of it is in the book once the trouble is over.
class Vanished : public testing::Test {
protected:
    QString home() const { return m_dir.filePath(QStringLiteral("book")); }
    QString away() const { return m_dir.filePath(QStringLiteral("elsewhere")); }
    QString path() const { return home() + QStringLiteral("/b.yardwright"); }
    void SetUp() override {
        QDir().mkpath(home());
        session = Session::create(path(), m_clock);
        yard("North");
    }
    void yard(const char* name) {
        Yard yard;
        yard.name = QString::fromLatin1(name);
        session->apply([&](const EditContext& c) { return newYard(c, yard); });
    }
    std::string refusal() {
        try {
            yard("South");
        } catch (const Error& e) {
            return e.what();
        }
        return "written";
    }
    void expectToGoOn() {
        EXPECT_EQ(session->yards().size(), 1U);
        yard("South");
        EXPECT_EQ(session->yards().size(), 2U);
        EXPECT_EQ(session->check(), QStringList());
    }

    const FixedClock& clock() const { return m_clock; }

    std::unique_ptr<Session> session;

private:
    QTemporaryDir m_dir;
    FixedClock m_clock;
};

TEST_F(Vanished, AFolderThatIsElsewhereByNowIsSaidAndOnceItIsBackTheSessionGoesOn) {
    ASSERT_TRUE(QDir().rename(home(), away()));
    const std::string said = refusal();
    EXPECT_TRUE(said == kMoved || said == kNoFile) << said;
    EXPECT_TRUE(QFile::exists(away() + QStringLiteral("/b.yardwright")));
    EXPECT_FALSE(QDir(home()).exists());
    ASSERT_TRUE(QDir().rename(away(), home()));
    expectToGoOn();
}

TEST_F(Vanished, AFileThatIsRenamedByNowIsSaidAndOnceItIsBackTheSessionGoesOn) {
    const QString other = home() + QStringLiteral("/other.yardwright");
    ASSERT_TRUE(QFile::rename(path(), other));
    EXPECT_EQ(refusal(), kMoved);
    ASSERT_TRUE(QFile::rename(other, path()));
    expectToGoOn();
}

/// The sentence for each thing that SQLite can say of a book; where a test above meets the thing itself, it asks for
/// the same.
TEST(FaultSentence, SaysOfEachFaultWhatItIsAndWhatCanBeDone) {
    const std::pair<int, const char*> kSentences[] = {
        {SQLITE_FULL, kFull},
        {SQLITE_IOERR, kFailed},
        {SQLITE_IOERR_READ, kFailed},
        {SQLITE_IOERR_SHORT_READ, kFailed},
        {SQLITE_IOERR_WRITE, kFailed},
        {SQLITE_IOERR_FSYNC, kFailed},
        {SQLITE_IOERR_LOCK, kFailed},
        {SQLITE_IOERR_NOMEM, kNoMemory},
        {SQLITE_NOMEM, kNoMemory},
        {SQLITE_READONLY, kReadOnly},
        {SQLITE_READONLY_DIRECTORY, kReadOnly},
        {SQLITE_PERM, kReadOnly},
        {SQLITE_READONLY_DBMOVED, kMoved},
        {SQLITE_CANTOPEN, kNoFile},
        {SQLITE_CANTOPEN_ISDIR, kNoFile},
        {SQLITE_BUSY, "The book is held by another program at this moment. Try again."},
        {SQLITE_BUSY_RECOVERY, "The book is held by another program at this moment. Try again."},
        {SQLITE_LOCKED, "The book is held by another program at this moment. Try again."},
        {SQLITE_CORRUPT, "The book is damaged. Use a backup of it."},
        {SQLITE_NOTADB, "This file is not a book of this program."},
        {SQLITE_TOOBIG, "A text is longer than the book can hold: nothing was written. Shorten it."},
    };
    for (const auto& [code, sentence] : kSentences) {
        try {
            core::store::throwSqlite(nullptr, code, {});
        } catch (const core::Error& e) {
            EXPECT_STREQ(e.what(), sentence) << code;
            EXPECT_EQ(dynamic_cast<const core::Damaged*>(&e) != nullptr, code == SQLITE_CORRUPT) << code;
            EXPECT_EQ(dynamic_cast<const core::NoBook*>(&e) != nullptr, code == SQLITE_NOTADB) << code;
        }
    }
}

/// The book's file is another by now: a sync program put one there, or the disk was taken out and put back.
class AnotherFile : public Vanished {
protected:
    QString spare() const { return home() + QStringLiteral("/spare"); }
    /// What lies at `from` takes the book's place as another file.
    void replaceBy(const QString& from) {
        ASSERT_TRUE(QFile::copy(from, home() + QStringLiteral("/new")));
        ASSERT_TRUE(QFile::rename(path(), spare()));
        ASSERT_TRUE(QFile::rename(home() + QStringLiteral("/new"), path()));
    }
    static constexpr const char* kReplaced =
        "The book's file was replaced by another one while it was open: nothing was written.";
    static QByteArray bytesOf(const QString& file) {
        QFile f(file);
        return f.open(QIODevice::ReadOnly) ? f.readAll() : QByteArray();
    }
};

TEST_F(AnotherFile, OfAnEarlierStateIsNeverWrittenIntoNorIsTheOneThatLostItsName) {
    const QString earlier = home() + QStringLiteral("/earlier");
    copyFile(path(), earlier);
    yard("East");
    replaceBy(earlier);
    const QByteArray there = bytesOf(path());
    const QByteArray unnamed = bytesOf(spare());
    EXPECT_EQ(refusal(), kReplaced);
    EXPECT_EQ(refusal(), kReplaced) << "as often as it is tried";
    EXPECT_EQ(bytesOf(path()), there);
    EXPECT_EQ(bytesOf(spare()), unnamed);
    ASSERT_TRUE(QFile::remove(path()));
    EXPECT_EQ(refusal(), kMoved);
    ASSERT_TRUE(QFile::rename(spare(), path()));
    yard("South");
    EXPECT_EQ(session->yards().size(), 3U);
}

TEST_F(AnotherFile, OfAnotherBookLikewise) {
    const QString other = home() + QStringLiteral("/other.yardwright");
    Session::create(other, clock());
    replaceBy(other);
    EXPECT_EQ(refusal(), kReplaced);
}

TEST_F(AnotherFile, ThatIsNoBookIsSaid) {
    const QString other = home() + QStringLiteral("/other");
    writeText(other, "a shopping list\n");
    replaceBy(other);
    EXPECT_EQ(refusal(), kReplaced);
}

TEST_F(AnotherFile, OfTheSameBookPutBackIsGoneOnWithAndHeldAgainstOthers) {
    replaceBy(path());
    const QByteArray unnamed = bytesOf(spare());
    yard("South");
    EXPECT_EQ(bytesOf(spare()), unnamed) << "nothing goes into the file that lost its name";
    session->undo();
    EXPECT_EQ(session->yards().size(), 1U);
    EXPECT_THROW(Session::open(path(), clock()), core::BookHeld);
    session.reset();
    EXPECT_FALSE(QFile::exists(path() + QStringLiteral("-lock")));
    session = Session::open(path(), clock());
    EXPECT_EQ(session->check(), QStringList());
}

TEST_F(AnotherFile, OfADiskThatWasTakenOutAndPutBackIsOpenedAgain) {
    session.reset();
    cut::CutVfs vfs(home().toStdString());
    session = Session::open(path(), clock());
    vfs.takeOut();
    EXPECT_THROW(session->yards(), Error);
    yard("South");
    EXPECT_EQ(session->yards().size(), 2U);
    vfs.takeOut();
    vfs.fail({Op::Read, 1, SQLITE_IOERR_READ, true});
    EXPECT_EQ(refusal(), kFailed) << "it is not back yet";
    vfs.mend();
    session->undo();
    expectToGoOn();
    session.reset();
}

} // namespace

} // namespace tests::reliability
