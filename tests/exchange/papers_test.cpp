#include "core/edit/keeper.h"
#include "core/edit/notifiables.h"
#include "tests/exchange/workbench.h"

#include <gtest/gtest.h>

namespace tests::exchange {

namespace {

using core::exchange::FileKind;

const QByteArray kKeeperFile = "name,address,contact,registration,place\n"
                               "Ines,\"1 Long Lane\nOver, Yonder\",0000 1,DE-7,Germany\n";
const QByteArray kLines = "place,disease,must,tell,source\n"
                          "Atlantis,afb,yes,\"harbour office, 0000 2\",a letter\n"
                          "Atlantis,varroa,no,,\n"
                          "Wales,efb,yes,the inspector,\n";

Texts papers() { return smallYardWith({{f("keeper.csv"), kKeeperFile}, {f("notifiable.csv"), kLines}}); }

std::string linesOf(const core::exchange::ImportReport& report) {
    return report.faults.lines().join(u'\n').toStdString();
}

TEST(PaperFiles, KeeperAndWhatMustBeReportedComeBackAsTheyWere) {
    const Workbench bench;
    const auto report = bench.import(papers());
    EXPECT_EQ(linesOf(report), "");
    EXPECT_TRUE(report.summary().contains(f("what must be reported: 3 new")))
        << report.summary().join(u'\n').toStdString();
    EXPECT_EQ(bench.check(), QStringList());
    const Texts out = bench.exported();
    EXPECT_EQ(out.at(f("keeper.csv")), kKeeperFile);
    EXPECT_EQ(out.at(f("notifiable.csv")), kLines);
    const auto again = bench.import(papers());
    EXPECT_EQ(linesOf(again), "");
    EXPECT_FALSE(again.line);
    EXPECT_EQ(again.of(FileKind::Keeper).passedOver, 1);
    EXPECT_EQ(again.of(FileKind::Notifiables).passedOver, 3);
    const auto session = bench.open();
    EXPECT_EQ(session->keeper()->address, "1 Long Lane\nOver, Yonder");
    session->undo();
    EXPECT_FALSE(session->keeper());
    EXPECT_TRUE(session->notifiables().empty());
    EXPECT_EQ(session->check(), QStringList());
}

TEST(PaperFiles, AreWrittenOnlyWhereThereAreAny) {
    const Workbench bench;
    EXPECT_EQ(linesOf(bench.import(smallYard())), "");
    EXPECT_FALSE(bench.exported().contains(f("keeper.csv")));
    EXPECT_FALSE(bench.exported().contains(f("notifiable.csv")));
}

TEST(PaperFiles, WhatIsWrongIsSaidAndChangesNothing) {
    const Workbench bench;
    const auto fault = [&](const char* file, const QByteArray& text) {
        const std::string lines = linesOf(bench.import(smallYardWith({{f(file), text}})));
        EXPECT_FALSE(bench.bookThere());
        return lines;
    };
    const auto keeper = [&](const QByteArray& rows) {
        return fault("keeper.csv", "name,address,contact,registration,place\n" + rows);
    };
    const auto line = [&](const QByteArray& rows) {
        return fault("notifiable.csv", "place,disease,must,tell,source\n" + rows);
    };
    EXPECT_NE(keeper(",x,,,\n").find("name: is blank"), std::string::npos);
    EXPECT_NE(keeper("A,,,,\nB,,,,\n").find(":3: name: “B” is a second keeper, expected one"), std::string::npos);
    EXPECT_NE(keeper("A," + QByteArray(501, 'x') + ",,,\n").find("Address: expected at most 500"), std::string::npos);
    EXPECT_NE(line("Atlantis,plague,yes,,\n").find("disease: "), std::string::npos);
    EXPECT_NE(line("Atlantis,afb,perhaps,,\n").find("must: "), std::string::npos);
    EXPECT_NE(line("Atlantis,afb,yes,,\natlantis,afb,no,,\n").find("stands in line 2"), std::string::npos);
}

TEST(PaperFiles, ARowThatSaysOtherwiseThanTheBookIsAFault) {
    const Workbench bench;
    EXPECT_EQ(linesOf(bench.import(papers())), "");
    QByteArray keeper = kKeeperFile, lines = kLines;
    keeper.replace("DE-7", "DE-8");
    lines.replace("efb,yes", "efb,no");
    EXPECT_NE(linesOf(bench.import({{f("keeper.csv"), keeper}})).find("registration: “DE-8” where the book has “DE-7”"),
              std::string::npos);
    EXPECT_NE(linesOf(bench.import({{f("notifiable.csv"), lines}})).find("must: “no” where the book has “yes”"),
              std::string::npos);
    EXPECT_EQ(bench.open()->keeper()->registration, "DE-7");
}

} // namespace

} // namespace tests::exchange
