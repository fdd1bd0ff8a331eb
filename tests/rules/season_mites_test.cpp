#include "core/rules/season_mites.h"

#include "core/rules/calc/binomial.h"
#include "core/rules/calc/clustered.h"
#include "tests/rules/plan_book.h"
#include "tests/rules/season_rows.h"

#include <gtest/gtest.h>

#include <QFile>

#include <cmath>

// Where no source stands beside a check: own calculation, from the rows.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

Cells sample(int mites, int bees) {
    return {{"mites", QString::number(mites)}, {"mite_sample", QString::number(bees)}};
}

TEST(SeasonMites, OneYardIsTheMeanOfItsColoniesEachWithItsLatestSampleOfTheWeek) {
    PlanBook book;
    for (const char* label : {"A", "B", "C"}) book.unchecked(label);
    book.visit("A", "2026-08-31", sample(30, 300)).visit("A", "2026-09-03", sample(3, 300));
    book.visit("B", "2026-09-06", sample(9, 100)).visit("C", "2026-09-07", sample(0, 300));
    const Period period(book.tables(), iso("2026-08-31"), iso("2026-09-10"));
    const auto weeks = mitesByWeek(period.book());
    ASSERT_EQ(weeks.size(), 2U);
    EXPECT_EQ(weeks[0].colonies, 2);
    EXPECT_EQ(weeks[0].living, 3);
    EXPECT_DOUBLE_EQ(weeks[0].rate, 5.0) << "(1 + 9) / 2";
    EXPECT_DOUBLE_EQ(weeks[0].highest, 9.0);
    EXPECT_EQ(weeks[0].threshold->value, 3'000'000);
    EXPECT_EQ(weeks[0].above, 1);
    EXPECT_FALSE(weeks[0].enough) << "two of three";
    EXPECT_EQ(weeks[0].interval, calc::yardMites(std::vector<calc::MiteSample>{{3, 300}, {9, 100}}, 3)->interval);
    EXPECT_EQ(verdictOf(weeks[0]), MiteVerdict::Open);
    EXPECT_FALSE(weeks[1].interval) << "one colony says nothing of the yard";
    EXPECT_EQ(weeks[1].rate, 0);
    EXPECT_EQ(verdictOf(weeks[1]), MiteVerdict::Open);
}

TEST(SeasonMites, TheThresholdIsOfTheDayAndOfTheHalfOfTheEarth) {
    const Settings settings;
    EXPECT_EQ(miteThreshold(settings, iso("2026-01-01"), false).value, 2'000'000);
    EXPECT_EQ(miteThreshold(settings, iso("2026-07-31"), false).value, 2'000'000);
    EXPECT_EQ(miteThreshold(settings, iso("2026-08-01"), false).value, 3'000'000);
    EXPECT_EQ(miteThreshold(settings, iso("2026-12-31"), false).value, 3'000'000);
    EXPECT_EQ(miteThreshold(settings, iso("2026-01-31"), true).value, 2'000'000) << "July of the north";
    EXPECT_EQ(miteThreshold(settings, iso("2026-02-01"), true).value, 3'000'000);
}

TEST(SeasonMites, AtTheThresholdIsNotAboveIt) {
    PlanBook book;
    book.unchecked("A").unchecked("B");
    book.visit("A", "2026-09-01", sample(9, 300)).visit("B", "2026-09-01", sample(10, 300));
    const auto weeks = mitesByWeek(Period(book.tables(), iso("2026-08-31"), iso("2026-09-10")).book());
    EXPECT_EQ(weeks.at(0).above, 1);
}

