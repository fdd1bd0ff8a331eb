#include "core/edit/edit_context.h"
#include "core/edit/edits.h"
#include "core/edit/history_detail.h"
#include "core/exchange/export_names.h"
#include "core/exchange/import.h"
#include "core/store/database.h"
#include "tests/exchange/workbench.h"

#include <gtest/gtest.h>

// An import that is watched and stopped, and rows that say otherwise than the book.

namespace tests::exchange {
namespace {

using namespace core;
using namespace core::exchange;

/// A visit a day.
QByteArray manyVisits(int count) {
    QByteArray text = "colony,date,supers\n";
    for (int i = 0; i < count; ++i)
        text += "A," + core::isoText(core::dayOf(2025, 5, 1) + i).toLatin1() + ',' + QByteArray::number(i % 3) + '\n';
    return text;
}

class WatchedImport : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(bench.import(smallYard()).good()); }
    QByteArray bookBytes() const { return textsOf(bench.folder())[f("b.yardwright")]; }
    ImportReport watched(const core::Watch& watch, bool dryRun = false) const {
        ImportFiles files = bench.write({{f("visits.csv"), manyVisits(7000)}});
        files.progress = core::Progress(watch, {}, std::chrono::milliseconds(0));
        return importIntoBook(bench.book(), bench.clock(), files, dryRun);
    }
    Workbench bench;
};

TEST_F(WatchedImport, IsToldEachStepToItsEnd) {
    QStringList steps;
    std::map<QString, int> told;
    double last = 0;
    const auto report = watched([&](const QString& step, double share) {
        EXPECT_LE(share, 1);
        EXPECT_GE(share, last);
        last = share;
        if (told[step]++ == 0) steps << step;
        EXPECT_EQ(step, steps.last()) << "steps come one after the other";
        return true;
    });
    ASSERT_TRUE(report.good());
    EXPECT_EQ(report.of(FileKind::Visits).added, 7000);
    EXPECT_EQ(steps, QStringList({f("Reading the files"), f("Checking the rows"), f("Writing the rows into the book"),
                                  QStringLiteral("Writing…")}));
    for (const auto& [step, count] : told)
        EXPECT_GE(count, step == QStringLiteral("Writing…") ? 1 : 27) << "every few hundred of 7000 rows";
    EXPECT_GT(last, 0.97);
}

TEST_F(WatchedImport, ThatIsStoppedLeavesNothing) {
    const QByteArray before = bookBytes();
    int calls = 0;
    watched([&](const QString&, double) { return ++calls > 0; }, true);
    ASSERT_GE(calls, 50) << "of reading and checking";
    for (const int at : {1, calls / 4, calls - 1, calls + 1, calls + 20}) {
        int left = at;
        const auto report = watched([&](const QString&, double) { return --left > 0; });
        EXPECT_TRUE(report.stopped) << at;
        EXPECT_FALSE(report.good());
        EXPECT_FALSE(report.line);
        ASSERT_EQ(bookBytes(), before) << at;
        EXPECT_EQ(bench.check(), QStringList());
    }
    const auto whole = watched({});
    EXPECT_TRUE(whole.good());
    EXPECT_EQ(whole.of(FileKind::Visits).added, 7000);
}

TEST_F(WatchedImport, IsStoppedUntilItsCommitAndNoLonger) {
    const QByteArray before = bookBytes();
    const auto last = [](const QString& step, double) { return step != QStringLiteral("Writing…"); };
    EXPECT_TRUE(watched(last).stopped) << "whoever asks before the commit is heard";
    EXPECT_EQ(bookBytes(), before);
    ImportFiles files = bench.write({{f("visits.csv"), manyVisits(7000)}});
    bool past = false;
    files.progress = core::Progress([&past](const QString&, double) { return !past; }, [&past] { return past; },
                                    std::chrono::milliseconds(0), [&past](const QString&) { past = true; });
    EXPECT_TRUE(importIntoBook(bench.book(), bench.clock(), files, false).good());
    EXPECT_TRUE(past);
}

TEST_F(WatchedImport, TheWordsOfManyNotesAreLookedIntoMeanwhile) {
    QByteArray text = "colony,date,note\n";
    for (int i = 0; i < 5000; ++i)
        text += "A," + core::isoText(core::dayOf(2025, 5, 1) + i).toLatin1() + ",calm on the frames\n";
    const auto told = [&](const QByteArray& visits) {
        int count = 0;
        ImportFiles files = bench.write({{f("visits.csv"), visits}});
        files.progress = core::Progress(
            [&count](const QString& step, double) {
                count += step == f("Writing the rows into the book");
                return true;
            },
            {}, std::chrono::milliseconds(0));
        EXPECT_TRUE(importIntoBook(bench.book(), bench.clock(), files, false).good());
        return count;
    };
    EXPECT_EQ(told(text), 1 + 5000 / 256 + 3) << "the beginning, the rows, the words by two thousands";
}

