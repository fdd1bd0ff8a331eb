#include "core/rules/calc/sample_size.h"
#include "core/rules/limits.h"
#include "core/rules/mite_fall_weeks.h"
#include "core/rules/mite_treatments.h"
#include "core/rules/mite_washes.h"
#include "tests/rules/plan_book.h"
#include "tests/rules/season_rows.h"

#include <gtest/gtest.h>

// Latest washes, natural fall, and mites before and after a treatment. Where no source stands beside a check: own
// calculation, from the rows.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

Cells wash(int mites, int bees = 300) {
    return {{"mites", QString::number(mites)}, {"mite_sample", QString::number(bees)}};
}

MiteFall fall(ColonyId colony, const char* day, int mites, int days = 5) {
    MiteFall f;
    f.colony = colony;
    f.day = iso(QLatin1StringView(day));
    f.mites = mites;
    f.days = days;
    return f;
}

Treatment given(const Period& p, const char* label, const char* day, std::optional<int> days, qint64 id = 1) {
    Treatment t;
    t.id = {id};
    t.day = iso(QLatin1StringView(day));
    t.product = QStringLiteral("strips");
    t.days = days;
    if (*label)
        t.colony = p.id(QLatin1StringView(label));
    else
        t.yard = p.s.yard(p.yard(QStringLiteral("Y"))).id;
    return t;
}

TEST(LatestWashes, OfEachLivingColonyTheLatestNotOlderThanRule45Says) {
    PlanBook book;
    for (const char* label : {"A", "B", "C", "D"}) book.unchecked(label);
    book.visit("A", "2026-08-10", wash(30)).visit("A", "2026-09-10", wash(10));
    book.visit("B", "2026-08-01", wash(9)); // 45 days before 15 September
    book.visit("C", "2026-07-31", wash(60));
    const Snapshot s = book.on(kFall);
    const auto got = latestWashes(s, colonyFacts(s), std::nullopt);
    ASSERT_EQ(got.washes.size(), 2U);
    EXPECT_EQ(got.living, 4);
    EXPECT_EQ(got.old, 1);
    EXPECT_EQ(got.never, 1);
    EXPECT_EQ(got.washes[0].counted.mites, 10);
    EXPECT_TRUE(got.washes[0].above) << "3.33 in 100, above 3";
    EXPECT_FALSE(got.washes[1].above) << "3 in 100 is not above 3";
    EXPECT_EQ(got.washes[0].threshold.value, 3'000'000);
    EXPECT_EQ(got.washes[0].interval, calc::mitesInterval({10, 300}));
    ASSERT_TRUE(got.estimate);
    EXPECT_EQ(got.estimate->colonies, 2);
    EXPECT_EQ(got.estimate->living, 4);
    EXPECT_FALSE(got.estimate->enough);
    EXPECT_NEAR(got.estimate->rate, (1000.0 / 300 + 3) / 2, 1e-12);
    EXPECT_EQ(got.estimate->above, 1);
    EXPECT_EQ(fixed::kSampleDays, 45);
}

TEST(LatestWashes, AreJudgedByTheThresholdOfTheDayShown) {
    PlanBook book;
    book.unchecked("A").visit("A", "2026-07-20", wash(8)); // 2.67 in 100
    const Snapshot july = book.on("2026-07-31");
    EXPECT_TRUE(latestWashes(july, colonyFacts(july), std::nullopt).washes.at(0).above) << "2 to July";
    const Snapshot august = book.on("2026-08-01");
    EXPECT_FALSE(latestWashes(august, colonyFacts(august), std::nullopt).washes.at(0).above) << "3 from August on";
    EXPECT_EQ(latestWashes(august, colonyFacts(august), std::nullopt).estimate->threshold->value, 3'000'000);
}

