#include "ui/life/colony_charts.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace ui::life;
using ui::chart::Chart;
using ui::chart::MarkKind;

ColonyLife lifeOfOne() {
    ColonyLife life;
    life.colony.id = {1};
    life.colony.since = core::dayOf(2025, 4, 1);
    life.last = core::dayOf(2026, 9, 15);
    core::Visit v;
    v.colony = {1};
    v.day = core::dayOf(2026, 5, 2);
    v.beesTop = core::Quarters{21};
    v.queen = core::QueenSeen::Eggs;
    v.mites = 12;
    v.miteSample = 300;
    life.visits.push_back(v);
    v = {};
    v.colony = {1};
    v.day = core::dayOf(2026, 8, 2);
    v.gross = core::Decagrams{3050};
    v.supers = 1;
    v.queen = core::QueenSeen::None;
    life.visits.push_back(v);
    return life;
}

TEST(ColonyCharts, StandOnTheSameDaysAndSayWhatIsMissing) {
    const ColonyLife life = lifeOfOne();
    const auto charts = colonyCharts(life);
    ASSERT_EQ(charts.size(), 5u);
    for (const Chart& c : charts) {
        EXPECT_EQ(c.first, life.colony.since);
        EXPECT_EQ(c.last, life.last);
        EXPECT_FALSE(c.none.isEmpty());
    }
    EXPECT_EQ(ui::chart::spoken(charts[0], core::dayOf(2026, 5, 2).number), QStringLiteral("2 May 2026: 5.25 frames"));
    EXPECT_TRUE(ui::chart::isEmpty(charts[1])) << "no stores";
    EXPECT_EQ(ui::chart::spoken(charts[2], core::dayOf(2026, 8, 2).number),
              QStringLiteral("2 Aug 2026: with supers 30.5 kg, 1 super"));
    // 12 of 300: 4 in 100, 2.1 to 6.9 (exact interval; scipy 1.10.1, as tests/calc has it)
    EXPECT_EQ(ui::chart::spoken(charts[3], core::dayOf(2026, 5, 2).number),
              QStringLiteral("2 May 2026: 4 in 100 (2.1 to 6.9), 12 in 300 bees"));
    EXPECT_EQ(charts[3].thresholds.size(), 2u);
    EXPECT_EQ(charts[4].levels, (std::vector<QString>{"no queen", "eggs seen"}));
}

TEST(ColonyCharts, ShowWhatOneOfTwoBoxesHadApart) {
    ColonyLife life = lifeOfOne();
    life.colony.broodBoxes = 2; // the visit of May counted the lower box alone
    const Chart strength = colonyCharts(life)[0];
    ASSERT_EQ(strength.series.size(), 2u);
    EXPECT_EQ(ui::chart::spoken(strength, core::dayOf(2026, 5, 2).number),
              QStringLiteral("2 May 2026: all boxes not recorded · one of two 5.25 frames, the lower box alone"));
}

TEST(ColonyCharts, ShowPoundsWhereTheBookDoes) {
    ColonyLife life = lifeOfOne();
    life.settings.showWeight = core::WeightUnit::Pounds;
    const Chart weight = colonyCharts(life)[2];
    // own calculation: 30.5 kg / 0.45359237 kg = 67.24 lb
    EXPECT_EQ(ui::chart::spoken(weight, core::dayOf(2026, 8, 2).number),
              QStringLiteral("2 Aug 2026: with supers 67.2 lb, 1 super"));
}

TEST(ColonyCharts, MarkHoldsLineageQueensAndTreatments) {
    ColonyLife life = lifeOfOne();
    const auto add = [&](qint64 from, qint64 into, core::LineageHow how, int month) {
        core::Lineage l;
        l.colony = {from};
        l.into = {into};
        l.how = how;
        l.day = core::dayOf(2026, month, 10);
        life.lineage.push_back(l);
        life.names[{from == 1 ? into : from}] = QStringLiteral("K%1").arg(from == 1 ? into : from);
    };
    add(7, 1, core::LineageHow::Divided, 4);
    add(1, 8, core::LineageHow::Divided, 5);
    add(9, 1, core::LineageHow::ShakenOut, 6);
    add(1, 2, core::LineageHow::United, 9);
    life.holds = {{core::rules::HoldKind::BroodNotChecked, core::dayOf(2026, 6, 1), core::dayOf(2026, 7, 1)}};
    core::Queen q;
    q.since = core::dayOf(2026, 5, 20);
    q.born = 2026;
    life.queens = {q};
    core::Treatment t;
    t.day = core::dayOf(2026, 8, 5);
    t.product = QStringLiteral("Thymol");
    t.days = 21;
    life.treatments = {t};
    const auto charts = colonyCharts(life);
    const auto texts = [](const Chart& c) {
        QStringList out;
        for (const auto& m : c.marks) out << ui::chart::markText(m);
        return out;
    };
    const QStringList all{"held: brood not checked, 1 Jun 2026 to 1 Jul 2026", "divided from K7", "divided: K8",
                          "K9 shaken out before it", "united into K2"};
    EXPECT_EQ(texts(charts[0]), all);
    EXPECT_EQ(texts(charts[3]), all + QStringList{"treated: Thymol, 5 Aug 2026 to 26 Aug 2026"});
    EXPECT_EQ(texts(charts[4]), all + QStringList{"queen of 2026, white"});
    EXPECT_EQ(charts[0].marks[0].kind, MarkKind::Hold);
}

} // namespace
