#include "tests/exchange/samples.h"

#include "core/base/error.h"
#include "core/exchange/export.h"
#include "core/exchange/template.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

namespace tests::exchange {
namespace {

using core::exchange::FileKind;

void expectGood(const core::exchange::ImportReport& report, const Sample& sample) {
    ASSERT_TRUE(report.good()) << sample.name << "\n" << report.faults.lines().join(u'\n').toStdString();
}

/// Import, export, import that into a new book, export: the two exports are the same bytes, the two books the same
/// rows.
void expectRoundTrip(const Sample& sample) {
    const Workbench first;
    expectGood(first.import(sample.files), sample);
    EXPECT_EQ(first.check().join(u'\n').toStdString(), "") << sample.name;
    const Texts once = first.exported();
    EXPECT_EQ(once.size(), 10u) << sample.name;
    const Workbench second;
    expectGood(second.import(once), sample);
    EXPECT_EQ(second.check().join(u'\n').toStdString(), "") << sample.name;
    EXPECT_EQ(second.exported(), once) << sample.name;
    EXPECT_EQ(firstDifference(rowsOf(second), rowsOf(first)).toStdString(), "") << sample.name;
    const auto again = second.import(once);
    expectGood(again, sample);
    EXPECT_FALSE(again.line) << sample.name << ": importing its own export changes a book";
}

TEST(RoundTrip, WorkedYards) {
    for (const Sample& sample : workedYards()) expectRoundTrip(sample);
}

TEST(RoundTrip, HoldStories) {
    for (const Sample& sample : holdStories()) {
        const Workbench bench;
        expectGood(bench.import(sample.files), sample);
        EXPECT_EQ(bench.check(), QStringList()) << sample.name;
    }
}

TEST(RoundTrip, RandomBooks) {
    for (unsigned seed = 1; seed <= 12; ++seed) expectRoundTrip(randomSample(seed));
}

TEST(RoundTrip, OddTexts) {
    const Sample sample{
        "odd texts",
        {{f("yards.csv"),
          "yard,latitude_deg,note\n\"Home, \"\"old\"\"\",0.0000001,\" two\nlines \"\nМёд @ 1,-41.3000001,\"a\r\nb\"\n"},
         {f("colonies.csv"), "colony,yard,stand,x_m,y_m,since,brood_boxes\n\"A,1\",\"home, \"\"OLD\"\"\",\"s "
                             "\"\"1\"\"\",0.001,-0.001,2025-05-01,2\n"
                             "é,мёд @ 1,@,-10000,10000,0001-01-02,1\n=1+1,мёд @ 1,2,1,2,9999-12-31,1\n"},
         {f("visits.csv"), "colony,date,note,by\n\"a,1\",2026-05-01,\"1,5 \"\"kg\"\"; ok\",\" x \"\n"}}};
    expectRoundTrip(sample);
}

TEST(RoundTrip, TheOrderOfFilesRowsAndColumnsMeansNothing) {
    for (unsigned seed = 1; seed <= 6; ++seed) {
        const Sample sample = randomSample(seed);
        const Workbench plain;
        expectGood(plain.import(sample.files), sample);
        std::mt19937 random(seed);
        const Workbench mixed;
        auto files = mixed.write(shuffled(sample.files, random));
        for (size_t i = files.files.size() - 1; i > 0; --i)
            std::swap(files.files[i], files.files[below(random, i + 1)]);
        expectGood(importIntoBook(mixed.book(), mixed.clock(), files, false), sample);
        EXPECT_EQ(firstDifference(rowsOf(mixed), rowsOf(plain)).toStdString(), "") << sample.name;
    }
}

/// File by file, each kind after those it refers to: the same book in the end, but for the ids.
TEST(RoundTrip, FileByFileIsTheSameBook) {
    for (const Sample& sample : workedYards()) {
        const Workbench whole;
        expectGood(whole.import(sample.files), sample);
        const Workbench pieces;
        for (const char* name : {"box_kinds.csv", "yards.csv", "colonies.csv", "lineage.csv", "placements.csv",
                                 "visits.csv", "results.csv", "treatments.csv", "transfers.csv", "settings.csv"})
            if (const auto file = sample.files.find(f(name)); file != sample.files.end())
                expectGood(pieces.import({{file->first, file->second}}), sample);
        EXPECT_EQ(pieces.exported(), whole.exported()) << sample.name;
        EXPECT_EQ(pieces.check(), QStringList()) << sample.name;
    }
}

TEST(Export, WritesTheTenFilesOfAnEmptyBook) {
    const Workbench bench;
    ASSERT_TRUE(bench.import({}).good());
    const Texts out = bench.exported();
    EXPECT_EQ(out.size(), 10u);
    EXPECT_EQ(out.at(f("lineage.csv")), QByteArray("date,how,colony,into,by,note\n"));
    EXPECT_TRUE(out.at(f("box_kinds.csv")).contains("\nlangstroth-10,10,413,505,244,\n"));
}

TEST(Export, ReplacesFilesAndRefusesWhatItCannotWrite) {
    const Workbench bench;
    ASSERT_TRUE(bench.import(smallYard()).good());
    const QString out = bench.folder(f("there"));
    QFile old(out + f("/yards.csv"));
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    const auto session = bench.open();
    core::exchange::exportBook(*session, out);
    EXPECT_TRUE(textsOf(out)[f("yards.csv")].startsWith("yard,"));
    // A file in the folder's place, and a folder in a file's place.
    EXPECT_THROW(core::exchange::exportBook(*session, out + f("/yards.csv")), core::Error);
    ASSERT_TRUE(QDir(bench.folder()).mkpath(f("bad/visits.csv")));
    EXPECT_THROW(core::exchange::exportBook(*session, bench.folder(f("bad"))), core::Error);
}

TEST(Template, WritesHeadersThatAnImportTakes) {
    const Workbench bench;
    const QString out = bench.folder() + f("/new/template");
    core::exchange::writeTemplates(out);
    const Texts texts = textsOf(out);
    EXPECT_EQ(texts.size(), 10u);
    EXPECT_EQ(texts.at(f("placements.csv")), QByteArray("colony,date,yard,stand,x_m,y_m,heading_deg\n"));
    const auto report = bench.import(texts);
    EXPECT_TRUE(report.good());
    EXPECT_FALSE(report.line);
    EXPECT_THROW(core::exchange::writeTemplates(out + f("/yards.csv")), core::Error);
}

} // namespace
} // namespace tests::exchange
