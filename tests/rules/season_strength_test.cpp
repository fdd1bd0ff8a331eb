#include "core/rules/season_strength.h"

#include "core/rules/strength.h"
#include "tests/rules/plan_book.h"
#include "tests/rules/random_operation.h"
#include "tests/rules/season_rows.h"

#include <gtest/gtest.h>

// Figures: own calculation, from the rows of each small book by rules 4.0 and 4.1.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

std::string told(const StrengthWeek& w) {
    std::string out = isoText(w.days.first).toStdString() + ".." + isoText(w.days.last).toStdString().substr(5) + " " +
                      std::to_string(w.counted) + "/" + std::to_string(w.living) + " sum " +
                      framesText(w.sum).toStdString();
    if (w.noBees) out += " empty " + std::to_string(w.noBees);
    if (w.countOld) out += " old " + std::to_string(w.countOld);
    if (w.noCount) out += " none " + std::to_string(w.noCount);
    return out;
}

TEST(SeasonWeeks, EndOnSundaysAndKeepToThePeriod) {
    // 2026-09-16 is a Wednesday (own calculation: 2000-01-01 was a Saturday).
    const auto weeks = weeksBetween(iso("2026-09-16"), iso("2026-09-29"));
    ASSERT_EQ(weeks.size(), 3U);
    EXPECT_EQ(isoText(weeks[0].first) + isoText(weeks[0].last), "2026-09-162026-09-20");
    EXPECT_EQ(isoText(weeks[1].first) + isoText(weeks[1].last), "2026-09-212026-09-27");
    EXPECT_EQ(isoText(weeks[2].first) + isoText(weeks[2].last), "2026-09-282026-09-29");
    EXPECT_EQ(weekOf(weeks, iso("2026-09-20")), 0U);
    EXPECT_EQ(weekOf(weeks, iso("2026-09-21")), 1U);
    EXPECT_TRUE(weeksBetween(iso("2026-09-16"), iso("2026-09-15")).empty());
}

TEST(SeasonStrength, ACountCountsForThirtyDaysAndNothingIsMadeUp) {
    PlanBook book;
    book.unchecked("A").unchecked("B").unchecked("C").unchecked("D", {{"since", "2026-09-08"}});
    book.visit("A", "2026-08-05", {{"bees_top", "4"}});    // 30 days old on 4 September, a Friday; 33 on the 6th
    book.visit("B", "2026-08-07", {{"bees_top", "3.25"}}); // 30 days old on Sunday 6 September
    book.visit("C", "2026-09-09", {{"bees_top", "0"}});
    const Period period(book.tables(), iso("2026-08-31"), iso("2026-09-15"));
    const auto weeks = strengthByWeek(period.book());
    ASSERT_EQ(weeks.size(), 3U);
    EXPECT_EQ(told(weeks[0]), "2026-08-31..09-06 1/3 sum 3.25 old 1 none 1");
    EXPECT_EQ(told(weeks[1]), "2026-09-07..09-13 0/4 sum 0 empty 1 old 2 none 1");
    EXPECT_EQ(told(weeks[2]), "2026-09-14..09-15 0/4 sum 0 empty 1 old 2 none 1");
    EXPECT_EQ(weeks[0].mean(), 3.25);
    EXPECT_FALSE(weeks[1].mean()) << "nobody counted is no zero";
}

