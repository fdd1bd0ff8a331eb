#include "core/rules/ledger.h"

#include "core/rules/calc/binomial.h"
#include "tests/rules/plan_book.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/random_book.h"

#include <gtest/gtest.h>

#include <QElapsedTimer>

#include <map>

// Counts: own calculation, from the rows of each small book. Defaults: season.fall_start 08-20, season.fall_end 10-20,
// divides from 04-20.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

std::string told(const LedgerCount& c) {
    std::string out = std::to_string(c.start);
    const std::pair<const char*, int> parts[] = {
        {" +divided ", c.divided},     {" +begun ", c.begun},      {" +in ", c.movedIn},
        {" -united ", c.united},       {" -shaken ", c.shakenOut}, {" -dead ", c.dead},
        {" -destroyed ", c.destroyed}, {" -sold ", c.sold},        {" -out ", c.movedOut}};
    for (const auto& [name, n] : parts)
        if (n != 0) out += name + std::to_string(n);
    return out + " = " + std::to_string(c.end);
}

/// Year, season and count of each period of a yard ("" : all together), a line each.
std::string told(const PlanBook& book, const QString& on, const QString& yard = "Y") {
    const Snapshot s = book.on(on);
    std::string out;
    for (const LedgerYear& year : ledger(s)) {
        if ((year.yard ? s.yard(*year.yard).name : QString()) != yard) continue;
        for (const LedgerPeriod& p : year.periods)
            out += std::to_string(year.year) +
                   (p.season == LedgerSeason::Fall     ? " fall "
                    : p.season == LedgerSeason::Winter ? " winter "
                                                       : " summer ") +
                   told(p.count) + (p.over ? "\n" : " …\n");
    }
    return out;
}

PlanBook theYear() {
    PlanBook book;
    for (const char* label : {"A", "B", "C", "D", "E"}) book.colony(label, {{"since", "2025-05-01"}});
    book.colony("F", {{"since", "2025-05-01"}, {"ended", "2025-09-10"}, {"end", "united"}});
    book.row("lineage", {{"date", "2025-09-10"}, {"how", "united"}, {"colony", "F"}, {"into", "A"}});
    book.colony("G", {{"since", "2025-05-01"}, {"ended", "2025-09-10"}, {"end", "shaken-out"}});
    book.row("lineage", {{"date", "2025-09-10"}, {"how", "shaken-out"}, {"colony", "G"}, {"into", "B"}});
    book.colony("H", {{"since", "2025-05-01"}, {"ended", "2026-02-01"}, {"end", "dead"}});
    book.colony("I", {{"since", "2025-05-01"}, {"ended", "2025-10-21"}, {"end", "destroyed"}});
    book.colony("J", {{"since", "2025-05-01"}, {"ended", "2026-04-20"}, {"end", "sold"}});
    book.colony("K", {{"since", "2026-05-10"}});
    book.row("lineage", {{"date", "2026-05-10"}, {"how", "divided"}, {"colony", "C"}, {"into", "K"}});
    return book.colony("L", {{"since", "2026-06-01"}});
}

TEST(Ledger, FollowsAYearFromFallCountToFallCount) {
    EXPECT_EQ(told(theYear(), "2026-08-20"), "2024 fall 0 = 0\n"
                                             "2024 winter 0 = 0\n"
                                             "2024 summer 0 +begun 10 = 10\n"
                                             "2025 fall 10 -united 1 -shaken 1 = 8\n"
                                             "2025 winter 8 -dead 1 -destroyed 1 = 6\n"
                                             "2025 summer 6 +divided 1 +begun 1 -sold 1 = 7\n"
                                             "2026 fall 7 = 7 …\n");
}

TEST(Ledger, WhatIsStillRunningIsCountedToTheDay) {
    EXPECT_EQ(told(theYear(), "2025-10-21"),
              "2024 fall 0 = 0\n2024 winter 0 = 0\n2024 summer 0 +begun 10 = 10\n2025 fall 10 -united 1 -shaken 1 = 8\n"
              "2025 winter 8 -destroyed 1 = 7 …\n");
}