TEST(LatestWashes, NoneOf300IsNotNoMites) {
    // Source: Oliver, Re-evaluating varroa monitoring part 2, American Bee Journal 2020: 0.99^100 and 0.99^300.
    EXPECT_NEAR(calc::chanceOfNone(1, 100), 0.36603, 5e-6);
    EXPECT_NEAR(calc::chanceOfNone(1, 300), 0.04904, 5e-6);
    PlanBook book;
    book.unchecked("A").visit("A", "2026-09-10", wash(0));
    const Snapshot s = book.on(kFall);
    const auto got = latestWashes(s, colonyFacts(s), std::nullopt);
    EXPECT_EQ(got.washes.at(0).interval->low, 0);
    EXPECT_GT(got.washes.at(0).interval->high, 1.2);
}

TEST(LatestWashes, AnEmptyBookHasNone) {
    const Snapshot s = PlanBook().on(kFall);
    const auto got = latestWashes(s, colonyFacts(s), std::nullopt);
    EXPECT_FALSE(got.estimate);
    EXPECT_EQ(got.living + got.old + got.never, 0);
}

TEST(MiteFall, IsShownInMitesADay) {
    // Source: buckfastimker-weser-ems.de, Kontrolle Milbenfall: 20 mites in 5 days are 4.0 a day.
    EXPECT_DOUBLE_EQ(mitesADay(fall({1}, "2026-07-10", 20, 5)), 4.0);
    EXPECT_EQ(kBoardDays, 5);
    EXPECT_EQ(boardSince(fall({1}, "2026-07-10", 20, 5)), iso("2026-07-05"));
}

TEST(MiteFall, ThresholdsHoldInTheMonthsOfTheirSourceAlone) {
    const Settings settings;
    const auto at = [&](const char* day, bool southern = false) {
        const auto limit = dropThreshold(settings, iso(QLatin1StringView(day)), southern);
        return limit ? limit->value : -1;
    };
    EXPECT_EQ(at("2026-06-30"), -1);
    // Source: the same page: July, over 10 a day treat; November, over 1 treat.
    EXPECT_EQ(at("2026-07-01"), 10'000'000);
    EXPECT_EQ(at("2026-10-31"), 10'000'000);
    EXPECT_EQ(at("2026-11-01"), 1'000'000);
    EXPECT_EQ(at("2026-12-31"), 1'000'000);
    EXPECT_EQ(at("2026-01-01"), -1);
    EXPECT_EQ(at("2026-01-01", true), 10'000'000) << "July of the north";
    EXPECT_EQ(at("2026-05-01", true), 1'000'000);
    EXPECT_EQ(at("2026-07-01", true), -1);
    EXPECT_FALSE(above({10'000'000}, fall({1}, "2026-07-10", 50, 5))) << "10 a day is not above 10";
    EXPECT_TRUE(above({10'000'000}, fall({1}, "2026-07-10", 51, 5)));
}

TEST(MiteFall, WhatFellWhileTreatedIsKeptApart) {
    const TreatedDays treated[] = {{iso("2026-08-10"), iso("2026-09-21")}};
    EXPECT_FALSE(whileTreated(fall({1}, "2026-08-10", 9), treated)) << "counted, then treated";
    EXPECT_TRUE(whileTreated(fall({1}, "2026-08-11", 9), treated)) << "one day of it";
    EXPECT_TRUE(whileTreated(fall({1}, "2026-09-26", 9), treated)) << "the board was put in on its last day";
    EXPECT_FALSE(whileTreated(fall({1}, "2026-09-27", 9), treated));
    Treatment t;
    t.id = {7};
    t.day = iso("2026-08-10");
    EXPECT_EQ(treatedDays(t, {1}, {}), (TreatedDays{t.day, t.day})) << "without days: that day alone";
    t.days = 42;
    EXPECT_EQ(treatedDays(t, {1}, {}), treated[0]);
    StripsOut out;
    out.treatment = {7};
    out.colony = {1};
    out.day = iso("2026-09-30");
    EXPECT_EQ(treatedDays(t, {1}, std::span(&out, 1)).last, out.day) << "as long as it was in the hive";
    EXPECT_EQ(treatedDays(t, {2}, std::span(&out, 1)), treated[0]) << "of another hive";
    t.antibiotic = true;
    EXPECT_FALSE(againstMites(t));
}