TEST(SeasonStrength, BothBoxesTheDayOfAUnionAndTheClasses) {
    PlanBook book;
    for (const char* label : {"A", "B", "C"}) book.unchecked(label);
    book.unchecked("M", {{"ended", "2026-09-02"}, {"end", "united"}});
    book.row("lineage", {{"date", "2026-09-02"}, {"how", "united"}, {"colony", "M"}, {"into", "A"}});
    book.visit("A", "2026-09-01", {{"bees_top", "5"}, {"bees_bottom", "6"}}); // (20 + 24 + 1) div 2 = 22 quarters
    book.visit("A", "2026-09-09", {{"bees_top", "4"}, {"upper_bees_top", "6"}});
    book.visit("B", "2026-09-01", {{"bees_top", "2"}});
    book.visit("C", "2026-09-10", {{"bees_top", "3"}, {"boxes", "2"}}); // of two boxes one is counted: no strength
    book.visit("M", "2026-09-01", {{"bees_top", "1"}});
    const Period period(book.tables(), iso("2026-08-24"), iso("2026-09-13"));
    const auto weeks = strengthByWeek(period.book());
    EXPECT_EQ(told(weeks[0]), "2026-08-24..08-30 0/4 sum 0 none 4");
    EXPECT_EQ(told(weeks[1]), "2026-08-31..09-06 1/3 sum 2 none 2") << "what was seen before the union is not valid";
    EXPECT_EQ(told(weeks[2]), "2026-09-07..09-13 2/3 sum 12 none 1");
    EXPECT_EQ(weeks[2].ofClass, (std::array{1, 0, 0, 1})) << "B shake-out, A strong";
    EXPECT_EQ(weeks[2].mean(), 6.0);
}

TEST(SeasonStrength, OfAYardCountAlsoCountsMadeElsewhere) {
    PlanBook book;
    book.yard("Y").yard("Z").unchecked("A").unchecked("B", {{"yard", "Z"}});
    book.visit("A", "2026-08-20", {{"bees_top", "5"}});
    book.row("placements",
             {{"colony", "A"}, {"date", "2026-09-06"}, {"yard", "Z"}, {"stand", "9"}, {"x_m", "5"}, {"y_m", "5"}});
    const Period period(book.tables(), iso("2026-08-24"), iso("2026-09-06"));
    const auto inY = strengthByWeek(period.book(period.yard("Y")));
    const auto inZ = strengthByWeek(period.book(period.yard("Z")));
    EXPECT_EQ(told(inY[0]), "2026-08-24..08-30 1/1 sum 5") << "counted before the period";
    EXPECT_EQ(told(inZ[0]), "2026-08-24..08-30 0/1 sum 0 none 1");
    EXPECT_EQ(told(inY[1]), "2026-08-31..09-06 0/0 sum 0") << "on the day of a carry it is in the new yard";
    EXPECT_EQ(told(inZ[1]), "2026-08-31..09-06 1/2 sum 5 none 1");
}

/// The same week out of the facts of its last day, read anew.
StrengthWeek readAnew(const tests::support::CsvTables& tables, const calc::DayRange& days, const QString& yard) {
    const Snapshot s = tests::support::snapshotOf(tables, days.last);
    StrengthWeek week;
    week.days = days;
    for (const ColonyFacts& f : colonyFacts(s)) {
        if (!yard.isEmpty() && s.yard(f.yard).name != yard) continue;
        ++week.living;
        if (f.strength) {
            ++week.counted;
            week.sum = week.sum + *f.strength;
            ++week.ofClass[static_cast<size_t>(*f.strengthClass)];
        } else
            ++(f.noStrength == NoStrength::NoBees     ? week.noBees
               : f.noStrength == NoStrength::CountOld ? week.countOld
                                                      : week.noCount);
    }
    return week;
}

// Oracle: rule 4.1 as the plan reads it, on each week's last day.
TEST(SeasonStrength, InInventedBooksEachWeekIsWhatThePlanWouldSayThatDay) {
    int counted = 0;
    for (unsigned seed = 1; seed <= 15 && !testing::Test::HasFailure(); ++seed) {
        SCOPED_TRACE(seed);
        const auto tables = randomOperation(seed, iso("2026-09-20"));
        const Period period(tables, iso("2026-07-15"), iso("2026-09-20"));
        for (const QString& yard : {QString(), QString("Home")}) {
            const auto ix = yard.isEmpty() ? std::nullopt : period.s.yardNamed(yard);
            for (const StrengthWeek& week : strengthByWeek(period.book(ix))) {
                const StrengthWeek anew = readAnew(tables, week.days, yard);
                EXPECT_EQ(told(week), told(anew)) << yard.toStdString();
                EXPECT_EQ(week.ofClass, anew.ofClass);
                counted += week.counted;
            }
        }
    }
    EXPECT_GT(counted, 300) << "the books say something";
}

} // namespace