TEST(SeasonMites, SeveralYardsAreSummedWithTheIntervalOfYardsThatDiffer) {
    PlanBook book;
    book.yard("Y").yard("Z").unchecked("A").unchecked("B").unchecked("C", {{"yard", "Z"}});
    book.visit("A", "2026-09-01", sample(3, 300)).visit("B", "2026-09-01", sample(6, 300));
    book.visit("C", "2026-09-02", sample(30, 300));
    const Period two(book.tables(), iso("2026-08-31"), iso("2026-09-10"));
    const auto few = mitesByWeek(two.book()).at(0);
    EXPECT_EQ(few.yards, 2);
    EXPECT_DOUBLE_EQ(few.rate, 100.0 * 39 / 900);
    EXPECT_FALSE(few.interval) << "two yards tell too little of how yards differ";
    EXPECT_EQ(mitesByWeek(two.book(two.yard("Z"))).at(0).colonies, 1);
    book.yard("V").yard("W").unchecked("D", {{"yard", "V"}}).unchecked("E", {{"yard", "W"}});
    book.visit("D", "2026-09-02", sample(12, 300)).visit("E", "2026-09-02", sample(3, 150));
    const auto week = mitesByWeek(Period(book.tables(), iso("2026-08-31"), iso("2026-09-10")).book()).at(0);
    EXPECT_EQ(week.yards, 4);
    EXPECT_DOUBLE_EQ(week.rate, 100.0 * 54 / 1350);
    const auto share = calc::clusteredShare(std::vector<calc::Counted>{{9, 600}, {30, 300}, {12, 300}, {3, 150}});
    EXPECT_DOUBLE_EQ(week.interval->low, 100 * share->interval.low);
    EXPECT_DOUBLE_EQ(week.interval->high, 100 * share->interval.high);
}

TEST(SeasonMites, ClearlyAboveAndClearlyBelow) {
    PlanBook book;
    for (int i = 0; i < 8; ++i) {
        const QString label = QString::number(i);
        book.unchecked(label)
            .visit(label, "2026-09-01", sample(20 + i, 300))
            .visit(label, "2026-09-10", sample(0, 300));
    }
    const auto weeks = mitesByWeek(Period(book.tables(), iso("2026-08-31"), iso("2026-09-13")).book());
    ASSERT_EQ(weeks.size(), 2U);
    EXPECT_TRUE(weeks[0].enough);
    EXPECT_EQ(verdictOf(weeks[0]), MiteVerdict::Above);
    EXPECT_EQ(weeks[0].above, 8);
    EXPECT_EQ(verdictOf(weeks[1]), MiteVerdict::Below);
    // Source: Clopper, Pearson 1934: of nothing found the high end is 1 − 0.025^(1/n); 8 washes of 300 bees.
    EXPECT_NEAR(weeks[1].interval->high, 100 * (1 - std::pow(0.025, 1.0 / 2400)), 1e-6);
}

TEST(SeasonMites, YardsOfBothHalvesOfTheEarthHaveNoCommonThreshold) {
    PlanBook book;
    book.yard("Y").yard("Z", {{"latitude_deg", "-35"}}).unchecked("A").unchecked("B", {{"yard", "Z"}});
    book.visit("A", "2026-03-03", sample(7, 300)).visit("B", "2026-03-03", sample(7, 300));
    const auto week = mitesByWeek(Period(book.tables(), iso("2026-03-02"), iso("2026-03-08")).book()).at(0);
    EXPECT_FALSE(week.threshold);
    EXPECT_EQ(week.above, 1) << "2.33 is above 2 in the north, not above 3 in the south";
    EXPECT_EQ(verdictOf(week), MiteVerdict::Open);
}

// Source: varroa_fall_trial_2020.csv (tests/data/open/README.md), day 0: 47 colonies, mean 11.1097.
TEST(SeasonMites, FortySevenWashesOfATrial) {
    QFile file(QStringLiteral(YW_TEST_DATA "/open/varroa_fall_trial_2020.csv"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    PlanBook book;
    int washed = 0;
    for (const auto& row : tests::support::rowsOfCsv(QString::fromUtf8(file.readAll()))) {
        if (row.at("days") != "0" || row.at("phor2") == "NA") continue;
        // Bees by their weight, in tenths.
        const int mites = int(std::lround(row.at("mites_recov_3_washes").toDouble() * 10));
        const int bees = int(std::lround(row.at("est_bee_num_by_wt").toDouble() * 10));
        const QString label = row.at("col_no");
        book.unchecked(label).visit(label, "2026-09-18", sample(mites, bees));
        ++washed;
    }
    const auto week = mitesByWeek(Period(book.tables(), iso("2026-09-14"), iso("2026-09-20")).book()).at(0);
    EXPECT_EQ(washed, 47);
    EXPECT_EQ(week.colonies, 47);
    EXPECT_NEAR(week.rate, 11.1097, 0.00005);
    EXPECT_TRUE(week.enough);
    EXPECT_EQ(verdictOf(week), MiteVerdict::Above);
}

} // namespace
