#include "core/rules/nearby.h"

#include "tests/rules/plan_book.h"

#include <gtest/gtest.h>

#include <QStringList>

// Rule 4.5. Source of the figures: own calculation from the rules' text.

namespace {

using namespace core;
using namespace core::rules;
using namespace tests::rules;

QString kinds(const std::vector<Caution>& cautions) {
    QStringList out;
    for (const Caution& c : cautions) {
        out += cautionWord(c.kind);
        EXPECT_FALSE(c.because.isEmpty());
    }
    return out.join(' ');
}

/// Cautions of the colonies that the plan leaves as they are.
QString listed(const PlanBook& book, const QString& day = kFall, const QString& label = "A") {
    const Snapshot s = book.on(day);
    std::vector<Caution> out;
    for (const ColonyCaution& c : advise(s, {}).cautions)
        if (s.colony(c.colony).label == label) out.push_back(c.caution);
    return kinds(out);
}

QString ofUnion(const PlanBook& book) {
    const Plan plan = book.plan(kFall);
    EXPECT_EQ(plan.unions.size(), 1U);
    return plan.unions.empty() ? "" : kinds(plan.unions[0].cautions);
}

PlanBook strong(Cells more = {}) { return PlanBook().colony("A").bees("A", "9", more); }

TEST(Cautions, MitesAreHighAboveTheLimitOfTheSeason) {
    const auto mites = [](const char* date, const char* n, const char* of, const QString& day) {
        return listed(strong().visit("A", date, {{"mites", n}, {"mite_sample", of}, {"queen", "seen"}}), day);
    };
    EXPECT_EQ(mites("2026-09-10", "9", "300", kFall), "");
    EXPECT_EQ(mites("2026-09-10", "10", "300", kFall), "mites-high");
    EXPECT_EQ(mites("2026-08-01", "10", "300", kFall), "mites-high"); // 45 days
    EXPECT_EQ(mites("2026-07-31", "10", "300", kFall), "");
    EXPECT_EQ(mites("2026-07-15", "7", "300", "2026-07-31"), "mites-high"); // 2.33, in July above 2.0
    EXPECT_EQ(mites("2026-07-15", "6", "300", "2026-07-31"), "");
    EXPECT_EQ(mites("2026-07-15", "7", "300", "2026-08-01"), "");
    EXPECT_EQ(listed(strong({{"mites", "10"}, {"mite_sample", "300"}}).set("mites.fall", "3.4")), "");
}

// Source of the interval: scipy 1.10.1, binomtest(12, 300), method "exact".
TEST(Cautions, MitesSayHowMuchTheSampleLeavesOpen) {
    const auto because = [](const char* mites) {
        const Plan plan = strong({{"mites", mites}, {"mite_sample", "300"}}).plan(kFall);
        return plan.cautions.empty() ? std::string() : plan.cautions[0].caution.because.toStdString();
    };
    EXPECT_NE(because("12").find("4.00 in 100 (2.1 to 6.9 by the size of the sample), above 3."), std::string::npos)
        << because("12");
    EXPECT_NE(because("301").find("100.33 in 100, above 3."), std::string::npos) << because("301");
}

TEST(Cautions, ACheckSoonAfterAnAntibioticIsMasked) {
    const auto treated = [](const char* date, const char* antibiotic) {
        return strong().row(
            "treatments",
            {{"colony", "A"}, {"date", date}, {"product", "p"}, {"substance", "s"}, {"antibiotic", antibiotic}});
    };
    EXPECT_EQ(listed(treated("2026-06-30", "yes")), "masked");
    EXPECT_EQ(listed(treated("2026-06-30", "no")), "");
    EXPECT_EQ(listed(treated("2026-07-01", "yes")), "masked");
    EXPECT_EQ(listed(treated("2026-07-02", "yes")), ""); // after the check
    PlanBook byComb = PlanBook().colony("A").bees("A", "9").colony("B");
    byComb.row("treatments",
               {{"colony", "B"}, {"date", "2026-05-01"}, {"product", "p"}, {"substance", "s"}, {"antibiotic", "yes"}});
    EXPECT_EQ(listed(byComb), "");
    byComb.row("transfers", {{"date", "2026-06-01"}, {"from", "B"}, {"to", "A"}, {"what", "frames"}});
    EXPECT_EQ(listed(byComb), "masked");
}

TEST(Cautions, SignsAreThoseOfTheLatestVisit) {
    for (const char* sign : {"chalkbrood", "sacbrood", "nosema", "deformed-wings"})
        EXPECT_EQ(listed(strong({{"signs", sign}})), "signs") << sign;
    EXPECT_EQ(listed(strong({{"signs", "nosema"}}).visit("A", kFall, {{"note", "fine"}})), "");
}

TEST(Cautions, BeesOrCombMovedSinceTheCount) {
    const auto moved = [](const char* date, const char* from, const char* to, const char* what) {
        return listed(strong().colony("B").bees("B", "9").row(
            "transfers", {{"date", date}, {"from", from}, {"to", to}, {"what", what}}));
    };
    EXPECT_EQ(moved("2026-09-13", "A", "B", "frames"), "");
    EXPECT_EQ(moved("2026-09-14", "A", "B", "frames"), "count-before-transfer");
    EXPECT_EQ(moved("2026-09-15", "B", "A", "bees"), "count-before-transfer");
    EXPECT_EQ(moved("2026-09-15", "B", "A", "box"), "count-before-transfer");
    EXPECT_EQ(moved("2026-09-15", "B", "A", "brood"), "count-before-transfer");
    EXPECT_EQ(moved("2026-09-15", "B", "A", "feed"), "");
    PlanBook shaken = strong().colony("B", {{"ended", "2026-09-14"}, {"end", "shaken-out"}});
    shaken.row("lineage", {{"date", "2026-09-14"}, {"how", "shaken-out"}, {"colony", "B"}, {"into", "A"}});
    EXPECT_EQ(listed(shaken), "count-before-transfer");
}

TEST(Cautions, NoCountIsNoCountBeforeATransfer) {
    PlanBook book;
    book.colony("A").colony("B").visit("A", kCounted, {{"queen", "eggs"}, {"bees_top", "0"}});
    book.row("transfers", {{"date", "2026-09-15"}, {"from", "B"}, {"to", "A"}, {"what", "box"}});
    EXPECT_EQ(listed(book), "");
}

TEST(Cautions, AQueenNobodySaw) {
    EXPECT_EQ(listed(strong({{"queen", "unknown"}})), "queen-unknown");
    EXPECT_EQ(listed(strong({{"queen", "virgin"}})), "queen-unknown");
    EXPECT_EQ(listed(strong({{"queen", "none"}})), "");
    EXPECT_EQ(listed(PlanBook().unchecked("A")), "queen-unknown"); // held ones too
}

PlanBook pair(Cells a, Cells b, Cells colonyA = {}) {
    return PlanBook().colony("A", colonyA).colony("B").bees("A", "3", a).bees("B", "4", b);
}

TEST(Cautions, AUnionHasThoseOfBothEachKindOnce) {
    const PlanBook book = pair({{"queen", "unknown"}, {"signs", "nosema"}}, {{"queen", "unknown"}});
    EXPECT_EQ(ofUnion(book), "signs queen-unknown");
    const Plan plan = book.plan(kFall);
    EXPECT_TRUE(plan.unions[0].cautions[1].because.contains("A:") && plan.unions[0].cautions[1].because.contains("B:"));
    EXPECT_TRUE(plan.cautions.empty());
}

TEST(Cautions, RoomIsUnknownWhereBroodOrStoresWereNotNoted) {
    const auto doubled = [](const char* brood, const char* lower, const char* upper) {
        return ofUnion(pair({{"upper_bees_top", "0"},
                             {"brood_frames", brood},
                             {"stores_frames", lower},
                             {"upper_stores_frames", upper}},
                            {}, {{"brood_boxes", "2"}}));
    };
    EXPECT_EQ(doubled("2", "1", "1"), "");
    EXPECT_EQ(doubled("", "1", "1"), "room-unknown");
    EXPECT_EQ(doubled("2", "", "1"), "room-unknown");
    EXPECT_EQ(doubled("2", "1", ""), "room-unknown");
}

TEST(Cautions, AHeldColonyNearTheEmptiedStand) {
    const auto held = [](const char* metres) {
        return ofUnion(pair({}, {}, {{"x_m", "100"}}).unchecked("C", {{"x_m", metres}}));
    };
    EXPECT_EQ(held("103"), "drift-to-held");
    EXPECT_EQ(held("103.001"), "");
    EXPECT_EQ(held("1"), ""); // beside the host
}

TEST(Cautions, AHeavyLowerBox) {
    EXPECT_EQ(ofUnion(pair({{"stores_frames", "5"}}, {{"stores_frames", "3"}})), "lower-heavier");
    EXPECT_EQ(ofUnion(pair({{"stores_frames", "4.75"}}, {{"stores_frames", "3"}})), "");
    EXPECT_EQ(ofUnion(pair({{"stores_frames", "5"}}, {})), "");
    EXPECT_EQ(ofUnion(pair({{"stores_frames", "5"}}, {{"stores_frames", "3"}}).set("order", "weaker-on-top")), "");
    const Cells both{
        {"upper_bees_top", "0"}, {"brood_frames", "1"}, {"stores_frames", "2"}, {"upper_stores_frames", "3"}};
    EXPECT_EQ(ofUnion(pair(both, {{"stores_frames", "3"}}, {{"brood_boxes", "2"}})), "lower-heavier");
}

/// Yard Z lies `latitude` north of Y; a colony of Z has signs of foulbrood.
PlanBook neighbour(const char* latitude, Cells colony = {}, Cells lon = {{"longitude_deg", "0"}}) {
    PlanBook book;
    book.yard("Y", {{"latitude_deg", "0"}, {"longitude_deg", "0"}});
    lon["latitude_deg"] = latitude;
    book.yard("Z", lon);
    colony["yard"] = "Z";
    return book.colony("A")
        .bees("A", "9")
        .colony("S", colony)
        .visit("S", "2026-07-01", {{"signs", "afb"}, {"note", "ropes"}});
}

// Source: own calculation: on a sphere of 6371.0 km a degree is 111194.93 m, so 1000 m are 0.00899322 degrees.
TEST(Cautions, AFoulbroodSourceInANearYard) {
    EXPECT_EQ(listed(neighbour("0.0089932")), "near-afb");
    EXPECT_EQ(listed(neighbour("0.0089933")), "");
    EXPECT_EQ(listed(neighbour("0.008", {}, {})), ""); // no longitude recorded
    EXPECT_EQ(listed(neighbour("0.008").set("afb.near_m", "800")), "");
    EXPECT_EQ(listed(neighbour("0.008"), kFall, "S"), "queen-unknown"); // not in its own yard
}

TEST(Cautions, ASourceThatEndedIsNearForAYear) {
    const auto ended = [](const char* day) {
        return neighbour("0.001", {{"since", "2020-01-01"}, {"ended", day}, {"end", "destroyed"}});
    };
    EXPECT_EQ(listed(ended("2026-07-02")), "near-afb");
    PlanBook old = PlanBook()
                       .yard("Y", {{"latitude_deg", "0"}, {"longitude_deg", "0"}})
                       .yard("Z", {{"latitude_deg", "0.001"}, {"longitude_deg", "0"}});
    old.colony("A")
        .bees("A", "9")
        .unchecked("S", {{"yard", "Z"}, {"ended", "2025-09-15"}, {"end", "dead"}})
        .visit("S", "2025-09-01", {{"signs", "afb"}});
    EXPECT_EQ(listed(old, "2026-09-15"), "near-afb"); // 365 days
    EXPECT_EQ(listed(old, "2026-09-16"), "");
}

TEST(Cautions, APastSourceIsNotNear) {
    PlanBook book = neighbour("0.001");
    book.row("results", {{"colony", "S"},
                         {"date", "2026-08-01"},
                         {"disease", "afb"},
                         {"result", "release"},
                         {"method", "inspector"},
                         {"by", "i"},
                         {"paper", "1"}});
    EXPECT_EQ(listed(book), "");
}

// Source: own calculation with the haversine formula, checked against the spherical law of cosines.
TEST(Nearby, MetresOnTheSphere) {
    SnapYard a, b;
    a.latitudeDeg = 52.1;
    a.longitudeDeg = -2.9;
    b.latitudeDeg = 52.1063;
    b.longitudeDeg = -2.9;
    EXPECT_NEAR(metresBetween(a, b), 700.5, 0.05); // tests/data/yards/README.md, brook-end
    b.longitudeDeg = -2.89;
    EXPECT_NEAR(metresBetween(a, b), 978.38, 0.05);
}

} // namespace