TEST(Ledger, SeasonsBeginOnTheirDayAndEndTheDayBeforeTheNext) {
    const Snapshot s = theYear().on("2026-09-01");
    const std::vector<LedgerYear> years = ledger(s);
    const LedgerYear& year = years.at(1);
    ASSERT_EQ(year.periods.size(), 3U);
    EXPECT_EQ(isoText(year.periods[0].from), "2025-08-20");
    EXPECT_EQ(isoText(year.periods[0].until), "2025-10-20");
    EXPECT_EQ(isoText(year.periods[1].from), "2025-10-21");
    EXPECT_EQ(isoText(year.periods[1].until), "2026-04-19");
    EXPECT_EQ(isoText(year.periods[2].from), "2026-04-20");
    EXPECT_EQ(isoText(year.periods[2].until), "2026-08-19");
}

TEST(Ledger, WinterLossIsTheDeadOfThoseAtRiskWithItsExactInterval) {
    const std::vector<LedgerYear> years = ledger(theYear().on("2026-04-20"));
    const LedgerYear& year = years.at(1);
    ASSERT_TRUE(year.winterLoss);
    EXPECT_EQ(year.winterLoss->found, 2);
    EXPECT_EQ(year.winterLoss->of, 8);
    EXPECT_EQ(year.winterLoss->interval, calc::exactInterval(2, 8));
    EXPECT_FALSE(ledger(theYear().on("2026-04-19")).at(1).winterLoss) << "the winter is not over";
}

TEST(Ledger, OfWinterSalesAreNotAtRisk) {
    PlanBook book = PlanBook().colony("A", {{"since", "2025-05-01"}});
    book.colony("B", {{"since", "2025-05-01"}, {"ended", "2026-01-10"}, {"end", "dead"}});
    book.colony("C", {{"since", "2025-05-01"}, {"ended", "2026-01-10"}, {"end", "sold"}});
    const auto loss = ledger(book.on("2026-05-01")).at(1).winterLoss;
    ASSERT_TRUE(loss);
    EXPECT_EQ(loss->found, 1);
    EXPECT_EQ(loss->of, 2);
}

TEST(Ledger, ACarryFromYardToYardLeavesOneAndComesToTheOther) {
    PlanBook book = PlanBook().colony("A", {{"since", "2025-05-01"}}).yard("Z");
    book.colony("B", {{"since", "2025-05-01"}, {"yard", "Z"}});
    book.row("placements",
             {{"colony", "A"}, {"date", "2025-08-20"}, {"yard", "Z"}, {"stand", "9"}, {"x_m", "5"}, {"y_m", "5"}});
    EXPECT_EQ(told(book, "2025-09-01"),
              "2024 fall 0 = 0\n2024 winter 0 = 0\n2024 summer 0 +begun 1 = 1\n2025 fall 1 -out 1 = 0 …\n");
    EXPECT_EQ(told(book, "2025-09-01", "Z"),
              "2024 fall 0 = 0\n2024 winter 0 = 0\n2024 summer 0 +begun 1 = 1\n2025 fall 1 +in 1 = 2 …\n");
    EXPECT_EQ(told(book, "2025-09-01", ""),
              "2024 fall 0 = 0\n2024 winter 0 = 0\n2024 summer 0 +begun 2 = 2\n2025 fall 2 +in 1 -out 1 = 2 …\n");
}

