#include "core/edit/queens.h"
#include "tests/exchange/workbench.h"

#include <gtest/gtest.h>

namespace tests::exchange {

namespace {

using core::exchange::FileKind;
using core::exchange::ImportReport;

const QByteArray kFeedings = "colony,date,what,mix,amount_l,amount_kg,by,note\n";
const QByteArray kFalls = "colony,date,days,mites,by,note\n";
const QByteArray kQueens = "colony,since,until,fate,born,mark,tag,origin,source,mother,note\n";

std::string faultsOf(const ImportReport& report) { return report.faults.lines().join(u'\n').toStdString(); }

/// The fault of one row of a file, imported into the small yard; nothing is written.
std::string faultOf(const char* file, const QByteArray& rows) {
    const Workbench bench;
    const auto report = bench.import(smallYardWith({{f(file), (f(file) == f("queens.csv")       ? kQueens
                                                               : f(file) == f("mite_falls.csv") ? kFalls
                                                                                                : kFeedings) +
                                                                  rows}}));
    EXPECT_FALSE(bench.bookThere());
    const QString line = report.faults.lines().join(u'\n');
    return line.mid(line.indexOf(f(file))).toStdString();
}

const QByteArray kFed = "A,2026-05-01,syrup,3:2,10,,Ines,warm\n"
                        "B,2026-05-02,fondant,,,2.5,,\n";
const QByteArray kHeads = "A,2025-05-01,2026-06-01,superseded,2024,green,17,bought,line 12,,\"mild, slow\"\n"
                          "A,2026-06-01,,,2026,white,,supersedure,,A,\n"
                          "B,2025-06-01,,,2025,,,raised,,A,\n";

Texts keptYard() { return smallYardWith({{f("feedings.csv"), kFeedings + kFed}, {f("queens.csv"), kQueens + kHeads}}); }

TEST(KeptFiles, FeedAndQueensComeBackAsTheyWere) {
    const Workbench bench;
    const auto report = bench.import(keptYard());
    EXPECT_EQ(faultsOf(report), "");
    EXPECT_EQ(report.of(FileKind::Feedings).added, 2);
    EXPECT_EQ(report.of(FileKind::Queens).added, 3);
    EXPECT_TRUE(report.summary().contains(f("queens: 3 new")));
    EXPECT_EQ(bench.check(), QStringList());
    const Texts out = bench.exported();
    EXPECT_EQ(out.at(f("feedings.csv")), kFeedings + kFed);
    EXPECT_EQ(out.at(f("queens.csv")), kQueens + kHeads);
    const auto again = bench.import(keptYard());
    EXPECT_EQ(faultsOf(again), "");
    EXPECT_FALSE(again.line);
    EXPECT_EQ(again.of(FileKind::Feedings).passedOver, 2);
    EXPECT_EQ(again.of(FileKind::Queens).passedOver, 3);
    const auto session = bench.open();
    session->undo();
    EXPECT_EQ(session->check(), QStringList());
    EXPECT_TRUE(session->queens().empty());
}

TEST(KeptFiles, MitesFallenComeBackAsTheyWere) {
    const QByteArray rows = "A,2026-07-10,5,20,Ines,\"board, white\"\n"
                            "A,2026-07-15,5,0,,\n"
                            "B,2026-07-10,1,1,,\n";
    const Texts yard = smallYardWith({{f("mite_falls.csv"), kFalls + rows}});
    const Workbench bench;
    const auto report = bench.import(yard);
    EXPECT_EQ(faultsOf(report), "");
    EXPECT_EQ(report.of(FileKind::MiteFalls).added, 3);
    EXPECT_TRUE(report.summary().contains(f("counts of fallen mites: 3 new")))
        << report.summary().join(u'\n').toStdString();
    EXPECT_EQ(bench.check(), QStringList());
    EXPECT_EQ(bench.exported().at(f("mite_falls.csv")), kFalls + rows);
    const auto again = bench.import(yard);
    EXPECT_EQ(faultsOf(again), "");
    EXPECT_FALSE(again.line);
    EXPECT_EQ(again.of(FileKind::MiteFalls).passedOver, 3);
    const auto otherwise = bench.import({{f("mite_falls.csv"), kFalls + "A,2026-07-10,5,21,Ines,\"board, white\"\n"}});
    EXPECT_NE(faultsOf(otherwise).find("mites: "), std::string::npos) << faultsOf(otherwise);
    const auto session = bench.open();
    session->undo();
    EXPECT_EQ(session->check(), QStringList());
    EXPECT_TRUE(session->miteFalls(core::dayOf(2000, 1, 1), core::dayOf(2100, 1, 1)).empty());
}

TEST(KeptFiles, WhatIsWrongWithMitesFallenIsSaid) {
    const auto fault = [](const QByteArray& rows) { return faultOf("mite_falls.csv", rows + "\n"); };
    EXPECT_NE(fault("A,2026-05-10,0,20,,").find("days: "), std::string::npos);
    EXPECT_NE(fault("A,2026-05-10,61,20,,").find("days: "), std::string::npos);
    EXPECT_NE(fault("A,2026-05-10,,20,,").find("days: "), std::string::npos) << "a count without its days says nothing";
    EXPECT_NE(fault("A,2026-05-10,5,,,").find("mites: "), std::string::npos);
    EXPECT_NE(fault("A,2026-05-10,5,4.5,,").find("mites: "), std::string::npos);
    EXPECT_NE(fault("D,2026-03-02,1,1,,").find("date: "), std::string::npos) << "after its end";
    EXPECT_NE(fault("A,2025-05-03,5,1,,").find("days: "), std::string::npos) << "the board lay there before it began";
    EXPECT_NE(fault("A,2026-05-10,5,20,,\nA,2026-05-10,4,2,,").find("date: "), std::string::npos) << "twice";
}

TEST(KeptFiles, AreWrittenOnlyWhereThereAreAny) {
    const Workbench bench;
    EXPECT_EQ(faultsOf(bench.import(smallYard())), "");
    EXPECT_FALSE(bench.exported().contains(f("feedings.csv")));
    EXPECT_FALSE(bench.exported().contains(f("queens.csv")));
    EXPECT_FALSE(bench.exported().contains(f("mite_falls.csv")));
}

TEST(KeptFiles, WhatIsWrongWithFeedIsSaid) {
    const auto fault = [](const QByteArray& row) { return faultOf("feedings.csv", row + "\n"); };
    EXPECT_NE(fault("A,2026-05-01,syrup,3:2,,,,").find("amount_l: is blank and so is “amount_kg”"), std::string::npos)
        << fault("A,2026-05-01,syrup,3:2,,,,");
    EXPECT_NE(fault("A,2026-05-01,syrup,3:2,1,1,,").find("amount_kg: is given where “amount_l” is"), std::string::npos);
    EXPECT_NE(fault("A,2026-05-01,syrup,thick,1,,,").find("mix: “thick” is no mix"), std::string::npos);
    EXPECT_NE(fault("A,2026-05-01,sugar,3:2,,1,,").find("mix: “3:2” of what is no syrup"), std::string::npos);
    EXPECT_NE(fault("A,2026-05-01,syrup,,101,,,").find("amount_l: "), std::string::npos);
    EXPECT_NE(fault("A,2026-05-01,syrup,,,0,,").find("amount_kg: is 0"), std::string::npos);
    EXPECT_NE(fault("A,2026-05-01,water,,1,,,").find("what: "), std::string::npos);
    EXPECT_NE(fault("D,2026-03-02,syrup,,1,,,").find("date: "), std::string::npos) << "after its end";
}

TEST(KeptFiles, WhatIsWrongWithQueensIsSaid) {
    const auto fault = [](const QByteArray& rows) { return faultOf("queens.csv", rows + "\n"); };
    EXPECT_NE(fault("A,2025-06-01,2026-01-01,,,,,,,,").find("fate: is blank where “until” is not"), std::string::npos);
    EXPECT_NE(fault("A,2025-06-01,,dead,,,,,,,").find("until: is blank where “fate” is not"), std::string::npos);
    EXPECT_NE(fault("A,2025-06-01,2025-05-31,dead,,,,,,,").find("until: 2025-05-31 lies before"), std::string::npos);
    EXPECT_NE(fault("A,2025-06-01,,,2026,,,,,,").find("born: 2026 lies after"), std::string::npos);
    EXPECT_NE(fault("A,2025-06-01,,,,,1234567890123,,,,").find("tag: "), std::string::npos);
    EXPECT_NE(fault("A,2025-04-30,,,,,,,,,").find("date: "), std::string::npos) << "before it began";
    EXPECT_NE(fault("D,2025-06-01,2026-03-02,dead,,,,,,,").find("until: "), std::string::npos) << "after its end";
    EXPECT_NE(fault("A,2025-06-01,,,,,,,,,\nA,2025-06-01,,,,,,,,,").find("stands in line 2"), std::string::npos);
    EXPECT_NE(fault("A,2025-06-01,,,,,,,,,\nA,2026-06-01,,,,,,,,,").find("has another queen since 2025-06-01"),
              std::string::npos);
    EXPECT_NE(fault("A,2025-06-01,2026-06-02,dead,,,,,,,\nA,2026-06-01,,,,,,,,,").find("another queen until"),
              std::string::npos);
}

TEST(KeptFiles, QueensAreHeldAgainstThoseOfTheBook) {
    const Workbench bench;
    EXPECT_EQ(faultsOf(bench.import(keptYard())), "");
    const auto with = [&](const QByteArray& row) { return faultsOf(bench.import({{f("queens.csv"), kQueens + row}})); };
    EXPECT_NE(with("A,2026-07-01,,,,,,,,,\n").find("has another queen since 2026-06-01"), std::string::npos);
    EXPECT_NE(with("B,2025-05-02,,,,,,,,,\n").find("has another queen from 2025-06-01 on"), std::string::npos);
    EXPECT_NE(with("B,2025-06-01,,,2024,,,raised,,A,\n").find("born: “2024” where the book has “2025”"),
              std::string::npos);
    EXPECT_EQ(with("B,2025-05-02,2025-06-01,dead,,,,,,,\n"), "");
    EXPECT_EQ(bench.check(), QStringList());
}

TEST(KeptFiles, TheYearOfAQueenIsHerColonysToo) {
    const Workbench bench;
    EXPECT_EQ(faultsOf(bench.import(smallYard())), "");
    const auto born = [&] { return bench.open()->colony(core::ColonyId{1})->queenBorn; };
    ASSERT_EQ(born(), 2024);
    const auto with = [&](const QByteArray& row) { return bench.import({{f("queens.csv"), kQueens + row}}); };
    const auto report = with("A,2026-06-01,,,2026,,,,,,\n");
    EXPECT_EQ(faultsOf(report), "");
    EXPECT_TRUE(report.summary().contains(f("colonies: 1 changed"))) << report.summary().join(u'\n').toStdString();
    EXPECT_EQ(born(), 2026) << "as where she is noted by hand";
    EXPECT_EQ(faultsOf(with("A,2025-05-01,2026-06-01,superseded,2023,,,,,,\n")), "");
    EXPECT_EQ(born(), 2026) << "she came before";
    QByteArray colonies = smallYard()[f("colonies.csv")];
    colonies.replace("2024,,\n", "2023,,\n");
    EXPECT_EQ(faultsOf(bench.import({{f("colonies.csv"), colonies}})), "") << "an earlier queen's year";
    EXPECT_EQ(born(), 2026);
    const auto session = bench.open();
    session->undo();
    session->undo();
    EXPECT_EQ(session->colony(core::ColonyId{1})->queenBorn, 2024);
    EXPECT_EQ(session->check(), QStringList());
}

TEST(KeptFiles, AnEndOfTheFilesLiesNotBeforeThem) {
    const Workbench bench;
    EXPECT_EQ(faultsOf(bench.import(keptYard())), "");
    const auto ended = [&](const char* day) {
        QByteArray colonies = smallYard()[f("colonies.csv")];
        colonies.replace("2024,,\n", QByteArray("2024,") + day + ",sold\n");
        return faultsOf(bench.import({{f("colonies.csv"), colonies}}));
    };
    EXPECT_NE(ended("2026-05-31").find("the book has a queen of 2026-06-01"), std::string::npos);
    EXPECT_NE(ended("2026-04-30").find("the book has a feeding of 2026-05-01"), std::string::npos);
    EXPECT_EQ(ended("2026-06-01"), "");
    EXPECT_EQ(bench.check(), QStringList());
}

} // namespace

} // namespace tests::exchange
