#include "core/rules/drift.h"
#include "core/rules/moving.h"
#include "core/rules/yard_moves.h"

#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

// Rules 4.15 to 4.17. Source of the figures: own calculation from the rules' text. That a step of 3 feet or a move of 3
// miles keeps the foragers: custom, no source beyond trade guides; that they look for the old place and the hives next
// to it: common practice, no source.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

QString moved(const PlanBook& book, const QString& day, MmPoint to, const QString& yard = "Y") {
    const Snapshot s = book.on(day);
    const auto caution = movingCaution(s, named(s, "A"), *s.yardNamed(yard), to);
    return caution ? caution->because : QString();
}

PlanBook alone(Cells more = {}, Cells yard = {}) {
    return PlanBook().yard("Y", std::move(yard)).colony("A", std::move(more));
}

TEST(Moving, AtAStepAndAtTheFarDistanceThereIsNoCaution) {
    EXPECT_EQ(moved(alone(), kFall, {900, 0}), "");
    EXPECT_NE(moved(alone(), kFall, {901, 0}), "");
    EXPECT_NE(moved(alone(), kFall, {4'799'999, 0}), "");
    EXPECT_EQ(moved(alone(), kFall, {4'800'000, 0}), "");
    EXPECT_EQ(moved(alone(), kFall, {540, 720}), "") << "0.9 m aslant";
    EXPECT_NE(moved(alone(), kFall, {541, 720}), "");
}

TEST(Moving, SaysHowFarAndThatItIsCustom) {
    EXPECT_EQ(moved(alone(), kFall, {3000, 0}).toStdString(),
              "Moving caution: A goes 3 m; above 0.9 m and below 4800 m in the flying season foragers return to the "
              "old place (custom).");
    EXPECT_TRUE(moved(alone().set("show.length", "ft"), kFall, {3000, 0}).contains("9.8 ft"));
}

TEST(Moving, TheFlyingSeasonIsASettingAndHalfAYearLaterInTheSouth) {
    EXPECT_NE(moved(alone(), "2026-05-01", {3000, 0}), "");
    EXPECT_EQ(moved(alone({{"since", "2025-05-01"}}), "2026-04-30", {3000, 0}), "");
    EXPECT_NE(moved(alone(), "2026-10-20", {3000, 0}), "");
    EXPECT_EQ(moved(alone(), "2026-10-21", {3000, 0}), "");
    EXPECT_EQ(moved(alone().set("season.fall_end", "09-10"), kFall, {3000, 0}), "");
    EXPECT_EQ(moved(alone({}, {{"latitude_deg", "-35"}, {"longitude_deg", "149"}}), kFall, {3000, 0}), "");
    EXPECT_NE(moved(alone({}, {{"latitude_deg", "-35"}, {"longitude_deg", "149"}}), "2026-12-15", {3000, 0}), "");
}

TEST(Moving, LimitsAreSettings) {
    EXPECT_EQ(moved(alone().set("move.step_m", "3"), kFall, {3000, 0}), "");
    EXPECT_EQ(moved(alone().set("move.far_m", "3"), kFall, {3000, 0}), "");
}

TEST(Moving, IsMeasuredFromWhereItStoodBeforeTheDay) {
    PlanBook book = alone();
    book.row("placements",
             {{"colony", "A"}, {"date", kFall}, {"yard", "Y"}, {"stand", "far"}, {"x_m", "5"}, {"y_m", "0"}});
    EXPECT_EQ(moved(book, kFall, {500, 0}), "") << "back again: 0.5 m from where it stood this morning";
    EXPECT_NE(moved(book, kFall, {5500, 0}), "");
}

// 0.03 degrees of latitude on a sphere of 6371.0 km are 3335.8 m, 0.05 degrees 5559.7 m (own calculation).
TEST(Moving, BetweenYardsByTheirCoordinates) {
    const auto to = [](const char* latitude) {
        PlanBook book = alone({}, {{"latitude_deg", "44"}, {"longitude_deg", "-80"}});
        book.yard("W", {{"latitude_deg", latitude}, {"longitude_deg", "-80"}});
        return moved(book, kFall, {0, 0}, "W");
    };
    EXPECT_TRUE(to("44.03").contains("A goes 3335.8 m")) << to("44.03").toStdString();
    EXPECT_EQ(to("44.05"), "");
    PlanBook unknown = alone();
    unknown.yard("W");
    EXPECT_TRUE(moved(unknown, kFall, {0, 0}, "W").contains("how far Y lies from W is not recorded"));
}

/// "B 1.2 held; C 2" in the order given.
QString drift(const PlanBook& book, std::vector<QString> gone = {}) {
    const Snapshot s = book.on(kFall);
    std::vector<Moved> away;
    for (const QString& label : gone) away.push_back({named(s, label), {}});
    const SnapStay* stand = s.placeOf(named(s, "A"));
    QStringList out;
    for (const DriftTo& d : driftFrom(s, *stand, holds(s), away))
        out += s.colony(d.colony).shown + (d.held ? " held" : "") + (d.looksAlike ? "" : " turned");
    return out.join("; ");
}

TEST(Drift, GoesToTheHivesWithinTheLimitTheNearestFirst) {
    PlanBook book = PlanBook().colony("A").colony("B", {{"x_m", "2"}}).unchecked("C", {{"x_m", "-1.2"}});
    book.colony("D", {{"x_m", "3"}}).colony("E", {{"x_m", "3.001"}});
    EXPECT_EQ(drift(book), "C held; B; D");
    EXPECT_EQ(drift(book, {"B"}), "C held; D");
    book.set("move.drift_m", "1.5");
    EXPECT_EQ(drift(book), "C held");
}

