#include "tests/exchange/workbench.h"

#include <gtest/gtest.h>

#include <set>

// Samples and ends of quarantined kit in files.

namespace tests::exchange {

namespace {

using core::exchange::FileKind;
using core::exchange::ImportReport;

const QByteArray kSampleHeader = "colony,date,disease,material,laboratory,number,sent,answer,paper,given_up,by,note\n";
const QByteArray kEndHeader = "date,yard,part,colony,count,how,by,paper,note\n";
const QByteArray kResultHeader = "colony,yard,date,disease,result,method,by,paper,note\n";

const QByteArray kTaken = "A,2026-05-01,afb,brood,Hill laboratory,12/1,2026-05-02,negative,A-1,,Ines,warm\n"
                          "A,2026-05-01,afb,honey,Hill laboratory,12/2,2026-05-02,negative,A-1,,,\n"
                          "A,2026-06-01,efb,brood,Hill laboratory,,,,,,,\n"
                          "B,2026-05-03,afb,debris,Vale laboratory,,2026-05-04,,,2026-07-01,,\"lost, it seems\"\n"
                          "D,2026-03-05,afb,brood,Hill laboratory,,,positive,A-2,,,of what was left\n";
const QByteArray kAnswers = "D,,2026-03-05,afb,positive,laboratory,Hill laboratory,A-2,\n"
                            "A,,2026-05-01,afb,negative,laboratory,Hill laboratory,A-1,\n"
                            "A,,2026-05-01,afb,negative,laboratory,Hill laboratory,A-1,second\n";
const QByteArray kEnded = "2026-03-10,,floor,D,1,other,Ines,,buried at the quarry\n"
                          "2026-03-10,Hill,langstroth-8,D,2,irradiated,Ines,K-7,\n";

Texts sampledYard() {
    return smallYardWith({{f("results.csv"), kResultHeader + kAnswers},
                          {f("samples.csv"), kSampleHeader + kTaken},
                          {f("kit_ends.csv"), kEndHeader + kEnded}});
}

std::string faultsOf2(const ImportReport& report) { return report.faults.lines().join(u'\n').toStdString(); }

/// The fault of one row of a file, imported into the small yard with the results above; nothing is written.
std::string faultOf2(const char* file, const QByteArray& rows) {
    const Workbench bench;
    Texts texts = smallYardWith({{f("results.csv"), kResultHeader + kAnswers}});
    texts[f(file)] = (f(file) == f("samples.csv") ? kSampleHeader : kEndHeader) + rows + "\n";
    const auto report = bench.import(texts);
    EXPECT_FALSE(bench.bookThere());
    const QString line = report.faults.lines().join(u'\n');
    return line.mid(line.indexOf(f(file))).toStdString();
}

bool has(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }

TEST(SampleFiles, SamplesAndEndsOfKitComeBackAsTheyWere) {
    const Workbench bench;
    const auto report = bench.import(sampledYard());
    EXPECT_EQ(faultsOf2(report), "");
    EXPECT_EQ(report.of(FileKind::Samples).added, 5);
    EXPECT_EQ(report.of(FileKind::KitEnds).added, 2);
    EXPECT_TRUE(report.summary().contains(f("samples: 5 new")));
    EXPECT_EQ(bench.check(), QStringList());
    const Texts out = bench.exported();
    EXPECT_EQ(out.at(f("samples.csv")), kSampleHeader + kTaken);
    EXPECT_EQ(out.at(f("kit_ends.csv")), kEndHeader + kEnded);
    EXPECT_EQ(out.at(f("results.csv")), kResultHeader + kAnswers);
    // Each answer is linked to one sample.
    std::set<core::ResultId> answers;
    for (const core::Sample& s : bench.open()->samples())
        if (s.result) answers.insert(*s.result);
    EXPECT_EQ(answers.size(), 3u);
    const auto again = bench.import(out);
    EXPECT_EQ(faultsOf2(again), "");
    EXPECT_FALSE(again.line) << "all of it is in the book";
    EXPECT_EQ(again.of(FileKind::Samples).passedOver, 5);
    EXPECT_EQ(again.of(FileKind::KitEnds).passedOver, 2);
    // In another book, and out of it, too.
    const Workbench other;
    EXPECT_EQ(faultsOf2(other.import(out)), "");
    EXPECT_EQ(other.exported(), out);
    const auto session = bench.open();
    session->undo(core::edit::Correction{f("Ana"), f("of another operation")}); // a hold rests on the positive
    EXPECT_EQ(session->check(), QStringList());
    EXPECT_TRUE(session->samples().empty());
    EXPECT_TRUE(session->kitEnds().empty());
}

TEST(SampleFiles, AnAnswerMayBeInTheBookAlready) {
    const Workbench bench;
    EXPECT_EQ(faultsOf2(bench.import(smallYardWith({{f("results.csv"), kResultHeader + kAnswers}}))), "");
    EXPECT_EQ(faultsOf2(bench.import({{f("samples.csv"), kSampleHeader + kTaken}})), "");
    EXPECT_EQ(bench.check(), QStringList());
    EXPECT_EQ(bench.exported().at(f("samples.csv")), kSampleHeader + kTaken);
    // None is left for one more.
    const auto more = faultsOf2(bench.import(
        {{f("samples.csv"), kSampleHeader + "A,2026-05-01,afb,bees,Hill laboratory,,,negative,A-1,,,\n"}}));
    EXPECT_TRUE(has(more, "answer: no result negative for afb of “A” on 2026-05-01 answers it")) << more;
}

TEST(SampleFiles, AreWrittenOnlyWhereThereAreAny) {
    const Workbench bench;
    EXPECT_EQ(faultsOf2(bench.import(smallYard())), "");
    EXPECT_FALSE(bench.exported().contains(f("samples.csv")));
    EXPECT_FALSE(bench.exported().contains(f("kit_ends.csv")));
}

TEST(SampleFiles, WhatIsWrongWithASampleIsSaid) {
    const auto fault = [](const QByteArray& row) { return faultOf2("samples.csv", row); };
    EXPECT_TRUE(has(fault("A,2026-05-01,afb,brood,L,,2026-04-30,,,,,"), "sent: 2026-04-30 lies before “date”"));
    EXPECT_TRUE(has(fault("A,2026-05-01,afb,brood,L,,2026-05-03,,,2026-05-02,,"), "given_up: 2026-05-02 lies before"));
    EXPECT_TRUE(
        has(fault("A,2026-05-01,afb,brood,L,,,negative,A-1,2026-05-02,,"), "given_up: is given where “answer” is"));
    EXPECT_TRUE(has(fault("A,2026-05-01,afb,brood,L,,,release,A-1,,,"), "answer: “release” is no answer"));
    EXPECT_TRUE(has(fault("A,2026-05-01,afb,brood,L,,,,A-1,,,"), "paper: “A-1” where “answer” is blank"));
    EXPECT_TRUE(has(fault("A,2026-05-01,afb,brood,L,,,positive,A-1,,,"), "answer: no result positive for afb"));
    EXPECT_TRUE(has(fault("A,2026-05-01,afb,wings,L,,,,,,,"), "material: "));
    EXPECT_TRUE(has(fault("A,2026-05-01,afb,brood,,,,,,,,"), "laboratory: "));
    EXPECT_TRUE(has(fault("A,2025-04-30,afb,brood,L,,,,,,,"), "date: ")) << "before it began";
    EXPECT_TRUE(has(fault("E,2026-05-01,afb,brood,L,,,,,,,"), "colony: "));
}

TEST(SampleFiles, WhatIsWrongWithAnEndOfKitIsSaid) {
    const auto fault = [](const QByteArray& row) { return faultOf2("kit_ends.csv", row); };
    EXPECT_TRUE(has(fault("2026-03-10,,lid,D,1,other,Ines,,"), "note: is blank where “how” is other"));
    EXPECT_TRUE(has(fault("2026-03-10,,lid,D,0,burned,Ines,,"), "count: "));
    EXPECT_TRUE(has(fault("2026-03-10,,lid,D,1,lost,Ines,,"), "how: "));
    EXPECT_TRUE(has(fault("2026-03-10,,lid,D,1,burned,,,"), "by: "));
    EXPECT_TRUE(has(fault("2026-03-10,,,D,1,burned,Ines,,"), "part: "));
    EXPECT_TRUE(has(fault("2026-03-10,Vale,lid,D,1,burned,Ines,,"), "yard: “Vale” is no yard"));
}

} // namespace

} // namespace tests::exchange
