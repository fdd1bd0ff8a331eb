#include "core/exchange/import.h"
#include "tests/exchange/workbench.h"

#include <gtest/gtest.h>

// An import that is watched and stopped, and rows that say otherwise than the book.

namespace tests::exchange {
namespace {

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
    EXPECT_EQ(steps,
              QStringList({f("Reading the files"), f("Checking the rows"), f("Writing the rows into the book")}));
    for (const auto& [step, count] : told) EXPECT_GE(count, 27) << "every few hundred of 7000 rows";
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
