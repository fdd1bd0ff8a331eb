#include "core/edit/edits.h"
#include "tests/ui/book_of_test.h"
#include "tests/ui/test_dialogs.h"
#include "ui/history/history_model.h"
#include "ui/history/history_words.h"
#include "ui/look/words.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QFont>
#include <QTest>

#include <sqlite3.h>

namespace {

using namespace core;
using ui::history::Column;
using ui::history::HistoryModel;

struct HistoryModelTest : testing::Test {
    tests::BookOfTest book;
    tests::TestDialogs dialogs;
    std::unique_ptr<edit::Session> session = edit::Session::open(book.path(), book.clock());

    std::string text(const HistoryModel& model, int row, Column column, int role = Qt::DisplayRole) const {
        return model.index(row, static_cast<int>(column)).data(role).toString().toStdString();
    }
    qint64 visited(const QString& label, Day day) {
        Visit v;
        v.colony = book.idOf(label);
        v.day = day;
        return session->apply([&](const edit::EditContext& c) { return edit::logVisit(c, v); })->seq;
    }
    static bool struck(const HistoryModel& model, int row) {
        return model.index(row, static_cast<int>(Column::What)).data(Qt::FontRole).value<QFont>().strikeOut();
    }
    /// Lines more: copies of the newest, each with its own number, past the session.
    void fill(int count) {
        session.reset();
        sqlite3* db = nullptr;
        ASSERT_EQ(sqlite3_open(book.path().toUtf8().constData(), &db), SQLITE_OK);
        const std::string sql =
            "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < " + std::to_string(count) +
            ") INSERT INTO history (seq, at, by_whom, sentence, kind, changes) SELECT h.seq + n.i, h.at, h.by_whom, "
            "h.sentence, 'do', h.changes FROM n, (SELECT * FROM history ORDER BY seq DESC LIMIT 1) h";
        ASSERT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
        sqlite3_close(db);
        session = edit::Session::open(book.path(), book.clock());
    }
};

TEST_F(HistoryModelTest, ListsTheLinesNewestFirst) {
    session->setAuthor(QStringLiteral("Ana"));
    visited(QStringLiteral("A1"), book.clock().day);
    HistoryModel model(*session, dialogs);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(model.rowCount(), 14);
    EXPECT_EQ(text(model, 0, Column::What), "Logged the visit of A1 on 2026-09-15");
    EXPECT_EQ(text(model, 0, Column::By), "Ana");
    EXPECT_EQ(text(model, 1, Column::By), ui::look::dash().toStdString());
    EXPECT_EQ(text(model, 0, Column::When).find("today "), 0u);
    EXPECT_EQ(text(model, 13, Column::What), "Added yard Kiln Field");
    EXPECT_FALSE(model.flags(model.index(0, 1)) & Qt::ItemIsEditable);
    EXPECT_FALSE(model.canFetchMore({}));
}

TEST_F(HistoryModelTest, FollowsTheBookAndStrikesOutWhatIsTakenBack) {
    HistoryModel model(*session, dialogs);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const qint64 seq = visited(QStringLiteral("A1"), book.clock().day);
    model.refresh();
    EXPECT_EQ(model.lineAt(0).seq, seq);
    EXPECT_FALSE(struck(model, 0));
    session->takeBack(seq);
    model.refresh();
    EXPECT_EQ(text(model, 0, Column::What), "Taken back: Logged the visit of A1 on 2026-09-15");
    EXPECT_TRUE(struck(model, 1));
    EXPECT_EQ(text(model, 1, Column::Note), "taken back");
    EXPECT_NE(text(model, 1, Column::What, Qt::AccessibleTextRole).find(", taken back"), std::string::npos);
    session->redo();
    session->undo();
    session->redo(); // three lines at once
    model.refresh();
    EXPECT_EQ(model.rowCount(), 13 + 5);
    EXPECT_FALSE(struck(model, *model.rowOf(seq)));
}

TEST_F(HistoryModelTest, ShowsWhatAFilterLetsThrough) {
    HistoryModel model(*session, dialogs);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    edit::HistoryFilter filter;
    filter.colony = book.idOf(QStringLiteral("A3"));
    model.setFilter(filter);
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(text(model, 0, Column::What), "Logged the visit of A3 on 2026-09-14");
    visited(QStringLiteral("A3"), book.clock().day);
    visited(QStringLiteral("A4"), book.clock().day);
    model.refresh();
    EXPECT_EQ(model.rowCount(), 3);
    filter.text = QStringLiteral("nothing like it");
    model.setFilter(filter);
    EXPECT_EQ(model.rowCount(), 0);
    model.setFilter({});
    EXPECT_EQ(model.rowCount(), 15);
}

/// A piece is read at once and the rest only when it is asked for, or looked through between events.
TEST_F(HistoryModelTest, ReadsLongHistoriesPieceByPiece) {
    fill(4000);
    HistoryModel model(*session, dialogs);
    EXPECT_EQ(model.rowCount(), 100);
    EXPECT_TRUE(model.canFetchMore({}));
    model.fetchMore({});
    EXPECT_EQ(model.rowCount(), 200);
    edit::HistoryFilter filter;
    filter.text = QStringLiteral("Added yard"); // the oldest line of all
    model.setFilter(filter);
    EXPECT_TRUE(model.looking());
    EXPECT_EQ(model.rowCount(), 0);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !model.looking(); }, 60'000));
    EXPECT_EQ(model.rowCount(), 1);
    filter = {};
    filter.colony = book.idOf(QStringLiteral("A1"));
    model.setFilter(filter);
    EXPECT_TRUE(model.looking());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !model.looking(); }, 60'000));
    EXPECT_EQ(model.rowCount(), 2);
}

TEST(HistoryWords, TellTheTimeAsPeopleDo) {
    const QDateTime now(QDate(2026, 9, 15), QTime(14, 5));
    EXPECT_EQ(ui::history::whenText(now, now), QStringLiteral("today 14:05"));
    EXPECT_EQ(ui::history::whenText(now.addDays(-1), now), QStringLiteral("yesterday 14:05"));
    EXPECT_EQ(ui::history::whenText(now.addDays(-2), now), QStringLiteral("13 Sep 2026 14:05"));
    EXPECT_EQ(ui::history::whenText(now.toUTC(), now.toUTC()), QStringLiteral("today 14:05")) << "local time";
}

} // namespace
