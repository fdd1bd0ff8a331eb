#include "ui/form/judge.h"
#include "ui/form/typed.h"

#include <gtest/gtest.h>

#include <QLocale>

namespace {

using ui::form::Judge;
using ui::form::Problem;
using ui::form::Values;

const core::Day kToday = core::dayOf(2026, 9, 15);

TEST(TypedDays, AreUnderstoodAsPeopleTypeThem) {
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    const std::pair<const char*, core::Day> rows[] = {{"2026-09-15", core::dayOf(2026, 9, 15)},
                                                      {" 2026-09-15 ", core::dayOf(2026, 9, 15)},
                                                      {"15 Sep 2026", core::dayOf(2026, 9, 15)},
                                                      {"1 September 2025", core::dayOf(2025, 9, 1)},
                                                      {"3 May", core::dayOf(2026, 5, 3)},
                                                      {"15 Sep", core::dayOf(2026, 9, 15)},
                                                      {"16 Sep", core::dayOf(2025, 9, 16)},
                                                      {"29 Feb", core::dayOf(2024, 2, 29)},
                                                      {"15.9.2026", core::dayOf(2026, 9, 15)},
                                                      {"15.9.26", core::dayOf(2026, 9, 15)},
                                                      {"1.12.", core::dayOf(2025, 12, 1)},
                                                      {"1.9", core::dayOf(2026, 9, 1)},
                                                      {"today", core::dayOf(2026, 9, 15)},
                                                      {"Yesterday", core::dayOf(2026, 9, 14)}};
    for (const auto& [typed, day] : rows) {
        const auto got = ui::form::parseDay(QString::fromUtf8(typed), kToday);
        ASSERT_TRUE(got) << typed;
        EXPECT_EQ(core::isoText(*got).toStdString(), core::isoText(day).toStdString()) << typed;
    }
    QLocale::setDefault(before);
}

TEST(TypedDays, AllElseIsNoDay) {
    for (const char* typed : {"", "soon", "31.9.2026", "2026-02-30", "15/9/2026", "15", "15.9.2026.1", "0.9.2026", "2026-9-5",
                              "30 Feb", "-1.9.2026", "15.13."})
        EXPECT_FALSE(ui::form::parseDay(QString::fromUtf8(typed), kToday)) << typed;
}

TEST(TypedDays, WhatAFieldBeginsWithIsReadBack) {
    for (int i = 0; i < 800; i += 13)
        EXPECT_EQ(ui::form::parseDay(ui::form::typedDay(kToday - i), kToday), kToday - i) << i;
}

TEST(TypedNumbers, ADecimalCommaIsReadToo) {
    const QString key = QStringLiteral("k");
    EXPECT_EQ(ui::form::decimalOf({{key, QStringLiteral("2,5")}}, key), 2.5);
    EXPECT_EQ(ui::form::decimalOf({{key, QStringLiteral(" 51.25 ")}}, key), 51.25);
    EXPECT_FALSE(ui::form::decimalOf({{key, QStringLiteral("2.5 L")}}, key));
    EXPECT_FALSE(ui::form::decimalOf({{key, QStringLiteral("1.000,5")}}, key));
    EXPECT_FALSE(ui::form::decimalOf({}, key));
    EXPECT_EQ(ui::form::typedDecimal(0.1), QStringLiteral("0.1"));
    EXPECT_EQ(ui::form::typedDecimal(std::nullopt), QString());
}

std::vector<Problem> judged(const char* typed, void (*judge)(Judge&)) {
    const Values values{{QStringLiteral("k"), QString::fromUtf8(typed)}};
    Judge j(values, kToday);
    judge(j);
    return j.take();
}

TEST(Judging, RangesAtTheirEnds) {
    const auto whole = [](Judge& j) { j.whole(QStringLiteral("k"), 1, 1000); };
    for (const char* fine : {"", "1", "1000", " 7 "}) EXPECT_TRUE(judged(fine, whole).empty()) << fine;
    for (const char* wrong : {"0", "1001", "-1", "1.5", "two", "99999999999999999999"})
        EXPECT_EQ(judged(wrong, whole).size(), 1u) << wrong;
    const auto decimal = [](Judge& j) { j.decimal(QStringLiteral("k"), -90, 90, 2); };
    for (const char* fine : {"", "-90", "90", "51,25", "0.1"}) EXPECT_TRUE(judged(fine, decimal).empty()) << fine;
    for (const char* wrong : {"90.01", "-91", "51.255", "north"}) EXPECT_EQ(judged(wrong, decimal).size(), 1u) << wrong;
}

TEST(Judging, ADayMayBeNeededAndMayNotLieAhead) {
    const auto day = [](Judge& j) { j.day(QStringLiteral("k")); };
    const auto needed = [](Judge& j) { j.needDay(QStringLiteral("k")); };
    const auto ahead = [](Judge& j) { j.day(QStringLiteral("k"), false); };
    EXPECT_TRUE(judged("", day).empty());
    EXPECT_TRUE(judged("2026-09-15", day).empty());
    EXPECT_EQ(judged("2026-09-16", day).size(), 1u);
    EXPECT_TRUE(judged("2026-09-16", ahead).empty());
    ASSERT_EQ(judged("", needed).size(), 1u);
    EXPECT_TRUE(judged("", needed).front().missing);
    EXPECT_FALSE(judged("soon", needed).front().missing);
}

} // namespace
