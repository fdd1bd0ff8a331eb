#include "ui/life/family.h"
#include "ui/life/family_words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

namespace {

using namespace ui::life;
using core::Day;
using core::LineageHow;

/// Colonies by number, their lineage rows.
struct Kept {
    std::map<qint64, core::Colony> colonies;
    std::vector<core::Lineage> rows;

    void colony(qint64 id, Day since, std::optional<Day> ended = {}, std::optional<core::EndKind> end = {}) {
        core::Colony c;
        c.id = {id};
        c.label = QStringLiteral("K%1").arg(id);
        c.since = since;
        c.ended = ended;
        c.end = end;
        colonies[id] = c;
    }
    void tie(qint64 from, qint64 into, Day day, LineageHow how) {
        core::Lineage l;
        l.id = {static_cast<qint64>(rows.size()) + 1};
        l.colony = {from};
        l.into = {into};
        l.day = day;
        l.how = how;
        rows.push_back(l);
    }
    FamilyBook book() const {
        return {[this](core::ColonyId id) {
                    const auto at = colonies.find(id.value);
                    return at == colonies.end() ? std::nullopt : std::optional(at->second);
                },
                [this](core::ColonyId id) {
                    std::vector<core::Lineage> out;
                    for (const auto& l : rows)
                        if (l.colony == id || l.into == id) out.push_back(l);
                    std::ranges::stable_sort(out, {}, &core::Lineage::day);
                    return out;
                },
                [](const core::Colony& c, Day) { return c.label; }};
    }
};

Day on(int year, int month, int day = 1) { return core::dayOf(year, month, day); }
const Day kToday = core::dayOf(2026, 9, 15);

std::vector<qint64> idsOf(const Family& f) {
    std::vector<qint64> out;
    for (const Kin& k : f.kin) out.push_back(k.colony.value);
    std::ranges::sort(out);
    return out;
}

/// 1 gave 2 and 3; 2 gave 4; 5 came to 4 and 4 went into 6; 3 gave 7 after all that, 8 came to 3 after 2 was made.
Kept kept() {
    Kept k;
    k.colony(1, on(2020, 5), on(2022, 11), core::EndKind::Dead);
    k.colony(2, on(2021, 5), on(2024, 2), core::EndKind::Destroyed);
    k.colony(3, on(2021, 6));
    k.colony(4, on(2022, 5), on(2025, 9), core::EndKind::United);
    k.colony(5, on(2019, 5), on(2023, 9), core::EndKind::ShakenOut);
    k.colony(6, on(2023, 5));
    k.colony(7, on(2025, 5));
    k.colony(8, on(2020, 6), on(2022, 9), core::EndKind::United);
    k.tie(1, 2, on(2021, 5), LineageHow::Divided);
    k.tie(1, 3, on(2021, 6), LineageHow::Divided);
    k.tie(2, 4, on(2022, 5), LineageHow::Divided);
    k.tie(5, 4, on(2023, 9), LineageHow::ShakenOut);
    k.tie(4, 6, on(2025, 9), LineageHow::United);
    k.tie(3, 7, on(2025, 5), LineageHow::Divided);
    k.tie(8, 3, on(2022, 9), LineageHow::United);
    return k;
}

TEST(Family, GoesBackAndOnAlongTheDays) {
    const Kept k = kept();
    EXPECT_EQ(idsOf(familyOf(k.book(), {4}, kToday)), (std::vector<qint64>{1, 2, 4, 5, 6}));
    EXPECT_EQ(idsOf(familyOf(k.book(), {1}, kToday)), (std::vector<qint64>{1, 2, 3, 4, 6, 7}));
    EXPECT_EQ(idsOf(familyOf(k.book(), {7}, kToday)), (std::vector<qint64>{1, 3, 7, 8}));
    EXPECT_EQ(idsOf(familyOf(k.book(), {4}, on(2023, 1))), (std::vector<qint64>{1, 2, 4})) << "as it was then";
    EXPECT_TRUE(familyOf(k.book(), {99}, kToday).kin.empty());
}

TEST(Family, WhatAForebearGotLaterIsNotOfIt) {
    Kept k = kept();
    k.colony(9, on(2018, 5), on(2022, 4), core::EndKind::United);
    k.tie(9, 1, on(2022, 4), LineageHow::United); // after 2 and 3 had gone from 1
    EXPECT_EQ(idsOf(familyOf(k.book(), {4}, kToday)), (std::vector<qint64>{1, 2, 4, 5, 6}));
}

TEST(Family, ADaughterUnitedBackIntoHerMotherEndsThere) {
    Kept k;
    k.colony(1, on(2024, 5));
    k.colony(2, on(2025, 5), on(2025, 9), core::EndKind::United);
    k.tie(1, 2, on(2025, 5), LineageHow::Divided);
    k.tie(2, 1, on(2025, 9), LineageHow::United);
    const Family f = familyOf(k.book(), {1}, kToday);
    EXPECT_EQ(f.kin.size(), 2u);
    EXPECT_EQ(f.ties.size(), 2u);
    EXPECT_EQ(kinText(f, f.asked),
              QStringLiteral("K1, since 1 May 2024; K2 divided from it on 1 May 2025; K2 united into "
                             "it on 1 Sep 2025"));
}

TEST(Family, DrawsATreeWithoutACrossing) {
    // Each of 15 gives two: a tree of 31, by divides alone.
    Kept k;
    for (qint64 id = 1; id <= 31; ++id) {
        int depth = 0;
        for (qint64 up = id; up > 1; up /= 2) ++depth;
        k.colony(id, on(2018 + depth, 5, 1 + static_cast<int>(id % 20)));
        if (id > 1) k.tie(id / 2, id, k.colonies[id].since, LineageHow::Divided);
    }
    const Family f = familyOf(k.book(), {1}, kToday);
    ASSERT_EQ(f.kin.size(), 31u);
    EXPECT_EQ(crossingsOf(f), 0);
}

TEST(Family, CrossesNoMoreThanInTheOrderOfDaysAndKeepsItsTies) {
    std::mt19937 random(7);
    const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    for (int round = 0; round < 40; ++round) {
        Kept k;
        for (qint64 id = 1; id <= 20; ++id) k.colony(id, on(2016, 1) + below(1500));
        for (int i = 0; i < 25; ++i) {
            const qint64 a = 1 + below(20), b = 1 + below(20);
            if (a != b) k.tie(a, b, on(2020, 6) + below(1500), LineageHow::Divided);
        }
        const Family f = familyOf(k.book(), {1}, kToday);
        std::vector<core::report::TimeRow> rows;
        std::vector<core::report::TimeStroke> strokes;
        std::vector<size_t> byDay;
        for (const Kin& kin : f.kin) rows.push_back({kin.since, f.last});
        for (const KinTie& t : f.ties) {
            strokes.push_back({t.day, t.from, t.into});
            EXPECT_TRUE(std::ranges::any_of(k.rows, [&](const core::Lineage& l) {
                return l.colony == f.kin[t.from].colony && l.into == f.kin[t.into].colony && l.day == t.day;
            }));
        }
        for (size_t i = 0; i < rows.size(); ++i) byDay.push_back(i);
        std::ranges::sort(byDay, {}, [&](size_t i) { return rows[i].from; });
        EXPECT_LE(crossingsOf(f), core::report::crossingsOf(rows, strokes, byDay)) << "round " << round;
    }
}

TEST(Family, SaysHowManyAreLeftOut) {
    Kept k;
    k.colony(1, on(2020, 5));
    for (qint64 id = 2; id <= 60; ++id) {
        k.colony(id, on(2021, 5));
        k.tie(1, id, on(2021, 5), LineageHow::Divided);
    }
    const Family f = familyOf(k.book(), {1}, kToday, 40);
    EXPECT_EQ(f.kin.size(), 40u);
    EXPECT_EQ(f.left, 20);
    EXPECT_TRUE(familyLine(f).contains(QStringLiteral("20"))) << familyLine(f).toStdString();
}

TEST(Family, TellsYearsAndFate) {
    const Family f = familyOf(kept().book(), {4}, kToday);
    const auto of = [&](qint64 id) { return *std::ranges::find(f.kin, core::ColonyId{id}, &Kin::colony); };
    EXPECT_EQ(yearsText(of(2)), QStringLiteral("2021–2024, destroyed"));
    EXPECT_EQ(yearsText(of(6)), QStringLiteral("since 2023"));
}

} // namespace
