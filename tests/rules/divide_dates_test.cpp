#include "core/rules/divide_checks.h"
#include "core/rules/divide_dates.h"
#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

std::string told(DivideQueens queens) {
    const Day divided = dayOf(2026, 5, 20);
    std::string out;
    for (const DivideDate& d : divideDates(queens, divided))
        out += std::to_string(static_cast<int>(d.what)) + ": " + std::to_string(d.range.first - divided) + "-" +
               std::to_string(d.range.last - divided) + " look " + std::to_string(d.look - divided) + '\n';
    return out;
}

// A sealed cell opens within 7 to 8 days (MacFawn, Making Splits, Bee Culture; swarm-control booklet), a queen lays 10
// to 14 days after (MacFawn), worker brood is capped 9 days after the egg (life-stage tables). Own calculation from
// these: given on day 0, sealed by then.
TEST(DivideDates, OfQueenCells) {
    EXPECT_EQ(told(DivideQueens::Cells), "0: 1-8 look 8\n2: 11-22 look 11\n3: 11-22 look 22\n4: 20-31 look 31\n");
}

// Queen lost to emerged: 11 (Fell, Morse, emergency queen cells, abstract) to 17 days (MacFawn).
TEST(DivideDates, OfQueensThatTheBeesRaise) {
    EXPECT_EQ(told(DivideQueens::Own), "0: 11-17 look 17\n2: 21-31 look 21\n3: 21-31 look 31\n4: 30-40 look 40\n");
}

// common practice, no source
TEST(DivideDates, OfBoughtQueens) {
    EXPECT_EQ(told(DivideQueens::Bought), "1: 3-5 look 5\n3: 7-14 look 14\n");
    for (const DivideDate& d : divideDates(DivideQueens::Bought, dayOf(2026, 5, 20)))
        EXPECT_STREQ(d.source, "common practice, no source");
}

TEST(DivideDates, EachSaysItsSource) {
    for (const DivideQueens queens : {DivideQueens::Cells, DivideQueens::Bought, DivideQueens::Own})
        for (const DivideDate& d : divideDates(queens, dayOf(2026, 5, 20))) {
            const QString text = filled(QString::fromUtf8(sentenceOf(d).pattern), sentenceOf(d).args);
            EXPECT_TRUE(text.contains(isoText(d.range.first))) << text.toStdString();
            EXPECT_TRUE(text.contains(QString::fromUtf8(d.source))) << text.toStdString();
            EXPECT_GE(d.look, d.range.first);
            EXPECT_LE(d.look, d.range.last);
        }
}

PlanBook divided() {
    return PlanBook()
        .unchecked("A")
        .unchecked("B", {{"since", "2026-05-20"}, {"x_m", "4"}})
        .row("lineage", {{"date", "2026-05-20"}, {"how", "divided"}, {"colony", "A"}, {"into", "B"}});
}

/// "8 22 31": days after the divide on which something is due, as seen on that day.
std::string due(const PlanBook& book, const QString& on, std::optional<DivideQueens> queens = DivideQueens::Cells) {
    const Snapshot s = book.on(on);
    std::vector<DivideDone> done;
    if (queens) done.push_back({s.colony(named(s, "A")).id, dayOf(2026, 5, 20), *queens});
    std::string out;
    for (const DivideDue& d : divideChecks(s, done)) {
        EXPECT_EQ(d.colony, named(s, "B"));
        EXPECT_EQ(d.queensKnown, queens.has_value());
        out += (out.empty() ? "" : " ") + std::to_string(d.date.look - d.divided);
    }
    return out;
}

TEST(DivideChecks, AreDueUntilTheyAreAnswered) {
    EXPECT_EQ(due(divided(), "2026-05-20"), "8 22") << "the third is more than 30 days off";
    EXPECT_EQ(due(divided(), "2026-05-21"), "8 22 31");
    PlanBook looked = divided().visit("B", "2026-05-27", {{"note", "open"}});
    EXPECT_EQ(due(looked, "2026-05-28"), "22 31");
    EXPECT_EQ(due(looked.visit("B", "2026-05-30", {{"queen", "eggs"}}), "2026-06-01"), "22 31")
        << "before she can lay, those are not hers";
    EXPECT_EQ(due(looked.visit("B", "2026-06-02", {{"queen", "eggs"}}), "2026-06-03"), "31");
    EXPECT_EQ(due(looked.visit("B", "2026-06-20", {{"note", "capped"}}), "2026-06-21"), "");
}

TEST(DivideChecks, EndSixtyDaysPastTheirDay) {
    EXPECT_EQ(due(divided(), "2026-07-27"), "8 22 31"); // 8 + 60 = 68 days
    EXPECT_EQ(due(divided(), "2026-07-28"), "22 31");
    EXPECT_EQ(due(divided(), "2026-08-20"), "");
}

TEST(DivideChecks, NothingMoreOfOneThatLacksAQueen) {
    PlanBook none = divided().visit("B", "2026-06-11", {{"queen", "none"}});
    EXPECT_EQ(due(none, "2026-06-12"), "") << "the plan has it as queen trouble";
}

TEST(DivideChecks, WhereNobodyNotedTheQueensTheDaysOfThoseRaised) {
    EXPECT_EQ(due(divided(), "2026-05-21", std::nullopt), "17 31");
}

} // namespace
