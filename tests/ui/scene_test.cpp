#include "core/rules/facts.h"
#include "tests/support/csv_snapshot.h"
#include "tests/support/csv_tables.h"
#include "ui/desk/reading.h"
#include "ui/plan/ground.h"
#include "ui/plan/scene.h"

#include <gtest/gtest.h>

namespace {

using namespace ui::plan;

/// The worked yard of the examples on its merge day (tests/data/yards/README.md).
ui::desk::Reading kilnField() {
    const QString folder = QStringLiteral(YW_TEST_DATA "/yards/kiln-field");
    return ui::desk::readingOf(
        tests::support::snapshotOf(tests::support::tablesOfFolder(folder), core::dayOf(2026, 9, 15)));
}

Scene drawn(const ui::desk::Reading& r, bool withPlan = true) {
    return sceneOf(r.snapshot, {0}, r.facts, r.plan.holds, withPlan ? &r.plan : nullptr);
}

const HiveMark& hive(const Scene& scene, const char* label) {
    for (const HiveMark& h : scene.hives)
        if (h.label == QLatin1StringView(label)) return h;
    throw std::runtime_error(label);
}

// Source: the worked yard kiln-field, its rows and expected.json (tests/data/yards).
TEST(PlanScene, TheWorkedYardIsDrawnAsItStands) {
    const ui::desk::Reading r = kilnField();
    const Scene scene = drawn(r);
    ASSERT_EQ(scene.hives.size(), 12u);
    EXPECT_EQ(hive(scene, "K5").headingDeg, 135);
    EXPECT_EQ(hive(scene, "K11").at, (core::MmPoint{10000, 4000}));
    EXPECT_EQ(hive(scene, "K6").boxes, 2);
    EXPECT_EQ(hive(scene, "K4").bees, core::Quarters{21});
    EXPECT_EQ(hive(scene, "K7").holdLetters, QStringLiteral("B"));
    EXPECT_TRUE(hive(scene, "K8").layingWorkers);
    EXPECT_FALSE(hive(scene, "K12").bees) << "counted too long ago";
    EXPECT_TRUE(hive(scene, "K12").line.contains(QStringLiteral("5 Aug"))) << hive(scene, "K12").line.toStdString();
    EXPECT_EQ(hive(scene, "K10").feedHalfLitres, 19);
    EXPECT_EQ(hive(scene, "K10").combs, 8);
}

// K3 and K11: 7.2111 m, 23.658 ft; 9.5 l are 10.04 US quarts: own calculation (tests/base/shown_units_test.cpp).
TEST(PlanScene, DistancesAndFeedFollowTheUnitsShown) {
    ui::desk::Reading r = kilnField();
    r.snapshot.settings.showLength = core::LengthUnit::Feet;
    r.snapshot.settings.showVolume = core::VolumeUnit::Quarts;
    const Scene scene = drawn(r);
    ASSERT_EQ(scene.unions.size(), 3u);
    EXPECT_EQ(scene.unions[1].metres, QStringLiteral("23.7 ft"));
    EXPECT_TRUE(hive(scene, "K10").spoken.contains(QStringLiteral("feed 10 qt")))
        << hive(scene, "K10").spoken.toStdString();
}

TEST(PlanScene, UnionsAndShakeOutsAreThoseOfThePlan) {
    const ui::desk::Reading r = kilnField();
    const Scene scene = drawn(r);
    ASSERT_EQ(scene.unions.size(), 3u);
    EXPECT_EQ(scene.hives[scene.unions[0].moved].label, QStringLiteral("K2"));
    EXPECT_EQ(scene.hives[scene.unions[0].host].label, QStringLiteral("K4"));
    EXPECT_EQ(scene.unions[2].metres, QStringLiteral("9.4 m"));
    ASSERT_EQ(scene.shakes.size(), 1u);
    EXPECT_EQ(scene.hives[scene.shakes[0].colony].label, QStringLiteral("K9"));
}

TEST(PlanScene, WithoutThePlanHoldsStayAndArcsGo) {
    const Scene scene = drawn(kilnField(), false);
    EXPECT_TRUE(scene.unions.empty());
    EXPECT_TRUE(scene.shakes.empty());
    EXPECT_EQ(hive(scene, "K10").feedHalfLitres, 0);
    EXPECT_EQ(hive(scene, "K7").holdLetters, QStringLiteral("B"));
}

TEST(PlanScene, AScreenReaderHearsAllOfIt) {
    const Scene scene = drawn(kilnField());
    EXPECT_EQ(hive(scene, "K7").spoken.toStdString(),
              "K7, 5.5 frames, medium, held: brood not checked, feed 2 L, stand 7");
}

TEST(PlanScene, AnUnrecordedBoxIsDrawnAsATenFrameOne) {
    HiveMark m;
    setOutline(m, {{1}, QStringLiteral("ours"), 10, {}, {}});
    EXPECT_EQ(m.widthMm, 413);
    EXPECT_EQ(m.lengthMm, 505);
    setOutline(m, {{1}, QStringLiteral("ours"), 12, 500, 520});
    EXPECT_EQ(m.widthMm, 500);
    EXPECT_EQ(m.lengthMm, 520);
    EXPECT_EQ(m.combs, 12);
}

TEST(PlanGround, HivesSnapToRowsElseToATenthOfAMetre) {
    const Scene scene = drawn(kilnField());
    const core::ColonyId k1 = hive(scene, "K1").colony;
    EXPECT_EQ(snapped(scene, {5049, 90}, {&k1, 1}, 120), (core::MmPoint{5000, 0})) << "y of the row K2 to K5";
    EXPECT_EQ(snapped(scene, {4951, 1951}, {&k1, 1}, 120), (core::MmPoint{5000, 2000}));
    EXPECT_EQ(snapped(scene, {3930, 2040}, {&k1, 1}, 120), (core::MmPoint{4000, 2000})) << "x of K3 and K8";
}

TEST(PlanGround, AHiveStandsWhereItsBodyIs) {
    const Scene scene = drawn(kilnField());
    const core::ColonyId k1 = hive(scene, "K1").colony;
    const core::ColonyId k2 = hive(scene, "K2").colony;
    EXPECT_EQ(standingAt(scene, {2100, 100}, {&k1, 1}, 1.8), k2);
    EXPECT_EQ(standingAt(scene, {2412, 0}, {&k1, 1}, 1.0), k2) << "closer than it is wide";
    EXPECT_FALSE(standingAt(scene, {2414, 0}, {&k1, 1}, 1.0));
    EXPECT_FALSE(standingAt(scene, {0, 100}, {&k1, 1}, 1.8)) << "itself is not in the way";
}

TEST(PlanGround, TabWalksThroughTheHivesAndOut) {
    const Scene scene = drawn(kilnField());
    EXPECT_EQ(neighbourOf(scene, {}, true), 0u);
    EXPECT_EQ(neighbourOf(scene, {}, false), 11u);
    EXPECT_EQ(neighbourOf(scene, 3, true), 4u);
    EXPECT_FALSE(neighbourOf(scene, 11, true));
    EXPECT_FALSE(neighbourOf(scene, 0, false));
    EXPECT_FALSE(neighbourOf(Scene{}, {}, true));
}

} // namespace
