#include "core/rules/season_feed.h"
#include "core/rules/season_loss.h"
#include "core/rules/season_queens.h"

#include "core/rules/calc/binomial.h"
#include "tests/rules/plan_book.h"
#include "tests/rules/season_rows.h"

#include <gtest/gtest.h>

// Where no source stands beside a check: own calculation, from the rows.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

Feeding syrup(ColonyId colony, const QString& day, int millilitres, const QString& mix) {
    Feeding f;
    f.colony = colony;
    f.day = iso(day);
    f.mix = mix;
    f.volume = Millilitres{millilitres};
    return f;
}

Feeding weighed(ColonyId colony, const QString& day, FeedKind what, int decagrams, const QString& mix = {}) {
    Feeding f;
    f.colony = colony;
    f.day = iso(day);
    f.what = what;
    f.mix = mix;
    f.weight = Decagrams{decagrams};
    return f;
}

// Source: CRC Handbook, sucrose at 20 °C, as core/rules/calc/syrup.h: 2:1 by mass has 0.884 kg of sugar a litre, 1:1
// 0.6148 (the handbook's own column of grams a litre).
TEST(SeasonFeed, SugarOfSyrupByItsMix) {
    EXPECT_NEAR(*sugarIn(syrup({1}, "2026-09-01", 1000, "2:1")), 0.884, 0.0005);
    EXPECT_NEAR(*sugarIn(syrup({1}, "2026-09-01", 2500, "1:1")), 2.5 * 0.6148, 0.0005);
    EXPECT_NEAR(*sugarIn(weighed({1}, "2026-09-01", FeedKind::Syrup, 300, "2:1")), 2.0, 1e-9);
    EXPECT_NEAR(*sugarIn(weighed({1}, "2026-09-01", FeedKind::Sugar, 250)), 2.5, 1e-9);
    EXPECT_FALSE(sugarIn(syrup({1}, "2026-09-01", 1000, {}))) << "the mix is not recorded";
    EXPECT_FALSE(sugarIn(syrup({1}, "2026-09-01", 1000, "1:2"))) << "no density is printed";
    EXPECT_TRUE(sugarIn(weighed({1}, "2026-09-01", FeedKind::Syrup, 300, "1:2"))) << "by mass none is needed";
    EXPECT_FALSE(sugarIn(weighed({1}, "2026-09-01", FeedKind::Fondant, 300)))
        << "how much sugar is in it has no source";
}

TEST(SeasonFeed, ByWeekKindAndYard) {
    PlanBook book;
    book.yard("Y").yard("Z").unchecked("A").unchecked("B").unchecked("C", {{"yard", "Z"}});
    Period period(book.tables(), iso("2026-08-31"), iso("2026-09-20"));
    const ColonyId a = period.id("A"), b = period.id("B"), c = period.id("C");
    period.feedings = {syrup(a, "2026-08-30", 9000, "2:1"), syrup(a, "2026-08-31", 2000, "2:1"),
                       syrup(a, "2026-09-06", 1000, "2:1"), weighed(b, "2026-09-06", FeedKind::Fondant, 250),
                       syrup(c, "2026-09-15", 500, {})};
    const auto weeks = feedByWeek(period.book());
    ASSERT_EQ(weeks.size(), 2U) << "a week without feedings is left out";
    EXPECT_EQ(weeks[0].given.colonies, 2);
    EXPECT_EQ(weeks[0].given.feedings, 3);
    EXPECT_EQ(weeks[0].given.millilitres[size_t(FeedKind::Syrup)], 3000);
    EXPECT_EQ(weeks[0].given.decagrams[size_t(FeedKind::Fondant)], 250);
    EXPECT_NEAR(weeks[0].given.sugarKg, 3 * 0.884, 0.002); // CRC, as above
    EXPECT_EQ(weeks[0].given.sugarUnknown, 0);
    EXPECT_EQ(isoText(weeks[1].days.first), "2026-09-14");
    EXPECT_EQ(weeks[1].given.sugarUnknown, 1);
    EXPECT_EQ(weeks[1].given.sugarKg, 0);
    const FeedGiven inY = feedGiven(period.book(period.yard("Y")));
    EXPECT_EQ(inY.feedings, 3);
    EXPECT_EQ(inY.colonies, 2);
    EXPECT_EQ(feedGiven(period.book(period.yard("Z"))).millilitres[size_t(FeedKind::Syrup)], 500);
}

