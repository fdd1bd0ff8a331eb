#include "tests/exchange/samples.h"

#include <QElapsedTimer>
#include <QProcess>

#include <gtest/gtest.h>

namespace tests::exchange {
namespace {

constexpr int kMostMs = 120'000;

/// A book's worth of visits, so that an import takes long enough to be killed.
Texts manyVisits() {
    Texts files = smallYard();
    QByteArray visits = "colony,date,bees_top,queen,brood_frames,brood_checked,signs\n";
    for (const char* colony : {"A", "B", "C"})
        for (int day = 0; day < 2500; ++day)
            visits += QByteArray(colony) + ',' + core::isoText(core::dayOf(2025, 5, 1) + day).toLatin1() +
                      ",3.25,eggs,5,5,chalkbrood\n";
    files[f("visits.csv")] = visits;
    return files;
}

/// Runs the importer, and kills it after `ms` where it still runs. Milliseconds it ran.
qint64 runImporter(const Workbench& bench, const QString& folder, int ms) {
    QProcess importer;
    QElapsedTimer timer;
    timer.start();
    importer.start(QStringLiteral(YW_BINARY_DIR "/exchange_importer"), {bench.book(), folder});
    EXPECT_TRUE(importer.waitForStarted(kMostMs));
    if (!importer.waitForFinished(ms)) {
        importer.kill();
        EXPECT_TRUE(importer.waitForFinished(kMostMs));
    }
    return timer.elapsed();
}

constexpr int kKills = 8;

TEST(Kill, LeavesNoBookOrTheWholeOne) {
    const Texts files = manyVisits();
    const Workbench whole;
    whole.write(files);
    const qint64 takes = runImporter(whole, whole.folder(f("in")), kMostMs);
    ASSERT_TRUE(whole.bookThere());
    std::mt19937 random(1);
    for (int i = 0; i < kKills; ++i) {
        const Workbench bench;
        bench.write(files);
        runImporter(bench, bench.folder(f("in")), static_cast<int>(below(random, static_cast<size_t>(takes) + 1)));
        if (!bench.bookThere()) continue;
        EXPECT_EQ(bench.check(), QStringList());
        EXPECT_EQ(firstDifference(rowsOf(bench), rowsOf(whole)).toStdString(), "");
    }
}

TEST(Kill, LeavesTheBookAsItWasOrComplete) {
    const Texts files = manyVisits();
    const Workbench whole;
    ASSERT_TRUE(whole.import(smallYard()).good());
    const QStringList before = rowsOf(whole);
    const QString more = whole.folder(f("more"));
    whole.write(files, f("more"));
    const qint64 takes = runImporter(whole, more, kMostMs);
    const QStringList after = rowsOf(whole);
    ASSERT_NE(before, after);
    std::mt19937 random(2);
    for (int i = 0; i < kKills; ++i) {
        const Workbench bench;
        ASSERT_TRUE(bench.import(smallYard()).good());
        runImporter(bench, more, static_cast<int>(below(random, static_cast<size_t>(takes) + 1)));
        EXPECT_EQ(bench.check(), QStringList());
        const QStringList now = rowsOf(bench);
        EXPECT_TRUE(now == before || now == after) << "kill " << i;
        ASSERT_TRUE(bench.import(files).good());
        EXPECT_EQ(firstDifference(rowsOf(bench), after).toStdString(), "");
    }
}

} // namespace
} // namespace tests::exchange
