#include "core/model/setting_table.h"

#include <gtest/gtest.h>

#include <QStringList>

#include <set>

namespace {

using namespace core;

/// What the book says after `set NAME TEXT`, or "refused".
QString after(const char* name, const char* text) {
    Settings settings;
    const auto canonical = applySetting(settings, QString(name), QString(text));
    if (!canonical) {
        EXPECT_EQ(settings, Settings{}) << name;
        return "refused";
    }
    EXPECT_EQ(*canonical, settingText(settings, QString(name)));
    return *canonical;
}

TEST(SettingTable, EachSettingStandsOnceAndKeepsItsDefault) {
    std::set<QString> names;
    for (const SettingInfo& info : settingTable()) {
        EXPECT_TRUE(names.insert(info.name).second) << info.name.toStdString();
        EXPECT_FALSE(info.range.isEmpty() || info.source.isEmpty() || info.meaning.isEmpty())
            << info.name.toStdString();
        Settings settings;
        EXPECT_EQ(applySetting(settings, info.name, info.defaultValue), info.defaultValue);
        EXPECT_EQ(settings, Settings{}) << info.name.toStdString();
        EXPECT_EQ(settingNamed(info.name), &info);
    }
    EXPECT_EQ(names.size(), 56U);
}

// Source: core/rules/README.md, each setting beside its rule.
TEST(SettingTable, DefaultsAreThoseOfTheRules) {
    const std::pair<const char*, const char*> defaults[] = {
        {"strength.judge", "mean"},
        {"strength.max_age_days", "30"},
        {"class.shake_out_max", "2"},
        {"class.medium_min", "5"},
        {"class.strong_min", "8"},
        {"queen.max_age_days", "45"},
        {"weigh.max_age_days", "30"},
        {"season.fall_start", "08-20"},
        {"season.fall_end", "10-20"},
        {"season.start", "05-01"},
        {"check.min_frames", "3"},
        {"check.full_frames", "3"},
        {"check.max_age_days", "150"},
        {"check.grace_days", "30"},
        {"trace.days", "365"},
        {"trace.masked_days", "548"},
        {"afb.own_result_days", "42"},
        {"afb.recheck_days", "60"},
        {"afb.yard_back_days", "60"},
        {"afb.yard_after_days", "365"},
        {"efb.clear_days", "42"},
        {"efb.back_days", "42"},
        {"doubt.recheck_days", "21"},
        {"doubt.back_days", "42"},
        {"mites.spring", "2"},
        {"mites.fall", "3"},
        {"drop.summer", "10"},
        {"drop.late", "1"},
        {"afb.near_m", "1000"},
        {"afb.rob_m", "2000"},
        {"move.drift_m", "3"},
        {"move.step_m", "0.9"},
        {"move.far_m", "4800"},
        {"records.years", "5"},
        {"sample.late_days", "21"},
        {"crew.minutes_per_union", "12"},
        {"crew.people", "2"},
        {"gain.min", "50"},
        {"gain.min_queen", "1"},
        {"carry.per_m", "1"},
        {"order", "better-on-top"},
        {"queen.weaker", "leave"},
        {"shake.per_host", "1"},
        {"stores.single_kg", "32"},
        {"stores.double_kg", "45"},
        {"syrup.stores_kg_per_l", "1.078"},
        {"tare.floor_lid_kg", "5"},
        {"tare.box_kg", "5"},
        {"divide.brood_per_part", "4"},
        {"divide.bees_per_part", "5"},
        {"follow.union_days", "5"},
        {"show.weight", "kg"},
        {"show.volume", "l"},
        {"show.length", "m"},
        {"value.winter", "0 50 120 300 480 640 750 820 880 905 920 928 934"},
        {"value.divide", "0 0 0 0 0 0 0 400 800 900 1000 1000 1000"}};
    for (const auto& [name, text] : defaults) EXPECT_EQ(settingText(Settings{}, QString(name)), text) << name;
}

TEST(SettingTable, LimitsOfHoldsOnlyBecomeStricter) {
    for (const char* name : {"check.min_frames", "check.full_frames", "trace.days", "trace.masked_days",
                             "afb.own_result_days", "afb.recheck_days", "afb.yard_back_days", "afb.yard_after_days",
                             "efb.clear_days", "efb.back_days", "doubt.recheck_days", "doubt.back_days"}) {
        const int value = settingText(Settings{}, QString(name)).toInt();
        EXPECT_EQ(after(name, std::to_string(value - 1).c_str()), "refused") << name;
        EXPECT_EQ(after(name, std::to_string(value + 1).c_str()), QString::number(value + 1)) << name;
        EXPECT_TRUE(settingNamed(QString(name))->range.contains("only stricter"));
    }
    for (const char* name : {"check.max_age_days", "check.grace_days"}) {
        const int value = settingText(Settings{}, QString(name)).toInt();
        EXPECT_EQ(after(name, std::to_string(value + 1).c_str()), "refused") << name;
        EXPECT_EQ(after(name, std::to_string(value - 1).c_str()), QString::number(value - 1)) << name;
    }
}

TEST(SettingTable, ReadsEachTypeStrictly) {
    EXPECT_EQ(after("gain.min", " 40 "), "40");
    EXPECT_EQ(after("gain.min", "40.5"), "refused");
    EXPECT_EQ(after("gain.min", "-1"), "refused");
    EXPECT_EQ(after("gain.min", ""), "refused");
    EXPECT_EQ(after("class.medium_min", "5.25"), "5.25");
    EXPECT_EQ(after("class.medium_min", "5.1"), "refused");
    EXPECT_EQ(after("mites.fall", "3.50"), "3.5");
    EXPECT_EQ(after("mites.fall", "3.1234567"), "refused");
    EXPECT_EQ(after("mites.fall", "1e1"), "refused");
    EXPECT_EQ(after("season.start", "02-29"), "02-29");
    EXPECT_EQ(after("season.start", "02-30"), "refused");
    EXPECT_EQ(after("season.start", "13-01"), "refused");
    EXPECT_EQ(after("season.start", "5-1"), "refused");
    EXPECT_EQ(after("strength.judge", "bottom"), "bottom");
    EXPECT_EQ(after("strength.judge", "Bottom"), "refused");
    EXPECT_EQ(after("no.such", "1"), "refused");
    EXPECT_EQ(settingNamed(u"no.such"), nullptr);
}

TEST(SettingTable, ValueTablesHaveThirteenWholeNumbers) {
    EXPECT_EQ(after("value.winter", "0  1 2 3 4 5 6 7 8 9 10 11 1000"), "0 1 2 3 4 5 6 7 8 9 10 11 1000");
    EXPECT_EQ(after("value.winter", "0 1 2 3 4 5 6 7 8 9 10 11"), "refused");
    EXPECT_EQ(after("value.winter", "0 1 2 3 4 5 6 7 8 9 10 11 12 13"), "refused");
    EXPECT_EQ(after("value.winter", "0 1 2 3 4 5 6 7 8 9 10 11 1001"), "refused");
    EXPECT_EQ(after("value.winter", "0 1 2 3 4 5 6 7 8 9 10 11 1.5"), "refused");
}

// What is no published figure is called an assumption where users see it.
TEST(SettingTable, UnpublishedFiguresAreCalledAssumptions) {
    QStringList published;
    for (const SettingInfo& info : settingTable())
        if (!info.source.contains("assumption") && !info.name.startsWith("show.")) published += info.name;
    EXPECT_EQ(published,
              (QStringList{"efb.clear_days", "afb.near_m", "afb.rob_m", "stores.single_kg", "stores.double_kg",
                           "syrup.stores_kg_per_l", "follow.union_days", "records.years"}));
}

} // namespace