TEST(MiteFall, WeeksOfBothKinds) {
    PlanBook book;
    for (const char* label : {"A", "B"}) book.unchecked(label);
    const Period p(book.tables(), iso("2026-06-01"), iso("2026-09-15"));
    const std::vector<MiteFall> falls = {fall(p.id("A"), "2026-06-10", 100), fall(p.id("A"), "2026-07-07", 5),
                                         fall(p.id("A"), "2026-07-10", 20), fall(p.id("B"), "2026-07-11", 60),
                                         fall(p.id("B"), "2026-08-20", 500)};
    const std::map<ColonyId, std::vector<TreatedDays>> treated = {
        {p.id("B"), {{iso("2026-08-10"), iso("2026-09-21")}}}};
    const auto natural = fallByWeek(p.book(), falls, treated, FallKind::Natural);
    ASSERT_EQ(natural.size(), 2U);
    EXPECT_FALSE(natural[0].threshold) << "none in June";
    EXPECT_EQ(natural[0].above, 0);
    EXPECT_EQ(natural[1].colonies, 2);
    EXPECT_DOUBLE_EQ(natural[1].mean, 8.0) << "of each the latest: 4 and 12 a day";
    EXPECT_DOUBLE_EQ(natural[1].highest, 12.0);
    EXPECT_EQ(p.s.colony(natural[1].highestOf).id, p.id("B"));
    EXPECT_EQ(natural[1].above, 1);
    EXPECT_EQ(natural[1].threshold->value, 10'000'000);
    const auto during = fallByWeek(p.book(), falls, treated, FallKind::WhileTreated);
    ASSERT_EQ(during.size(), 1U);
    EXPECT_DOUBLE_EQ(during[0].mean, 100.0);
    EXPECT_EQ(during[0].above, 0) << "no threshold is for it";
}

/// A, B and C are treated as a yard; D stands in another and is not.
struct TreatedYard {
    PlanBook rows;
    TreatedYard() {
        rows.yard("Y").yard("Z");
        for (const char* label : {"A", "B", "C"}) rows.unchecked(label);
        rows.unchecked("D", {{"yard", "Z"}});
    }
    Period period() const { return Period(rows.tables(), iso("2026-05-01"), iso("2026-11-30")); }
};

TEST(MiteTreatments, WashesBeforeAndAfterInTheirWindows) {
    TreatedYard y;
    // 10 August, 10 days: before from 26 June to 10 August, after from 3 September to 19 October.
    y.rows.visit("A", "2026-06-25", wash(90)).visit("A", "2026-06-26", wash(60)).visit("A", "2026-08-10", wash(30));
    y.rows.visit("A", "2026-08-15", wash(25)).visit("A", "2026-09-02", wash(20)).visit("A", "2026-09-03", wash(3));
    y.rows.visit("A", "2026-09-20", wash(1));
    y.rows.visit("B", "2026-06-26", wash(12)).visit("B", "2026-10-19", wash(3));
    y.rows.visit("C", "2026-06-25", wash(12)).visit("C", "2026-10-20", wash(3));
    y.rows.visit("D", "2026-08-01", wash(6)).visit("D", "2026-09-10", wash(9));
    const Period p = y.period();
    const std::vector<Treatment> treatments = {given(p, "", "2026-08-10", 10)};
    const auto seen = treatmentsSeen({p.s, iso("2026-05-01"), {}, p.visits, {}, treatments, {}});
    ASSERT_EQ(seen.size(), 1U);
    EXPECT_EQ(seen[0].treated, 3);
    EXPECT_EQ(seen[0].days, (TreatedDays{iso("2026-08-10"), iso("2026-08-20")}));
    EXPECT_TRUE(seen[0].daysKnown);
    ASSERT_TRUE(seen[0].washes);
    EXPECT_EQ(seen[0].washes->colonies, 2) << "C was washed a day too early and a day too late";
    EXPECT_DOUBLE_EQ(seen[0].washes->before.mean, 7.0) << "10 and 4 in 100";
    EXPECT_DOUBLE_EQ(seen[0].washes->after.mean, 1.0) << "the first after it of each";
    ASSERT_TRUE(seen[0].untreated);
    EXPECT_EQ(seen[0].untreated->colonies, 1);
    EXPECT_DOUBLE_EQ(seen[0].untreated->change, 1.0);
    EXPECT_EQ(seen[0].untreated->said, calc::Change::Open);
    EXPECT_TRUE(treatmentsSeen({p.s, iso("2026-08-11"), {}, p.visits, {}, treatments, {}}).empty());
    EXPECT_TRUE(treatmentsSeen({p.s, iso("2026-05-01"), p.yard("Z"), p.visits, {}, treatments, {}}).empty());
}

