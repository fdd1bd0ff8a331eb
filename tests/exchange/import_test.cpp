#include "tests/exchange/workbench.h"

#include "core/base/error.h"
#include "core/edit/edit_context.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

namespace tests::exchange {
namespace {

using core::exchange::FileKind;
using core::exchange::ImportFiles;

/// The cells of the export's row that begins so.
QStringList exportedRow(const Workbench& bench, const char* file, const char* begin) {
    for (const QByteArray& line : bench.exported()[f(file)].split('\n'))
        if (line.startsWith(begin)) return QString::fromUtf8(line).split(u',');
    return {};
}

void expectGood(const core::exchange::ImportReport& report) {
    EXPECT_TRUE(report.good()) << report.faults.lines().join(u'\n').toStdString();
}

TEST(Import, MakesAMissingBookAsOneEdit) {
    const Workbench bench;
    const auto report = bench.import(smallYard());
    expectGood(report);
    EXPECT_EQ(report.of(FileKind::Yards).added, 2);
    EXPECT_EQ(report.of(FileKind::Colonies).added, 4);
    ASSERT_TRUE(report.line);
    EXPECT_EQ(report.line->text, f("Imported yards 2, colonies 4"));
    EXPECT_EQ(bench.check(), QStringList());
    EXPECT_EQ(bench.open()->history(10).size(), 1u);
    EXPECT_EQ(QDir(bench.folder()).entryList(QDir::Files | QDir::Hidden).filter(f("b.yardwright.")), QStringList());
}

TEST(Import, KeepsTheFilesWithItsLine) {
    const Workbench bench;
    const auto report = bench.import(smallYard());
    ASSERT_TRUE(report.line);
    const auto kept = bench.open()->attachmentsOf(report.line->seq);
    ASSERT_EQ(kept.size(), 2u);
    EXPECT_EQ(kept[0].name, f("yards.csv"));
    EXPECT_EQ(kept[0].text, smallYard()[f("yards.csv")]);
    EXPECT_EQ(kept[1].text, smallYard()[f("colonies.csv")]);
}

TEST(Import, IsTakenBackAndMadeAgainWhole) {
    const Workbench bench;
    expectGood(bench.import(smallYard()));
    const Texts before = bench.exported();
    const Texts more = {
        {f("colonies.csv"), "colony,yard,stand,x_m,y_m,since\nA,Home,9,9,9,2026-05-02\nE,Home,8,8,8,2026-05-01\n"},
        {f("visits.csv"), "colony,date,signs\nA@2025-05-01,2026-04-01,afb chalkbrood\nE,2026-05-02,\n"},
        {f("placements.csv"), "colony,date,yard,stand,x_m,y_m\nB,2026-06-01,Home,1,0,0\n"},
        {f("lineage.csv"), "date,how,colony,into\n2026-05-01,united,A@2025-05-01,B\n"}};
    expectGood(bench.import(more));
    const Texts after = bench.exported();
    EXPECT_NE(before, after);
    const auto session = bench.open();
    core::edit::Correction why{f("Ines"), f("wrong files")};
    EXPECT_TRUE(session->undo(why));
    EXPECT_EQ(session->check(), QStringList());
    EXPECT_EQ(bench.exported(), before);
    EXPECT_TRUE(session->redo(why));
    EXPECT_EQ(session->check(), QStringList());
    EXPECT_EQ(bench.exported(), after);
}

TEST(Import, PassesOverWhatTheBookHas) {
    const Workbench bench;
    Texts all = smallYardWith(
        {{f("visits.csv"), "colony,date,bees_top,signs,gross_kg,note\nA,2026-05-01,3.25,efb afb,31.4,\"so, so\"\n"},
         {f("transfers.csv"), "date,from,to,what,count\n2026-05-01,A,B,feed,1\n"},
         {f("results.csv"),
          "colony,yard,date,disease,result,method,by,paper\n,Home,2026-05-01,afb,order,inspector,x,1\n"},
         {f("treatments.csv"), "colony,yard,date,product,substance,quantity\nA,,2026-05-01,strips,thymol,2.5\n"},
         {f("lineage.csv"), "date,how,colony,into\n2026-06-01,united,C,B\n"},
         {f("placements.csv"), "colony,date,yard,stand,x_m,y_m\nA,2026-05-02,Home,8,9,9\n"},
         {f("box_kinds.csv"), "box,frames\ndeep,9\n"},
         {f("settings.csv"), "name,value\ntrace.days,400\n"}});
    expectGood(bench.import(all));
    const auto again = bench.import(all);
    expectGood(again);
    EXPECT_FALSE(again.line);
    for (const FileKind kind : core::exchange::kFileKinds) {
        EXPECT_EQ(again.of(kind).added + again.of(kind).changed, 0) << fileName(kind).toStdString();
        EXPECT_GT(again.of(kind).passedOver, 0) << fileName(kind).toStdString();
    }
    EXPECT_EQ(bench.open()->history(10).size(), 1u);
}

TEST(Import, CountsEqualTransfers) {
    const QByteArray one = "2026-05-01,A,B,frames,1\n";
    const QByteArray header = "date,from,to,what,count\n";
    const Workbench bench;
    expectGood(bench.import(smallYardWith({{f("transfers.csv"), header + one + one}})));
    EXPECT_EQ(bench.exported()[f("transfers.csv")].count('\n'), 3);
    const auto more = bench.import({{f("transfers.csv"), header + one + one + one}});
    EXPECT_EQ(more.of(FileKind::Transfers).passedOver, 2);
    EXPECT_EQ(more.of(FileKind::Transfers).added, 1);
    const auto fewer = bench.import({{f("transfers.csv"), header + one}});
    EXPECT_EQ(fewer.of(FileKind::Transfers).passedOver, 1);
    EXPECT_EQ(fewer.of(FileKind::Transfers).added, 0);
}

TEST(Import, TellsTransfersByTheirNotes) {
    const Workbench bench;
    expectGood(
        bench.import(smallYardWith({{f("transfers.csv"), "date,from,to,what,note\n2026-05-01,A,B,frames,x\n"}})));
    EXPECT_EQ(bench.import({{f("transfers.csv"), "date,from,to,what,note\n2026-05-01,A,B,frames,y\n"}})
                  .of(FileKind::Transfers)
                  .added,
              1);
}

TEST(Import, FillsInABlankEnd) {
    const Workbench bench;
    expectGood(bench.import(smallYard()));
    QByteArray colonies = smallYard()[f("colonies.csv")];
    colonies.replace("2024,,\n", "2024,2026-08-01,sold\n");
    const auto report = bench.import({{f("colonies.csv"), colonies}});
    expectGood(report);
    EXPECT_EQ(report.of(FileKind::Colonies).changed, 1);
    EXPECT_EQ(report.of(FileKind::Colonies).passedOver, 3);
    EXPECT_EQ(exportedRow(bench, "colonies.csv", "A,").mid(10), QStringList({f("2026-08-01"), f("sold")}));
    EXPECT_EQ(bench.check(), QStringList());
}

TEST(Import, EndsAColonyByItsUnion) {
    const Workbench bench;
    const Texts lineage = {{f("lineage.csv"), "date,how,colony,into\n2026-06-01,united,A,B\n"}};
    expectGood(bench.import(smallYardWith(lineage)));
    EXPECT_EQ(exportedRow(bench, "colonies.csv", "A,").mid(10), QStringList({f("2026-06-01"), f("united")}));
    expectGood(bench.import(smallYard())); // its row may leave the end blank
    // Comb of one that has ended, to its last day and later; its number and its stand are free the next day.
    expectGood(bench.import(
        {{f("transfers.csv"),
          "date,from,to,what\n2026-06-01,A,B,bees\n2026-07-01,A,B,frames\n2026-07-01,A,B,box\n2026-07-01,A,B,feed\n"},
         {f("colonies.csv"), "colony,yard,stand,x_m,y_m,since\nA,Home,1,0,0,2026-08-01\n"}}));
    EXPECT_EQ(bench.check(), QStringList());
}

TEST(Import, MakesTwoBoxesOfAUnion) {
    const Workbench bench;
    const auto visit = [](const char* day) { return QByteArray("colony,date,upper_bees_top\nA,") + day + ",3\n"; };
    const Texts lineage = {{f("lineage.csv"), "date,how,colony,into\n2026-06-01,united,C,A\n"}};
    Texts early = smallYardWith(lineage);
    early[f("visits.csv")] = visit("2026-05-31");
    EXPECT_EQ(placesOf(bench.import(early)), QStringList{f("visits.csv:2: upper_bees_top")});
    Texts late = smallYardWith(lineage);
    late[f("visits.csv")] = "colony,date,boxes,upper_bees_top\nA,2026-06-01,1,3\n"; // at a tie the union
    expectGood(bench.import(late));
    expectGood(bench.import({{f("visits.csv"), visit("2026-06-02")}}));
    EXPECT_EQ(bench.check(), QStringList());
}

TEST(Import, NamesAColonyByItsLabelOnTheDay) {
    const Workbench bench;
    const Texts reuse = {
        {f("colonies.csv"), smallYard()[f("colonies.csv")] + "D,Hill,2,5,0,90,2026-03-02,1,langstroth-8,,,\n"},
        {f("visits.csv"), "colony,date,note\nD,2026-03-01,old\nd,2026-03-02,new\nD@2025-05-01,2026-02-01,old too\n"},
        {f("results.csv"), "colony,date,disease,result,method,by\nD,2026-03-05,afb,negative,laboratory,new\n"
                           "D@2025-05-01,2026-03-05,afb,negative,laboratory,old\n"}};
    expectGood(bench.import(smallYardWith(reuse)));
    const Texts out = bench.exported();
    EXPECT_EQ(out.at(f("visits.csv")).split('\n').mid(1),
              QList<QByteArray>({"D,2026-02-01,,,,,,,,,,,,,,,,,old too", "D,2026-03-01,,,,,,,,,,,,,,,,,old",
                                 "D,2026-03-02,,,,,,,,,,,,,,,,,new", ""}));
    EXPECT_TRUE(out.at(f("results.csv")).contains("\nD@2025-05-01,,2026-03-05,afb,negative,laboratory,old,,\n"));
    EXPECT_TRUE(out.at(f("results.csv")).contains("\nD,,2026-03-05,afb,negative,laboratory,new,,\n"));
}

TEST(Import, LetsAStandChangeHandsOnADay) {
    const Workbench bench;
    // A and B change places; E comes to D's stand on the day of D's end; C is carried on its first day.
    expectGood(bench.import(
        smallYardWith({{f("colonies.csv"), smallYard()[f("colonies.csv")] + "E,Hill,2,5,0,,2026-03-01,,,,,\n"},
                       {f("placements.csv"), "colony,date,yard,stand,x_m,y_m\nA,2026-05-01,Home,2,3,0\nB,2026-05-01,"
                                             "Home,1,0,0\nC,2025-05-01,Hill,7,8,8\n"}})));
    EXPECT_EQ(bench.check(), QStringList());
    // And back, in the book.
    expectGood(bench.import(
        {{f("placements.csv"), "colony,date,yard,stand,x_m,y_m\nA,2026-06-01,Home,1,0,0\nB,2026-06-01,Home,2,3,0\n"}}));
    EXPECT_EQ(bench.check(), QStringList());
}

TEST(Import, CarriesInBetweenKnownCarries) {
    const Workbench bench;
    const QByteArray header = "colony,date,yard,stand,x_m,y_m\n";
    expectGood(bench.import(smallYardWith({{f("placements.csv"), header + "A,2026-06-01,Home,8,8,8\n"}})));
    expectGood(bench.import({{f("placements.csv"), header + "A,2026-05-01,Hill,9,9,9\n"}}));
    EXPECT_EQ(bench.check(), QStringList());
    const auto s = bench.open()->snapshot(core::dayOf(2026, 9, 20));
    const auto a = s.livingNamed(u"A");
    ASSERT_TRUE(a);
    ASSERT_EQ(s.staysOf(*a).size(), 3u);
    EXPECT_EQ(s.staysOf(*a)[0].until, core::dayOf(2026, 5, 1));
    EXPECT_EQ(s.staysOf(*a)[1].until, core::dayOf(2026, 6, 1));
    EXPECT_EQ(s.staysOf(*a)[2].until, std::nullopt);
}

TEST(Import, ChangesSettings) {
    const Workbench bench;
    expectGood(bench.import({{f("settings.csv"), "name,value\ntrace.days,400\nclass.strong_min,9.25\n"}}));
    EXPECT_EQ(bench.open()->settings().traceDays, 400);
    EXPECT_EQ(bench.open()->settings().strongMin.value, 37);
    EXPECT_EQ(bench.exported()[f("settings.csv")], QByteArray("name,value\nclass.strong_min,9.25\ntrace.days,400\n"));
    const auto again = bench.import({{f("settings.csv"), "name;value\nclass.strong_min;9,5\n"}});
    EXPECT_EQ(again.of(FileKind::Settings).changed, 1);
    EXPECT_EQ(bench.open()->settings().strongMin.value, 38);
}

TEST(Import, ReadsSemicolonsAndDecimalCommas) {
    const Workbench bench;
    expectGood(bench.import(smallYardWith(
        {{f("visits.csv"), "\xEF\xBB\xBF"
                           "colony;date;bees_top;gross_kg;signs\r\nA;2026-05-01;3,25;31,5;\"afb;efb\"\r\n"}})));
    EXPECT_TRUE(bench.exported()[f("visits.csv")].contains("\nA,2026-05-01,,3.25,,,,,,,,,afb efb,,31.5,,,,\n"));
}

TEST(Import, RoundsToWhatIsKept) {
    const Workbench bench;
    expectGood(
        bench.import({{f("yards.csv"), "yard\nHome\n"},
                      {f("colonies.csv"), "colony,yard,stand,x_m,y_m,since\nA,Home,1,1.2345,-1.2344,2025-05-01\n"},
                      {f("visits.csv"), "colony,date,gross_kg\nA,2026-05-01,32.995\n"}}));
    EXPECT_EQ(exportedRow(bench, "colonies.csv", "A,").mid(3, 2), QStringList({f("1.235"), f("-1.234")}));
    EXPECT_EQ(exportedRow(bench, "visits.csv", "A,")[14], f("33"));
}

TEST(Import, DryRunChangesNothing) {
    const Workbench bench;
    const auto onNothing = bench.import(smallYard(), true);
    expectGood(onNothing);
    EXPECT_EQ(onNothing.of(FileKind::Colonies).added, 4);
    EXPECT_FALSE(bench.bookThere());
    expectGood(bench.import(smallYard()));
    const QByteArray bytes = textsOf(bench.folder())[f("b.yardwright")];
    const auto report = bench.import({{f("visits.csv"), "colony,date\nA,2026-05-01\n"}}, true);
    EXPECT_EQ(report.of(FileKind::Visits).added, 1);
    EXPECT_FALSE(report.line);
    EXPECT_EQ(textsOf(bench.folder())[f("b.yardwright")], bytes);
    EXPECT_EQ(placesOf(bench.import({{f("visits.csv"), "colony,date\nZ,2026-05-01\n"}}, true)),
              QStringList{f("visits.csv:2: colony")});
}

core::Error::Kind kindOf(const std::function<void()>& work) {
    try {
        work();
    } catch (const core::Error& e) {
        return e.kind();
    }
    ADD_FAILURE() << "nothing was thrown";
    return core::Error::Kind::Internal;
}

TEST(Import, RefusesAnUnknownMapping) {
    const Workbench bench;
    ImportFiles files = bench.write(smallYard());
    files.mapping = f("mine");
    EXPECT_EQ(kindOf([&] { importIntoBook(bench.book(), bench.clock(), files, false); }), core::Error::Kind::BadData);
    EXPECT_FALSE(bench.bookThere());
}

TEST(Import, RefusesWhatIsNoBook) {
    const Workbench bench;
    const ImportFiles files = bench.write(smallYard());
    const QString yards = files.files.front().path;
    EXPECT_EQ(kindOf([&] { importIntoBook(yards, bench.clock(), files, false); }), core::Error::Kind::Book);
    EXPECT_EQ(kindOf([&] { importIntoBook(yards, bench.clock(), files, true); }), core::Error::Kind::Book);
    EXPECT_EQ(kindOf([&] { importIntoBook(bench.folder() + f("/no/b.yardwright"), bench.clock(), files, false); }),
              core::Error::Kind::Book);
    EXPECT_EQ(kindOf([&] { importIntoBook(bench.folder(), bench.clock(), files, false); }), core::Error::Kind::Book);
}

TEST(Import, OfFilesWithoutRowsMakesAnEmptyBook) {
    const Workbench bench;
    const auto report = bench.import({{f("visits.csv"), "date,colony\n\n\n"}});
    expectGood(report);
    EXPECT_FALSE(report.line);
    EXPECT_TRUE(bench.bookThere());
}

} // namespace
} // namespace tests::exchange