TEST_F(WatchedImport, AnExportIsStoppedWhileItReadsSortsNamesAndTellsTheHistory) {
    ASSERT_TRUE(watched([](const QString&, double) { return true; }).good());
    const auto session = edit::Session::open(bench.book(), bench.clock());
    session->apply([](const edit::EditContext& c) {
        Yard yard;
        yard.name = f("Late yard");
        return edit::newYard(c, yard);
    });
    const core::Progress stops([](const QString&, double) { return false; }, [] { return true; },
                               std::chrono::milliseconds(0));
    int rows = 0;
    const auto readAll = [&rows](const edit::EditContext& c) { c.each<Visit>([&rows](const Visit&) { ++rows; }); };
    EXPECT_THROW(session->read(readAll, stops), core::Stopped);
    EXPECT_LT(rows, 7000) << "in the middle of a statement";
    EXPECT_NO_THROW(session->read(readAll)) << "once it is over nothing stops any more";
    session->read([&](const edit::EditContext& c) { EXPECT_THROW(ExportNames(c, stops), core::Stopped); });
    const auto db = store::Database::open(bench.book(), store::Access::ReadOnly);
    EXPECT_THROW(edit::historyDetail(*db, session->history(1).front().seq, 300, stops), core::Stopped);
}

TEST_F(WatchedImport, ThatIsStoppedMakesNoBook) {
    const Workbench fresh;
    ImportFiles files = fresh.write(smallYardWith({{f("visits.csv"), manyVisits(3000)}}));
    files.progress = core::Progress([](const QString&, double share) { return share <= kChecked; });
    const auto report = importIntoBook(fresh.book(), fresh.clock(), files, false);
    EXPECT_TRUE(report.stopped);
    EXPECT_FALSE(fresh.bookThere());
    EXPECT_EQ(textsOf(fresh.folder()).size(), 0U) << "no part of one either";
}

constexpr char kVisits[] = "colony,date,bees_top,signs,note\n";

class OtherwiseImport : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(bench
                        .import(smallYardWith({{f("visits.csv"), QByteArray(kVisits) + "A,2026-05-01,3,,calm\n"
                                                                                       "B,2026-05-01,4,afb,\n"}}))
                        .good());
    }
    ImportReport import(const QByteArray& rows, bool leaveOut) const {
        ImportFiles files = bench.write({{f("visits.csv"), kVisits + rows}});
        files.leaveOutOtherwise = leaveOut;
        return importIntoBook(bench.book(), bench.clock(), files, false);
    }
    Workbench bench;
};

TEST_F(OtherwiseImport, ShowsWhatBothSay) {
    const auto report = import("A,2026-05-01,3.5,,\nB,2026-05-01,4,afb,\nC,2026-05-01,1,,\n", false);
    EXPECT_EQ(placesOf(report), QStringList(f("visits.csv:2: bees_top")));
    EXPECT_EQ(report.otherwise, 1);
    ASSERT_EQ(report.differences.size(), 2U);
    EXPECT_EQ(report.differences[0].name, f("A 2026-05-01"));
    EXPECT_EQ(report.differences[0].given, f("3.5"));
    EXPECT_EQ(report.differences[0].stored, f("3"));
    EXPECT_EQ(report.differences[1].column, f("note"));
    EXPECT_EQ(report.differences[1].given, QString());
    EXPECT_EQ(report.differences[1].stored, f("calm"));
}

TEST_F(OtherwiseImport, LeavesThoseRowsOutWhereAsked) {
    const auto report = import("A,2026-05-01,3.5,,\nB,2026-05-01,4,afb,\nC,2026-05-01,1,,\n", true);
    ASSERT_TRUE(report.good()) << report.faults.lines().join(u'\n').toStdString();
    EXPECT_EQ(report.otherwise, 1);
    EXPECT_EQ(report.of(FileKind::Visits).added, 1);
    EXPECT_EQ(report.of(FileKind::Visits).passedOver, 1);
    EXPECT_TRUE(bench.exported()[f("visits.csv")].contains("A,2026-05-01,,3,")) << "the book's stays";
}

TEST_F(OtherwiseImport, NeverLeavesOutASignThatHolds) {
    const auto report = import("A,2026-05-01,3.5,brood-doubt,calm\nC,2026-05-01,1,,\n", true);
    EXPECT_EQ(placesOf(report), QStringList(f("visits.csv:2: signs")));
    EXPECT_FALSE(report.line);
    EXPECT_TRUE(import("A,2026-05-01,3,chalkbrood,calm\nB,2026-05-01,4,,\n", true).good())
        << "the book's sign stays, and chalkbrood holds nothing";
    EXPECT_TRUE(bench.exported()[f("visits.csv")].contains(",afb,"));
}

} // namespace
} // namespace tests::exchange
