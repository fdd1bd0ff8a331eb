#include "charting.h"

#include "ui/chart/chart_layout.h"
#include "ui/chart/chart_table.h"
#include "ui/look/type.h"

#include <gtest/gtest.h>

namespace {

using namespace charting;

const QSizeF kSizes[] = {{300, 130}, {480, 220}, {900, 480}, {1400, 700}};

QFont fontOf(double times) {
    QFont font = ui::look::textFont(QFont());
    font.setPixelSize(static_cast<int>(16 * times));
    return font;
}

/// Every text of the layout with a word for where it is.
std::vector<std::pair<QString, Placed>> textsOf(const ChartLayout& l) {
    std::vector<std::pair<QString, Placed>> out;
    const auto add = [&](const QString& what, const Placed& p) {
        if (!p.text.isEmpty()) out.emplace_back(what + ' ' + p.text, p);
    };
    add("title", l.title);
    add("values", l.valueTitle);
    add("where", l.whereTitle);
    add("none", l.none);
    for (const auto& t : l.valueTicks) add("tick", t.label);
    for (const auto& t : l.whereTicks) add("day", t.label);
    for (const auto& m : l.marks) add("mark", m.label);
    for (const auto& t : l.thresholds) add("limit", t.label);
    for (const auto& n : l.names) add("name", n);
    return out;
}

void expectOrder(const Named& named, const QSizeF& size, double times) {
    SCOPED_TRACE(QStringLiteral("%1 in %2 × %3, text × %4")
                     .arg(named.name)
                     .arg(size.width())
                     .arg(size.height())
                     .arg(times)
                     .toStdString());
    const ChartLayout l = layOut(named.chart, size, fontOf(times));
    const auto texts = textsOf(l);
    const QRectF all = QRectF(QPointF(), size).adjusted(-1, -1, 1, 1);
    for (size_t i = 0; i < texts.size(); ++i) {
        EXPECT_TRUE(all.contains(texts[i].second.box)) << texts[i].first.toStdString() << " leaves the chart";
        for (size_t k = i + 1; k < texts.size(); ++k)
            EXPECT_FALSE(
                texts[i].second.box.adjusted(1, 2, -1, -2).intersects(texts[k].second.box.adjusted(1, 2, -1, -2)))
                << texts[i].first.toStdString() << " lies over " << texts[k].first.toStdString();
    }
    for (const auto& points : l.points)
        for (const PlacedPoint& p : points)
            EXPECT_TRUE(l.plot.adjusted(-1, -1, 1, 1).contains(p.where)) << p.at << " leaves the plot";
    for (const PlacedMark& m : l.marks) {
        EXPECT_GE(m.from, l.plot.left() - 1);
        EXPECT_LE(m.to, l.plot.right() + 1);
    }
    for (const auto& bars : l.bars)
        for (const QRectF& bar : bars) EXPECT_TRUE(l.plot.adjusted(-1, -1, 1, 1).contains(bar));
}

TEST(ChartLayout, LaysNoTextOverAnotherAndNothingOutside) {
    for (const Named& named : all())
        for (const QSizeF& size : kSizes) expectOrder(named, size, 1);
}

TEST(ChartLayout, GrowsWithTheText) {
    for (const Named& named : all())
        for (const QSizeF& size : {QSizeF(700, 420), QSizeF(1400, 900)}) expectOrder(named, size, 2);
}

TEST(ChartLayout, SaysASentenceWhereNothingIsRecorded) {
    const ChartLayout l = layOut(none(), {480, 220}, fontOf(1));
    EXPECT_TRUE(l.empty);
    EXPECT_EQ(l.none.text, QStringLiteral("Its bees were never counted."));
    EXPECT_TRUE(l.valueTicks.empty());
    EXPECT_TRUE(l.stops.empty());
}

TEST(ChartLayout, GivesOnePointAMonthWithDatesAndItsYear) {
    const ChartLayout l = layOut(onePoint(), {480, 220}, fontOf(1));
    ASSERT_EQ(l.points[0].size(), 1u);
    EXPECT_NEAR(l.points[0][0].where.x(), l.plot.center().x(), l.plot.width() / 10);
    EXPECT_GE(std::ranges::count_if(l.whereTicks, [](const PlacedTick& t) { return !t.label.text.isEmpty(); }), 2);
    EXPECT_EQ(l.whereTitle.text, QStringLiteral("2026"));
    EXPECT_EQ(l.axis.low, 0);
}

TEST(ChartLayout, NamesTheYearsOfTen) {
    const ChartLayout l = layOut(tenYears(), {480, 220}, fontOf(1));
    QStringList years;
    for (const PlacedTick& t : l.whereTicks)
        if (!t.label.text.isEmpty()) years << t.label.text;
    EXPECT_GE(years.size(), 4);
    for (const QString& year : years) EXPECT_EQ(year.size(), 4) << year.toStdString();
    EXPECT_TRUE(l.whereTitle.text.isEmpty());
}

TEST(ChartLayout, BreaksALineWhereNothingIsRecorded) {
    const ChartLayout l = layOut(season(), {900, 480}, fontOf(1));
    EXPECT_EQ(l.runs[0], (std::vector<size_t>{6, 7}));
    EXPECT_EQ(l.runs[1], (std::vector<size_t>{14}));
}

TEST(ChartLayout, SaysMarksInWordsWhereThereIsRoomAndElseByTheirSigns) {
    const auto labels = [](const ChartLayout& l) {
        QStringList out;
        for (const PlacedMark& m : l.marks) out << m.label.text;
        return out;
    };
    EXPECT_EQ(labels(layOut(season(), {900, 480}, fontOf(1))),
              (QStringList{"divided: K9", "held: brood not checked", "treated: oxalic acid", "united with K2"}));
    EXPECT_EQ(labels(layOut(season(), {300, 160}, fontOf(1))), (QStringList{"D", "B", "T", "U"}));
}

TEST(ValueAxis, HasRoundStepsFromZero) {
    struct Case {
        double least, most;
        bool zero;
        int steps, decimals;
        double low, high, step;
    };
    for (const Case& c :
         {Case{3, 9.5, true, 6, 2, 0, 10, 2}, Case{3, 9.5, true, 2, 2, 0, 10, 5}, Case{0, 0, true, 6, 0, 0, 1, 1},
          Case{0, 0, true, 6, 2, 0, 0.01, 0.01}, Case{28, 41.2, false, 5, 2, 25, 45, 5},
          Case{0.2, 6.9, true, 4, 1, 0, 8, 2}, Case{1, 3, true, 6, 0, 0, 3, 1}, Case{5, 5, false, 5, 0, 5, 6, 1},
          Case{0, 1234, true, 6, 0, 0, 1500, 500}, Case{-3, 4, true, 6, 0, -4, 4, 2}}) {
        SCOPED_TRACE(c.most);
        const ValueAxis a = valueAxis(c.least, c.most, c.zero, c.steps, c.decimals); // own calculation, by hand
        EXPECT_DOUBLE_EQ(a.low, c.low);
        EXPECT_DOUBLE_EQ(a.high, c.high);
        EXPECT_DOUBLE_EQ(a.step, c.step);
        EXPECT_LE(a.steps(), std::max(2, c.steps));
    }
}

TEST(Chart, IsReadStopByStop) {
    const Chart c = season();
    EXPECT_EQ(spoken(c, day(2026, 4, 3).number),
              QStringLiteral("3 Apr 2026: all boxes 3 frames · lower box 1.75 frames"));
    EXPECT_EQ(spoken(c, day(2026, 9, 15).number), QStringLiteral("15 Sep 2026: united with K2"));
    const QString gap = spoken(c, day(2026, 4, 3).number + 13 * 6);
    EXPECT_TRUE(gap.contains(QStringLiteral("all boxes not recorded"))) << gap.toStdString();
    EXPECT_TRUE(gap.contains(QStringLiteral("held: brood not checked, 2 Jun 2026 to 9 Jul 2026"))) << gap.toStdString();
    EXPECT_EQ(spoken(mites(), day(2026, 8, 1).number),
              QStringLiteral("1 Aug 2026: 4 in 100 (2.1 to 6.9), 12 in 300 bees"));
    EXPECT_EQ(stopsOf(c).size(), 14u + 4u);
    EXPECT_EQ(summary(none()), none().none);
    EXPECT_EQ(summary(onePoint()), QStringLiteral("one value, 5.25 frames on 14 Sep 2026."));
}

TEST(Chart, HasATableOfTheSameFigures) {
    const ChartTable t = tableOf(mites());
    EXPECT_EQ(t.columns,
              (QStringList{"day", "mites on 100 bees, with the interval of 95 %", "at least", "at most", "from"}));
    ASSERT_EQ(t.rows.size(), 4u);
    EXPECT_EQ(t.rows[2], (QStringList{"1 Aug 2026", "4", "2.1", "6.9", "12 in 300 bees"}));
    const ChartTable gap = tableOf(season());
    EXPECT_TRUE(std::ranges::any_of(gap.rows, [](const QStringList& r) { return r[1] == QStringLiteral("—"); }));
    const ChartTable file = tableOf(season(), TableFor::File);
    EXPECT_EQ(file.rows[0][0], QStringLiteral("2026-04-03"));
    EXPECT_TRUE(std::ranges::any_of(file.rows, [](const QStringList& r) { return r[1].isEmpty(); }));
    EXPECT_EQ(tableOf(queens()).rows[5], (QStringList{"not recorded", "13", "1"}));
}

} // namespace