TEST(SeasonFeed, StillNeededIsWhatRuleFourTwelveSays) {
    PlanBook book;
    book.yard("Y").yard("Z").colony("A").colony("B").colony("C", {{"yard", "Z"}}).colony("D");
    book.bees("A", "9", {{"gross_kg", "28"}}).bees("B", "9", {{"gross_kg", "40"}}).bees("C", "9", {{"gross_kg", "31"}});
    const Snapshot s = book.on(kFall);
    const Plan plan = advise(s, {});
    const auto facts = colonyFacts(s);
    const FeedNeeds all = feedNeeds(s, facts, plan, {});
    EXPECT_TRUE(all.asked);
    EXPECT_EQ(all.living, 4);
    EXPECT_EQ(all.weighed, 3);
    ASSERT_EQ(all.needs.size(), 2U);
    EXPECT_EQ(all.shortMillionthsKg, 5'000'000) << "32 − 28 and 32 − 31 kg";
    EXPECT_EQ(all.halfLitres, 8 + 2) << "4 / 1.078 and 1 / 1.078 litres, up to half a litre";
    EXPECT_EQ(isoText(*all.needs[0].weighed), kCounted);
    const FeedNeeds inZ = feedNeeds(s, facts, plan, s.yardNamed(u"Z"));
    ASSERT_EQ(inZ.needs.size(), 1U);
    EXPECT_EQ(s.colony(inZ.needs[0].feed->colony).label, "C");
    const Snapshot summer = book.on("2026-08-19");
    EXPECT_FALSE(feedNeeds(summer, colonyFacts(summer), advise(summer, {}), {}).asked);
}

std::string told(const QueenAges& ages) {
    std::string out;
    for (const QueensOfYear& y : ages.years) out += std::to_string(y.born) + ": " + std::to_string(y.colonies) + ", ";
    return out + "not recorded " + std::to_string(ages.notRecorded) + ", no queen " + std::to_string(ages.noQueen) +
           ", of " + std::to_string(ages.living);
}

TEST(SeasonQueens, ByYearOfBirthWithAllThatIsNotKnown) {
    PlanBook book;
    book.unchecked("A", {{"queen_born", "2025"}}).unchecked("B", {{"queen_born", "2025"}});
    book.unchecked("C", {{"queen_born", "2022"}}).unchecked("D");
    book.unchecked("E", {{"queen_born", "2024"}}).visit("E", "2026-09-10", {{"queen", "none"}});
    book.unchecked("F", {{"queen_born", "2024"}}).visit("F", "2026-09-10", {{"queen", "laying-workers"}});
    book.unchecked("G", {{"queen_born", "2024"}}).visit("G", "2026-09-10", {{"queen", "drone-layer"}});
    book.unchecked("H", {{"queen_born", "2027"}}); // not yet on the day
    const Snapshot s = book.on("2026-09-15");
    EXPECT_EQ(told(queenAges(s, colonyFacts(s), {}, {})),
              "2025: 2, 2024: 1, 2023: 0, 2022: 1, not recorded 2, no queen 2, of 8");
}

