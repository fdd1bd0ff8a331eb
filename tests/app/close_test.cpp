#include "tests/app/program.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QTemporaryDir>

namespace {

/// Four colonies counted and checked clean, in one yard; D shows a sign of American foulbrood.
struct Closing : testing::Test {
    QTemporaryDir dir;
    QString book() const { return dir.filePath(QStringLiteral("b.yardwright")); }
    QString file(const char* name) const { return dir.filePath(QLatin1StringView(name)); }

    void SetUp() override {
        writeFile(file("yards.csv"), "yard\nHill\nDale\n");
        writeFile(file("colonies.csv"), "colony,yard,stand,x_m,y_m,since,box\n"
                                        "A,Hill,1,0,0,2026-04-01,Langstroth-10\nB,Hill,2,2,0,2026-04-01,Langstroth-10\n"
                                        "C,Hill,3,4,0,2026-04-01,Langstroth-10\nD,Dale,1,0,0,2026-04-01,Langstroth-10\n"
                                        "E,Dale,2,2,0,2026-04-01,Langstroth-10\n");
        writeFile(file("visits.csv"), "colony,date,bees_top,queen,brood_frames,brood_checked,signs\n"
                                      "A,2026-09-01,3,seen,4,4,\nB,2026-09-01,4,seen,4,4,\nC,2026-09-01,5,seen,4,4,\n"
                                      "D,2026-09-01,5,seen,4,4,afb\nE,2026-09-01,4,seen,4,4,\n");
        const Ran ran = runProgram({"import", book(), "--yards", file("yards.csv"), "--colonies", file("colonies.csv"),
                                    "--visits", file("visits.csv")});
        ASSERT_EQ(ran.status, 0) << ran.err.toStdString();
    }
    Ran close(const char* rows) {
        writeFile(file("day.csv"), QByteArray("yard,date,moved,host,outcome,note\n") + rows);
        return runProgram({"close", book(), "--day", file("day.csv")});
    }
    QByteArray exported(const char* name) {
        const Ran ran = runProgram({"export", book(), "--to", dir.filePath("out")});
        EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
        return bytesOf(dir.filePath(QStringLiteral("out/%1").arg(QLatin1StringView(name))));
    }
};

TEST_F(Closing, WritesWhatWasDoneAndKeepsWhatWasNot) {
    const Ran ran = close("Hill,2026-09-20,A,B,done,\nHill,2026-09-20,C,B,not-done,rain came\n");
    EXPECT_EQ(ran.status, 0) << ran.err.toStdString();
    EXPECT_EQ(ran.out, "done 1, not done 1, changed 0\n");
    EXPECT_EQ(exported("lineage.csv"), "date,how,colony,into,by,note\n2026-09-20,united,A,B,,\n");
    EXPECT_EQ(exported("merge_strips.csv"), "yard,date,variant,position,how,moved,host,upper,outcome,note\n"
                                            "Hill,2026-09-20,1,,united,A,B,B,done,\n"
                                            "Hill,2026-09-20,1,,united,C,B,B,not-done,rain came\n");
    EXPECT_TRUE(exported("colonies.csv").contains("A,Hill,1,0,0,,2026-04-01,1,langstroth-10,,2026-09-20,united"))
        << exported("colonies.csv").toStdString();
    EXPECT_EQ(runProgram({"check", book()}).status, 0);
    const Ran due = runProgram({"due", book(), "--on", "2026-09-21", "--json"});
    EXPECT_TRUE(due.out.contains("union-check")) << due.out.toStdString();
}

TEST_F(Closing, IsAllOrNothingAndNamesRuleRowAndColumn) {
    const Ran ran = close("Hill,2026-09-20,A,B,done,\nHill,2026-09-20,C,B,done,\n");
    EXPECT_EQ(ran.status, 4);
    ASSERT_EQ(ran.errorLines().size(), 1);
    EXPECT_TRUE(ran.errorLines()[0].contains("day.csv:3: outcome: C + B may not be united: 4.7.4"))
        << ran.err.toStdString();
    EXPECT_EQ(exported("lineage.csv"), "date,how,colony,into,by,note\n");
}

TEST_F(Closing, RefusesAHeldColonyByRuleTwoAndAnotherYardByRuleOne) {
    const Ran held = close("Dale,2026-09-20,E,D,done,\n");
    EXPECT_EQ(held.status, 4);
    EXPECT_TRUE(held.err.contains("day.csv:2: outcome: E + D may not be united: 4.7.2: E is held as afb-yard"))
        << held.err.toStdString();
    const Ran elsewhere = close("Hill,2026-09-20,E,B,done,\n");
    EXPECT_EQ(elsewhere.status, 4);
    EXPECT_TRUE(elsewhere.err.contains("E does not stand in Hill on 2026-09-20")) << elsewhere.err.toStdString();
}

TEST_F(Closing, WhatWasDoneInsteadNeedsANoteAndWritesNothingElse) {
    const Ran none = close("Hill,2026-09-20,A,B,changed,\n");
    EXPECT_EQ(none.status, 4);
    EXPECT_TRUE(none.err.contains("day.csv:2: note:")) << none.err.toStdString();
    const Ran noted = close("Hill,2026-09-20,A,B,changed,\"A to C, B was wet\"\n");
    EXPECT_EQ(noted.status, 0) << noted.err.toStdString();
    EXPECT_EQ(exported("lineage.csv"), "date,how,colony,into,by,note\n");
    EXPECT_TRUE(exported("merge_strips.csv").contains("changed,\"A to C, B was wet\""));
}

TEST_F(Closing, NamesWhatTheBookDoesNotHave) {
    EXPECT_TRUE(close("Nowhere,2026-09-20,A,B,done,\n").err.contains("day.csv:2: yard: “Nowhere” is no yard"));
    EXPECT_TRUE(close("Hill,2026-09-20,Z,B,done,\n").err.contains("day.csv:2: moved: “Z” is no colony"));
    EXPECT_TRUE(close("Hill,2026-09-20,A,B,maybe,\n").err.contains("outcome: “maybe” cannot be read"));
    EXPECT_EQ(runProgram({"close", book()}).status, 2);
    EXPECT_EQ(runProgram({"close", book(), "--day", file("none.csv")}).status, 4);
}

} // namespace