TEST(Ledger, InTheSouthSixMonthsLater) {
    PlanBook book = PlanBook().yard("S", {{"latitude_deg", "-35"}});
    book.colony("A", {{"since", "2025-01-01"}, {"yard", "S"}});
    const std::vector<LedgerYear> years = ledger(book.on("2026-01-01"));
    ASSERT_EQ(years.size(), 2U);
    EXPECT_EQ(years[1].year, 2025);
    EXPECT_EQ(isoText(years[1].periods.at(0).from), "2025-02-20");
    EXPECT_EQ(isoText(years[1].periods.at(1).from), "2025-04-21");
    EXPECT_EQ(isoText(years[1].periods.at(2).from), "2025-10-20");
    EXPECT_EQ(isoText(years[1].periods.at(2).until), "2026-02-19");
}

/// Each yard is in turn without gap, each count follows from the one before, and all agree with a plain count of the
/// living.
void expectBalanced(const Snapshot& s) {
    std::map<std::pair<qint32, bool>, LedgerPeriod> before;
    std::map<std::pair<bool, Day>, LedgerCount> sums;
    for (const LedgerYear& year : ledger(s))
        for (const LedgerPeriod& p : year.periods) {
            const auto key = std::pair{year.yard ? year.yard->value : -1, year.southern};
            const LedgerCount& c = p.count;
            EXPECT_EQ(c.start + c.in() - c.out(), c.end);
            if (const auto last = before.find(key); last != before.end()) {
                EXPECT_EQ(last->second.count.end, c.start);
                EXPECT_EQ(last->second.until + 1, p.from);
                EXPECT_TRUE(last->second.over);
            } else {
                EXPECT_EQ(c.start, 0);
            }
            before.insert_or_assign(key, p);
            if (year.yard)
                sums[{year.southern, p.from}] += c;
            else
                EXPECT_EQ((sums[{year.southern, p.from}]), c) << "all together are the sum of the yards";
        }
    int living = 0, counted = 0;
    for (const SnapColony& colony : s.colonies) living += !colony.ended || *colony.ended > s.on;
    for (const auto& [key, p] : before)
        if (key.first >= 0) counted += p.count.end;
    EXPECT_EQ(counted, living);
}

TEST(Ledger, IsBalancedInInventedBooks) {
    size_t asked = 0;
    for (unsigned seed = 1; seed <= 60 && !testing::Test::HasFailure(); ++seed) {
        SCOPED_TRACE(seed);
        tests::support::CsvTables tables;
        const auto book = tests::support::randomBook(seed);
        for (const auto& [name, text] : book.files)
            tables[QString::fromStdString(name).chopped(4)] = tests::support::rowsOfCsv(QString::fromStdString(text));
        for (size_t i = 0; i < book.days.size(); i += 7, ++asked)
            expectBalanced(tests::support::snapshotOf(tables, *parseIsoDay(QString::fromStdString(book.days[i]))));
    }
    EXPECT_GT(asked, 300U);
}

// A hive is counted in the yards where it stood; it was looked at for every yard.
TEST(Ledger, OfALargeBookIsNotWaitedFor) {
    constexpr int kYards = 1000, kEach = 20;
    Snapshot s;
    s.on = dayOf(2026, 9, 20);
    s.yards.resize(kYards);
    for (int i = 0; i < kYards * kEach; ++i) {
        SnapColony colony;
        colony.id = ColonyId{i + 1};
        colony.since = dayOf(2023, 5, 1);
        if (i % kEach == 0) colony.ended = dayOf(2026, 2, 1);
        s.colonies.push_back(colony);
        SnapStay stay;
        stay.colony = {i};
        stay.yard = {i / kEach};
        stay.since = colony.since;
        s.stays.push_back(stay);
    }
    QElapsedTimer timer;
    timer.start();
    const auto years = ledger(s);
    EXPECT_LT(timer.elapsed(), 10'000);
    const auto last = std::ranges::find_if(years, [](const LedgerYear& y) { return !y.yard && y.year == 2025; });
    ASSERT_NE(last, years.end());
    EXPECT_EQ(told(last->of(LedgerSeason::Winter)->count), "20000 -dead 1000 = 19000");
}

} // namespace
