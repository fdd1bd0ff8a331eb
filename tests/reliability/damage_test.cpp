#include "core/edit/edit_context.h"
#include "tests/reliability/figures.h"
#include "tests/reliability/workload.h"

#include <QFile>

// What is done to a book behind the program's back, one by one, and what its check says of it. (What breaks each single
// rule between rows stands in tests/store/check_test.cpp.)

namespace tests::reliability {

namespace {

struct Damage {
    const char* name;
    const char* sql;
    const char* said; ///< a part of what the check says
};

constexpr Damage kDamages[] = {
    {"a value altered", "UPDATE visit SET note = 'other' WHERE id = 2", "Row 2 of table visit is not as the history"},
    {"a record deleted", "DELETE FROM transfer", "Table transfer has 0 rows"},
    {"a record slipped in", "INSERT INTO person (id, name, key, active) VALUES (77, 'Zed', 'zed', 1)",
     "Table person has 1 rows"},
    {"two records exchanged",
     "UPDATE visit SET id = -1 WHERE id = 1; UPDATE visit SET id = 1 WHERE id = 2; "
     "UPDATE visit SET id = 2 WHERE id = -1",
     "Row 1 of table visit is not as the history"},
    {"a line of the history deleted", "DELETE FROM history WHERE seq = 5", "history-numbers"},
    {"the last line of the history deleted", "DELETE FROM history WHERE seq = (SELECT max(seq) FROM history)",
     "by the history it should"},
    {"a line's changes garbled", "UPDATE history SET changes = x'00112233' WHERE seq = 5", "history"},
    {"a line's changes cut short", "UPDATE history SET changes = substr(changes, 1, length(changes) - 9) WHERE seq = 5",
     "history"},
    {"rows kept for an undo lost", "DELETE FROM history_part", "keeps 0 of the 300 rows"},
    {"rows kept for an undo cut short", "UPDATE history_part SET rows = substr(rows, 1, length(rows) / 2)", "history"},
    {"an import's file lost from the history",
     "UPDATE history SET attachments = substr(attachments, 1, 60) WHERE attachments IS NOT NULL",
     "The texts kept with a line of the history cannot be read"},
    {"an undo of nothing",
     "UPDATE history SET of_seq = (SELECT min(seq) FROM history WHERE kind = 'undo') "
     "WHERE seq = (SELECT max(seq) FROM history WHERE kind = 'redo')",
     "history-undo"},
    {"a hive that points nowhere", "UPDATE placement SET stand = 999 WHERE id = 1", "foreign-key"},
    {"two hives on one stand", "UPDATE placement SET stand = 1 WHERE colony = 2 AND until IS NOT NULL", "stand-shared"},
    {"one label for two hives",
     "UPDATE colony SET label = '1', key = '1', since = '2026-05-02', ended = '2026-09-01', end_kind = 'dead' WHERE id "
     "= 3",
     "label-shared"},
    {"a visit after the hive's end", "UPDATE colony SET ended = '2026-05-01', end_kind = 'dead' WHERE id = 1",
     "visit-in-life"},
    {"a day that is none", "UPDATE visit SET day = '2026-02-30' WHERE id = 1", "Row 1 of table visit"},
    {"a quantity below nothing", "UPDATE visit SET bees_top_q = -4 WHERE id = 1", "integrity"},
    {"a setting that is none", "INSERT INTO setting (id, name, value) VALUES (9, 'no.such', '1')", "setting"},
    {"a name filed elsewhere", "UPDATE yard SET key = 'x' WHERE id = 1", "key"},
    {"words of notes lost", "DELETE FROM note_words WHERE rowid = 16", "note-words"},
    {"the book's id lost", "DELETE FROM book", "book-id"},
};

/// A book with something of all that is damaged.
class DamagedBook : public EditTest, public testing::WithParamInterface<Damage> {
protected:
    DamagedBook() {
        static QByteArray sound; // made once
        if (sound.isEmpty()) sound = soundBook();
        session.reset();
        QFile::remove(path());
        writeText(path(), sound);
    }
    QByteArray soundBook() {
        std::vector<Step> steps = workSteps(dir.path(), 0);
        for (const Step& step : steps) step.run(*session);
        apply([](const EditContext& c) {
            return logTransfer(c, {{}, dayOf(2026, 9, 1), ColonyId{4}, ColonyId{5}, TransferKind::Frames, 2, {}});
        });
        EXPECT_EQ(problems(), "");
        session.reset();
        QFile file(path());
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void damage(const char* sql) {
        const std::string all = std::string("PRAGMA foreign_keys = OFF; PRAGMA ignore_check_constraints = ON; ") + sql;
        rawSql(path(), all.c_str());
    }
};

TEST_P(DamagedBook, IsFoundByItsCheck) {
    damage(GetParam().sql);
    session = Session::open(path(), clock, Session::Access::ReadOnly);
    const bool said = problems().find(GetParam().said) != std::string::npos;
    EXPECT_TRUE(said) << GetParam().name << ": " << problems();
    static qint64 found = 0;
    found += said;
    if (found == std::ssize(kDamages)) figure("Damage done to a book", "kinds that its check finds", found);
}

INSTANTIATE_TEST_SUITE_P(Each, DamagedBook, testing::ValuesIn(kDamages));

// Each page of the file in turn is spoilt. Either the book is refused, or its check says that the file is damaged, or
// the page is one that nothing lies on.
class SpoiltFile : public EditTest {};

TEST_F(SpoiltFile, ASpoiltPageIsFoundWhereverItLies) {
    for (const Step& step : workSteps(dir.path(), 0)) step.run(*session);
    const std::string state = stateOf(*session);
    session.reset();
    QFile file(path());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    const QByteArray whole = file.readAll();
    constexpr qsizetype kPage = 4096;
    qint64 found = 0;
    for (qsizetype page = 0; page * kPage < whole.size(); page += longRun() ? 1 : 5) {
        QByteArray spoilt = whole;
        for (qsizetype i = 0; i < 64; ++i)
            spoilt[page * kPage + (page * 61) % (kPage - 64) + i] = static_cast<char>(0xA5);
        file.seek(0);
        file.write(spoilt);
        file.flush();
        try {
            session = Session::open(path(), clock, Session::Access::ReadOnly);
            if (!session->check().isEmpty())
                ++found;
            else
                EXPECT_TRUE(stateOf(*session) == state) << "page " << page;
        } catch (const Error& e) {
            EXPECT_EQ(e.kind(), Error::Kind::Book) << e.what();
            ++found;
        }
        session.reset();
    }
    EXPECT_GT(found, 5);
    figure("Damage done to a book", "spoilt pages of its file that are found", found);
}

} // namespace

} // namespace tests::reliability
