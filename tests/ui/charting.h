#pragma once

#include "ui/chart/chart.h"

#include <cmath>

/// Invented charts of every kind, for what is drawn and laid out.
namespace charting {

using core::Day;
using namespace ui::chart;

inline Day day(int year, int month, int dayOfMonth) { return core::dayOf(year, month, dayOfMonth); }

inline Chart strength() {
    Chart c;
    c.title = QStringLiteral("Strength");
    c.valueTitle = QStringLiteral("frames of bees");
    c.unit = QStringLiteral("frames");
    c.none = QStringLiteral("Its bees were never counted.");
    return c;
}

/// Two series of a season, with a gap, a hold, a union, a treatment and a limit.
inline Chart season() {
    Chart c = strength();
    Series all{QStringLiteral("all boxes"), Kind::Line, {}}, lower{QStringLiteral("lower box"), Kind::Line, {}};
    for (int i = 0; i < 14; ++i) {
        const int at = day(2026, 4, 3).number + 13 * i;
        const double frames = std::round(4 * (3 + 6 * std::sin(i * 3.14 / 14))) / 4;
        all.points.push_back({at, i == 6 ? std::nullopt : std::optional(frames), {}, {}, {}});
        lower.points.push_back({at, std::round(frames * 2.4) / 4, {}, {}, {}});
    }
    c.series = {all, lower};
    c.marks = {{MarkKind::Hold, day(2026, 6, 2), day(2026, 7, 9), "B", "held: brood not checked"},
               {MarkKind::Union, day(2026, 9, 15), {}, "U", "united with K2"},
               {MarkKind::Divide, day(2026, 5, 20), {}, "D", "divided: K9"},
               {MarkKind::Treatment, day(2026, 8, 4), day(2026, 8, 25), "T", "treated: oxalic acid"}};
    c.thresholds = {{4, QStringLiteral("weak below 4 frames")}};
    return c;
}

inline Chart onePoint() {
    Chart c = strength();
    c.series = {{QString(), Kind::Line, {{day(2026, 9, 14).number, 5.25, {}, {}, {}}}}};
    return c;
}

inline Chart none() {
    Chart c = strength();
    c.series = {{QString(), Kind::Line, {}}};
    return c;
}

/// A visit a fortnight over ten years, winters left out, with a union each autumn and a hold now and then.
inline Chart tenYears() {
    Chart c = strength();
    Series s{QString(), Kind::Line, {}};
    for (int year = 2016; year < 2026; ++year) {
        for (int n = 0; n < 14; ++n) {
            const int at = day(year, 4, 1 + year % 7).number + 14 * n;
            s.points.push_back({at, std::round(4 * (2.5 + 6 * std::sin(n * 3.14 / 14) + year % 3)) / 4, {}, {}, {}});
        }
        s.points.push_back({day(year, 12, 1).number, std::nullopt, {}, {}, {}});
        c.marks.push_back({MarkKind::Union, day(year, 9, 20), {}, "U", QString("united with K%1").arg(year % 9)});
        if (year % 3 == 0)
            c.marks.push_back({MarkKind::Hold, day(year, 6, 1), day(year, 8, 9), "B", "held: brood not checked"});
    }
    c.series = {s};
    return c;
}

/// Rates with their intervals against a limit.
inline Chart mites() {
    Chart c;
    c.title = QStringLiteral("Mites");
    c.valueTitle = QStringLiteral("mites on 100 bees, with the interval of 95 %");
    c.unit = QStringLiteral("in 100");
    c.decimals = 1;
    Series s{QString(), Kind::Dots, {}};
    s.points = {{day(2026, 5, 2).number, 0.3, 0.0, 1.8, "1 in 300 bees"},
                {day(2026, 6, 20).number, 1.0, 0.2, 2.9, "3 in 300 bees"},
                {day(2026, 8, 1).number, 4.0, 2.1, 6.9, "12 in 300 bees"},
                {day(2026, 9, 10).number, 0.7, 0.1, 2.4, "2 in 300 bees"}};
    c.series = {s};
    c.thresholds = {{3, QStringLiteral("treat above 3 in 100 (assumption)")}};
    return c;
}

/// Bars side by side over names.
inline Chart queens() {
    Chart c;
    c.title = QStringLiteral("Queens by year");
    c.valueTitle = QStringLiteral("queens");
    c.decimals = 0;
    c.whereTitle = QStringLiteral("year in which she was born");
    c.names = {"2022", "2023", "2024", "2025", "2026", "not recorded"};
    Series a{QStringLiteral("heading a colony"), Kind::Bars, {}}, b{QStringLiteral("lost this year"), Kind::Bars, {}};
    for (int i = 0; i < 6; ++i) {
        a.points.push_back({i, 3.0 + 2 * i, {}, {}, {}});
        b.points.push_back({i, 6.0 - i, {}, {}, {}});
    }
    c.series = {a, b};
    return c;
}

/// Feed by month, as bars over days; steps of what is still needed.
inline Chart feed() {
    Chart c;
    c.title = QStringLiteral("Feed given");
    c.valueTitle = QStringLiteral("kg of stores");
    c.unit = QStringLiteral("kg");
    Series given{QStringLiteral("given"), Kind::Bars, {}}, left{QStringLiteral("still needed"), Kind::Step, {}};
    for (int i = 0; i < 8; ++i) {
        const int at = day(2026, 8, 1).number + 7 * i;
        given.points.push_back({at, 2.0 + (i * 5) % 7, {}, {}, {}});
        left.points.push_back({at, 30.0 - 3.5 * i, {}, {}, {}});
    }
    c.series = {given, left};
    return c;
}

/// What was seen of queens, by levels.
inline Chart queenSeen() {
    Chart c;
    c.title = QStringLiteral("Queen");
    c.levels = {"none", "not seen", "eggs seen", "seen"};
    c.series = {{QString(), Kind::Dots, {}}};
    for (int i = 0; i < 12; ++i)
        c.series[0].points.push_back({day(2025, 4, 1).number + 40 * i, static_cast<double>((i * 7) % 4), {}, {}, {}});
    c.marks = {{MarkKind::Queen, day(2025, 6, 1), {}, "Q", "queen of 2025, blue"}};
    return c;
}

struct Named {
    const char* name;
    Chart chart;
};
inline std::vector<Named> all() {
    return {{"season", season()}, {"one-point", onePoint()}, {"none", none()}, {"ten-years", tenYears()},
            {"mites", mites()},   {"queens", queens()},      {"feed", feed()}, {"queen-seen", queenSeen()}};
}

} // namespace charting
