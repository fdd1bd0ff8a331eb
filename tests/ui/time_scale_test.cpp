#include "ui/time/day_words.h"
#include "ui/time/player.h"
#include "ui/time/time_scale.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace ui::time;
using core::dayOf;

double widthOf(const QString& text) { return 7.0 * static_cast<double>(text.size()); }

TimeScale tenYears(double width) {
    TimeScale scale;
    scale.setDays(dayOf(2017, 4, 2), dayOf(2026, 9, 15));
    scale.setWidth(width, 14);
    scale.showAll();
    return scale;
}

TEST(TimeScale, EachDayIsWhereItIsDrawn) {
    TimeScale scale = tenYears(900);
    scale.showDays(366, dayOf(2026, 9, 15));
    for (core::Day day = scale.from(); day <= scale.to(); day = day + 1) EXPECT_EQ(scale.dayAt(scale.xOf(day)), day);
    EXPECT_EQ(scale.dayAt(-1e6), scale.first());
    EXPECT_EQ(scale.dayAt(1e6), scale.last());
}

TEST(TimeScale, NoTextLiesOverAnotherAtAnyZoom) {
    for (const double width : {160.0, 400.0, 830.0, 2000.0})
        for (double days = 28; days < 3500; days *= 1.31) {
            TimeScale scale = tenYears(width);
            scale.showDays(static_cast<int>(days), dayOf(2023, 7, 9));
            double right = -1e9;
            int texts = 0;
            for (const ScaleMark& mark : scale.marks(widthOf)) {
                if (mark.text.isEmpty()) continue;
                EXPECT_GT(mark.x - widthOf(mark.text) / 2, right) << width << " pixels, " << days << " days";
                right = mark.x + widthOf(mark.text) / 2;
                EXPECT_LE(right, width);
                ++texts;
            }
            EXPECT_GE(texts, 1) << width << " pixels, " << days << " days: nothing says when";
        }
}

TEST(TimeScale, ASeasonShowsMonthsAndTenYearsTheYears) {
    TimeScale scale = tenYears(830);
    std::vector<QString> years;
    for (const ScaleMark& m : scale.marks(widthOf))
        if (!m.text.isEmpty()) years.push_back(m.text);
    for (int year = 2018; year <= 2026; ++year) EXPECT_TRUE(std::ranges::count(years, QString::number(year))) << year;
    scale.showDays(180, dayOf(2026, 9, 15));
    const auto marks = scale.marks(widthOf);
    EXPECT_TRUE(std::ranges::any_of(marks, [](const ScaleMark& m) { return m.text == QStringLiteral("Jun"); }));
}

TEST(TimeScale, ZoomKeepsTheDayUnderThePointer) {
    TimeScale scale = tenYears(830);
    const core::Day under = scale.dayAt(600);
    for (int i = 0; i < 8; ++i) scale.zoomBy(1.3, 600);
    EXPECT_LE(std::abs(scale.dayAt(600) - under), 1);
    for (int i = 0; i < 40; ++i) scale.zoomBy(1 / 1.3, 10);
    EXPECT_EQ(scale.from(), scale.first());
    EXPECT_EQ(scale.to(), scale.last());
}

TEST(DayWords, SumUpWhatIsRecorded) {
    const Records records{{dayOf(2026, 6, 3), core::Recorded::Visit, 12},
                          {dayOf(2026, 6, 3), core::Recorded::Carried, 1},
                          {dayOf(2026, 6, 20), core::Recorded::United, 2}};
    EXPECT_EQ(recordWords(recordsIn(records, dayOf(2026, 6, 3), dayOf(2026, 6, 3))).toStdString(),
              "12 visits · 1 hive carried");
    EXPECT_EQ(recordWords(recordsIn(records, dayOf(2026, 6, 4), dayOf(2026, 6, 19))).toStdString(), "");
    EXPECT_EQ(dayAfter(records, dayOf(2026, 6, 3)), dayOf(2026, 6, 20));
    EXPECT_EQ(dayBefore(records, dayOf(2026, 6, 20)), dayOf(2026, 6, 3));
    EXPECT_FALSE(dayBefore(records, dayOf(2026, 6, 3)));
    EXPECT_FALSE(dayAfter(records, dayOf(2026, 6, 20)));
}

TEST(Player, TakesHalfAMinuteAtMost) {
    EXPECT_DOUBLE_EQ(Player::msPerDay(10), 140);
    EXPECT_DOUBLE_EQ(Player::msPerDay(3000) * 3000, 30'000);
}

} // namespace
