#include "core/rules/kit_hold.h"

#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Stories of kit that came off a colony; what holds it: rule 4.4.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

/// "afb-suspected" of the kit of the colony called so, living or ended; empty: nothing keeps it apart.
std::string holdOf(const PlanBook& book, const QString& label, const QString& day = kFall) {
    const Snapshot s = book.on(day);
    std::set<ColonyId> all;
    for (const SnapColony& c : s.colonies) all.insert(c.id);
    const auto holds = kitHolds(s, all);
    const auto colony = s.colonyNamed(label);
    if (!colony) return "no such colony";
    const auto found = holds.find(s.colony(*colony).id);
    return found == holds.end() ? std::string() : holdWord(found->second.kind).toStdString();
}

Cells dead(const char* day) { return {{"ended", day}, {"end", "dead"}}; }

TEST(KitHold, NothingKeepsTheKitOfAHealthyDeadColonyApart) {
    EXPECT_EQ(holdOf(PlanBook().colony("A", dead("2026-09-01")), "A"), "");
    EXPECT_EQ(holdOf(PlanBook().unchecked("A", dead("2026-09-01")), "A"), "") << "not checked is no foulbrood";
    EXPECT_EQ(holdOf(PlanBook().unchecked("A"), "A"), "");
}

TEST(KitHold, OneThatDiedSuspectedKeepsItsKit) {
    PlanBook book = PlanBook().colony("A", dead("2026-08-20"));
    book.visit("A", "2026-08-01", {{"signs", "afb"}});
    EXPECT_EQ(holdOf(book, "A"), "afb-suspected");
    const Cells negative{{"colony", "A"},        {"date", "2026-08-18"},   {"disease", "afb"},
                         {"result", "negative"}, {"method", "laboratory"}, {"by", "Lab"}};
    EXPECT_EQ(holdOf(PlanBook(book).row("results", negative), "A"), "");
}

TEST(KitHold, AResultAfterItsDeathCounts) {
    PlanBook book = PlanBook().colony("A", dead("2026-08-20"));
    book.row("results", {{"colony", "A"},
                         {"date", "2026-08-30"},
                         {"disease", "afb"},
                         {"result", "positive"},
                         {"method", "laboratory"},
                         {"by", "Lab"}});
    EXPECT_EQ(holdOf(book, "A", "2026-08-29"), "");
    EXPECT_EQ(holdOf(book, "A"), "afb-confirmed");
    book.row("results", {{"colony", "A"},
                         {"date", "2026-09-10"},
                         {"disease", "afb"},
                         {"result", "release"},
                         {"method", "inspector"},
                         {"by", "Office"},
                         {"paper", "7"}});
    EXPECT_EQ(holdOf(book, "A"), "");
}

TEST(KitHold, DoubtAndEuropeanFoulbroodOutliveTheColony) {
    for (const auto& [sign, hold] : {std::pair{"brood-doubt", "brood-doubt"}, std::pair{"efb", "efb"}}) {
        PlanBook book = PlanBook().colony("A", dead("2026-08-20"));
        book.visit("A", "2026-08-10", {{"signs", sign}});
        EXPECT_EQ(holdOf(book, "A"), hold);
    }
}

TEST(KitHold, OneThatGaveToASourceIsTracedThroughItsEnd) {
    PlanBook book = PlanBook().colony("A", {{"ended", "2026-08-20"}, {"end", "united"}}).colony("B");
    book.row("lineage", {{"date", "2026-08-20"}, {"how", "united"}, {"colony", "A"}, {"into", "B"}});
    EXPECT_EQ(holdOf(book, "A"), "");
    book.visit("B", "2026-09-10", {{"signs", "afb"}});
    EXPECT_EQ(holdOf(book, "B"), "afb-suspected");
    EXPECT_EQ(holdOf(book, "A"), "afb-contact");
}

TEST(KitHold, ASourceThatCameLongAfterItsEndDoesNotReachIt) {
    const auto yardOf = [](const char* died) {
        PlanBook book = PlanBook().colony("A", dead(died)).colony("B");
        return book.visit("B", "2026-09-10", {{"signs", "afb"}});
    };
    // 60 days before the sign: from 2026-07-12 on
    EXPECT_EQ(holdOf(yardOf("2026-07-12"), "A"), "afb-yard");
    EXPECT_EQ(holdOf(yardOf("2026-07-11"), "A"), "");
}

TEST(KitHold, ADeadSourceDoesNotReachKitThatCameLater) {
    PlanBook book = PlanBook()
                        .unchecked("S", {{"since", "2023-01-01"}, {"ended", "2024-06-01"}, {"end", "dead"}})
                        .unchecked("A", {{"since", "2026-01-01"}, {"ended", "2026-08-01"}, {"end", "dead"}});
    book.visit("S", "2024-05-20", {{"signs", "afb"}});
    EXPECT_EQ(holdOf(book, "S"), "afb-suspected");
    EXPECT_EQ(holdOf(book, "A"), "") << "365 days after its last day";
}

TEST(KitHold, AnOrderForTheYardKeepsWhatStandsThere) {
    PlanBook book = PlanBook().colony("A", dead("2026-09-05")).colony("B", dead("2026-08-01"));
    book.row("results", {{"yard", "Y"},
                         {"date", "2026-09-01"},
                         {"disease", "afb"},
                         {"result", "order"},
                         {"method", "inspector"},
                         {"by", "Office"},
                         {"paper", "7"}});
    EXPECT_EQ(holdOf(book, "A"), "order");
    EXPECT_EQ(holdOf(book, "B"), "");
}

} // namespace