TEST(MiteTreatments, TreatedOtherwiseInBetweenIsLeftOut) {
    TreatedYard y;
    for (const char* label : {"A", "B", "D"})
        y.rows.visit(label, "2026-08-01", wash(30)).visit(label, "2026-09-10", wash(3));
    const Period p = y.period();
    std::vector<Treatment> treatments = {given(p, "", "2026-08-10", 10), given(p, "A", "2026-09-01", 1, 2),
                                         given(p, "D", "2026-08-30", {}, 3), given(p, "B", "2026-09-10", 1, 4)};
    treatments[1].product = QStringLiteral("trickle");
    treatments[3].product = QStringLiteral("trickle");
    const auto seen = treatmentsSeen({p.s, iso("2026-05-01"), {}, p.visits, {}, treatments, {}});
    ASSERT_EQ(seen.size(), 4U);
    const auto& yard = seen.back();
    EXPECT_EQ(yard.treatment.id, TreatmentId{1}) << "the latest first";
    EXPECT_EQ(yard.mixed, 1) << "A";
    EXPECT_EQ(yard.washes->colonies, 1) << "B, treated on the day of its second wash: it was washed before";
    EXPECT_FALSE(yard.untreated) << "D was treated, too";
    treatments[1].antibiotic = true;
    EXPECT_EQ(treatmentsSeen({p.s, iso("2026-05-01"), {}, p.visits, {}, treatments, {}}).back().mixed, 0);
}

TEST(MiteTreatments, RowsOfOneProductAndDayInAYardAreOneTreatment) {
    TreatedYard y;
    const Period p = y.period();
    const std::vector<Treatment> treatments = {given(p, "A", "2026-08-10", {}), given(p, "B", "2026-08-10", {}, 2)};
    const auto seen = treatmentsSeen({p.s, iso("2026-05-01"), {}, {}, {}, treatments, {}});
    ASSERT_EQ(seen.size(), 1U);
    EXPECT_EQ(seen[0].treated, 2);
    EXPECT_FALSE(seen[0].daysKnown);
    EXPECT_FALSE(seen[0].washes);
    EXPECT_FALSE(seen[0].fallen);
}

TEST(MiteTreatments, NaturalFallIsComparedByItselfAndNotWithWhatFellMeanwhile) {
    TreatedYard y;
    const Period p = y.period();
    const std::vector<Treatment> treatments = {given(p, "", "2026-08-10", 10)};
    const std::vector<MiteFall> falls = {fall(p.id("A"), "2026-08-05", 60), fall(p.id("A"), "2026-08-18", 400),
                                         fall(p.id("A"), "2026-09-07", 50), fall(p.id("A"), "2026-09-10", 10),
                                         fall(p.id("B"), "2026-08-18", 200)};
    const auto seen = treatmentsSeen({p.s, iso("2026-05-01"), {}, {}, falls, treatments, {}});
    ASSERT_EQ(seen.size(), 1U);
    ASSERT_TRUE(seen[0].fallen);
    EXPECT_EQ(seen[0].fallen->colonies, 1);
    EXPECT_DOUBLE_EQ(seen[0].fallen->before, 12.0);
    EXPECT_DOUBLE_EQ(seen[0].fallen->after, 2.0) << "the board of 7 September was put in 13 days after";
    EXPECT_EQ(seen[0].boardsDuring, 2);
    EXPECT_DOUBLE_EQ(seen[0].fallenDuring, 60.0);
    EXPECT_FALSE(seen[0].washes) << "fall is no wash";
}

} // namespace
