#include "core/report/plan_text.h"

#include "tests/support/csv_snapshot.h"

#include <gtest/gtest.h>

namespace {

using namespace core;

Snapshot kilnField() {
    return tests::support::snapshotOf(tests::support::tablesOfFolder(QStringLiteral(YW_TEST_DATA "/yards/kiln-field")),
                                      *parseIsoDay(u"2026-09-15"));
}

// Source: tests/data/yards/README.md, kiln-field.
TEST(PlanText, SaysWhatToDoWithTheFigures) {
    const Snapshot s = kilnField();
    const std::string text = report::planText(s, rules::advise(s, {})).toStdString();
    for (const char* part : {"Plan for 2026-09-15, Kiln Field", "K7  brood-not-checked",
                             "Kiln Field 2. K3 → K11 on stand 11, 7.2 m, gain 1502", "K9 → K10", "K8: laying workers",
                             "K12: its count of bees is too old", "K10: 9.5 litres (10 kg short)",
                             "4.733 colonies as they stand, 7.619 by this plan"})
        EXPECT_NE(text.find(part), std::string::npos) << part << "\nin:\n" << text;
}

// K3 and K11 stand 4 m and 6 m apart: 7.2111 m, 23.658 ft; 9.5 l are 10.04 quarts, 10 kg 22.05 lb: own calculation, by
// the factors of tests/base/shown_units_test.cpp.
TEST(PlanText, FollowsTheUnitsShown) {
    Snapshot s = kilnField();
    const rules::Plan si = rules::advise(s, {});
    s.settings.showWeight = WeightUnit::Pounds;
    s.settings.showVolume = VolumeUnit::Quarts;
    s.settings.showLength = LengthUnit::Feet;
    const rules::Plan plan = rules::advise(s, {});
    const QString text = report::planText(s, plan);
    for (const char* part :
         {"Kiln Field 2. K3 → K11 on stand 11, 23.7 ft, gain 1502", "K10: 10 US quarts (22 lb short)",
          "K3 is carried 23.7 ft to stand 11", "- Carry K3 23.7 ft to stand 11.", "ft away, they still help"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << "\nin:\n" << text.toStdString();
    for (const char* metric : {" kg", " litres", " m ", " m,"})
        EXPECT_FALSE(text.contains(QString::fromUtf8(metric))) << metric << "\nin:\n" << text.toStdString();
    ASSERT_EQ(plan.feed.size(), si.feed.size());
    for (size_t i = 0; i < plan.feed.size(); ++i) EXPECT_EQ(plan.feed[i].halfLitres, si.feed[i].halfLitres);
    ASSERT_EQ(plan.unions.size(), si.unions.size());
    for (size_t i = 0; i < plan.unions.size(); ++i) EXPECT_EQ(plan.unions[i].carryTenths, si.unions[i].carryTenths);
}

TEST(PlanText, CallsTheValueTablesAnAssumptionAndDefersToTheLaw) {
    const Snapshot s = kilnField();
    const QString text = report::planText(s, rules::advise(s, {}));
    EXPECT_TRUE(text.contains("value tables that are an assumption"));
    EXPECT_TRUE(text.contains("Apiary law, inspectors, veterinarians and labels decide."));
}

TEST(PlanText, LeavesEmptySectionsOut) {
    Snapshot s = kilnField();
    s.on = *parseIsoDay(u"2026-09-15");
    const QString text = report::planText(s, rules::advise(s, {}));
    EXPECT_FALSE(text.contains("Divide"));
    EXPECT_FALSE(text.contains("Due"));
}

TEST(DueText, SaysWhenNothingIsDue) {
    const Snapshot s = kilnField();
    EXPECT_EQ(report::dueText(s, {}), "Nothing is due on 2026-09-15.\n");
    const ColonyIx k1 = *s.livingNamed(u"K1");
    EXPECT_EQ(report::dueText(s, {{k1, rules::DueKind::UnionCheck, *parseIsoDay(u"2026-09-20")}}),
              "Due on 2026-09-15:\n  2026-09-20  K1: look at the union\n");
}

TEST(ExplanationText, NamesEachRule) {
    const Snapshot s = kilnField();
    const QString text =
        report::explanationText(s.settings, rules::explain(s, *s.livingNamed(u"K7"), *s.livingNamed(u"K8")));
    EXPECT_TRUE(text.contains("4.7.2: K7 is held")) << text.toStdString();
    EXPECT_TRUE(text.contains("4.7.3: K8 has laying workers.")) << text.toStdString();
}

TEST(ExplanationText, NamesTheLimitsAndCallsAssumptionsSo) {
    const Snapshot s = kilnField();
    const auto textOf = [&](const char* a, const char* b) {
        return report::explanationText(
            s.settings, rules::explain(s, *s.livingNamed(QString::fromUtf8(a)), *s.livingNamed(QString::fromUtf8(b))));
    };
    EXPECT_TRUE(textOf("K2", "K4").contains("by gain.min 50 thousandths (assumption)"))
        << textOf("K2", "K4").toStdString();
    EXPECT_TRUE(textOf("K1", "K12").contains("by strength.max_age_days 30 days (assumption)"))
        << textOf("K1", "K12").toStdString();
}

} // namespace