TEST(SeasonQueens, HerOwnRowSaysMoreThanTheColonys) {
    PlanBook book;
    book.yard("Y").yard("Z").unchecked("A", {{"queen_born", "2024"}}).unchecked("B", {{"queen_born", "2024"}});
    book.unchecked("C", {{"queen_born", "2023"}, {"yard", "Z"}});
    const Period period(book.tables(), iso("2026-01-01"), iso("2026-09-15"));
    Queen old, young, blank;
    old.colony = young.colony = period.id("A");
    old.since = iso("2024-05-01");
    old.until = iso("2026-08-01");
    old.fate = QueenFate::Replaced;
    old.born = 2024;
    young.since = iso("2026-08-01");
    young.born = 2026;
    blank.colony = period.id("B");
    blank.since = iso("2026-06-01");
    std::vector<Queen> rows{young, old, blank};
    const auto facts = colonyFacts(period.s);
    EXPECT_EQ(told(queenAges(period.s, facts, rows, period.yard("Y"))), "2026: 1, not recorded 1, no queen 0, of 2");
    EXPECT_EQ(told(queenAges(period.s, facts, rows, period.yard("Z"))), "2023: 1, not recorded 0, no queen 0, of 1");
    const Snapshot before = book.on("2026-07-31");
    EXPECT_EQ(told(queenAges(before, colonyFacts(before), rows, before.yardNamed(u"Y"))),
              "2024: 1, not recorded 1, no queen 0, of 2")
        << "on a day before, the queen of that day";
    rows[0].until = iso("2026-09-10");
    rows[0].fate = QueenFate::Swarmed;
    EXPECT_EQ(told(queenAges(period.s, facts, rows, period.yard("Y"))), "not recorded 2, no queen 0, of 2")
        << "gone; who follows her is not written down";
}

PlanBook twoWinters() {
    PlanBook book;
    book.yard("Y").yard("Z");
    for (const char* label : {"A", "B", "C"}) book.unchecked(label, {{"since", "2024-05-01"}});
    book.unchecked("D", {{"since", "2024-05-01"}, {"ended", "2024-12-24"}, {"end", "dead"}});
    book.unchecked("E", {{"since", "2024-05-01"}, {"ended", "2024-09-10"}, {"end", "united"}});
    book.row("lineage", {{"date", "2024-09-10"}, {"how", "united"}, {"colony", "E"}, {"into", "A"}});
    book.unchecked("F", {{"since", "2024-05-01"}, {"yard", "Z"}, {"ended", "2026-02-01"}, {"end", "dead"}});
    return book.unchecked("G", {{"since", "2024-05-01"}, {"yard", "Z"}});
}

TEST(SeasonLoss, OfAYardWinterByWinterAndUnitedInFallIsNoLoss) {
    const Snapshot s = twoWinters().on("2026-03-01");
    const auto all = winters(ledger(s), s.yardNamed(u"Y"));
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].year, 2024);
    EXPECT_EQ(all[0].givenUpBefore, 1);
    EXPECT_EQ(all[0].atStart, 4);
    EXPECT_EQ(all[0].lost, 1);
    EXPECT_TRUE(all[0].over);
    EXPECT_EQ(all[0].loss->found, 1);
    EXPECT_EQ(all[0].loss->of, 4);
    EXPECT_EQ(all[0].loss->interval, calc::exactInterval(1, 4));
    EXPECT_EQ(all[1].atStart, 3);
    EXPECT_FALSE(all[1].over);
    EXPECT_FALSE(all[1].loss);
}

TEST(SeasonLoss, OfAllYardsTheSumAndOfASingleYardThatYard) {
    const Snapshot s = twoWinters().on("2026-05-01");
    const auto all = winters(ledger(s), {});
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].loss->found, 1);
    EXPECT_EQ(all[0].loss->of, 6);
    EXPECT_EQ(all[1].loss->found, 1);
    EXPECT_EQ(all[1].loss->of, 5);
    PlanBook one;
    one.unchecked("A", {{"since", "2024-05-01"}});
    const Snapshot alone = one.on("2026-05-01");
    EXPECT_EQ(winters(ledger(alone), {}).size(), 2U);
    EXPECT_TRUE(winters(ledger(one.on("2024-05-01")), {}).empty());
}

} // namespace
