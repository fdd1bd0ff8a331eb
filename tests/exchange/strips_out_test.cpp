#include "tests/exchange/workbench.h"

#include <gtest/gtest.h>

namespace tests::exchange {

namespace {

using core::exchange::FileKind;

const QByteArray kGiven = "colony,yard,date,product,substance,days\n"
                          "A,,2026-05-01,Hazel strips,thymol,20\n"
                          ",Hill,2026-05-02,Hazel strips,thymol,20\n";
const QByteArray kOut = "colony,date,yard,treated,product,by,note\n"
                        "A,2026-05-21,,2026-05-01,Hazel strips,Ana,\n"
                        "C,2026-05-23,Hill,2026-05-02,Hazel strips,,dry\n";

std::string told(const core::exchange::ImportReport& report) { return report.faults.lines().join(u'\n').toStdString(); }

TEST(StripsOutFile, ComesBackAsItWasWithItsTreatmentsOrAfterThem) {
    const Workbench together;
    EXPECT_EQ(told(together.import(smallYardWith({{f("treatments.csv"), kGiven}, {f("strips_out.csv"), kOut}}))), "");
    EXPECT_EQ(together.check(), QStringList());
    EXPECT_EQ(together.exported().at(f("strips_out.csv")), kOut);
    const Workbench after;
    EXPECT_EQ(told(after.import(smallYardWith({{f("treatments.csv"), kGiven}}))), "");
    EXPECT_FALSE(after.exported().contains(f("strips_out.csv"))) << "written only where there are any";
    EXPECT_EQ(told(after.import({{f("strips_out.csv"), kOut}})), "");
    EXPECT_EQ(after.exported().at(f("strips_out.csv")), kOut);
    const auto again = after.import({{f("treatments.csv"), kGiven}, {f("strips_out.csv"), kOut}});
    EXPECT_EQ(told(again), "");
    EXPECT_FALSE(again.line);
    EXPECT_EQ(again.of(FileKind::StripsOut).passedOver, 2);
    const auto session = after.open();
    session->undo(core::edit::Correction{QStringLiteral("Ana"), QStringLiteral("the wrong file")});
    EXPECT_TRUE(session->stripsOut().empty());
    EXPECT_EQ(session->check(), QStringList());
}

TEST(StripsOutFile, WhatDoesNotFitIsAFault) {
    const Workbench bench;
    EXPECT_EQ(told(bench.import(smallYardWith({{f("treatments.csv"), kGiven}}))), "");
    const auto fault = [&](const char* row) {
        return told(
            bench.import({{f("strips_out.csv"), QByteArray("colony,date,yard,treated,product,by,note\n") + row}}));
    };
    EXPECT_NE(fault("A,2026-04-30,,2026-05-01,Hazel strips,,\n").find(":2: date: is before the treatment"),
              std::string::npos);
    EXPECT_NE(fault("A,2026-05-21,,2026-05-03,Hazel strips,,\n").find(":2: treated: 2026-05-03 has no treatment with"),
              std::string::npos);
    EXPECT_NE(fault("A,2026-05-21,,2026-05-01,Hazel strips,,\nA,2026-05-22,,2026-05-01,Hazel strips,,\n")
                  .find(":3: treated: "),
              std::string::npos);
    EXPECT_TRUE(bench.open()->stripsOut().empty());
}

} // namespace

} // namespace tests::exchange
