#include "core/edit/inspection_rows.h"

#include "core/edit/carrying.h"
#include "core/edit/kit.h"
#include "tests/edit/edit_fixture.h"

namespace tests::edit {

namespace {

using rules::Inspection;
using rules::InspectionBook;

class InspectionRows : public EditTest {
protected:
    const Day from = dayOf(2025, 9, 21), until = dayOf(2026, 9, 20);

    InspectionBook rows(const QStringList& yards = {}) const { return inspectionRows(*session, from, until, yards); }
    void check(ColonyId colony, Day day, int checked, Signs signs = {}) {
        Visit v;
        v.colony = colony;
        v.day = day;
        v.broodFrames = 6;
        v.broodChecked = checked;
        v.signs = signs;
        v.by = QStringLiteral("Ada");
        visit(v);
    }
    void end(ColonyId colony, EndKind how) {
        apply([&](const EditContext& c) { return endColony(c, colony, dayOf(2026, 3, 1), how); });
    }
    static std::string names(const InspectionBook& book, const std::vector<ColonyIx>& colonies) {
        QStringList out;
        for (const ColonyIx c : colonies) out << book.s.colony(c).shown;
        return out.join(u' ').toStdString();
    }
};

// COLOSS BEEBOOK vol. II, epidemiology 1.3.3.1: at risk = start + splits + purchased − removed; own figures: 20 at the
// start, 8 more, 3 sold, 21 at the end: 25 at risk, 4 lost, 16 %.
TEST_F(InspectionRows, LossesHaveANumeratorAndADenominator) {
    const YardId yard = newYard("North");
    std::vector<ColonyId> all;
    for (int i = 0; i < 28; ++i)
        all.push_back(newColony(yard, QStringLiteral("N%1").arg(i + 1), {i * 2000, 0},
                                i < 20 ? dayOf(2025, 5, 1) : dayOf(2025, 10, 1)));
    for (const size_t i : {0u, 1u, 2u}) end(all[i], EndKind::Sold);
    for (const size_t i : {3u, 4u, 5u}) end(all[i], EndKind::Dead);
    end(all[6], EndKind::Destroyed);
    const InspectionBook book = rows();
    const Inspection found = rules::inspect(book);
    ASSERT_EQ(found.yards.size(), 1u) << "one yard is not told twice";
    const rules::YardOverTime& north = found.yards.front();
    EXPECT_EQ(north.count.start, 20);
    EXPECT_EQ(north.count.begun, 8);
    EXPECT_EQ(north.count.dead, 3);
    EXPECT_EQ(north.count.destroyed, 1);
    EXPECT_EQ(north.count.sold, 3);
    EXPECT_EQ(north.count.end, 21);
    ASSERT_TRUE(north.lost);
    EXPECT_EQ(north.lost->found, 4);
    EXPECT_EQ(north.lost->of, 25);
    EXPECT_EQ(found.ended.size(), 7u);
    EXPECT_EQ(found.began.size(), 8u);
    EXPECT_EQ(book.begun.size(), 8u);
}

// Own calculation: 2 hives from 21 Sep 2025 to 28 Feb 2026 (161 days), then 1 for 204 days of 365: 526/365.
TEST_F(InspectionRows, TheMeanIsOfEachDaysColonies) {
    const YardId yard = newYard("North");
    newColony(yard, "N1", {0, 0}, dayOf(2025, 5, 1));
    end(newColony(yard, "N2", {2000, 0}, dayOf(2025, 5, 1)), EndKind::Dead);
    EXPECT_DOUBLE_EQ(rules::inspect(rows()).yards.front().mean, 526.0 / 365);
}

TEST_F(InspectionRows, ChecksSignsAndThoseWithoutACheckAreToldByYard) {
    const YardId north = newYard("North"), south = newYard("South");
    const ColonyId n1 = newColony(north, "N1", {0, 0}), n2 = newColony(north, "N2", {2000, 0});
    const ColonyId s1 = newColony(south, "S1", {0, 0});
    Signs doubt, afb;
    doubt.add(Sign::BroodDoubt);
    afb.add(Sign::Afb);
    check(n1, dayOf(2026, 6, 1), 6);
    check(n2, dayOf(2026, 6, 1), 0, doubt);
    check(s1, dayOf(2026, 6, 2), 3, afb);
    const InspectionBook book = rows();
    const Inspection found = rules::inspect(book);
    EXPECT_EQ(names(book, found.living), "N1 N2 S1");
    EXPECT_EQ(names(book, found.unchecked), "N2") << "a visit that examined no brood is no check";
    ASSERT_EQ(found.visitDays.size(), 2u);
    EXPECT_EQ(found.visitDays[0].visited, 2);
    EXPECT_EQ(found.visitDays[0].checked, 1);
    EXPECT_EQ(found.visitDays[0].by, QStringList("Ada"));
    EXPECT_EQ(found.checks.size(), 2u);
    EXPECT_EQ(found.signs.size(), 2u);
    ASSERT_EQ(found.finds.size(), 1u) << "a doubt is no find";
    EXPECT_EQ(found.finds.front().disease, Disease::Afb);
    EXPECT_EQ(found.finds.front().hives, 1);
    const InspectionBook only = rows({"north"});
    const Inspection ofNorth = rules::inspect(only);
    EXPECT_EQ(names(only, ofNorth.living), "N1 N2");
    EXPECT_TRUE(ofNorth.finds.empty());
    EXPECT_EQ(ofNorth.checks.size(), 1u);
    for (const rules::Hold& h : ofNorth.holds) EXPECT_NE(only.s.colony(h.colony).shown, "S1");
    EXPECT_FALSE(found.holds.empty());
}

TEST_F(InspectionRows, HivesCarriedBetweenYardsAreCountedByDay) {
    const YardId north = newYard("North"), south = newYard("South");
    const ColonyId n1 = newColony(north, "N1", {0, 0}), n2 = newColony(north, "N2", {2000, 0});
    newColony(south, "S1", {0, 0});
    apply([&](const EditContext& c) {
        return carryHives(
            c, {{n1, south, {4000, 0}, {}, dayOf(2026, 7, 1)}, {n2, south, {6000, 0}, {}, dayOf(2026, 7, 1)}});
    });
    const InspectionBook book = rows();
    const Inspection found = rules::inspect(book);
    ASSERT_EQ(found.moves.size(), 1u);
    EXPECT_EQ(names(book, found.moves.front().colonies), "N1 N2");
    EXPECT_EQ(book.s.yard(found.moves.front().to).name, "South");
    ASSERT_EQ(found.yards.size(), 3u) << "two yards, and both together";
    EXPECT_EQ(found.yards[0].count.movedOut, 2);
    EXPECT_EQ(found.yards[1].count.movedIn, 2);
    EXPECT_EQ(found.yards[1].count.end, 3);
    EXPECT_EQ(found.yards[2].count.end, 3);
    EXPECT_EQ(rules::inspect(rows({"North"})).moves.size(), 1u);
}

TEST_F(InspectionRows, WhatCannotBeIsRefused) {
    newYard("North");
    EXPECT_EQ(thrownBy([&] { rows({"Nowhere"}); }).message, "“Nowhere” is no yard of this book.");
    EXPECT_EQ(thrownBy([&] { inspectionRows(*session, until, from, {}); }).message,
              "The period begins on 2026-09-20 and ends on 2025-09-21: expected a first day on or before the last.");
    EXPECT_TRUE(rules::inspect(rows()).living.empty());
}

} // namespace

} // namespace tests::edit