TEST(Drift, AHiveCarriedWithItIsNearWhereItStandsThen) {
    const PlanBook book = PlanBook().colony("A").colony("B", {{"x_m", "9"}}).colony("C", {{"x_m", "1"}});
    const Snapshot s = book.on(kFall);
    const Moved moved[] = {{named(s, "B"), MmPoint{0, 0}}, {named(s, "C"), MmPoint{5000, 0}}};
    const auto to = driftFrom(s, *s.placeOf(named(s, "A")), {}, moved);
    ASSERT_EQ(to.size(), 1u) << "swapped with B; C has gone too far";
    EXPECT_EQ(to.front().colony, named(s, "B"));
    EXPECT_EQ(to.front().at, (MmPoint{0, 0}));
}

TEST(Drift, OfTwoAsFarAwayTheOneThatLooksAlikeIsLikelier) {
    PlanBook book = PlanBook().colony("A", {{"heading_deg", "180"}});
    book.colony("B", {{"x_m", "2"}, {"heading_deg", "270"}}).colony("C", {{"x_m", "-2"}, {"heading_deg", "140"}});
    EXPECT_EQ(drift(book), "C; B turned");
}

TEST(Drift, OtherYardsAreNotNear) {
    PlanBook book = PlanBook().colony("A").yard("W").colony("B", {{"x_m", "1"}, {"yard", "W"}});
    EXPECT_EQ(drift(book), "");
}

TEST(Drift, IsSaidInOneSentence) {
    PlanBook book = PlanBook().colony("A").colony("B", {{"x_m", "1.2"}});
    const auto said = [&] {
        const Snapshot s = book.on(kFall);
        const SnapStay* stand = s.placeOf(named(s, "A"));
        return driftSentence(s, "A", stand->at, driftFrom(s, *stand, holds(s), {})).toStdString();
    };
    EXPECT_EQ(said(), "Foragers will look for A at its old place; B (1.2 m) stands next to it.");
    book.unchecked("C", {{"x_m", "-1.7"}});
    EXPECT_EQ(said(), "Foragers will look for A at its old place; B (1.2 m) and held C (1.7 m) stand next to it.");
    book.colony("D", {{"x_m", "0"}, {"y_m", "1.8"}})
        .colony("E", {{"x_m", "0"}, {"y_m", "-1.9"}})
        .unchecked("F", {{"x_m", "2.9"}});
    EXPECT_EQ(said(), "Foragers will look for A at its old place; B (1.2 m), held C (1.7 m), D (1.8 m), held F (2.9 m) "
                      "and 1 more stand next to it.");
    book.set("move.drift_m", "0.5");
    EXPECT_EQ(said(), "Foragers will look for A at its old place; no hive stands near it.");
}

TEST(YardMoves, BroodNotCheckedDoesNotKeepAHive) {
    const PlanBook book = PlanBook().unchecked("A").yard("W");
    const Snapshot s = book.on(kFall);
    const std::pair<ColonyId, YardId> move{s.colony(named(s, "A")).id, s.yard(*s.yardNamed(u"W")).id};
    EXPECT_TRUE(againstYardMoves(s, {&move, 1}).isEmpty());
    EXPECT_FALSE(keepsYards(HoldKind::BroodNotChecked));
    for (int kind = 0; kind < kHoldKindCount - 1; ++kind) EXPECT_TRUE(keepsYards(static_cast<HoldKind>(kind)));
}

TEST(YardMoves, WithinTheYardNothingStandsAgainstIt) {
    PlanBook book = PlanBook().colony("A");
    book.visit("A", kCounted, {{"signs", "afb"}});
    const Snapshot s = book.on(kFall);
    const std::pair<ColonyId, YardId> stays{s.colony(named(s, "A")).id, s.yard(*s.yardNamed(u"Y")).id};
    EXPECT_TRUE(againstYardMoves(s, {&stays, 1}).isEmpty());
    book.yard("W");
    const Snapshot two = book.on(kFall);
    const std::pair<ColonyId, YardId> goes{two.colony(named(two, "A")).id, two.yard(*two.yardNamed(u"W")).id};
    EXPECT_EQ(againstYardMoves(two, {&goes, 1}).join(' '), "Held in Y: A (afb-suspected).");
}

std::string againstMove(const PlanBook& book, const QString& colony, const QString& yard) {
    const Snapshot s = book.on(kFall);
    const std::pair<ColonyId, YardId> move{s.colony(named(s, colony)).id, s.yard(*s.yardNamed(yard)).id};
    return againstYardMoves(s, {&move, 1}).join(u' ').toStdString();
}

TEST(YardMoves, AHoldInTheYardItGoesToStandsAgainstIt) {
    PlanBook book = PlanBook().colony("A").yard("W").colony("B", {{"yard", "W"}});
    EXPECT_EQ(againstMove(book, "A", "W"), "");
    book.visit("B", kCounted, {{"signs", "efb"}});
    EXPECT_EQ(againstMove(book, "A", "W"), "Held in W: B (efb).") << "one that does not reach a neighbour by itself";
}

TEST(YardMoves, AnOrderThatNamesAnEmptyYardStandsAgainstIt) {
    PlanBook book = PlanBook().colony("A").yard("W");
    EXPECT_EQ(againstMove(book, "A", "W"), "");
    book.row("results", {{"yard", "W"},
                         {"date", "2026-09-01"},
                         {"disease", "afb"},
                         {"result", "order"},
                         {"method", "inspector"},
                         {"by", "inspector"},
                         {"paper", "7"}});
    EXPECT_EQ(againstMove(book, "A", "W"), "It would bring a hold on A (order).");
}

} // namespace
